// Which taxa show the same of a character, so that it is reckoned once for all of them.
import type { TraitSpec } from './spec.ts';

/**
 * Thousands of taxa show of one character the same few things: one state, two of them, nothing known. Whatever is the
 * same for all that show the same is reckoned once for each such profile and not for each of H hypotheses. P profiles.
 */
export interface Profiles {
  /** The profile of each hypothesis, length H; those to which the character means nothing have one of their own. */
  readonly of: Int32Array;
  /** A hypothesis of each profile, length P. */
  readonly sample: Uint32Array;
  /** The profile of the taxa to which the character means nothing; -1 when it applies to all. */
  readonly absent: number;
}

/** Taxa of which the same is known of a character. */
export interface Group {
  readonly sample: number;
  readonly taxa: number[];
}

/** Groups the taxa by what is known of them, in the order in which each thing is first known. */
export function grouping(traits: readonly (TraitSpec | undefined)[]): Group[] {
  const groups = new Map<string, Group>();
  traits.forEach((trait, t) => {
    const known = nameOf(trait);
    const group = groups.get(known);
    if (group) group.taxa.push(t);
    else groups.set(known, { sample: t, taxa: [t] });
  });
  return [...groups.values()];
}

function nameOf(trait: TraitSpec | undefined): string {
  if (trait === undefined) return 'unknown';
  if (trait.kind === 'states') return trait.p.join(' ');
  return trait.kind === 'range' ? `range ${trait.low} ${trait.high} ${trait.min} ${trait.max}` : trait.kind;
}
