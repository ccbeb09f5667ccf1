// The photographs that would settle it, in words and with a drawing of each view.
import { type Find, wantedPhotos } from '../../report/find/index.ts';
import type { Snapshot } from '../../session/index.ts';
import type { ReportWords } from '../../words/report/index.ts';
import type { Wanted } from './photos.ts';

/** More would not be taken (ours). */
const MOST = 5;

/** The view of a character is the state that was answered, or else its first. */
export function wantedOf({ prepared, month }: Snapshot, find: Find, { photos }: ReportWords): Wanted[] {
  const answered = new Map(find.trail.map(({ character, states }) => [character, states?.[0]]));
  return wantedPhotos(prepared, find.standing, month)
    .slice(0, MOST)
    .map(({ id, settles }) => ({
      id,
      words: photos.wants[id],
      views: settles.flatMap((character) => {
        const known = prepared.key.characters[prepared.characterIndex.get(character) ?? -1];
        const state = answered.get(character) ?? known?.states[0]?.id;
        return state === undefined ? [] : [`${character}/${state}`];
      }),
    }));
}
