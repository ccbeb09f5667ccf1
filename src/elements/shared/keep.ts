// Comes when an element is told to keep its answers: finds its trail, and tells the page what cannot be kept.
import type { PreparedKey } from '../../key/index.ts';
import type { RestoredTrail } from '../../session/restore.ts';
import { StoreFullError, TrailKeeper } from '../../store/index.ts';
import { fire } from './events.ts';

type Keeping = HTMLElement & { readonly keep: string | boolean | null };
/** No name: the attribute alone, or what a framework makes of it. */
const isUnnamed = ({ keep }: Keeping) => keep === '' || keep === 'true' || keep === true;

/** Elements without a name of their own keep apart by their place on the page. */
function nameOf(host: Keeping): string {
  if (!isUnnamed(host)) return `${host.keep}`;
  const all = [...document.querySelectorAll<Keeping>('leadwort-key, leadwort-session')];
  return `${Math.max(all.filter(isUnnamed).indexOf(host), 0) + 1}`;
}

/** Undefined when this device keeps nothing: the page is told, and the key works as ever. */
export async function keepTrail(
  host: Keeping,
  prepared: PreparedKey,
): Promise<{ readonly keeper: TrailKeeper; readonly restored: RestoredTrail | undefined } | undefined> {
  const failed = (error: unknown) =>
    fire(host, 'leadwort-keep', { trouble: error instanceof StoreFullError ? 'full' : 'unavailable' });
  const elsewhere = () => fire(host, 'leadwort-keep', { trouble: 'elsewhere' });
  try {
    const kept = await TrailKeeper.open(prepared, { name: nameOf(host), failed, elsewhere });
    if (kept.restored && kept.restored.left.length > 0) fire(host, 'leadwort-keep', { trouble: 'left' });
    return kept;
  } catch (error) {
    failed(error);
    return undefined;
  }
}
