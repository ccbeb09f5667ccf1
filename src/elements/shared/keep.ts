// Comes when an element is told to keep its answers: finds its trail, and tells the page what cannot be kept.
import { StoreFullError, TrailKeeper } from '../../store/index.ts';
import type { Carry, Carrying } from './carried.ts';
import { fire } from './events.ts';

/** No name: the attribute alone, or what a framework makes of it. */
const isUnnamed = ({ keep }: Carrying) => keep === '' || keep === 'true' || keep === true;

/** Elements without a name of their own keep apart by their place on the page. */
function nameOf(host: Carrying): string {
  if (!isUnnamed(host)) return `${host.keep}`;
  const all = [...document.querySelectorAll<Carrying>('leadwort-key, leadwort-session')];
  return `${Math.max(all.filter(isUnnamed).indexOf(host), 0) + 1}`;
}

/** Undefined when this device keeps nothing: the page is told, and the key works as ever. */
export const carry: Carry = async (host, prepared) => {
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
};
