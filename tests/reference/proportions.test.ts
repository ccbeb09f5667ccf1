// Intervals of proportions, and forecasts held against what came, by published values and by other programs.
import { describe, expect, test } from 'vitest';
import { addForecast, groupsOf, noForecasts } from '../../src/engine/trial/forecasts.ts';
import { calibrationOf, type ForecastGroup, wilson } from '../../src/engine/trial/stats.ts';
import { golden } from './table.ts';

interface Values {
  wilson: { x: number; n: number; level: number; wilson: [number, number] }[];
  brier: {
    name: string;
    forecast: number[];
    outcome: number[];
    brier_yes_no: number;
    brier_1950_both_classes: number;
    reliability: number;
    resolution: number;
    uncertainty: number;
  }[];
  calibration: {
    forecast: number[];
    outcome: number[];
    results: { bins: number; rows: Row[]; expected_calibration_error: number }[];
  };
}
interface Row {
  bin: number;
  n: number;
  mean_confidence: number;
  share_right: number;
}
const values = golden<Values>('stats.json');

// Standard normal quantiles of 95 %, 97.5 % and 99.5 %: the first and last by normal.json, the middle one from memory.
const Z = new Map([
  [0.9, 1.6448536269514722],
  [0.95, 1.959963984540054],
  [0.99, 2.5758293035489004],
]);

describe("Wilson's interval", () => {
  // Wilson, E. B. (1927), J. Am. Stat. Assoc. 22: 209-212. 6 of 32: read on an R page (rstudio-pubs 1367507).
  test('of 6 in 32 is 0.08889545 to 0.35309155', () => {
    const [low, high] = wilson(6, 32);
    expect(low).toBeCloseTo(0.08889545, 8);
    expect(high).toBeCloseTo(0.35309155, 8);
  });

  // Newcombe, R. G. (1998), Stat. Med. 17: 857-872, its four examples by the score method, four decimals; from memory.
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('of %d in %d is %d to %d', (count, n, low, high) => {
    expect(wilson(count, n).map((x) => Number(x.toFixed(4)))).toEqual([low, high]);
  });

  // stats.json: scipy 1.10.1, and agreeing with the two above.
  test.each(values.wilson)('of $x in $n at $level is what scipy has', ({ x, n, level, wilson: [low, high] }) => {
    const found = wilson(x, n, Z.get(level));
    expect(found[0]).toBeCloseTo(low, 12);
    expect(found[1]).toBeCloseTo(high, 12);
  });
});

/** Forecasts of the same number are one group, by which nothing is lost. */
function grouped(forecast: readonly number[], outcome: readonly number[]): ForecastGroup[] {
  return [...new Set(forecast)].map((p) => {
    const n = forecast.filter((one) => one === p).length;
    const hits = forecast.filter((one, i) => one === p && outcome[i] === 1).length;
    return { n, sum: n * p, squares: n * p * p, hits, sumOfHits: hits * p };
  });
}

describe("Brier's score", () => {
  // Brier, G. W. (1950), Mon. Weather Rev. 78: 1-3: ten occasions, 0.19 with both classes added; from memory.
  test('of his ten occasions is 0.19 in his form', () => {
    const ten = values.brier[0];
    expect(2 * (calibrationOf(grouped(ten?.forecast ?? [], ten?.outcome ?? []))?.brier ?? 0)).toBeCloseTo(0.19, 12);
  });

  // Single forecasts, read (en-academic.com, "Brier score").
  test.each([
    [0.7, 1, 0.09],
    [0.3, 1, 0.49],
    [0.5, 1, 0.25],
    [0.5, 0, 0.25],
    [1, 0, 1],
  ])('of a forecast of %d and outcome %d is %d', (p, outcome, score) => {
    expect(calibrationOf(grouped([p], [outcome]))?.brier).toBeCloseTo(score, 12);
  });

  // Parts: Murphy, A. H. (1973), J. Appl. Meteorol. 12: 595-600, from memory; values: stats.json (numpy).
  test.each(values.brier)('has the parts that Murphy gives it: $name', (one) => {
    const found = calibrationOf(grouped(one.forecast, one.outcome));
    expect(found?.brier).toBeCloseTo(one.brier_yes_no, 12);
    expect(found?.reliability).toBeCloseTo(one.reliability, 12);
    expect(found?.resolution).toBeCloseTo(one.resolution, 12);
    expect(found?.uncertainty).toBeCloseTo(one.uncertainty, 12);
    expect(found?.within).toBeCloseTo(0, 12);
  });
});

describe('two hundred forecasts in ten bins', () => {
  const { forecast, outcome, results } = values.calibration;
  const kept = noForecasts();
  forecast.forEach((p, i) => {
    addForecast(kept, p, outcome[i] === 1);
  });
  const groups = groupsOf(kept);
  const wanted = results.find(({ bins }) => bins === 10);

  // stats.json: by numpy; bins hold (i/10, (i+1)/10], 0 goes into the first.
  test.each(wanted?.rows ?? [])('bin $bin holds $n', ({ bin, n, mean_confidence, share_right }) => {
    const group = groups[bin] as ForecastGroup;
    expect(group.n).toBe(n);
    expect(group.sum / n).toBeCloseTo(mean_confidence, 8);
    expect(group.hits / n).toBeCloseTo(share_right, 10);
  });

  test('the expected calibration error is that of numpy', () => {
    expect(calibrationOf(groups)?.error).toBeCloseTo(wanted?.expected_calibration_error ?? Number.NaN, 8);
  });

  test('what the bins hide makes up the difference to the score', () => {
    const found = calibrationOf(groups);
    const score = forecast.reduce((sum, p, i) => sum + (p - (outcome[i] as number)) ** 2, 0) / forecast.length;
    expect(found?.brier).toBeCloseTo(score, 8);
    // Kept to 2^-30, so that sums come out the same in any order: nine digits are left.
    const { reliability, resolution, uncertainty, within } = found as NonNullable<typeof found>;
    expect(reliability - resolution + uncertainty + within).toBeCloseTo(score, 8);
    expect(within).not.toBe(0);
  });
});

test('nothing forecast has no calibration', () => {
  expect(calibrationOf(groupsOf(noForecasts()))).toBeUndefined();
});
