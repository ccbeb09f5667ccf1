// Whether there is something to say of the plant.
import type { VerdictKind } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';

/** Answers before an open or outside verdict is worth a person's attention; until then the standing says enough (ours). */
const WORTH_SHOWING = 3;

/** The verdict's kind once it is shown: settled or leaning from the first answer on, open or outside from the third. */
export function shownKind({ identification, answered }: Snapshot): VerdictKind | undefined {
  const { kind } = identification.verdict;
  return answered >= (kind === 'settled' || kind === 'leaning' ? 1 : WORTH_SHOWING) ? kind : undefined;
}
