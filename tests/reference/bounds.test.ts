// Bounds that no question can pass: Shannon, C.E. (1948), Bell System Tech. J. 27: 379-423, 623-656; Huffman, D.A. (1952),
// Proc. IRE 40: 1098-1101 (both from memory).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileMatrix, GainTable, posterior } from '../../src/engine/index.ts';
import { answered } from '../support/matrices.ts';
import { choice, exact, golden } from './table.ts';

const entropy = (p: Float64Array) => p.reduce((sum, x) => (x > 0 ? sum - x * Math.log2(x) : sum), 0);

test('no question is expected to tell more than is unknown, nor more than its number of states can say', () => {
  fc.assert(
    fc.property(answered(), ({ spec, answers, observer }) => {
      const matrix = compileMatrix(spec);
      const { p } = posterior(matrix, answers, observer);
      const gains = new GainTable(matrix);
      spec.characters.forEach((character, c) => {
        const bits = gains.bits(c, p, observer);
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(entropy(p) + 1e-9);
        expect(bits).toBeLessThanOrEqual(Math.log2(character.states.length) + 1e-9);
      });
    }),
  );
});

// Values: huffman.json; 3.42 for Huffman's own thirteen messages and 2.24 for six are also printed (from memory).
describe('a question that names every taxon tells all there is: the entropy of the prior', () => {
  const { cases } = golden<{
    cases: Record<string, { weights: number[]; mean_length: string; decimal: number; entropy_bits: number }>;
  }>('huffman.json');

  test.each(Object.entries(cases))('%s', (_, { weights, decimal, entropy_bits }) => {
    const names = weights.map((_, i) => `taxon ${i}`);
    const traits = names.map((_, t) => ({ kind: 'states' as const, p: names.map((_, s) => (s === t ? 1 : 0)) }));
    const matrix = compileMatrix(
      exact(
        weights.map((weight, i) => ({ id: `taxon ${i}`, weight })),
        [choice('which', names, traits)],
      ),
    );
    const bits = new GainTable(matrix).bits(0, posterior(matrix, []).p, 1);
    expect(Math.abs(bits - entropy_bits)).toBeLessThan(1e-12);
    expect(bits).toBeLessThanOrEqual(decimal + 1e-12);
    expect(decimal).toBeLessThan(bits + 1);
  });

  test('the thirteen messages take 3.42 questions on average, as printed', () => {
    expect(cases['Huffman 1952 (13 messages)']?.decimal).toBe(3.42);
  });
});
