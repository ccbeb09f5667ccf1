import { describe, expect, test } from 'vitest';
import { buildKey, type KeyCharacter, type KeyProblem, numbered } from './index.ts';

const crisp = (states: readonly number[], k: number) =>
  states.map((s) => Array.from({ length: k }, (_, i) => +(i === s)));

const character = (index: number, shares: KeyCharacter['shares'], given: Partial<KeyCharacter> = {}): KeyCharacter => {
  const states = (shares.find((p) => p !== 'absent') as readonly number[]).length;
  const confused = Array.from({ length: states }, (_, a) =>
    Array.from({ length: states }, (_, b) => (a === b ? 0 : 1 / (states - 1))),
  );
  return {
    character: index,
    states,
    ordered: false,
    leads: 'two',
    cost: 1,
    misread: 0.2,
    confused,
    shares,
    unknown: new Set(),
    ...given,
  };
};

const problem = (taxa: number, characters: readonly KeyCharacter[]): KeyProblem => ({
  taxa: Array.from({ length: taxa }, () => ({ weight: 1 })),
  characters,
  price: 4,
  naming: 0.05,
  least: 0.3,
  everySplit: 6,
});

describe('numbering', () => {
  // Four taxa: hollow or not; two rows or not, dearer, splits the same way; then one character within each half.
  const stem = character(10, crisp([0, 0, 1, 1], 2), { misread: 0 });
  const rows = character(11, crisp([0, 0, 1, 1], 2), { cost: 1.4 });
  const nearly = character(
    12,
    [
      [1, 0],
      [0.85, 0.15],
      [0, 1],
      [0, 1],
    ],
    { cost: 2 },
  );
  const unlike = character(13, crisp([0, 1, 0, 1], 2));
  const of = problem(4, [stem, rows, nearly, unlike]);
  const couplets = numbered(of, buildKey(of).root);

  test('couplets are numbered as they are read, each with the number it comes from', () => {
    expect(couplets.map(({ number, from }) => [number, from])).toEqual([
      [1, 0],
      [2, 1],
      [3, 1],
    ]);
    expect(couplets[0]?.taxa).toEqual([0, 1, 2, 3]);
    expect(couplets[0]?.leads.map(({ to }) => to)).toEqual([2, 3]);
    expect(couplets[1]?.leads.map(({ to }) => to)).toEqual([[0], [1]]);
  });

  test('a lead says what else splits the same way, easy and reliable characters first, and how sure it is', () => {
    expect(couplets[0]?.leads[0]).toMatchObject({ character: 10, states: [0] });
    expect(couplets[0]?.leads[0]?.further).toEqual([
      { character: 11, states: [0], how: 'always' },
      { character: 12, states: [0], how: 'usually' },
    ]);
    expect(couplets[0]?.leads[1]?.further.map(({ states }) => states)).toEqual([[1], [1]]);
  });

  test('what splits otherwise, is unknown of many or means nothing to some is not said', () => {
    const some = [
      character(20, crisp([0, 0, 1, 1], 2), { misread: 0 }),
      character(21, crisp([0, 1, 0, 1], 2), { cost: 3 }),
      character(22, crisp([0, 0, 1, 1], 2), { cost: 5, unknown: new Set([0]) }),
      character(23, [[1, 0], [1, 0], 'absent', [0, 1]], { cost: 5 }),
    ];
    const key = problem(4, some);
    expect(numbered(key, buildKey(key).root)[0]?.leads.map(({ further }) => further)).toEqual([[], []]);
  });

  test('what was asked on the way is not said again', () => {
    const three = character(30, crisp([0, 1, 2], 3));
    const later = character(31, crisp([0, 1, 1], 2), { cost: 9 });
    const key = problem(3, [three, later]);
    const [, second] = numbered(key, buildKey(key).root);
    expect(second?.leads.every(({ further }) => further.every((one) => one.character !== 30))).toBe(true);
  });

  test('one taxon needs no couplet', () => {
    const key = problem(1, []);
    expect(numbered(key, buildKey(key).root)).toEqual([]);
  });
});
