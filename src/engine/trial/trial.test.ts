import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, native, specOf } from '../../../tests/support/build.ts';
import { matrix as anyMatrix } from '../../../tests/support/matrices.ts';
import { natureOf, person, RULES, setupOf } from '../../../tests/support/natures.ts';
import { GainTable } from '../gain.ts';
import { compileMatrix } from '../matrix.ts';
import { USUAL_RATES } from '../spec.ts';
import { posterior } from '../standing.ts';
import { verdictOf } from '../verdict.ts';
import { Book } from './book.ts';
import { figuresOf } from './figures.ts';
import { free } from './free.ts';
import { observersFor } from './observers.ts';
import { NOTHING } from './plants.ts';
import { isDone, LIMIT, runPlant } from './run.ts';
import { merge, noTally } from './tally.ts';
import { Trial } from './trial.ts';
import { candidates, outcomesOf, tryThresholds } from './tune.ts';
import { without } from './without.ts';

const everyone = observersFor(new Map([['novice', 1]]));
const trialOf = (spec: Parameters<typeof natureOf>[0], seed: number) => new Trial(setupOf(natureOf(spec), { seed }));
const runs = { numRuns: 30 };

describe('a trial', () => {
  test('comes out the same for the same seed, however it is shared out and added up', () => {
    fc.assert(
      fc.property(
        anyMatrix(),
        fc.nat(),
        fc.constantFrom(...everyone),
        fc.integer({ min: 1, max: 11 }),
        fc.boolean(),
        (spec, seed, observer, cut, turned) => {
          const whole = trialOf(spec, seed).play({ observer, from: 0, count: 12 });
          const parts = [
            trialOf(spec, seed).play({ observer, from: 0, count: cut }),
            trialOf(spec, seed).play({ observer, from: cut, count: 12 - cut }),
          ];
          if (turned) parts.reverse();
          const none = noTally(spec.taxa.length, spec.characters.length);
          expect(parts.reduce(merge, none)).toEqual(whole);
        },
      ),
      runs,
    );
  });

  test('of another seed comes out otherwise', () => {
    const spec = specOf(
      [native('a'), native('b')],
      [
        character(
          'leaf',
          [
            [1, 0],
            [0, 1],
          ],
          { misread: 0.3 },
        ),
      ],
    );
    const [one, other] = [1, 2].map((seed) => trialOf(spec, seed).play({ observer: person(), from: 0, count: 200 }));
    expect(one).not.toEqual(other);
  });

  test('counts every plant once: its verdicts, its forecasts and its questions', () => {
    fc.assert(
      fc.property(anyMatrix(), fc.nat(), fc.constantFrom(...everyone), (spec, seed, observer) => {
        const tally = trialOf(spec, seed).play({ observer, from: 0, count: 12 });
        const { counts } = tally;
        const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
        expect(counts.plants).toBe(12);
        expect(counts.settled + counts.leaning + counts.open + counts.outside).toBe(12);
        expect([sum(tally.asked), sum(tally.answered), sum(tally.plantsOf)]).toEqual([12, 12, 12]);
        expect(sum(tally.askedToSettled)).toBe(counts.settled);
        expect(counts.topOne + sum(tally.takenFor)).toBe(12);
        expect(counts.settledRight + sum(tally.settledAs)).toBe(counts.settled);
        expect(counts.topOne).toBeLessThanOrEqual(counts.topTwo);
        expect(counts.nativesSettled).toBeLessThanOrEqual(counts.natives);
        const { atTheEnd } = figuresOf(tally);
        expect(sum(atTheEnd.bins.map(({ n }) => n))).toBe(12);
        if (observer.leftOut) expect([counts.topOne, counts.settledRight, counts.leaningRight]).toEqual([0, 0, 0]);
      }),
      runs,
    );
  });

  test('every figure lies in its interval', () => {
    fc.assert(
      fc.property(anyMatrix(), fc.nat(), (spec, seed) => {
        const figures = figuresOf(trialOf(spec, seed).play({ observer: person(), from: 0, count: 12 }));
        for (const one of Object.values(figures)) {
          if (typeof one !== 'object' || !('low' in one) || one.share === undefined) continue;
          expect(one.low).toBeLessThanOrEqual(one.share);
          expect(one.high).toBeGreaterThanOrEqual(one.share);
        }
      }),
      runs,
    );
  });

  test('without slips, and with plants that all look like their kind, no other plant beats the right one', () => {
    const plain = fc
      .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: 8 }), fc.integer({ min: 2, max: 4 }))
      .chain(([taxa, characters, states]) =>
        fc
          .array(fc.array(fc.nat({ max: states - 1 }), { minLength: taxa, maxLength: taxa }), {
            minLength: characters,
            maxLength: characters,
          })
          .map((shown) =>
            specOf(
              Array.from({ length: taxa }, (_, t) => native(`t${t}`)),
              shown.map((row, c) =>
                character(
                  `c${c}`,
                  row.map((one) => Array.from({ length: states }, (_, s) => (s === one ? 1 : 0))),
                ),
              ),
              { rates: USUAL_RATES, outsidePrior: 0.05 },
            ),
          ),
      );
    fc.assert(
      fc.property(plain, fc.nat(), (spec, seed) => {
        const { counts } = trialOf(spec, seed).play({ observer: person({ times: 0 }), from: 0, count: 20 });
        expect(counts.notBeaten).toBe(20);
        expect(counts.settledRight).toBe(counts.settled);
      }),
      runs,
    );
  });
});

