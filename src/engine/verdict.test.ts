import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { invader, matrixOf, native, rules, say, yesNo } from '../../tests/support/build.ts';
import { answered } from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import type { Answer, TaxonSpec } from './spec.ts';
import { posterior } from './standing.ts';
import { type Doubt, rank, type VerdictKind, verdictOf } from './verdict.ts';

const introduced: TaxonSpec = { id: 'introduced', weight: 1, native: false, concern: false };
const [INVADER, NATIVE, WEED, INTRODUCED, SECOND] = [0, 1, 2, 3, 4] as const;
const taxa = [invader('invader'), native('native'), native('weed'), introduced, invader('second')];
// Each named pair is told apart by `leaf` and `stem`; `sap` tells neither.
const matrix = matrixOf(
  taxa,
  [yesNo('leaf', [0, 1, 0, 1, 0]), yesNo('stem', [0, 1, 1, 0, 1]), yesNo('sap', [0, 0, 0, 0, 0])],
  {
    pairs: [
      { a: INVADER, b: NATIVE, needs: 2 },
      { a: WEED, b: INTRODUCED, needs: 1 },
    ],
    outsidePrior: 0.05,
  },
);
const both = [say(0, 0), say(1, 0)];
const asNative = [say(0, 1), say(1, 1)];

interface Row {
  readonly title: string;
  /** invader, native, weed, introduced, second, outside */
  readonly p: readonly [number, number, number, number, number, number];
  readonly answers: readonly Answer[];
  readonly kind: VerdictKind;
  readonly taxa: readonly number[];
  readonly doubts: readonly Doubt[];
}

const rows: Row[] = [
  {
    title: 'an invader with the weight, its look-alike tested, and hardly a native left is settled',
    p: [0.97, 0.004, 0.004, 0.011, 0.001, 0.01],
    answers: both,
    kind: 'settled',
    taxa: [INVADER],
    doubts: [],
  },
  {
    title: 'an invader with the weight but natives at 1 % together is only leaned to',
    p: [0.97, 0.006, 0.006, 0.008, 0, 0.01],
    answers: both,
    kind: 'leaning',
    taxa: [INVADER],
    doubts: ['natives'],
  },
  {
    title: 'an invader with the weight whose look-alike was put to one character of two is leaned to beside it',
    p: [0.97, 0.004, 0.004, 0.011, 0.001, 0.01],
    answers: [say(0, 0)],
    kind: 'leaning',
    taxa: [INVADER, NATIVE],
    doubts: ['look-alikes'],
  },
  {
    title: 'an answer that tells nothing of the two does not count as a test',
    p: [0.97, 0.004, 0.004, 0.011, 0.001, 0.01],
    answers: [say(0, 0), say(2, 0)],
    kind: 'leaning',
    taxa: [INVADER, NATIVE],
    doubts: ['look-alikes'],
  },
  {
    title: 'guesses do not count as a test',
    p: [0.97, 0.004, 0.004, 0.011, 0.001, 0.01],
    answers: [say(0, 0, 'guess'), say(1, 0, 'guess')],
    kind: 'leaning',
    taxa: [INVADER, NATIVE],
    doubts: ['look-alikes'],
  },
  {
    title: 'an invader short of the weight is leaned to while natives keep less than a fifth',
    p: [0.75, 0.1, 0.09, 0.05, 0, 0.01],
    answers: both,
    kind: 'leaning',
    taxa: [INVADER],
    doubts: ['weight', 'natives'],
  },
  {
    title: 'an invader that leads beside a fifth of natives is not even leaned to',
    p: [0.75, 0.12, 0.09, 0.03, 0, 0.01],
    answers: both,
    kind: 'open',
    taxa: [INVADER, NATIVE],
    doubts: ['weight', 'natives'],
  },
  {
    title: 'a native with the weight and its look-alike tested is settled, whatever natives keep',
    p: [0.01, 0.96, 0.02, 0.005, 0, 0.005],
    answers: asNative,
    kind: 'settled',
    taxa: [NATIVE],
    doubts: [],
  },
  {
    title: 'a native needs its look-alike tested no less',
    p: [0.01, 0.96, 0.02, 0.005, 0, 0.005],
    answers: [say(0, 1)],
    kind: 'leaning',
    taxa: [NATIVE, INVADER],
    doubts: ['look-alikes'],
  },
  {
    title: 'a plant without look-alikes is settled on weight alone',
    p: [0.005, 0.004, 0, 0.001, 0.98, 0.01],
    answers: [],
    kind: 'settled',
    taxa: [SECOND],
    doubts: [],
  },
  {
    title: 'an introduced plant that is no concern is not held to what natives keep',
    p: [0, 0.02, 0.01, 0.96, 0, 0.01],
    answers: [],
    kind: 'leaning',
    taxa: [INTRODUCED, WEED],
    doubts: ['look-alikes'],
  },
  {
    title: 'the same, once its look-alike is tested',
    p: [0, 0.02, 0.01, 0.96, 0, 0.01],
    answers: [say(0, 1), say(1, 0)],
    kind: 'settled',
    taxa: [INTRODUCED],
    doubts: [],
  },
  {
    title: 'when no plant leads, the likeliest that hold four fifths of what is in the key share the verdict',
    p: [0.3, 0.25, 0.2, 0.1, 0.05, 0.1],
    answers: [],
    kind: 'open',
    taxa: [INVADER, NATIVE, WEED],
    doubts: ['weight', 'look-alikes', 'natives'],
  },
  {
    title: 'a plant that is probably none of these is named as none',
    p: [0.4, 0.04, 0.03, 0.02, 0.01, 0.5],
    answers: both,
    kind: 'outside',
    taxa: [],
    doubts: ['weight', 'natives'],
  },
];

