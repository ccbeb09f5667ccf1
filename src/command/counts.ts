// How much a key holds.
import type { Key } from '../key/index.ts';

/** Names are read by other programs: add, never rename. */
export interface Counts {
  readonly taxa: number;
  readonly characters: number;
  /** States of choices and scales, and size classes of measures. */
  readonly states: number;
  /** Traits that are told, of all taxa together. */
  readonly traits: number;
  /** Those of them that say that the character means nothing for the plant, which is seldom written anywhere. */
  readonly traitsNotApplicable: number;
  /** Those of the others that no source but memory bears out. */
  readonly traitsFromMemory: number;
  /** Look-alike pairs. */
  readonly pairs: number;
  readonly languages: number;
  /** Taxa with guidance. */
  readonly guidance: number;
  /** Sources but memory. */
  readonly sources: number;
}

export function countKey(key: Key): Counts {
  const memory = new Set([...key.sources.values()].filter(({ kind }) => kind === 'memory').map(({ id }) => id));
  const traits = key.taxa.flatMap((taxon) => [...taxon.traits.values()]);
  const stated = traits.filter(({ kind }) => kind !== 'not-applicable');
  return {
    taxa: key.taxa.length,
    characters: key.characters.length,
    states: key.characters.reduce((sum, character) => sum + character.states.length, 0),
    traits: traits.length,
    traitsNotApplicable: traits.length - stated.length,
    traitsFromMemory: stated.filter(({ source }) => source.every((id) => memory.has(id))).length,
    pairs: key.lookalikes.length,
    languages: key.languages.length,
    guidance: key.guidance.size,
    sources: key.sources.size - memory.size,
  };
}
