// Comes when an element is given a parameter of the page's address: the answers stand in it, and nothing else is touched.
import type { Snapshot } from '../../session/index.ts';
import { LinkError, parameterIn, readLink, withParameter, writeLink } from '../../session/link/index.ts';
import { type RestoredTrail, restoreTrail } from '../../session/restore.ts';
import { type Carry, type Carrying, following, speak } from './carried.ts';
import { fire } from './events.ts';
import { languageAt } from './language.ts';

/** The page's address with these answers in `parameter`; without that parameter where nothing was answered. */
export function addressWith(parameter: string, snapshot: Snapshot, language: string): string {
  const said = snapshot.trail.length + snapshot.turns.length > 0;
  const address = new URL(location.href);
  const search = withParameter(address.search, parameter, said ? writeLink(snapshot, language) : undefined);
  if (search !== address.search) address.search = search;
  return address.href;
}

export const carry: Carry = async (host, prepared) => {
  const text = parameterIn(location.search, host.linkParameter);
  let restored: RestoredTrail | undefined;
  try {
    if (text !== undefined) restored = open(host, prepared, text);
  } catch (error) {
    if (!(error instanceof LinkError)) throw error;
    fire(host, 'leadwort-keep', { trouble: 'link', reason: error.message });
  }
  // What could not be read stays in the address until a person answers: it is theirs.
  const keeper = following(({ snapshot }) => {
    const address = addressWith(host.linkParameter, snapshot, languageAt(host));
    try {
      if (address !== location.href) history.replaceState(history.state, '', address);
    } catch {
      // A page of no address of its own, or written too often: the link can still be copied.
    }
  }, false);
  return { keeper, restored };
};

function open(host: Carrying, prepared: Parameters<Carry>[1], text: string): RestoredTrail {
  const link = readLink(text);
  const { key } = prepared;
  if (link.key !== key.id) throw new LinkError('key', key.id);
  const restored = restoreTrail(prepared, link);
  speak(host, link.language, key);
  if (restored.left.length > 0) {
    const characters = restored.left.map((answer) => (answer as { character: string }).character);
    fire(host, 'leadwort-keep', {
      trouble: 'left',
      reason: characters.join(' '),
    });
  }
  return restored;
}
