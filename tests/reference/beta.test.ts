import { describe, expect, test } from 'vitest';
import { betaCdf, betaQuantile, logGamma } from '../../src/engine/learn/index.ts';
import { golden } from './table.ts';

interface BetaRow {
  readonly prior: readonly [number, number];
  readonly right: number;
  readonly wrong: number;
  readonly median: number;
  readonly central_95: readonly [number, number];
  readonly 'prob_above_0.5': number;
  readonly 'prob_above_0.8': number;
}
const { beta } = golden<{ readonly beta: readonly BetaRow[] }>('stats.json');

// stats.json: by scipy 1.10.1, printed to twelve places.
describe('a beta distribution is the one that scipy has', () => {
  test.each(beta)('from $prior with $right right and $wrong wrong', (row) => {
    const [a, b] = [row.prior[0] + row.right, row.prior[1] + row.wrong];
    expect(Math.abs(betaQuantile(0.5, a, b) - row.median)).toBeLessThan(1e-10);
    expect(Math.abs(betaQuantile(0.025, a, b) - row.central_95[0])).toBeLessThan(1e-10);
    expect(Math.abs(betaQuantile(0.975, a, b) - row.central_95[1])).toBeLessThan(1e-10);
    expect(Math.abs(1 - betaCdf(0.5, a, b) - row['prob_above_0.5'])).toBeLessThan(1e-10);
    expect(Math.abs(1 - betaCdf(0.8, a, b) - row['prob_above_0.8'])).toBeLessThan(1e-10);
  });
});

// By hand: Beta(1, 1) is even, Beta(n, 1) has x^n, Beta(2, 2) has 3 x^2 - 2 x^3; gamma(n) = (n - 1)!, gamma(1/2)^2 = pi.
test('the closed forms of small cases hold', () => {
  for (const x of [0, 0.01, 0.3, 0.5, 0.92, 1]) {
    expect(betaCdf(x, 1, 1)).toBeCloseTo(x, 13);
    expect(betaCdf(x, 7, 1)).toBeCloseTo(x ** 7, 13);
    expect(betaCdf(x, 2, 2)).toBeCloseTo(3 * x ** 2 - 2 * x ** 3, 13);
  }
  expect(Math.exp(logGamma(0.5)) ** 2).toBeCloseTo(Math.PI, 12);
  expect(logGamma(11)).toBeCloseTo(Math.log(3_628_800), 12);
});
