import { expect, test } from 'vitest';
import { coverAgreement } from './observers.ts';

test('two who always say the same differ by nothing', () => {
  const { difference, classes } = coverAgreement([
    [1, 1],
    [3, 3],
    [6, 6],
  ]);
  expect(difference).toEqual({ n: 3, mean: 0, low: 0, high: 0 });
  expect(classes).toMatchObject({ n: 3, observed: 1, kappa: 1 });
});

// By hand, with the middles of Daubenmire's table (see src/elements/report/cover.test.ts): 37.5 - 15, 62.5 - 37.5,
// 15 - 15 are 22.5, 25 and 0; their mean is 95 / 6, their standard deviation the root of 4550 / 24.
test('one who sees more is told by how many percent of the ground, and within what limits', () => {
  const { difference } = coverAgreement([
    [3, 2],
    [4, 3],
    [2, 2],
  ]);
  const spread = 1.959963984540054 * Math.sqrt(4550 / 24);
  expect(difference?.mean).toBeCloseTo(95 / 6, 12);
  expect(difference?.low).toBeCloseTo(95 / 6 - spread, 12);
  expect(difference?.high).toBeCloseTo(95 / 6 + spread, 12);
});

// By hand, squares of steps: the table has one step once, so 1/4 is apart; by chance rows 2,1,1 and columns 1,2,1 of
// classes 1, 2 and 6 leave (2(2·1 + 1·25) + 1·(1 + 16) + (25 + 2·16)) / 16 = 128 / 16 = 8. Kappa is 1 - 1 / 32.
test('a class one step off weighs little beside what chance would bring', () => {
  const { classes } = coverAgreement([
    [1, 1],
    [1, 2],
    [2, 2],
    [6, 6],
  ]);
  expect(classes?.observed).toBe(0.75);
  expect(classes?.kappa).toBeCloseTo(31 / 32, 12);
});

test('one plot has no limits, and none has nothing', () => {
  expect(coverAgreement([[2, 3]]).difference).toBeUndefined();
  expect(coverAgreement([])).toEqual({ difference: undefined, classes: undefined });
});
