import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Demand, smallestSets } from './sets.ts';

/** Every subset of `count` members that meets all demands, by trying each. */
function everySmallest(demands: readonly Demand[], count: number): number[][] {
  const asked = demands.filter(({ members }) => members.length > 0);
  const meets = (set: readonly number[]) =>
    asked.every(({ members, times = 1 }) => {
      const unlike = [...new Set(members)];
      return unlike.filter((m) => set.includes(m)).length >= Math.min(times, unlike.length);
    });
  const all = Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (_, m) => m).filter((m) => (bits >> m) & 1),
  ).filter(meets);
  const size = Math.min(...all.map((set) => set.length));
  return all.filter((set) => set.length === size);
}

const COUNT = 8;
const demand = fc.record({
  members: fc.array(fc.nat(COUNT - 1), { maxLength: 5 }),
  times: fc.integer({ min: 1, max: 3 }),
});

describe('smallest sets', () => {
  test('are exactly those that trying every subset finds', () => {
    fc.assert(
      fc.property(fc.array(demand, { maxLength: 9 }), (demands) => {
        const found = smallestSets(demands);
        const expected = everySmallest(demands, COUNT);
        expect(found.complete).toBe(true);
        expect(found.sets.map(String).sort()).toEqual(expected.map(String).sort());
        expect(found.size).toBe(expected[0]?.length);
      }),
    );
  });

  test('hold what is needed in every set', () => {
    fc.assert(
      fc.property(fc.array(demand, { maxLength: 9 }), (demands) => {
        const { needed, sets } = smallestSets(demands);
        for (const set of sets) expect(set).toEqual(expect.arrayContaining([...needed]));
      }),
    );
  });

  test('of nothing to tell apart are the empty one', () => {
    expect(smallestSets([])).toEqual({ size: 0, sets: [[]], complete: true, needed: [], unmet: 0 });
    expect(smallestSets([{ members: [] }])).toMatchObject({ size: 0, sets: [[]], unmet: 1 });
  });

  test('are cut off where there are more than was asked for, and it is said', () => {
    const found = smallestSets([{ members: [0, 1, 2, 3] }], 2);
    expect(found.sets).toHaveLength(2);
    expect(found.complete).toBe(false);
    expect(smallestSets([{ members: [0, 1] }], 2).complete).toBe(true);
  });

  test('of many members do not run out of bits', () => {
    const demands = Array.from({ length: 70 }, (_, m) => ({ members: [m, m + 70] }));
    const found = smallestSets([...demands, { members: [140, 3] }], 4);
    expect(found.size).toBe(70);
    for (const set of found.sets) expect(set).toContain(3);
  });
});
