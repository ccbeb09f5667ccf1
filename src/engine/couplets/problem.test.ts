import { describe, expect, test } from 'vitest';
import { type CharacterSpec, compileMatrix, type MatrixSpec } from '../index.ts';
import { buildKey, problemOf } from './index.ts';

const states = (...p: number[]) => ({ kind: 'states' as const, p });

const base: Omit<CharacterSpec, 'id' | 'traits'> = {
  kind: 'choice',
  states: ['a', 'b', 'c'],
  misread: 0.2,
  cost: 1,
  proposed: true,
};

const spec = (characters: readonly CharacterSpec[]): MatrixSpec => ({
  taxa: ['one', 'two', 'three'].map((id, t) => ({ id, weight: t + 1, native: false, concern: false })),
  characters,
  pairs: [],
  outsidePrior: 0.1,
  rates: [{ times: 1, prior: 1 }],
});

const traits = [states(0.8, 0.2, 0), states(0, 0.5, 0.5), undefined];

describe('what a matrix asks of a key', () => {
  test('a state counts beside the commonest one or not at all, and plants that show another go astray', () => {
    const matrix = compileMatrix(spec([{ ...base, id: 'x', traits }]));
    const [character] = problemOf(matrix, { floor: 0.3 }).characters;
    expect(character?.shares[0]).toEqual([1, 0, 0]);
    expect(character?.strays?.[0]).toEqual([0, 0.2, 0]);
    expect(character?.shares[1]).toEqual([0, 0.5, 0.5]);
    expect(character?.strays?.[1]).toBeUndefined();
  });

  test('a taxon of which a character is unknown may show every state that any taxon shows, however seldom', () => {
    const matrix = compileMatrix(spec([{ ...base, id: 'x', traits }]));
    const [character] = problemOf(matrix, { floor: 0.9 }).characters;
    expect([...(character?.unknown ?? [])]).toEqual([2]);
    expect(character?.shares[2]).toHaveLength(3);
    for (const share of character?.shares[2] ?? []) {
      expect(share).toBeGreaterThan(0);
    }
  });

  test('what cannot be asked, seen in the month, or shows one state only is left out', () => {
    const matrix = compileMatrix(
      spec([
        { ...base, id: 'looked up', proposed: false, traits },
        { ...base, id: 'in spring', months: [3, 4, 5], traits },
        { ...base, id: 'all alike', traits: [states(1, 0, 0), states(1, 0, 0), undefined] },
        { ...base, id: 'always', traits },
      ]),
    );
    const asked = (given: Parameters<typeof problemOf>[1]) =>
      problemOf(matrix, given).characters.map(({ character }) => character);
    expect(asked({ month: 4 })).toEqual([1, 3]);
    expect(asked({ month: 9 })).toEqual([3]);
    expect(asked({})).toEqual([1, 3]);
    expect(asked({ asks: (c) => c === 0 })).toEqual([0]);
  });

  test('scales are cut in one place, choices are grouped freely, and the author may allow more leads', () => {
    const matrix = compileMatrix(
      spec([
        { ...base, id: 'size', kind: 'scale', traits },
        { ...base, id: 'shape', traits },
      ]),
    );
    const { characters } = problemOf(matrix, { leads: (c) => (c === 1 ? 'either' : 'two') });
    expect(characters.map(({ ordered, leads }) => [ordered, leads])).toEqual([
      [true, 'two'],
      [false, 'either'],
    ]);
  });

  test('a character is asked where it means something to all, and of the others only when nothing else helps', () => {
    const absent = { kind: 'absent' as const };
    const matrix = compileMatrix(
      spec([
        { ...base, id: 'ligule', traits: [states(1, 0, 0), states(0, 1, 0), absent] },
        { ...base, id: 'grass', traits: [states(1, 0, 0), states(1, 0, 0), states(0, 0, 1)], cost: 9 },
      ]),
    );
    const { root, together } = buildKey(problemOf(matrix));
    expect(root.character).toBe(1);
    expect(together).toEqual([]);
    const only = buildKey(problemOf(matrix, { asks: (c) => c === 0 }));
    expect(only.root.character).toBe(0);
    expect(only.together).toEqual([
      [0, 2],
      [1, 2],
    ]);
  });

  test('states that are taken for one another stay in one lead', () => {
    const mixed = {
      ...base,
      states: ['a', 'b', 'c', 'd'],
      mixups: [
        { a: 0, b: 2, share: 0.8 },
        { a: 1, b: 3, share: 0.8 },
      ],
    };
    const crisp = [0, 1, 2, 3].map((s) => states(...[0, 1, 2, 3].map((k) => +(k === s))));
    const four = spec([{ ...mixed, id: 'colour', traits: crisp }]);
    const matrix = compileMatrix({
      ...four,
      taxa: ['w', 'x', 'y', 'z'].map((id) => ({ ...four.taxa[0], id, weight: 1, native: false, concern: false })),
    });
    const { root } = buildKey(problemOf(matrix));
    expect(root.leads.map((lead) => lead.states)).toEqual([
      [0, 2],
      [1, 3],
    ]);
  });

  test('taxa that nothing tells apart end together and are reported', () => {
    const matrix = compileMatrix(
      spec([{ ...base, id: 'x', traits: [states(1, 0, 0), states(1, 0, 0), states(0, 1, 0)] }]),
    );
    const key = buildKey(problemOf(matrix));
    expect(key.together).toEqual([[0, 1]]);
    expect(key.exact).toBe(true);
    expect(key.depth).toBe(1);
  });

  test.each([
    [{ floor: 0.3, price: -1 }, /price is -1/],
    [{ everySplit: 40 }, /everySplit is 40/],
    [{ naming: Number.NaN }, /naming is NaN/],
  ])('nonsense such as %o is refused by name', (given, message) => {
    const matrix = compileMatrix(spec([{ ...base, id: 'x', traits }]));
    expect(() => problemOf(matrix, given)).toThrow(message);
  });
});
