// What of a specimen tells its plant from another: the same shares of states that the key's standing is reckoned from.
import type { PreparedKey } from '../../key/index.ts';

/** No state is rarer than this: somebody's description may have missed it (ours). */
const LEAST = 0.005;
/** A specimen tells two plants apart when all that is seen speaks so many times more for its own (ours). */
const TELLS = 20;
/** A single character decides when it speaks so many times more for the one plant (ours). */
const DECIDES = 3;

/** How much likelier the plant `a` is to show the state than `b`; 1 where the key does not know it of both. */
export function ratioOf(prepared: PreparedKey, character: string, state: string, a: string, b: string): number {
  const { matrix, characterIndex, taxonIndex, key } = prepared;
  const c = characterIndex.get(character) ?? -1;
  const [one, other] = [taxonIndex.get(a) ?? -1, taxonIndex.get(b) ?? -1];
  const traits = matrix.spec.characters[c]?.traits;
  const s = key.characters[c]?.states.findIndex(({ id }) => id === state) ?? -1;
  if (s < 0 || !traits?.[one] || !traits[other]) return 1;
  if (traits[one]?.kind === 'absent' || traits[other]?.kind === 'absent') return 1;
  const row = ((matrix.firstRow[c] as number) + s) * matrix.hypotheses;
  const share = (taxon: number) => Math.max(LEAST, matrix.truth[row + taxon] as number);
  return share(one) / share(other);
}

/** Whether what is seen of a specimen of `truth` tells it from `other`. */
export function isTold(
  prepared: PreparedKey,
  shows: ReadonlyMap<string, string>,
  truth: string,
  other: string,
): boolean {
  let told = 0;
  for (const [character, state] of shows) told += Math.log(ratioOf(prepared, character, state, truth, other));
  return told >= Math.log(TELLS);
}

export interface Deciding {
  readonly character: string;
  readonly shown: string;
  /** The state that the other plant shows most. */
  readonly instead?: string;
}

/** What of the specimen speaks most for its plant against the other: what the key's author names for the two first. */
export function decidingOf(
  prepared: PreparedKey,
  shows: ReadonlyMap<string, string>,
  truth: string,
  other: string,
): Deciding | undefined {
  const pair = prepared.key.lookalikes.find(({ taxa }) => taxa.includes(truth) && taxa.includes(other));
  const named = new Set(pair?.separate.map(({ character }) => character));
  const rows = [...shows]
    .map(([character, shown]) => ({
      character,
      shown,
      ratio: ratioOf(prepared, character, shown, truth, other),
      named: named.has(character),
    }))
    .filter(({ ratio }) => ratio >= DECIDES)
    .sort((a, b) => Number(b.named) - Number(a.named) || b.ratio - a.ratio);
  const [best] = rows;
  if (best === undefined) return undefined;
  const { character, shown } = best;
  const instead = usualState(prepared, character, other);
  return { character, shown, ...(instead === undefined || instead === shown ? {} : { instead }) };
}

/** The state that a plant shows most; undefined where it is not known. */
export function usualState({ matrix, characterIndex, taxonIndex, key }: PreparedKey, character: string, taxon: string) {
  const c = characterIndex.get(character) ?? -1;
  const t = taxonIndex.get(taxon) ?? -1;
  const trait = matrix.spec.characters[c]?.traits[t];
  if (trait === undefined || trait.kind === 'absent') return undefined;
  const first = matrix.firstRow[c] as number;
  const states = key.characters[c]?.states ?? [];
  const share = (s: number) => matrix.truth[(first + s) * matrix.hypotheses + t] as number;
  const best = states.reduce((so, _, s) => (share(s) > share(so) ? s : so), 0);
  return states[best]?.id;
}