describe('a run', () => {
  test('comes to what all its answers at once come to, and asks no more than people bear', () => {
    fc.assert(
      fc.property(anyMatrix(), fc.nat(), fc.constantFrom(...everyone), (spec, seed, observer) => {
        const { plant, readings, book } = trialOf(spec, seed).draw(observer, 0);
        const { asked, from, verdict } = runPlant(book, free, plant.month, readings.said);
        const answers = asked
          .filter((c) => readings.said[c] !== NOTHING)
          .map((c) => ({ character: c, states: [readings.said[c] as number], sureness: 'sure' as const }));
        const afresh = posterior(book.matrix, answers, observer.told);
        expect(from.p).toEqual(afresh.p);
        expect(verdict).toEqual(verdictOf(afresh, RULES));
        expect(new Set(asked).size).toBe(asked.length);
        expect(asked.length).toBeLessThanOrEqual(LIMIT);
        if (asked.length > 1) {
          const before = posterior(
            book.matrix,
            answers.filter(({ character: c }) => c !== asked.at(-1)),
            observer.told,
          );
          expect(isDone(verdictOf(before, RULES))).toBe(false);
        }
      }),
      runs,
    );
  });

  test('takes an answer about a character answered before in the place of the first', () => {
    const matrix = compileMatrix(
      specOf(
        [native('a'), native('b')],
        [
          character('leaf', [
            [1, 0, 0],
            [0, 1, 0],
          ]),
        ],
      ),
    );
    const book = new Book(matrix, new GainTable(matrix), RULES, 1);
    const leads = [[0, 1], [0]];
    let step = 0;
    const way = {
      id: 'twice',
      begin: () => ({
        next: () => (step < leads.length ? 0 : undefined),
        heard: () => ({ character: 0, states: leads[step++] as number[], sureness: 'sure' as const }),
      }),
    };
    const { from, asked } = runPlant(book, way, 6, [0], () => false);
    expect(asked).toEqual([0, 0]);
    expect(from.p).toEqual(posterior(matrix, [{ character: 0, states: [0], sureness: 'sure' }]).p);
  });
});

test('a key without a plant is the key of the others', () => {
  fc.assert(
    fc.property(anyMatrix(), fc.nat(), (spec, at) => {
      fc.pre(spec.taxa.length > 2);
      const left = at % spec.taxa.length;
      const less = without(compileMatrix(spec), left);
      const kept = spec.taxa.map((_, t) => t).filter((t) => t !== left);
      expect(less.spec.taxa.map(({ id }) => id)).toEqual(kept.map((t) => spec.taxa[t]?.id));
      less.spec.characters.forEach(({ traits }, c) => {
        expect(traits).toEqual(kept.map((t) => spec.characters[c]?.traits[t]));
      });
      expect(less.spec.pairs.map(({ a, b }) => [kept[a], kept[b]])).toEqual(
        spec.pairs.filter(({ a, b }) => a !== left && b !== left).map(({ a, b }) => [a, b]),
      );
    }),
    runs,
  );
});

test("thresholds tried beside the key's own come to the trial itself where they are the key's own", () => {
  fc.assert(
    fc.property(anyMatrix(), fc.nat(), fc.constantFrom(...everyone.slice(0, -1)), (spec, seed, observer) => {
      const setup = setupOf(natureOf(spec), { seed });
      const stretch = { observer, from: 0, count: 12 };
      const { counts, asked } = new Trial(setup).play(stretch);
      const all = outcomesOf(RULES, new Map([['x', tryThresholds(setup, stretch)]]));
      const own = all[candidates(RULES).findIndex((one) => JSON.stringify(one) === JSON.stringify(RULES))]?.by.get('x');
      expect(own?.settled).toBeCloseTo(counts.settled / 12, 12);
      if (counts.settled > 0) expect(own?.settledRight).toBeCloseTo(counts.settledRight / counts.settled, 12);
      expect(own?.questions).toBeCloseTo(asked.reduce((sum, n, k) => sum + n * k, 0) / 12, 12);
    }),
    runs,
  );
});
