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
  readonly sample: Int32Array;
  /** All hypotheses, those of one profile together; profile g has those from `first[g]` to before `first[g + 1]`. */
  readonly members: Int32Array;
  readonly first: Int32Array;
  /** The profile of the taxa to which the character means nothing; -1 when it applies to all. */
  readonly absent: number;
}

/** The profiles of a character with these traits; the last is that of `not in this key`. */
export function profilesOf(traits: readonly (TraitSpec | undefined)[]): Profiles {
  const groups = new Map<string, number[]>();
  traits.forEach((trait, t) => {
    const known = nameOf(trait);
    const group = groups.get(known);
    if (group) group.push(t);
    else groups.set(known, [t]);
  });
  const all = [...groups.values(), [traits.length]];
  const of = new Int32Array(traits.length + 1);
  const first = new Int32Array(all.length + 1);
  all.forEach((group, g) => {
    first[g + 1] = (first[g] as number) + group.length;
    for (const h of group) of[h] = g;
  });
  const members = Int32Array.from(all.flat());
  return {
    of,
    sample: first.slice(0, -1).map((i) => members[i] as number),
    members,
    first,
    absent: [...groups.keys()].indexOf('absent'),
  };
}

function nameOf(trait: TraitSpec | undefined): string {
  if (trait === undefined) return 'unknown';
  if (trait.kind === 'states') return trait.p.join(' ');
  return trait.kind === 'range' ? `range ${trait.low} ${trait.high} ${trait.min} ${trait.max}` : trait.kind;
}
