// Smallest sets of characters: the same as trying every subset, and as integer programming (sets.json).
import { describe, expect, test } from 'vitest';
import { diagnosisOf, pairsOf, smallestSets } from '../../src/engine/sets.ts';
import { golden, table } from './table.ts';

interface Expected {
  readonly size: number;
  readonly number_of_smallest_sets: number;
  readonly sets: string[][];
  readonly needed_in_every_set: string[];
}
interface One {
  readonly size: number;
  readonly one: string[];
  readonly needed_in_every_set: string[];
}
interface File {
  readonly zoo: {
    readonly profiles: number;
    readonly attributes: string[];
    readonly tell_all_profiles_apart: Expected;
    readonly tell_the_types_apart: Expected;
    readonly diagnosis_of_each_profile: {
      readonly size_counts: Record<string, number>;
      readonly profiles: readonly {
        readonly animals: string[];
        readonly size: number;
        readonly number_of_smallest: number;
        readonly first: Record<string, number>;
      }[];
    };
    readonly pair_examples: readonly { readonly pair: [string, string]; readonly separating: string[] }[];
  };
  readonly mushroom: { readonly settle_the_class: Omit<Expected, 'needed_in_every_set'> };
  readonly soybean: {
    readonly pairs_of_different_class_not_separable: number;
    readonly smallest_set_separating_every_other_pair: One;
  };
  readonly woangers: {
    readonly pairs_not_separable: [number, number][];
    readonly smallest_set_separating_every_other_pair: One;
  };
}

const file = golden<File>('sets.json');

type Rows = readonly (readonly string[])[];
/** Columns in which two rows differ; `missing` says which cells hold nothing. */
const differing =
  (rows: Rows, missing: (cell: string, column: number) => boolean = () => false) =>
  (a: number, b: number): number[] =>
    (rows[a] as readonly string[]).flatMap((cell, c) => {
      const other = rows[b]?.[c] as string;
      return cell === other || missing(cell, c) || missing(other, c) ? [] : [c];
    });
const named = (sets: readonly (readonly number[])[], names: readonly string[]) =>
  sets.map((set) => set.map((m) => names[m] as string));
const sorted = (sets: readonly (readonly string[])[]) => sets.map((set) => set.join(' ')).sort();

describe('animals', () => {
  const { head, rows } = table('zoo.csv');
  const names = head.slice(1, -1);
  const cells = rows.map((row) => row.slice(1, -1));
  const profiles = [...new Map(cells.map((row, r) => [row.join(' '), r])).values()];
  const shown = profiles.map((r) => cells[r] as string[]);
  const types = profiles.map((r) => rows[r]?.at(-1));
  const differ = differing(shown);

  test('the table is the one that the values were made from', () => {
    expect(names).toEqual(file.zoo.attributes);
    expect(profiles).toHaveLength(file.zoo.profiles);
  });

  test.each([
    ['all profiles', file.zoo.tell_all_profiles_apart, () => true],
    ['the types', file.zoo.tell_the_types_apart, (a: number, b: number) => types[a] !== types[b]],
  ] as const)('every smallest set that tells %s apart is found, and no other', (_, expected, apart) => {
    const found = smallestSets(pairsOf(profiles.length, differ, apart));
    expect(found).toMatchObject({ size: expected.size, complete: true, unmet: 0 });
    expect(found.sets).toHaveLength(expected.number_of_smallest_sets);
    expect(sorted(named(found.sets, names))).toEqual(sorted(expected.sets));
    expect(found.needed.map((m) => names[m])).toEqual(expected.needed_in_every_set);
  });

  test('the smallest diagnosis of each of the 59 profiles has its size and its number', () => {
    const sizes: Record<string, number> = {};
    for (const { animals, size, number_of_smallest, first } of file.zoo.diagnosis_of_each_profile.profiles) {
      const of = rows.findIndex((row) => row[0] === animals[0]);
      const row = shown.findIndex((cellsOf) => cellsOf.join(' ') === cells[of]?.join(' '));
      const found = smallestSets(diagnosisOf(profiles.length, row, differ));
      expect([found.size, found.sets.length], animals.join(', ')).toEqual([size, number_of_smallest]);
      expect(named(found.sets, names)[0]).toEqual(Object.keys(first));
      sizes[size] = (sizes[size] ?? 0) + 1;
    }
    expect(sizes).toEqual(file.zoo.diagnosis_of_each_profile.size_counts);
  });

  test.each(file.zoo.pair_examples)(
    '$pair are told apart by the columns in which they differ',
    ({ pair, separating }) => {
      const [a, b] = pair.map((name) => rows.findIndex((row) => row[0] === name)) as [number, number];
      const found = smallestSets([{ members: differing(cells)(a, b) }]);
      expect(found.sets.flat().map((m) => names[m])).toEqual(separating);
      expect(found.unmet).toBe(separating.length === 0 ? 1 : 0);
    },
  );
});

