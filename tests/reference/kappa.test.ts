// Agreement of two raters, by published tables and by other programs: stats.json, whose file says where each was read.
import { describe, expect, test } from 'vitest';
import {
  agreementOf,
  differenceOf,
  kappaError,
  kappaInterval,
  linear,
  quadratic,
} from '../../src/engine/agreement/index.ts';
import { golden } from './table.ts';

interface Row {
  name: string;
  table: number[][];
  observed_agreement: string;
  chance_agreement: string;
  kappa: string | null;
  linear_weights?: number;
  quadratic_weights?: number;
  se_fleiss_cohen_everitt_1969?: number;
  weights_0_1_3_6?: { disagreement_weights: number[][]; decimal: number };
}
const { kappa: rows } = golden<{ kappa: Row[] }>('stats.json');
const fraction = (text: string) => {
  const [over = 0, under = 1] = text.split('/').map(Number);
  return over / under;
};

describe.each(rows)('$name', (row) => {
  const found = agreementOf(row.table);

  test('has the agreement, and that of chance', () => {
    expect(found?.observed).toBeCloseTo(fraction(row.observed_agreement), 12);
    expect(found?.chance).toBeCloseTo(fraction(row.chance_agreement), 12);
  });

  test('has kappa, or none where there is none', () => {
    if (row.kappa === null) expect(found?.kappa).toBeUndefined();
    else expect(found?.kappa).toBeCloseTo(fraction(row.kappa), 12);
  });
});

test.each(rows.filter((row) => row.linear_weights !== undefined))(
  '$name: kappa weighted by steps and by their squares, and its standard error',
  (row) => {
    expect(agreementOf(row.table, linear)?.kappa).toBeCloseTo(row.linear_weights ?? Number.NaN, 12);
    expect(agreementOf(row.table, quadratic)?.kappa).toBeCloseTo(row.quadratic_weights ?? Number.NaN, 12);
    expect(kappaError(row.table)).toBeCloseTo(row.se_fleiss_cohen_everitt_1969 ?? Number.NaN, 12);
  },
);

test.each(rows.filter((row) => row.weights_0_1_3_6))('$name: kappa by weights of its own', (row) => {
  const { disagreement_weights: weights = [], decimal = 0 } = row.weights_0_1_3_6 ?? {};
  expect(agreementOf(row.table, (i, j) => weights[i]?.[j] ?? 0)?.kappa).toBeCloseTo(decimal, 12);
});

test('the interval lies about kappa and within its bounds', () => {
  for (const { table, kappa } of rows.filter((row) => row.kappa !== null)) {
    const [low = 2, high = -2] = kappaInterval(table) ?? [];
    expect(low).toBeGreaterThanOrEqual(-1);
    expect(high).toBeLessThanOrEqual(1);
    expect(fraction(kappa ?? '')).toBeGreaterThanOrEqual(low - 1e-12);
    expect(fraction(kappa ?? '')).toBeLessThanOrEqual(high + 1e-12);
  }
});

test('a table that counts nothing agrees in nothing', () => {
  expect(
    agreementOf([
      [0, 0],
      [0, 0],
    ]),
  ).toBeUndefined();
});

// Reckoned by hand: differences 1, 2, 3 have mean 2 and standard deviation 1.
test('limits of agreement are the mean and 1.96 standard deviations', () => {
  const found = differenceOf([
    [2, 1],
    [4, 2],
    [6, 3],
  ]);
  expect(found).toMatchObject({ n: 3, mean: 2 });
  expect(found?.low).toBeCloseTo(2 - 1.959963984540054, 12);
  expect(found?.high).toBeCloseTo(2 + 1.959963984540054, 12);
  expect(differenceOf([[1, 2]])).toBeUndefined();
});
