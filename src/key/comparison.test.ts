import { describe, expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import type { KeyAnswer } from './answers.ts';
import { type ComparedRow, type Comparison, comparisonOf, type Looking } from './comparison.ts';
import { separationOf } from './separation.ts';
import type { Taxon } from './types.ts';

const prepared = streambank();
const { key } = prepared;
const compared = (ids: readonly string[], month = 9, answers: readonly KeyAnswer[] = []) =>
  comparisonOf(prepared, ids, { month: month as 9, answers });
const characters = (rows: readonly ComparedRow[]) => rows.map(({ character }) => character.id);
const taxon = (id: string) => key.taxa[prepared.taxonIndex.get(id) as number] as Taxon;
const row = ({ telling, alike }: Comparison, id: string) =>
  [...telling, ...alike].find(({ character }) => character.id === id) as ComparedRow;

const pairs = key.lookalikes.map((pair) => [pair.taxa.join(' and '), pair] as const);
const THREES = [
  ['arundo-donax', 'phragmites-australis-subsp-australis', 'arundinaria-gigantea'],
  ['colocasia-esculenta', 'peltandra-virginica', 'sagittaria-latifolia'],
] as const;

/** Usually apart, by the traits alone. */
const apart = (a: string, b: string, character: string) => {
  const known = key.characters.find(({ id }) => id === character);
  return known !== undefined && ['apart', 'almost'].includes(separationOf(taxon(a), taxon(b), known));
};

/** Every subset of `all` of this size. */
function* subsets<T>(all: readonly T[], size: number): Generator<readonly T[]> {
  if (size === 0) yield [];
  else
    for (const [i, one] of all.entries()) for (const rest of subsets(all.slice(i + 1), size - 1)) yield [one, ...rest];
}

describe.each(pairs)('%s', (_, { taxa, separate, needs }) => {
  const comparison = compared(taxa);

  test("have every character of the author among what tells them apart, in the author's words", () => {
    for (const { character, words, how } of separate) {
      const [pair] = row(comparison, character).pairs;
      expect(pair?.words, character).toBe(words);
      // No surer than the author says.
      if (how === 'usually') expect(pair?.difference).not.toBe('always');
    }
  });

  test('are told apart by what is marked as enough, and by nothing smaller of the same kind', () => {
    const { enough, telling } = comparison;
    if (enough === undefined) {
      // Then no choice of characters that may be asked for would do.
      const may = telling.filter(({ looking }) => looking !== 'dig' && looking !== 'fact');
      expect(may.filter(({ character }) => apart(taxa[0], taxa[1], character.id)).length).toBeLessThan(needs);
      return;
    }
    expect(enough.characters).toHaveLength(needs);
    for (const id of enough.characters) expect(apart(taxa[0], taxa[1], id), id).toBe(true);
    const looking = enough.characters.map((id) => row(comparison, id).looking);
    expect(enough.now).toBe(looking.every((one) => one === 'now'));
    const now = telling.filter((one) => one.looking === 'now' && apart(taxa[0], taxa[1], one.character.id));
    expect(enough.now).toBe(now.length >= needs);
  });

  test('are compared by the same rows in the same order whichever comes first', () => {
    const other = compared([...taxa].reverse());
    expect(characters(other.telling)).toEqual(characters(comparison.telling));
    expect(characters(other.alike)).toEqual(characters(comparison.alike));
    expect(other.unknown).toEqual(comparison.unknown);
    expect(other.enough).toEqual(comparison.enough);
    expect(other.telling.map(({ pairs: some }) => some)).toEqual(comparison.telling.map(({ pairs: some }) => some));
    expect(other.telling.map(({ shows }) => [...shows].reverse())).toEqual(
      comparison.telling.map(({ shows }) => shows),
    );
  });

  test('have each character in one place only', () => {
    const all = [
      ...characters(comparison.telling),
      ...characters(comparison.alike),
      ...comparison.unknown.map(({ id }) => id),
    ];
    expect(new Set(all).size).toBe(all.length);
    for (const { id } of key.characters) {
      const gone = taxa.every((one) => taxon(one).traits.get(id)?.kind === 'not-applicable');
      expect(all.includes(id), id).toBe(!gone);
    }
  });
});

test('nearly every pair of look-alikes has characters that are enough', () => {
  const without = key.lookalikes.filter(({ taxa }) => compared(taxa).enough === undefined);
  expect(without.map(({ taxa }) => taxa.join(' ')).sort()).toEqual([
    'echinodorus-cordifolius echinodorus-berteroi',
    'phragmites-australis-subsp-australis phragmites-australis-subsp-berlandieri',
  ]);
});

describe.each(THREES)('%s, %s and %s', (...ids) => {
  const comparison = compared(ids);
  const rivals = [...subsets(ids, 2)] as unknown as readonly (readonly [string, string])[];
  const needs = (a: string, b: string) =>
    key.lookalikes.find(({ taxa }) => taxa.includes(a) && taxa.includes(b))?.needs ?? 1;
  const suffices = (set: readonly string[]) =>
    rivals.every(([a, b]) => set.filter((id) => apart(a, b, id)).length >= needs(a, b));

  test('what is marked as enough keeps every two of them apart, and no fewer characters do', () => {
    const { enough, telling } = comparison;
    expect(enough).toBeDefined();
    const marked = enough?.characters as readonly string[];
    expect(suffices(marked)).toBe(true);
    const may = characters(telling.filter(({ looking }) => !enough?.now || looking === 'now'));
    for (const fewer of subsets(may, marked.length - 1)) expect(suffices(fewer), fewer.join(' ')).toBe(false);
  });

  test('each row says which two it tells apart', () => {
    for (const { pairs: some } of comparison.telling) {
      expect(some.length).toBeGreaterThan(0);
      for (const { taxa } of some) expect(ids).toEqual(expect.arrayContaining([...taxa]));
    }
  });
});

describe('giant reed and common reed', () => {
  const both = ['arundo-donax', 'phragmites-australis-subsp-australis'];

  test('come with what is sure and easy before what is neither', () => {
    const order = characters(compared(both).telling);
    expect(order.indexOf('leaf-base-mark')).toBeLessThan(order.indexOf('stem-thickness'));
    expect(order.indexOf('leaf-base-mark')).toBeLessThan(order.indexOf('ligule-length'));
  });

  test.each<[string, number, Looking]>([
    ['stem-thickness', 9, 'now'],
    ['leaf-base-mark', 9, 'handle'],
    ['flower-cluster', 1, 'season'],
    ['flower-cluster', 9, 'now'],
    ['habitat', 9, 'careful'],
    ['ligule', 9, 'magnify'],
    ['leaf-width', 9, 'measure'],
    ['underground', 9, 'dig'],
    ['wetland-status', 9, 'fact'],
  ])('%s in month %i: %s', (id, month, looking) => {
    expect(row(compared(both, month), id).looking).toBe(looking);
  });

  test('the answer is marked on the state or the size that it fits, and only there', () => {
    const { telling, alike } = compared(both, 9, [
      { character: 'leaf-base-mark', states: ['wedge'], sureness: 'sure' },
      { character: 'stem-thickness', value: 1.25, unit: 'in', sureness: 'sure' },
      { character: 'height', skipped: true },
    ]);
    const of = (id: string) => [...telling, ...alike].find(({ character }) => character.id === id) as ComparedRow;
    const seen = (id: string) =>
      of(id).shows.map((one) =>
        one.kind === 'states' ? one.states.filter((s) => s.seen).map((s) => s.state) : one.kind === 'range' && one.seen,
      );
    expect(seen('leaf-base-mark')).toEqual([['wedge'], []]);
    // 31.75 mm: Arundo 10-35(-50) mm; Phragmites is thinner.
    expect(seen('stem-thickness')).toEqual([true, false]);
    expect(of('height').answer).toBeUndefined();
    expect(of('leaf-base-mark').answer).toMatchObject({ states: ['wedge'] });
  });
});

test.each([
  [['arundo-donax'], /two or three different plants/],
  [[], /two or three different plants/],
  [['arundo-donax', 'arundo-donax'], /two or three different plants/],
  [['arundo-donax', 'typha-latifolia', 'typha-domingensis', 'peltandra-virginica'], /two or three different plants/],
  [['arundo-donax', 'arundo-donux'], /no taxon arundo-donux/],
])('%j is refused by name', (ids, message) => {
  expect(() => compared(ids)).toThrow(message);
});
