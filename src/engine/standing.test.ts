import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, say, specOf, type, yesNo } from '../../tests/support/build.ts';
import {
  type Answered,
  answer,
  answered,
  matrix as anyMatrix,
  observer,
  sureness,
} from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import { type Answer, EngineError, type MatrixSpec, USUAL_RATES } from './spec.ts';
import { extended, posterior, readyAnswer } from './standing.ts';

const standing = ({ spec, answers, observer }: Answered) => posterior(compileMatrix(spec), answers, observer);
const close = (values: ArrayLike<number>) => Array.from(values, (x) => expect.closeTo(x, 9));
const at = (values: ArrayLike<number>, i: number) => values[i] as number;

/** `order[new place] = old place`. */
const shuffled = (length: number) => {
  const all = Array.from({ length }, (_, i) => i);
  return fc.shuffledSubarray(all, { minLength: length, maxLength: length });
};

describe('the standing', () => {
  test('sums to 1 over all taxa and `not in this key`, and so do the rates of slips', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const { p, rates, matrix } = standing(given);
        expect(p).toHaveLength(given.spec.taxa.length + 1);
        expect(p.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        expect(rates.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        expect(Math.min(...p.slice(0, matrix.outside), ...rates)).toBeGreaterThan(0);
        if (given.spec.outsidePrior === 0) expect(p[matrix.outside]).toBe(0);
        else expect(p[matrix.outside]).toBeGreaterThan(0);
      }),
    );
  });

  test('is the prior before anything is said', () => {
    const { p, rates } = posterior(
      matrixOf([native('a', 3), invader('b', 1)], [yesNo('leaf', [0, 1])], { outsidePrior: 0.2, rates: USUAL_RATES }),
      [],
    );
    expect(Array.from(p)).toEqual(close([0.6, 0.2, 0.2]));
    expect(Array.from(rates)).toEqual(close(USUAL_RATES.map((rate) => rate.prior)));
  });

  test('comes out the same to the last bit when answers are added one by one', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const { matrix, ...all } = standing(given);
        const oneByOne = given.answers.reduce(
          (from, answer) => extended(from, readyAnswer(from.matrix, answer, given.observer)),
          posterior(matrix, [], given.observer),
        );
        const { matrix: _, ...added } = oneByOne;
        expect(added).toEqual(all);
      }),
    );
  });

  test('does not depend on the order of the answers', () => {
    fc.assert(
      fc.property(
        answered().chain((given) => fc.tuple(fc.constant(given), shuffled(given.answers.length))),
        ([given, order]) => {
          const other = { ...given, answers: order.map((k) => given.answers[k] as Answer) };
          expect(Array.from(standing(other).p)).toEqual(close(standing(given).p));
        },
      ),
    );
  });

  test('does not depend on the order of the taxa', () => {
    fc.assert(
      fc.property(
        answered().chain((given) => fc.tuple(fc.constant(given), shuffled(given.spec.taxa.length))),
        ([given, order]) => {
          const spec: MatrixSpec = {
            ...given.spec,
            pairs: [],
            taxa: order.map((t) => given.spec.taxa[t] as MatrixSpec['taxa'][number]),
            characters: given.spec.characters.map((one) => ({ ...one, traits: order.map((t) => one.traits[t]) })),
          };
          const { p, matrix } = standing(given);
          const moved = standing({ ...given, spec }).p;
          expect(Array.from(moved)).toEqual(close([...order.map((t) => at(p, t)), at(p, matrix.outside)]));
        },
      ),
    );
  });

  test('does not depend on the order of the states of a choice, nor on which end of a scale comes first', () => {
    fc.assert(
      fc.property(
        answered(['choice', 'scale']).chain((given) =>
          fc.tuple(fc.constant(given), fc.tuple(...given.spec.characters.map((one) => shuffled(one.states.length)))),
        ),
        ([given, mixed]) => {
          const orders = given.spec.characters.map((one, c) =>
            one.kind === 'choice' ? (mixed[c] as number[]) : one.states.map((_, s) => one.states.length - 1 - s),
          );
          const place = (c: number, s: number) => (orders[c] as number[]).indexOf(s);
          const spec: MatrixSpec = {
            ...given.spec,
            characters: given.spec.characters.map((one, c) => ({
              ...one,
              mixups: one.mixups?.map(({ a, b, share }) => ({ a: place(c, a), b: place(c, b), share })) ?? [],
              traits: one.traits.map((trait) =>
                trait?.kind === 'states' ? { ...trait, p: (orders[c] as number[]).map((s) => at(trait.p, s)) } : trait,
              ),
            })),
          };
          const answers = given.answers.map((one) =>
            'states' in one ? { ...one, states: one.states.map((s) => place(one.character, s)) } : one,
          );
          expect(Array.from(standing({ ...given, spec, answers }).p)).toEqual(close(standing(given).p));
        },
      ),
    );
  });
});

