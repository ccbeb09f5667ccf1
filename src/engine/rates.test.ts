// The observer's own rate of slips, inferred beside the taxon from how well the answers hang together.
import { describe, expect, test } from 'vitest';
import { matrixOf, native, rules, say, yesNo } from '../../tests/support/build.ts';
import { USUAL_RATES } from './spec.ts';
import { meanTimes, posterior } from './standing.ts';
import { verdictOf } from './verdict.ts';

/** Sixteen plants and fifteen characters in which any two plants differ in eight: the rows of a simplex code. */
const parity = (t: number, c: number): 0 | 1 => {
  let bits = t & (c + 1);
  let odd: 0 | 1 = 0;
  for (; bits > 0; bits &= bits - 1) odd = odd === 0 ? 1 : 0;
  return odd;
};
const taxa = Array.from({ length: 16 }, (_, t) => native(`t${t}`));
const characters = Array.from({ length: 15 }, (_, c) =>
  yesNo(
    `c${c}`,
    taxa.map((__, t) => parity(t, c)),
  ),
);
const inferring = matrixOf(taxa, characters, { rates: USUAL_RATES });
const assuming = matrixOf(taxa, characters);
/** What an observer says of plant 5, reading the characters in `wrong` wrong. */
const run = (wrong: readonly number[], length = 15) =>
  characters.slice(0, length).map((_, c) => say(c, wrong.includes(c) ? 1 - parity(5, c) : parity(5, c)));
const before = meanTimes(posterior(inferring, []));

describe('a run of answers that contradict one another', () => {
  const answers = run([1, 4, 7]);
  const careful = posterior(inferring, answers);

  test('raises the weight of the higher rates and lowers that of the lower ones', () => {
    expect(careful.rates[0]).toBeLessThan(0.2);
    expect(careful.rates[2]).toBeGreaterThan(0.25);
    expect(careful.rates[3]).toBeGreaterThan(0.1);
    expect(meanTimes(careful)).toBeGreaterThan(before);
  });

  test('leaves the verdict more careful than one assumed rate does', () => {
    const bold = posterior(assuming, answers);
    const likeliest = (p: Float64Array) => p.indexOf(Math.max(...p));
    expect(likeliest(careful.p)).toBe(5);
    expect(likeliest(bold.p)).toBe(5);
    expect(careful.p[5]).toBeLessThan(bold.p[5] as number);
    expect(verdictOf(bold, rules).kind).toBe('settled');
    expect(verdictOf(careful, rules).kind).not.toBe('settled');
  });

  test('says nothing about the observer where only one rate is possible', () => {
    expect(meanTimes(posterior(assuming, answers))).toBe(1);
  });
});

describe('a run of answers that bear one another out', () => {
  test('lowers the rate, the more the longer it is', () => {
    const after = [5, 10, 15].map((length) => meanTimes(posterior(inferring, run([], length))));
    expect(after[0]).toBeLessThan(before);
    expect(after[1]).toBeLessThan(after[0] as number);
    expect(after[2]).toBeLessThan(after[1] as number);
  });

  test('is settled at any rate', () => {
    expect(verdictOf(posterior(inferring, run([])), rules)).toMatchObject({ kind: 'settled', taxa: [5] });
  });
});

test('each further contradiction raises the rate again', () => {
  const after = [[], [1], [1, 4], [1, 4, 7]].map((wrong) => meanTimes(posterior(inferring, run(wrong))));
  for (let k = 1; k < after.length; k++) expect(after[k]).toBeGreaterThan(after[k - 1] as number);
});

test('the rate is told in multiples of a novice, whoever looks', () => {
  expect(meanTimes(posterior(inferring, [], 0.5))).toBeCloseTo(before / 2, 12);
  expect(before).toBeCloseTo(0.5 * 0.2 + 0.45 + 2 * 0.25 + 3 * 0.1, 12);
});