describe('a verdict', () => {
  test.each(rows)('$title', ({ p, answers, kind, taxa: named, doubts }) => {
    expect(p.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    const verdict = verdictOf({ ...posterior(matrix, answers), p: Float64Array.from(p) }, rules);
    expect(verdict).toMatchObject({ kind, taxa: named, doubts });
    expect(verdict.concern).toBeCloseTo(p[INVADER] + p[SECOND], 12);
    expect(verdict.natives).toBeCloseTo(p[NATIVE] + p[WEED], 12);
    expect(verdict.outside).toBe(p[5]);
  });

  test('that is open names no more than a handful', () => {
    const many = matrixOf(
      Array.from({ length: 12 }, (_, i) => native(`t${i}`)),
      [],
    );
    expect(verdictOf(posterior(many, []), rules)).toMatchObject({ kind: 'open', taxa: [0, 1, 2, 3, 4] });
  });

  test('puts likelier plants first, and those alike in the order of the key', () => {
    expect(rank(matrix, Float64Array.from([0.1, 0.3, 0.1, 0.4, 0.1, 0]))).toEqual([3, 1, 0, 2, 4]);
  });
});

test('no invader is ever settled that does not have the weight, the tests and the natives below the threshold', () => {
  fc.assert(
    fc.property(answered(), (given) => {
      const from = posterior(compileMatrix(given.spec), given.answers, given.observer);
      const verdict = verdictOf(from, { ...rules, settled: 0.6, leaning: 0.4, nativesSettled: 0.1 });
      const [lead] = verdict.taxa;
      if (verdict.kind !== 'settled' || lead === undefined) return;
      expect(verdict.taxa).toEqual([lead]);
      expect(from.p[lead]).toBeGreaterThanOrEqual(0.6);
      for (const rival of verdict.rivals) expect(rival.told.length).toBeGreaterThanOrEqual(rival.needs);
      if (given.spec.taxa[lead]?.concern) expect(verdict.natives).toBeLessThan(0.1);
    }),
    { numRuns: 500 },
  );
});