describe('what says nothing', () => {
  test('is a character that is not answered', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const answers = given.answers.slice(0, -1);
        const open = new Set(answers.map((one) => one.character));
        const characters = given.spec.characters.filter((_, c) => open.has(c));
        const fewer = answers.map((one) => ({
          ...one,
          character: [...open].sort((a, b) => a - b).indexOf(one.character),
        }));
        expect(Array.from(standing({ ...given, answers }).p)).toEqual(
          Array.from(standing({ ...given, spec: { ...given.spec, characters }, answers: fewer }).p),
        );
      }),
    );
  });

  test('is every state ticked at once: the same as `I cannot tell`', () => {
    fc.assert(
      fc.property(answered(), sureness(), (given, sure) => {
        const open = given.spec.characters.findIndex((_, c) => given.answers.every((one) => one.character !== c));
        fc.pre(open >= 0);
        const all = say(open, given.spec.characters[open]?.states.map((_, s) => s) ?? [], sure);
        const { p, rates } = standing(given);
        const ticked = standing({ ...given, answers: [...given.answers, all] });
        expect(Array.from(ticked.p)).toEqual(close(p));
        expect(Array.from(ticked.rates)).toEqual(close(rates));
      }),
    );
  });

  test('is a character of which nothing is known for any plant', () => {
    fc.assert(
      fc.property(answered(['choice']), fc.integer({ min: 2, max: 5 }), fc.nat(4), sureness(), (given, S, s, sure) => {
        const unknown = character(
          'new',
          given.spec.taxa.map(() => undefined),
          {
            states: Array.from({ length: S }, (_, i) => `s${i}`),
          },
        );
        const c = given.spec.characters.length;
        const spec = { ...given.spec, characters: [...given.spec.characters, unknown] };
        const said = standing({ ...given, spec, answers: [...given.answers, say(c, s % S, sure)] });
        expect(Array.from(said.p)).toEqual(close(standing(given).p));
      }),
    );
  });

  test('is a character that all plants show alike, for an observer of known rate and a plant known to be in the key', () => {
    fc.assert(
      fc.property(
        answered().chain((given) =>
          fc.tuple(
            fc.constant({ ...given, spec: { ...given.spec, outsidePrior: 0, rates: [{ times: 1, prior: 1 }] } }),
            fc.constantFrom([0, 1], [0.5, 0.5], [0.2, 0, 0.8]),
            fc.boolean(),
            sureness(),
          ),
        ),
        ([given, shown, scale, sure]) => {
          const alike = character(
            'new',
            given.spec.taxa.map(() => shown),
            { kind: scale ? 'scale' : 'choice' },
          );
          const c = given.spec.characters.length;
          const spec = { ...given.spec, characters: [...given.spec.characters, alike] };
          const said = standing({ ...given, spec, answers: [...given.answers, say(c, 1, sure)] });
          expect(Array.from(said.p)).toEqual(close(standing(given).p));
        },
      ),
    );
  });

  test('is not a state that no plant here shows: it makes the observer, and the key itself, less trusted', () => {
    const spec = specOf(
      [native('a'), native('b')],
      [
        yesNo('leaf', [0, 1]),
        character('sap', [
          [1, 0],
          [1, 0],
        ]),
      ],
      { outsidePrior: 0.05, rates: USUAL_RATES },
    );
    const matrix = compileMatrix(spec);
    const before = posterior(matrix, [say(0, 0)]).p;
    const after = posterior(matrix, [say(0, 0), say(1, 1)]).p;
    expect(at(after, 0) / at(after, 1)).toBeLessThan(at(before, 0) / at(before, 1));
    expect(at(after, 2)).toBeGreaterThan(at(before, 2));
  });
});

