import { describe, expect, test } from 'vitest';
import { character, matrixOf, native, say, type } from '../../tests/support/build.ts';
import { evidenceOf, likelihoodAt, rateOf } from './likelihood.ts';

const taxa = [native('a', 3), native('b', 1), native('unknown', 5), native('absent', 2)];

describe('the likelihood of a ticked state', () => {
  const shown = [
    [0.7, 0.2, 0.1],
    [0, 0.5, 0.5],
  ];
  const matrix = matrixOf(taxa, [character('leaf', [...shown, undefined, 'absent'], { misread: 0.2 })], {
    outsidePrior: 0.1,
  });

  test('is what the plant shows, read right, or something else it shows, misread as that', () => {
    const likelihood = likelihoodAt(evidenceOf(matrix, say(0, 0)), 0.2);
    expect(likelihood(0)).toBeCloseTo(0.8 * 0.7 + 0.2 * (0.3 / 2), 12);
    expect(likelihood(1)).toBeCloseTo(0.2 * (1 / 2), 12);
    expect(likelihood(3)).toBeCloseTo(1 / 3, 12);
  });

  test('of several is the sum over them, each counted once', () => {
    const likelihood = (states: number[]) => likelihoodAt(evidenceOf(matrix, say(0, states)), 0.2);
    for (let h = 0; h < matrix.hypotheses; h++)
      expect(likelihood([2, 0, 2])(h)).toBeCloseTo(likelihood([0])(h) + likelihood([2])(h), 12);
  });

  test('of all is exactly 1, so that rounding cannot make it say something', () => {
    const { right, slipped } = evidenceOf(matrix, say(0, [0, 1, 2]));
    expect([...right, ...slipped]).toEqual(new Array(10).fill(1));
  });

  test('knows the rate of slips from the character, the observer and the stated sureness', () => {
    expect(rateOf(matrix, say(0, 0), 0.5)).toBeCloseTo(0.1, 12);
    expect(rateOf(matrix, say(0, 0, 'think'), 1)).toBeCloseTo(0.35, 12);
    expect(rateOf(matrix, say(0, 0, 'guess'), 3)).toBeCloseTo(2 / 3, 12);
  });
});

describe('the likelihood of a typed size', () => {
  const ranges = [
    { low: 20, high: 40 },
    { low: 200, high: 400 },
  ];
  const matrix = matrixOf(taxa, [character('height', [...ranges, undefined, 'absent'], { bounds: [50, 150] })], {
    outsidePrior: 0.1,
  });
  const { right, slipped } = evidenceOf(matrix, type(0, 30));
  const [a, b, unknown, absent, outside] = right as unknown as [number, number, number, number, number];

  test('of a plant whose size is unknown is that of the plants of known size, the common ones most', () => {
    expect(unknown).toBeCloseTo((3 * a + b) / 4, 12);
  });

  test('of a plant that has no such size is that of any size, from a third of the least bound to thrice the most', () => {
    // Usual range 50 / 3 to 450, its middle the square root of 7500, 90 % of it between: the height of that curve at 30.
    const spread = Math.hypot(Math.log(27) / 2 / 1.6448536269514722, 0.15);
    const z = Math.log(30 / Math.sqrt(7500)) / spread;
    expect(absent).toBeCloseTo(Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / spread, 12);
    expect(slipped[3]).toBe(absent);
  });

  test('of a plant not in the key is half the one and half the other', () => {
    expect(outside).toBeCloseTo((unknown + absent) / 2, 12);
  });

  test('misread is spread around the plant, and over all sizes a little', () => {
    expect(slipped[0]).toBeLessThan(a);
    expect(slipped[0]).toBeGreaterThan(slipped[1] as number);
    expect(slipped[1]).toBeGreaterThan(1000 * b);
  });
});
