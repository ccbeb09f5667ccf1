// Tables and the exact values of branching keys for them, as problems for the key builder.
import type { KeyCharacter, KeyProblem, Leads } from '../../src/engine/couplets/index.ts';

/** A character of so many states; slips go to the others evenly, and there are none unless said. */
export const character = (
  index: number,
  shares: readonly (readonly number[] | 'absent')[],
  states: number,
  given: Partial<KeyCharacter> = {},
): KeyCharacter => ({
  character: index,
  states,
  ordered: false,
  leads: 'each',
  cost: 1,
  misread: 0,
  confused: Array.from({ length: states }, (_, from) =>
    Array.from({ length: states }, (_, to) => (from === to ? 0 : 1 / (states - 1))),
  ),
  shares,
  unknown: new Set(),
  ...given,
});

/** Nothing has a price but looking, and a couplet is useful as soon as it removes one taxon in one lead. */
export const problem = (taxa: KeyProblem['taxa'], characters: readonly KeyCharacter[]): KeyProblem => ({
  taxa,
  characters,
  price: 0,
  naming: 0,
  least: 0,
  everySplit: 6,
});

/** Every row of a table is a taxon that shows one state of each column; an empty cell is a state like any other. */
export function ofRows(
  rows: readonly (readonly string[])[],
  weights: readonly number[] = rows.map(() => 1),
  groups?: readonly number[],
  leads: Leads = 'each',
): KeyProblem {
  const characters: KeyCharacter[] = [];
  (rows[0] ?? []).forEach((_, c) => {
    const states = [...new Set(rows.map((row) => row[c] as string))].sort();
    if (states.length < 2) return;
    const shares = rows.map((row) => states.map((state) => (state === row[c] ? 1 : 0)));
    characters.push(character(c, shares, states.length, { leads }));
  });
  const taxa = rows.map((_, t) => ({
    weight: weights[t] as number,
    ...(groups ? { group: groups[t] as number } : {}),
  }));
  return problem(taxa, characters);
}

export const distinct = (rows: readonly (readonly string[])[]): (readonly string[])[] => [
  ...new Map(rows.map((row) => [row.join(), row])).values(),
];