describe('an answer that a plant always shows', () => {
  /** A new character of which taxon 0 always shows `s`, and taxon 1 never what is ticked. */
  const told = () =>
    answered().chain((given) =>
      anyMatrix(['choice', 'scale']).chain((other) => {
        const like = other.characters[0] as MatrixSpec['characters'][number];
        const S = like.states.length;
        return fc
          .record({
            s: fc.nat(S - 1),
            also: fc.subarray(like.states.map((_, i) => i)),
            shares: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: S, maxLength: S }),
            sure: sureness(),
            single: fc.boolean(),
          })
          .filter(({ s, also }) => new Set([s, ...also]).size < S)
          .map(({ s, also, shares, sure, single }) => {
            const ticked = single ? [s] : [...new Set([s, ...also])];
            const never = shares.map((x, i) => (ticked.includes(i) ? 0 : x));
            const sum = never.reduce((a, b) => a + b, 0);
            const traits = given.spec.taxa.map((_, t) => ({
              kind: 'states' as const,
              p: t === 0 ? never.map((__, i) => (i === s ? 1 : 0)) : never.map((x) => x / sum),
            }));
            return { given, added: { ...like, traits }, ticked, sure };
          });
      }),
    );

  test('never lowers it against one that never shows it, whoever says it and however surely', () => {
    fc.assert(
      fc.property(told(), ({ given, added, ticked, sure }) => {
        const spec = { ...given.spec, characters: [...given.spec.characters, added] };
        const before = standing(given).p;
        const said = say(given.spec.characters.length, ticked, sure);
        const after = standing({ ...given, spec, answers: [...given.answers, said] }).p;
        const odds = (p: Float64Array) => Math.log(at(p, 0)) - Math.log(at(p, 1));
        expect(odds(after)).toBeGreaterThanOrEqual(odds(before) - 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test('never lowers it against any other hypothesis, as a first answer', () => {
    fc.assert(
      fc.property(anyMatrix(['choice', 'scale']), sureness(), observer(), fc.nat(4), (made, sure, times, s) => {
        const [first] = made.characters as [MatrixSpec['characters'][number]];
        const shown = s % first.states.length;
        const always = { kind: 'states' as const, p: first.states.map((_, i) => (i === shown ? 1 : 0)) };
        const traits = [always, ...first.traits.slice(1)];
        // Kin are read at the usual rate alone: beside them, so must the others be for the comparison to be fair.
        const rates = made.kin ? [{ times: 1, prior: 1 }] : made.rates;
        const spec = { ...made, rates, outsidePrior: 0.1, characters: [{ ...first, traits }] };
        const before = standing({ spec, answers: [], observer: times }).p;
        const after = standing({ spec, answers: [say(0, shown, sure)], observer: times }).p;
        const lift = Array.from(after, (x, h) => x / at(before, h));
        expect(Math.max(...lift)).toBeLessThanOrEqual(at(lift, 0) + 1e-9);
      }),
    );
  });

  test('raises it less the less sure the answer is', () => {
    fc.assert(
      fc.property(told(), ({ given, added }) => {
        const spec = { ...given.spec, characters: [added] };
        const shown = (added.traits[0] as { p: number[] }).p.indexOf(1);
        const odds = (['sure', 'think', 'guess'] as const).map((sure) => {
          const { p } = standing({ spec, answers: [say(0, shown, sure)], observer: given.observer });
          return at(p, 0) / at(p, 1);
        });
        expect(at(odds, 0)).toBeGreaterThanOrEqual(at(odds, 1) * (1 - 1e-9));
        expect(at(odds, 1)).toBeGreaterThanOrEqual(at(odds, 2) * (1 - 1e-9));
      }),
    );
    const matrix = matrixOf([native('a'), native('b')], [yesNo('leaf', [0, 1])], { rates: USUAL_RATES });
    const [sure, think, guess] = (['sure', 'think', 'guess'] as const).map((how) =>
      at(posterior(matrix, [say(0, 0, how)]).p, 0),
    );
    expect(sure).toBeGreaterThan(think as number);
    expect(think).toBeGreaterThan(guess as number);
    expect(guess).toBeGreaterThan(0.5);
  });
});

describe('mix-ups', () => {
  test('make an answer tell less between the plants that are mixed up, and no less against the others', () => {
    const taxa = [native('a'), native('b'), native('c'), native('d')];
    const shown = [
      [1, 0, 0, 0],
      [0, 1, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ];
    const p = posterior(matrixOf(taxa, [character('margin', shown)]), [say(0, 0)]).p;
    const q = posterior(matrixOf(taxa, [character('margin', shown, { mixups: [{ a: 0, b: 1, share: 0.7 }] })]), [
      say(0, 0),
    ]).p;
    expect(at(q, 1)).toBeGreaterThan(at(p, 1) * 1.5);
    expect(at(q, 2)).toBeCloseTo(at(q, 3), 12);
    expect(at(q, 0) / at(q, 2)).toBeGreaterThanOrEqual(at(p, 0) / at(p, 2) - 1e-9);
  });
});

describe('a plant that is not in the key', () => {
  const twelve = Array.from({ length: 12 }, (_, c) => yesNo(`c${c}`, [0, 1, c % 2 === 0 ? 0 : 1]));
  const taxa = [native('a'), native('b'), native('c')];
  const kin = { share: 0.5, differs: 0.3 };
  const outside = (more: Partial<MatrixSpec>, answers: readonly Answer[]) => {
    const { p, matrix } = posterior(
      matrixOf(taxa, twelve, { outsidePrior: 0.1, rates: USUAL_RATES, ...more }),
      answers,
    );
    return at(p, matrix.outside);
  };
  const fitting = (length: number) => twelve.slice(0, length).map((_, c) => say(c, 0));
  const differing = twelve.map((_, c) => say(c, c % 4 === 0 ? 1 : 0));

  test('is as likely beforehand whether or not it may resemble one that is', () => {
    expect(outside({}, [])).toBeCloseTo(0.1, 12);
    expect(outside({ kin }, [])).toBeCloseTo(0.1, 12);
    expect(outside({ kin: { share: 1, differs: 0.3 } }, [])).toBeCloseTo(0.1, 12);
  });

  test('that resembles one of the key but for some characters is found sooner with kin reckoned with', () => {
    expect(outside({ kin }, differing)).toBeGreaterThan(1.2 * outside({}, differing));
  });

  test('is the less likely the longer all answers fit one plant', () => {
    for (const more of [{}, { kin }]) {
      const after = [0, 3, 6, 9, 12].map((length) => outside(more, fitting(length)));
      expect(after).toEqual([...after].sort((a, b) => b - a));
    }
  });

  test('is the likelier the more answers fit none', () => {
    const patterns = [1, 2, 3, 4, 5, 6].map((wrong) => twelve.map((_, c) => say(c, c < wrong ? 1 : 0)));
    const after = patterns.map((answers) => outside({ kin }, answers));
    for (let k = 1; k < 4; k++) expect(after[k]).toBeGreaterThan(after[k - 1] as number);
  });
});

describe('no answer is final', () => {
  test('however many plants it speaks against, enough other answers bring any of them back', () => {
    fc.assert(
      fc.property(anyMatrix(['choice', 'scale', 'measure']), fc.nat(), (made, seed) => {
        const c = seed % made.characters.length;
        const of = made.characters[c] as MatrixSpec['characters'][number];
        const [said] = fc.sample(answer(0, of), { seed, numRuns: 1 }) as [Answer];
        const lone = { ...made, characters: [of] };
        const { p, matrix } = standing({ spec: lone, answers: [said], observer: 1 });
        for (let t = 0; t < matrix.outside; t++) expect(at(p, t)).toBeGreaterThan(0);
        const further = Array.from({ length: 60 }, (_, i) =>
          yesNo(
            `more ${i}`,
            made.taxa.map((__, t) => (t === 0 ? 0 : 1)),
          ),
        );
        const back = standing({
          spec: { ...made, characters: [of, ...further] },
          answers: [said, ...further.map((_, i) => say(i + 1, 0))],
          observer: 1,
        }).p;
        const inKey = back.slice(0, -1).reduce((x, y) => x + y, 0);
        expect(at(back, 0) / inKey).toBeGreaterThan(0.99);
      }),
    );
  });
});

describe('is refused with its reason:', () => {
  const matrix = matrixOf(
    [native('a'), native('b')],
    [yesNo('leaf', [0, 1]), character('height', [{ low: 1, high: 2 }, undefined], { bounds: [3] })],
  );
  test.each<[string, Answer[], RegExp]>([
    ['a character answered twice', [say(0, 0), say(0, 1)], /twice/],
    ['a character that is not there', [say(7, 0)], /no character 7/],
    ['a state that is not there', [say(0, 2)], /leaf: no state 2/],
    ['a number for a character without sizes', [type(0, 3)], /leaf: 3 is not a size/],
    ['a size of nothing', [type(1, 0)], /height: 0 is not a size/],
    ['a size without end', [type(1, Number.POSITIVE_INFINITY)], /height: Infinity is not a size/],
    ['a size that is no number', [type(1, Number.NaN)], /height: NaN is not a size/],
    ['an answer without a state', [say(0, [])], /leaf|no hypothesis/],
  ])('%s', (_, answers, message) => {
    expect(() => posterior(matrix, answers)).toThrow(EngineError);
    expect(() => posterior(matrix, answers)).toThrow(message);
  });

  test('answers that nothing in a key without slips can explain', () => {
    const rigid = matrixOf([native('a')], [yesNo('leaf', [0], { misread: 0 })]);
    expect(() => posterior(rigid, [say(0, 1)])).toThrow(/no hypothesis can explain/);
  });
});
