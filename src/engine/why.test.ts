import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, say, yesNo } from '../../tests/support/build.ts';
import { answered } from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import { USUAL_RATES } from './spec.ts';
import { posterior, posteriorWithout } from './standing.ts';
import { reasons, secondLooks } from './why.ts';

describe('the reasons for and against a plant', () => {
  const taxa = [invader('a'), native('b'), native('c'), native('d')];
  const matrix = matrixOf(taxa, [
    yesNo('leaf', [0, 1, 1, 1]),
    yesNo('stem', [0, 0, 1, 1]),
    yesNo('sap', [1, 0, 0, 0]),
    yesNo('alike', [1, 1, 1, 1]),
  ]);
  const why = reasons(posterior(matrix, [say(1, 0), say(0, 0), say(2, 0), say(3, 1)]));

  test('are the answers that fit it and those that do not, strongest first', () => {
    expect(why(0).for.map((one) => one.character)).toEqual([0, 1]);
    expect(why(0).against.map((one) => one.character)).toEqual([2]);
    expect(why(3).for.map((one) => one.character)).toEqual([]);
    expect(why(3).against.map((one) => one.character)).toEqual([1, 0]);
  });

  test('have the weight of evidence against the mix of the key, in bits', () => {
    // One plant in four has such a leaf: 0.9 against 0.25 x 0.9 + 0.75 x 0.1 = 0.3.
    expect(why(0).for[0]?.bits).toBeCloseTo(Math.log2(0.9 / 0.3), 12);
    // Three in four have no such sap: 0.1 against 0.75 x 0.9 + 0.25 x 0.1 = 0.7.
    expect(why(0).against[0]?.bits).toBeCloseTo(Math.log2(0.1 / 0.7), 12);
  });

  test('are never what all plants show, nor what hardly moves it', () => {
    for (const t of [0, 1, 2, 3]) {
      const { for: speaks, against } = why(t);
      expect([...speaks, ...against].map((one) => one.character)).not.toContain(3);
      for (const one of [...speaks, ...against]) expect(Math.abs(one.bits)).toBeGreaterThanOrEqual(0.5);
    }
  });

  test('weigh less when the answer was a guess', () => {
    const guessed = reasons(posterior(matrix, [say(0, 0, 'guess')]))(0).for[0]?.bits as number;
    expect(guessed).toBeLessThan(why(0).for[0]?.bits as number);
  });

  test('never name what is unknown of the plant as speaking against it', () => {
    const unknown = matrixOf(taxa, [character('leaf', [[1, 0], undefined, [0, 1], [0, 1]])]);
    for (const s of [0, 1]) expect(reasons(posterior(unknown, [say(0, s)]))(1)).toEqual({ for: [], against: [] });
  });

  test('are each answer at most once, on one side, for any plant', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const why = reasons(posterior(compileMatrix(given.spec), given.answers, given.observer));
        given.spec.taxa.forEach((_, t) => {
          const { for: speaks, against } = why(t);
          const named = [...speaks, ...against].map((one) => one.character);
          expect(new Set(named).size).toBe(named.length);
          for (const list of [speaks, against]) {
            const sizes = list.map((one) => Math.abs(one.bits));
            expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
          }
          expect(speaks.every((one) => one.bits > 0) && against.every((one) => one.bits < 0)).toBe(true);
        });
      }),
    );
  });
});

describe('the answer most worth a second look', () => {
  /** Eight plants and seven characters in which any two plants differ in four: the rows of a simplex code. */
  const parity = (t: number, c: number): 0 | 1 => {
    const bits = t & (c + 1);
    return (((bits >> 2) ^ (bits >> 1) ^ bits) & 1) as 0 | 1;
  };
  const taxa = Array.from({ length: 8 }, (_, t) => native(`t${t}`));
  const characters = Array.from({ length: 7 }, (_, c) =>
    yesNo(
      `c${c}`,
      taxa.map((__, t) => parity(t, c)),
    ),
  );
  const matrix = matrixOf(taxa, characters, { rates: USUAL_RATES, outsidePrior: 0.02 });

  test.each(taxa.flatMap((_, t) => characters.map((__, c) => [t, c] as const)))(
    'is the one that contradicts all others: plant %d, character %d read wrong',
    (t, wrong) => {
      const answers = characters.map((_, c) => say(c, c === wrong ? 1 - parity(t, c) : parity(t, c)));
      const looks = secondLooks(posterior(matrix, answers));
      expect(looks).toHaveLength(7);
      expect(looks[0]?.character).toBe(wrong);
      expect(looks[0]?.gain).toBeGreaterThan(1.5 * (looks[1]?.gain as number));
    },
  );

  test('is the wrong turn that holds a whole group of plants down', () => {
    // Four canes and four broad leaves; the group is asked first and read wrong, everything after fits one cane.
    const group = yesNo('group', [0, 0, 0, 0, 1, 1, 1, 1]);
    const after = Array.from({ length: 4 }, (_, i) =>
      character(
        `cane ${i}`,
        taxa.map((_, t) => (t === 0 ? [1, 0] : t < 4 ? [0.3, 0.7] : [0.2, 0.8])),
      ),
    );
    const turned = matrixOf(taxa, [group, ...after], { rates: USUAL_RATES });
    const looks = secondLooks(posterior(turned, [say(0, 1), ...after.map((_, i) => say(i + 1, 0))]));
    expect(looks[0]?.character).toBe(0);
  });

  test('is none before anything is said, and weighs nothing when the answer says nothing', () => {
    expect(secondLooks(posterior(matrix, []))).toEqual([]);
    expect(secondLooks(posterior(matrix, [say(2, [0, 1])]))).toEqual([{ character: 2, gain: 0 }]);
  });

  test('is measured by how far the standing without it lies from the standing with it', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const from = posterior(compileMatrix(given.spec), given.answers, given.observer);
        const looks = secondLooks(from);
        expect(looks).toHaveLength(given.answers.length);
        for (const { character: c, gain } of looks) {
          const k = given.answers.findIndex((one) => one.character === c);
          const q = posteriorWithout(from, k);
          const bits = q.reduce((sum, x, h) => (x > 0 ? sum + x * Math.log2(x / (from.p[h] as number)) : sum), 0);
          expect(gain).toBeCloseTo(Math.max(0, bits), 9);
          expect(gain).toBeGreaterThanOrEqual(0);
        }
        const gains = looks.map((one) => one.gain);
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
      }),
    );
  });
});
