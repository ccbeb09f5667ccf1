import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, type Trait } from '../../tests/support/build.ts';
import { mixups } from '../../tests/support/matrices.ts';
import { slipCap, slipRate, slipTable } from './slips.ts';
import type { CharacterSpec } from './spec.ts';

const anyCharacter = (): fc.Arbitrary<CharacterSpec> =>
  fc.integer({ min: 2, max: 6 }).chain((states) =>
    fc
      .record({
        kind: fc.constantFrom('choice' as const, 'scale' as const, 'measure' as const),
        mixups: mixups(states),
      })
      .map((more) => character('c', [new Array<number>(states).fill(1 / states)] as Trait[], more)),
  );

describe('where a misreading ends', () => {
  test('is some other state, in all', () => {
    fc.assert(
      fc.property(anyCharacter(), (one) => {
        slipTable(one).forEach((row, from) => {
          expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          expect(Math.min(...row)).toBeGreaterThanOrEqual(0);
          expect(row[from]).toBe(0);
        });
      }),
    );
  });

  test('is any of the other states alike for a choice', () => {
    expect(slipTable(character('c', [[1, 0, 0, 0]]))[1]).toEqual([1 / 3, 0, 1 / 3, 1 / 3]);
  });

  test('is the next state most often on a scale and among sizes, from either end alike', () => {
    for (const kind of ['scale', 'measure'] as const) {
      const table = slipTable(character('c', [[1, 0, 0, 0]], { kind }));
      expect(table[0]?.map((x) => x * 21)).toEqual([0, 16, 4, 1]);
      expect(table[3]?.map((x) => x * 21)).toEqual([1, 4, 16, 0]);
      expect(table[1]?.map((x) => x * 9)).toEqual([4, 0, 4, 1]);
    }
  });

  test('is most often the state it is mixed up with, both ways, and the rest is shared out among all', () => {
    const table = slipTable(character('c', [[1, 0, 0, 0]], { mixups: [{ a: 0, b: 2, share: 0.7 }] }));
    const close = (values: readonly number[]) => values.map((x) => expect.closeTo(x, 12));
    expect(table[0]).toEqual(close([0, 0.1, 0.8, 0.1]));
    expect(table[2]).toEqual(close([0.8, 0.1, 0, 0.1]));
    expect(table[1]).toEqual(close([1 / 3, 0, 1 / 3, 1 / 3]));
  });

  test('is still any other state now and then, whatever the key says of mix-ups', () => {
    const mixups = [
      { a: 0, b: 1, share: 0.9 },
      { a: 0, b: 2, share: 0.6 },
    ];
    const [row] = slipTable(character('c', [[1, 0, 0, 0]], { mixups })) as [number[]];
    expect(row[3]).toBeCloseTo(0.05, 12);
    expect((row[1] as number) - 0.05).toBeCloseTo(((row[2] as number) - 0.05) * 1.5, 12);
  });

  test('adds up to all when every other state is named', () => {
    const table = slipTable(character('c', [[1, 0]], { mixups: [{ a: 0, b: 1, share: 0.4 }] }));
    expect(table).toEqual([
      [0, 1],
      [1, 0],
    ]);
  });
});

describe('how often readings go wrong', () => {
  test('is never so often that a reading speaks against what it says, however many states are ticked', () => {
    fc.assert(
      fc.property(
        anyCharacter().chain((one) =>
          fc.tuple(
            fc.constant(one),
            fc.subarray(
              one.states.map((_, s) => s),
              { minLength: 1 },
            ),
          ),
        ),
        ([one, ticked]) => {
          const table = slipTable(one);
          const cap = slipCap(table);
          const slipped = (from: number) => cap * ticked.reduce((sum, to) => sum + (table[from]?.[to] as number), 0);
          const shown = ticked.map((s) => 1 - cap + slipped(s));
          const notShown = one.states.flatMap((_, s) => (ticked.includes(s) ? [] : [slipped(s)]));
          expect(Math.min(...shown)).toBeGreaterThanOrEqual(Math.max(0, ...notShown) - 1e-12);
        },
      ),
    );
  });

  test('is less where one state is taken for several others', () => {
    const mixups = [
      { a: 0, b: 1, share: 0.45 },
      { a: 0, b: 2, share: 0.4 },
    ];
    const table = slipTable(character('c', [[1, 0, 0, 0]], { mixups }));
    // A plant of state 0, misread, is said to be 1 or 2 nine times in ten; one of state 1 is hardly ever said to be 2.
    expect(slipCap(table)).toBeLessThan(1 / (1 + Math.max(...table.flat())));
  });

  test.each([
    [2, 1 / 2],
    [3, 2 / 3],
    [5, 4 / 5],
  ])('is at most as often as by blind guessing: among %d states alike, %d', (states, cap) => {
    expect(slipCap(slipTable(character('c', [new Array<number>(states).fill(1 / states)])))).toBeCloseTo(cap, 12);
  });

  test('grows with the observer and with doubt, up to that cap', () => {
    expect(slipRate(0.1, 0.5, 1, 'sure')).toBeCloseTo(0.1, 12);
    expect(slipRate(0.1, 0.5, 2, 'sure')).toBeCloseTo(0.2, 12);
    expect(slipRate(0.1, 0.5, 1, 'think')).toBeCloseTo(0.175, 12);
    expect(slipRate(0.1, 0.5, 1, 'guess')).toBeCloseTo(0.3, 12);
    expect(slipRate(0.1, 0.5, 3, 'guess')).toBe(0.5);
    expect(slipRate(0, 0.5, 3, 'guess')).toBe(0);
  });
});