test('of 8,124 mushrooms every smallest set that settles the class is found', () => {
  const { characters, differences } = golden<{ characters: string[]; differences: number[][] }>(
    'mushroom_differences.json',
  );
  const found = smallestSets(differences.map((members) => ({ members })));
  const { size, number_of_smallest_sets, sets } = file.mushroom.settle_the_class;
  expect([found.size, found.sets.length, found.complete]).toEqual([size, number_of_smallest_sets, true]);
  expect(sorted(named(found.sets, characters))).toEqual(sorted(sets));
});

const meets = (set: readonly number[], members: readonly number[]) => members.some((m) => set.includes(m));

test('diseases of soybeans need 15 of 35 characters, a missing value separating nothing', () => {
  const { head, rows } = table('soybean.csv');
  const names = head.slice(2);
  const unlike = new Map<string, { row: string[]; kind: string }>();
  for (const row of rows) unlike.set(row.slice(1).join(','), { row: row.slice(2), kind: row[1] as string });
  const cells = [...unlike.values()];
  const differ = differing(
    cells.map(({ row }) => row),
    (cell) => cell === '',
  );
  const demands = pairsOf(cells.length, differ, (a, b) => cells[a]?.kind !== cells[b]?.kind);
  const found = smallestSets(demands);
  const { size, one, needed_in_every_set } = file.soybean.smallest_set_separating_every_other_pair;
  expect(found.size).toBe(size);
  expect(found.needed.map((m) => names[m])).toEqual(needed_in_every_set);
  expect(named(found.sets, names).map((set) => set.join(' '))).toContain(one.join(' '));
  for (const set of found.sets) {
    expect(set).toHaveLength(size);
    expect(demands.every(({ members }) => members.length === 0 || meets(set, members))).toBe(true);
  }
});

test('of 683 soybean plants 113 pairs of different diseases cannot be told apart', () => {
  const { rows } = table('soybean.csv');
  const differ = differing(
    rows.map((row) => row.slice(2)),
    (cell) => cell === '',
  );
  const { unmet } = smallestSets(
    pairsOf(rows.length, differ, (a, b) => rows[a]?.[1] !== rows[b]?.[1]),
    1,
  );
  expect(unmet).toBe(file.soybean.pairs_of_different_class_not_separable);
});

test('eighty wild plants need 7 of 21 columns, and one pair is not told apart', () => {
  const { head, rows } = table('woangers_codes.csv');
  // The columns in which code 0 is an empty cell of the original table.
  const gaps = new Set(['ae', 'un', 'le', 'elaio', 'endozoo', 'epizoo', 'windgl', 'unsp', 'lo']);
  const differ = differing(rows, (cell, c) => cell === '0' && gaps.has(head[c] as string));
  const demands = pairsOf(rows.length, differ);
  const found = smallestSets(demands);
  const { size, one, needed_in_every_set } = file.woangers.smallest_set_separating_every_other_pair;
  expect([found.size, found.unmet]).toEqual([size, file.woangers.pairs_not_separable.length]);
  expect(file.woangers.pairs_not_separable.map(([a, b]) => differ(a, b))).toEqual([[]]);
  expect(found.needed.map((m) => head[m])).toEqual(needed_in_every_set);
  expect(named(found.sets, head).map((set) => set.join(' '))).toContain(one.join(' '));
});
