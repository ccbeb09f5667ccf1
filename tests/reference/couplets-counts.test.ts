// How many keys there are, how long the shortest and the longest are, and the code lengths that no key can undercut.
import { describe, expect, test } from 'vitest';
import { buildKey, huffman, longestMean, possibleKeys, shortestMean } from '../../src/engine/couplets/index.ts';
import { character, problem } from './couplets-table.ts';
import { fraction, golden } from './table.ts';

const { table } = golden<{
  table: readonly { taxa: number; different_keys: number; shortest_mean: string; longest_mean: string }[];
}>('keys_counts.json');

// Felsenstein, J. (1978), Syst. Zool. 27: 27-33, is the usual source of the table (not opened); its values were read on a
// page of the University of Connecticut ("tree_number").
test.each([
  [3, 3n],
  [4, 15n],
  [5, 105n],
  [6, 945n],
  [7, 10395n],
  [8, 135135n],
  [9, 2027025n],
  [10, 34459425n],
])('%i taxa have %i different keys, as printed', (taxa, keys) => {
  expect(possibleKeys(taxa)).toBe(keys);
});

// keys_counts.json: closed forms, checked by listing every key up to eight taxa.
test.each(table.map((row) => [row.taxa, row] as const))('%i taxa: number, shortest and longest key', (taxa, row) => {
  expect(possibleKeys(taxa)).toBe(BigInt(row.different_keys));
  expect(shortestMean(taxa)).toBeCloseTo(fraction(row.shortest_mean), 12);
  expect(longestMean(taxa)).toBeCloseTo(fraction(row.longest_mean), 12);
});

test('the number of keys for a hundred taxa is counted exactly, and nonsense is refused', () => {
  const product = Array.from({ length: 98 }, (_, k) => BigInt(2 * k + 3)).reduce((a, b) => a * b, 1n);
  expect(possibleKeys(100)).toBe(product);
  expect(possibleKeys(1)).toBe(1n);
  expect(() => possibleKeys(2.5)).toThrow(RangeError);
});

// huffman.json: Huffman's construction in exact fractions.
describe('code lengths', () => {
  const { cases } = golden<{ cases: Record<string, { weights: number[]; mean_length: string; entropy_bits: number }> }>(
    'huffman.json',
  );

  test.each(Object.entries(cases))('%s', (_, { weights, mean_length, entropy_bits }) => {
    const total = weights.reduce((a, b) => a + b, 0);
    const mean = huffman(Float64Array.from(weights)) / total;
    expect(mean).toBeCloseTo(fraction(mean_length), 12);
    expect(mean).toBeGreaterThanOrEqual(entropy_bits - 1e-12);
    expect(mean).toBeLessThan(entropy_bits + 1);
  });

  test.each(Object.entries(cases).filter(([, { weights }]) => weights.length <= 6))(
    '%s: with every split on offer the best key is as short as the code',
    (_, { weights, mean_length }) => {
      const shares = weights.map((_, t) => weights.map((_, s) => (s === t ? 1 : 0)));
      const one = character(0, shares, weights.length, { leads: 'two' });
      const key = buildKey(
        problem(
          weights.map((weight) => ({ weight })),
          [one],
        ),
      );
      expect(key.exact).toBe(true);
      expect(key.effort).toBeCloseTo(fraction(mean_length), 12);
    },
  );

  test.each([5, 8, 12])('one character against each of %i taxa makes the longest key', (taxa) => {
    const characters = Array.from({ length: taxa }, (_, c) =>
      character(
        c,
        Array.from({ length: taxa }, (_, t) => (t === c ? [0, 1] : [1, 0])),
        2,
      ),
    );
    const key = buildKey(
      problem(
        Array.from({ length: taxa }, () => ({ weight: 1 })),
        characters,
      ),
      { exact: 10_000 },
    );
    expect(key.effort).toBeCloseTo(longestMean(taxa), 12);
  });
});
