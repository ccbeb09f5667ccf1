// What kappa.test.ts and proportions.test.ts leave of stats.json: forecasts over several classes, five bins, and shares
// with what is known of them. Values by numpy 1.24.2 and scipy 1.10.1, made up for the check where nothing else is said.
import { describe, expect, test } from 'vitest';
import { brierOf, type ClassForecast, logLossOf } from '../../src/engine/agreement/index.ts';
import { addForecast, groupsOf, noForecasts, together } from '../../src/engine/trial/forecasts.ts';
import { calibrationOf, type ForecastGroup } from '../../src/engine/trial/stats.ts';
import { rateOf } from '../../src/practice/index.ts';
import { golden } from './table.ts';

interface Bins {
  bins: number;
  rows: { bin: number; n: number; mean_confidence: number; share_right: number }[];
  expected_calibration_error: number;
  largest_calibration_error: number;
}
interface Values {
  beta: {
    prior: [number, number];
    right: number;
    wrong: number;
    mean: number;
    central_95: [number, number];
  }[];
  brier: { name: string; forecast: number[]; outcome: number[]; brier_1950_both_classes: number }[];
  brier_several_classes: {
    forecast: number[][];
    true_class: number[];
    brier_1950_sum_over_classes: number;
    mean_log_loss_nats: number;
  };
  calibration: { forecast: number[]; outcome: number[]; results: Bins[] };
}
const { beta, brier, brier_several_classes: several, calibration } = golden<Values>('stats.json');

describe('forecasts over several classes', () => {
  const forecasts = several.forecast.map(
    (chances, i): ClassForecast => ({ chances, truth: several.true_class[i] ?? -1 }),
  );

  test('score what numpy has, in the form of 1950 and by the logarithm', () => {
    expect(brierOf(forecasts)).toBeCloseTo(several.brier_1950_sum_over_classes, 12);
    expect(logLossOf(forecasts)).toBeCloseTo(several.mean_log_loss_nats, 12);
  });

  // "ten occasions" is Brier's own example, 0.19: from memory. The other rows are made up.
  test.each(brier)('are yes and no where there are two: $name', ({ forecast, outcome, brier_1950_both_classes }) => {
    const two = forecast.map((p, i): ClassForecast => ({ chances: [1 - p, p], truth: outcome[i] ?? 0 }));
    expect(brierOf(two)).toBeCloseTo(brier_1950_both_classes, 12);
  });

  // By hand: an even chance of k classes scores (1 - 1/k)^2 + (k - 1)/k^2 = 1 - 1/k, and ln k.
  test.each([2, 3, 7])('an even chance of %i classes scores 1 - 1/k and ln k', (k) => {
    const even = [{ chances: new Array<number>(k).fill(1 / k), truth: 0 }];
    expect(brierOf(even)).toBeCloseTo(1 - 1 / k, 12);
    expect(logLossOf(even)).toBeCloseTo(Math.log(k), 12);
  });

  test('have no score where there are none, and an infinite loss where the truth had no chance', () => {
    expect(brierOf([])).toBeUndefined();
    expect(logLossOf([])).toBeUndefined();
    expect(logLossOf([{ chances: [1, 0], truth: 1 }])).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('two hundred forecasts in five bins, each two of the ten put together', () => {
  const kept = noForecasts();
  calibration.forecast.forEach((p, i) => {
    addForecast(kept, p, calibration.outcome[i] === 1);
  });
  const ten = groupsOf(kept);
  const even = ten.filter((_, i) => i % 2 === 0);
  const five = together(
    even,
    ten.filter((_, i) => i % 2 === 1),
  );
  const wanted = calibration.results.find(({ bins }) => bins === 5);

  test.each(wanted?.rows ?? [])('bin $bin holds $n', ({ bin, n, mean_confidence, share_right }) => {
    const group = five[bin] as ForecastGroup;
    expect(group.n).toBe(n);
    expect(group.sum / n).toBeCloseTo(mean_confidence, 8);
    expect(group.hits / n).toBeCloseTo(share_right, 10);
  });

  test('the error is that of numpy, in the mean and where it is largest', () => {
    expect(calibrationOf(five)?.error).toBeCloseTo(wanted?.expected_calibration_error ?? Number.NaN, 8);
    const apart = five.map(({ n, sum, hits }) => Math.abs(sum - hits) / n);
    expect(Math.max(...apart)).toBeCloseTo(wanted?.largest_calibration_error ?? Number.NaN, 8);
  });
});

// What a learner is shown as a share with its interval.
test.each(beta)('$right right and $wrong wrong after $prior: mean and interval are those of scipy', (row) => {
  const { mean, low, high, n, count } = rateOf(row.right, row.right + row.wrong, row.prior);
  expect([count, n]).toEqual([row.right, row.right + row.wrong]);
  expect(mean).toBeCloseTo(row.mean, 12);
  expect(low).toBeCloseTo(row.central_95[0], 9);
  expect(high).toBeCloseTo(row.central_95[1], 9);
});
