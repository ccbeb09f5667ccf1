import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cumulative, density, twoPiece, twoPieceBelow, twoPieceDensity } from './normal.ts';

const z = () => fc.double({ min: -12, max: 12, noNaN: true });

describe('the standard normal', () => {
  test('has as much below z as above -z', () => {
    fc.assert(
      fc.property(z(), (x) => {
        expect(cumulative(x) + cumulative(-x)).toBeCloseTo(1, 14);
      }),
    );
  });

  test('never falls as z grows, and stays between 0 and 1', () => {
    fc.assert(
      fc.property(z(), fc.double({ min: 1e-6, max: 5, noNaN: true }), (x, step) => {
        expect(cumulative(x)).toBeGreaterThan(0);
        expect(cumulative(x + step)).toBeLessThanOrEqual(1);
        expect(cumulative(x + step)).toBeGreaterThanOrEqual(cumulative(x));
      }),
    );
  });

  test('rises as fast as its density says', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (x) => {
        const h = 1e-4;
        expect((cumulative(x + h) - cumulative(x - h)) / (2 * h)).toBeCloseTo(density(x), 7);
      }),
    );
  });

  test('joins its two ways of reckoning without a step', () => {
    const seam = 2.5 * Math.SQRT2;
    const step = cumulative(seam + 1e-6) - cumulative(seam - 1e-6);
    expect(step / 2e-6 / density(seam)).toBeCloseTo(1, 4);
  });
});

describe('a range', () => {
  const range = () =>
    fc
      .record({
        low: fc.double({ min: 0.01, max: 1e3, noNaN: true }),
        width: fc.double({ min: 1, max: 20, noNaN: true }),
        less: fc.double({ min: 1, max: 9, noNaN: true }),
        more: fc.double({ min: 1, max: 9, noNaN: true }),
      })
      .map(({ low, width, less, more }) => ({ low, high: low * width, min: low / less, max: low * width * more }));

  test('is a distribution: its parts rise from 0 to 1 as fast as its density says', () => {
    fc.assert(
      fc.property(range(), fc.double({ min: -3, max: 3, noNaN: true }), (of, x) => {
        const d = twoPiece(of, 0.15);
        const value = Math.exp(d.mid + x * (x < 0 ? d.left : d.right));
        const h = 1e-5;
        const slope = (twoPieceBelow(d, value * Math.exp(h)) - twoPieceBelow(d, value * Math.exp(-h))) / (2 * h);
        // The density has a bend at the middle, where a difference is only half right.
        if (Math.abs(x) > 1e-3) expect(slope / twoPieceDensity(d, value)).toBeCloseTo(1, 3);
        expect(twoPieceBelow(d, 1e-300)).toBeCloseTo(0, 12);
        expect(twoPieceBelow(d, 1e300)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('reaches further on the side where an extreme is far off, and no less for an extreme close by', () => {
    const plain = twoPiece({ low: 20, high: 60 }, 0.15);
    const long = twoPiece({ low: 20, high: 60, min: 19, max: 300 }, 0.15);
    expect(long.mid).toBe(plain.mid);
    expect(long.right).toBeGreaterThan(plain.right);
    expect(long.left).toBe(plain.left);
  });

  test('of a single number is as wide as the eye is wrong', () => {
    expect(twoPiece({ low: 5, high: 5 }, 0.15)).toEqual({ mid: Math.log(5), left: 0.15, right: 0.15 });
  });
});
