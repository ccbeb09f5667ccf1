// The cover of a plot against areas known in closed form, and against the class it was strewn for.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVER, COVER_CLASSES } from '../../report/find/index.ts';
import { coverOf, type Leaf, plotOf } from './plot.ts';

const leaf = (x: number, y: number, a: number, b = a, turn = 0): Leaf => ({ x, y, a, b, turn });

/** What the raster may be out by: a thousandth of the frame. */
const RASTER = 0.001;
const expectCover = (leaves: readonly Leaf[], area: number) =>
  expect(Math.abs(coverOf(leaves) - area)).toBeLessThan(RASTER);

describe('the cover is the area that plane geometry gives', () => {
  test('nothing strewn covers nothing, and a disc about the frame covers all of it', () => {
    expect(coverOf([])).toBe(0);
    expect(coverOf([leaf(0.5, 0.5, Math.SQRT1_2 + 0.01)])).toBeCloseTo(1, 12);
  });

  test('discs that lie apart cover the sum of their areas', () => {
    expectCover([leaf(0.2, 0.2, 0.1), leaf(0.6, 0.3, 0.15), leaf(0.4, 0.8, 0.05)], Math.PI * (0.01 + 0.0225 + 0.0025));
  });

  test('a leaf covers pi a b however it is turned', () => {
    const sizes = fc.tuple(
      fc.double({ min: 0.02, max: 0.1, noNaN: true }),
      fc.double({ min: 0.4, max: 1, noNaN: true }),
    );
    const place = fc.double({ min: 0.2, max: 0.8, noNaN: true });
    const turn = fc.double({ min: 0, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(sizes, place, place, turn, ([a, slim], x, y, by) => {
        expectCover([leaf(x, y, a, a * slim, by)], Math.PI * a * a * slim);
      }),
      { seed: 11 },
    );
  });

  test('what lies outside the frame does not count: half of a disc on an edge, a quarter of one in a corner', () => {
    expectCover([leaf(0, 0.5, 0.1)], (Math.PI * 0.01) / 2);
    expectCover([leaf(1, 1, 0.1)], (Math.PI * 0.01) / 4);
  });

  // Two discs of radius r whose middles are d apart share 2 r^2 acos(d / 2r) - d/2 sqrt(4 r^2 - d^2).
  test.each([0, 0.05, 0.1, 0.2, 0.3])('what two discs share counts once: middles %f apart', (d) => {
    const r = 0.15;
    const lens = 2 * r * r * Math.acos(d / (2 * r)) - (d / 2) * Math.sqrt(4 * r * r - d * d);
    expectCover([leaf(0.3, 0.5, r), leaf(0.3 + d, 0.5, r)], 2 * Math.PI * r * r - lens);
  });
});

test.each(COVER_CLASSES)(
  'plots of class %i lie within its bounds, and their cover is that of their leaves',
  (wanted) => {
    const [from, to] = COVER[wanted];
    for (let seed = 1; seed <= 60; seed++) {
      const { leaves, cover } = plotOf(seed, wanted);
      expect(cover * 100, `seed ${seed}`).toBeGreaterThan(from);
      expect(cover * 100, `seed ${seed}`).toBeLessThan(to);
      expect(coverOf(leaves)).toBeCloseTo(cover, 9);
    }
  },
);

// Strewn at random alone, one frame in eleven of class 6 was given up below 95 %: the right reply counted as wrong.
test('a frame whose patches leave a corner bare is filled all the same', () => {
  for (let seed = 1; seed <= 100; seed++) expect(plotOf(seed, 6).cover, `seed ${seed}`).toBeGreaterThan(0.95);
});

test('the same seed strews the same plot, another seed another', () => {
  expect(plotOf(3, 4)).toEqual(plotOf(3, 4));
  expect(plotOf(3, 4)).not.toEqual(plotOf(5, 4));
});
