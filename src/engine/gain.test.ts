import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, say, yesNo } from '../../tests/support/build.ts';
import { answered } from '../../tests/support/matrices.ts';
import { applyingShare, GainTable, nearestTimes, propose } from './gain.ts';
import { likelihoodAt } from './likelihood.ts';
import { compileMatrix } from './matrix.ts';
import { type CharacterSpec, USUAL_RATES } from './spec.ts';
import { posterior } from './standing.ts';

const entropy = (p: Float64Array) => p.reduce((sum, x) => (x > 0 ? sum - x * Math.log2(x) : sum), 0);

describe('what a question is expected to tell', () => {
  test('is how far the entropy falls on average over its answers', () => {
    fc.assert(
      fc.property(answered(['choice', 'scale']), ({ spec: { kin: _, ...spec }, answers }) => {
        // One rate and no kin, for which the table's reckoning is exact; the answers then asked one after the other.
        const matrix = compileMatrix({ ...spec, rates: [{ times: 1, prior: 1 }] });
        const open = spec.characters.findIndex((__, c) => answers.every((one) => one.character !== c));
        fc.pre(open >= 0);
        const { p } = posterior(matrix, answers);
        let left = 0;
        let all = 0;
        spec.characters[open]?.states.forEach((__, s) => {
          const after = posterior(matrix, [...answers, say(open, s)]);
          const e = after.evidence[after.evidence.length - 1] as (typeof after.evidence)[number];
          const rate = Math.min(matrix.cap[open] as number, spec.characters[open]?.misread as number);
          const likelihood = likelihoodAt(e, rate);
          const chance = p.reduce((sum, w, h) => sum + w * likelihood(h), 0);
          all += chance;
          left += chance * entropy(after.p);
        });
        expect(all).toBeCloseTo(1, 9);
        expect(new GainTable(matrix).bits(open, p, 1)).toBeCloseTo(entropy(p) - left, 9);
      }),
    );
  });

  test('is never below nothing, and never more than is unknown or than its states can say', () => {
    fc.assert(
      fc.property(answered(), fc.constantFrom(0.25, 1, 3, 9), ({ spec, answers, observer }, times) => {
        const matrix = compileMatrix(spec);
        const { p } = posterior(matrix, answers, observer);
        const gains = new GainTable(matrix);
        spec.characters.forEach((one, c) => {
          const bits = gains.bits(c, p, times);
          expect(bits).toBeGreaterThanOrEqual(0);
          expect(bits).toBeLessThanOrEqual(Math.min(entropy(p), Math.log2(one.states.length)) + 1e-9);
        });
      }),
    );
  });

  test('is nothing where nothing is known, where all plants are alike, and where a reading is blind guessing', () => {
    const taxa = [native('a'), native('b'), invader('c')];
    const matrix = matrixOf(taxa, [
      character('unknown', [undefined, undefined, undefined]),
      yesNo('alike', [1, 1, 1]),
      yesNo('blind', [0, 1, 1], { misread: 0.5 }),
      yesNo('telling', [0, 1, 1]),
    ]);
    const { p } = posterior(matrix, []);
    const gains = new GainTable(matrix);
    expect([0, 1, 2].map((c) => gains.bits(c, p, 1))).toEqual([0, 0, 0].map((x) => expect.closeTo(x, 12)));
    expect(gains.bits(3, p, 1)).toBeGreaterThan(0.3);
  });

  test('falls as slips grow more likely', () => {
    const matrix = matrixOf([native('a'), native('b')], [yesNo('leaf', [0, 1])]);
    const { p } = posterior(matrix, []);
    const gains = new GainTable(matrix);
    const bits = [0.5, 1, 2, 3].map((times) => gains.bits(0, p, times));
    expect(bits).toEqual([...bits].sort((a, b) => b - a));
    expect(new Set(bits).size).toBe(4);
    // One yes/no reading of two even chances through a channel that errs with e tells 1 - H(e): Shannon 1948, from memory.
    expect(bits[1]).toBeCloseTo(1 + 0.1 * Math.log2(0.1) + 0.9 * Math.log2(0.9), 12);
  });
});

