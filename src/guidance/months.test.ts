import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Month } from '../key/index.ts';
import { en } from '../words/index.ts';
import { monthsInWords, spans } from './months.ts';

const months = fc.uniqueArray(fc.integer({ min: 1, max: 12 }) as fc.Arbitrary<Month>);

describe('months as runs', () => {
  test.each<[readonly Month[], string]>([
    [[], ''],
    [[5], 'May'],
    [[3, 4, 5, 6, 7, 8], 'March to August'],
    [[1, 2, 11, 12], 'November to February'],
    [[1, 3, 4, 5], 'January and March to May'],
    [[12, 1], 'December to January'],
    [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 'all year'],
  ])('%j reads "%s"', (given, words) => {
    expect(monthsInWords(given, en)).toBe(words);
  });

  test('together the runs hold exactly the months given, whatever their order', () => {
    fc.assert(
      fc.property(months, (given) => {
        const held = spans(given).flatMap(({ from, to }) => {
          const length = ((to - from + 12) % 12) + 1;
          return Array.from({ length }, (_, i) => ((from - 1 + i) % 12) + 1);
        });
        expect(held.toSorted((a, b) => a - b)).toEqual(given.toSorted((a, b) => a - b));
      }),
    );
  });

  test('two runs never touch', () => {
    fc.assert(
      fc.property(months, (given) => {
        const runs = spans(given);
        if (runs.length < 2) return;
        for (const { to } of runs) expect(runs.map(({ from }) => from)).not.toContain((to % 12) + 1);
      }),
    );
  });
});
