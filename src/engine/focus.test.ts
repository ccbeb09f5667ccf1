import { describe, expect, test } from 'vitest';
import { invader, matrixOf, native, rules, say, yesNo } from '../../tests/support/build.ts';
import { focusOf } from './focus.ts';
import { GainTable, propose } from './gain.ts';
import { posterior } from './standing.ts';
import { verdictOf } from './verdict.ts';

const taxa = [invader('invader'), native('look-alike'), native('other'), invader('second')];
const characters = [yesNo('leaf', [0, 1, 0, 0]), yesNo('stem', [0, 0, 1, 1]), yesNo('sap', [0, 0, 0, 1])];
const matrix = matrixOf(taxa, characters, { pairs: [{ a: 0, b: 1, needs: 1 }], outsidePrior: 0.01 });

/** Weights of the next question when the standing is `p`. */
const focus = (p: readonly number[], answers = [] as Parameters<typeof posterior>[1]) => {
  const from = { ...posterior(matrix, answers), p: Float64Array.from(p) };
  return Array.from(focusOf(from, verdictOf(from, rules)));
};

describe('what the next question is about', () => {
  test('is the standing itself until a plant leads', () => {
    const p = [0.4, 0.3, 0.1, 0.1, 0.1];
    expect(focus(p)).toEqual(p);
  });

  test('is the standing itself when the plant is probably not in the key', () => {
    const p = [0.2, 0.1, 0.05, 0.05, 0.6];
    expect(focus(p)).toEqual(p);
  });

  test.each([
    [[0.9, 0.001, 0.05, 0.04, 0.009]],
    [[0.6, 0.1, 0.1, 0.1, 0.1]],
    [[0.05, 0.9, 0.03, 0.01, 0.01]],
    [[1, 0, 0, 0, 0]],
  ])('sums to 1 with %j', (p) => {
    expect(focus(p).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  test('is above all the look-alike that was not yet put to the test, however little it holds', () => {
    const [lead, lookalike, , second] = focus([0.95, 0.0001, 0.001, 0.04, 0.0089]) as [number, number, number, number];
    expect(lookalike).toBeGreaterThan(0.1);
    expect(lookalike).toBeGreaterThan(second);
    expect(lead).toBeGreaterThan(lookalike);
  });

  test('is that look-alike no longer once it was', () => {
    const [, lookalike] = focus([0.95, 0.0001, 0.001, 0.04, 0.0089], [say(0, 0)]) as [number, number];
    expect(lookalike).toBeLessThan(0.001);
  });

  test('is natives rather than others while a plant of concern leads, but none more than the leading plant', () => {
    const [lead, , other, second] = focus([0.6, 0.001, 0.15, 0.15, 0.099], [say(0, 0)]) as [
      number,
      number,
      number,
      number,
    ];
    expect(other / second).toBeCloseTo(4, 9);
    expect(other).toBeLessThanOrEqual(lead + 1e-12);
    const [first, , most] = focus([0.6, 0.001, 0.25, 0.05, 0.099], [say(0, 0)]) as [number, number, number];
    expect(most).toBeCloseTo(first, 12);
  });

  test('is not bent towards natives while a native leads', () => {
    const [, lead, other, second] = focus([0.01, 0.8, 0.08, 0.08, 0.03], [say(0, 1)]) as [
      number,
      number,
      number,
      number,
    ];
    expect(other).toBeCloseTo(second, 12);
    expect(lead).toBeCloseTo(0.8, 12);
  });

  test('makes the telling character come first, although another would tell more of what is left', () => {
    const from = { ...posterior(matrix, []), p: Float64Array.from([0.9, 0.001, 0.001, 0.097, 0.001]) };
    const gains = new GainTable(matrix);
    const first = (weights: Float64Array) => propose(gains, matrix, weights, 1, 6, new Set())[0]?.character;
    expect(first(from.p)).not.toBe(0);
    expect(first(focusOf(from, verdictOf(from, rules)))).toBe(0);
  });
});
