import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, say, yesNo } from '../../tests/support/build.ts';
import { answered } from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import { posterior } from './standing.ts';
import { reasons } from './why.ts';

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