describe('what is proposed', () => {
  const taxa = [native('a'), native('b'), native('c'), invader('d')];
  const ask = (characters: readonly CharacterSpec[], month = 6, passed: readonly number[] = [], weights?: number[]) => {
    const matrix = matrixOf(taxa, characters);
    const p = weights ? Float64Array.from(weights) : posterior(matrix, []).p;
    return propose(new GainTable(matrix), matrix, p, 1, month, new Set(passed)).map(
      (one) => characters[one.character]?.id,
    );
  };
  const halves = yesNo('halves', [0, 0, 1, 1]);
  const single = yesNo('single', [0, 0, 0, 1]);

  test('comes with the most bits for each glance first', () => {
    expect(ask([single, halves])).toEqual(['halves', 'single']);
    expect(ask([{ ...halves, cost: 3 }, single])).toEqual(['single', 'halves']);
  });

  test('comes in the order of the key where two are worth the same', () => {
    expect(
      ask([
        { ...halves, id: 'first' },
        { ...halves, id: 'second' },
      ]),
    ).toEqual(['first', 'second']);
  });

  test('has bits, and bits for each glance', () => {
    const matrix = matrixOf(taxa, [{ ...halves, cost: 4 }]);
    const [only] = propose(new GainTable(matrix), matrix, posterior(matrix, []).p, 1, 6, new Set());
    expect(only?.worth).toBeCloseTo((only?.bits as number) / 4, 12);
  });

  test('is never what is unsafe to look at or only looked up', () => {
    expect(ask([{ ...halves, proposed: false }, single])).toEqual(['single']);
  });

  test('is never what cannot be seen this month', () => {
    const flower = { ...halves, months: [4, 5] };
    expect(ask([flower, single], 6)).toEqual(['single']);
    expect(ask([flower, single], 5)).toEqual(['halves', 'single']);
  });

  test('is never what was answered or skipped', () => {
    expect(ask([halves, single], 6, [0])).toEqual(['single']);
    expect(ask([halves, single], 6, [0, 1])).toEqual([]);
  });

  test('is never what means nothing for most of the weight', () => {
    const ligule = character('ligule', [[1, 0], [0, 1], 'absent', 'absent']);
    expect(ask([ligule, single])).toContain('ligule');
    expect(ask([ligule, single], 6, [], [0.2, 0.2, 0.3, 0.3, 0])).not.toContain('ligule');
    expect(ask([ligule, single], 6, [], [0.3, 0.3, 0.2, 0.2, 0])).toContain('ligule');
  });
});

describe('how much of the weight a character applies to', () => {
  const matrix = matrixOf(
    [native('a'), native('b'), native('c')],
    [character('ligule', [[1, 0], 'absent', undefined])],
    { outsidePrior: 0.1 },
  );

  test('counts unknown as applying, and leaves out what lies outside the key', () => {
    expect(applyingShare(matrix, Float64Array.from([0.1, 0.3, 0.2, 0.4]), 0)).toBeCloseTo(0.5, 12);
  });

  test('is all of it when nothing is left inside', () => {
    expect(applyingShare(matrix, Float64Array.from([0, 0, 0, 1]), 0)).toBe(1);
  });
});

describe('the nearest rate', () => {
  const matrix = matrixOf([native('a')], [], { rates: USUAL_RATES });
  test.each([
    [1, 1.35, 1],
    [1, 1.45, 2],
    [1, 0.6, 0.5],
    [1, 99, 3],
    [0.5, 0.55, 0.5],
    [0.5, 1.4, 1.5],
  ])('of an observer with %d times the slips, judged at %d, is %d', (observer, mean, nearest) => {
    expect(nearestTimes(matrix, observer, mean)).toBe(nearest);
  });
});
