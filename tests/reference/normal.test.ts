// The normal distribution at points that any table of it has.
import { describe, expect, test } from 'vitest';
import { cumulative, twoPiece, twoPieceBelow } from '../../src/engine/normal.ts';
import { golden } from './table.ts';

const { distribution, quantiles } = golden<{ distribution: [number, number][]; quantiles: [number, number][] }>(
  'normal.json',
);

// From memory: any table of the normal distribution, four decimals.
test.each([
  [0, 0.5],
  [0.5, 0.6915],
  [1, 0.8413],
  [1.28, 0.8997],
  [1.64, 0.9495],
  [1.65, 0.9505],
  [1.96, 0.975],
  [2.33, 0.9901],
  [2.58, 0.9951],
  [3, 0.9987],
])('below z = %d lie %d, by the printed tables', (z, p) => {
  expect(Math.abs(cumulative(z) - p)).toBeLessThanOrEqual(0.00005);
});

// Values: normal.json, mpmath 1.3.0 at 50 digits.
test.each(distribution)('below z = %d lie %d, by mpmath', (z, p) => {
  expect(Math.abs(cumulative(z) - p)).toBeLessThan(1e-15);
});

test.each(distribution.filter(([z]) => z < -3.6))('the tail below z = %d is right to twelve digits', (z, p) => {
  expect(Math.abs(cumulative(z) / p - 1)).toBeLessThan(1e-12);
});

describe('a range', () => {
  const [[, z95], , [, z995]] = quantiles as [[number, number], [number, number], [number, number]];

  // Ours: the usual range is read as the central 90 %, extremes as the central 99 %; the quantiles are normal.json's.
  test('leaves 5 % on either side of its usual part', () => {
    const d = twoPiece({ low: 20, high: 60 }, 0);
    expect(Math.log(60 / 20) / 2 / d.left).toBeCloseTo(z95, 12);
    expect(twoPieceBelow(d, 20)).toBeCloseTo(0.05, 12);
    expect(twoPieceBelow(d, 60)).toBeCloseTo(0.95, 12);
    expect(twoPieceBelow(d, Math.sqrt(20 * 60))).toBeCloseTo(0.5, 12);
  });

  test('leaves half a percent beyond either of its extremes, when both are as far off', () => {
    const d = twoPiece({ low: 20, high: 60, min: 5, max: 240 }, 0);
    expect(Math.log(240 / Math.sqrt(1200)) / d.right).toBeCloseTo(z995, 12);
    expect(twoPieceBelow(d, 5)).toBeCloseTo(0.005, 12);
    expect(twoPieceBelow(d, 240)).toBeCloseTo(0.995, 12);
  });
});
