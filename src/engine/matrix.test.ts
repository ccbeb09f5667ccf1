import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, specOf, yesNo } from '../../tests/support/build.ts';
import { matrix as anyMatrix } from '../../tests/support/matrices.ts';
import { compileMatrix, type Matrix } from './matrix.ts';
import { EngineError } from './spec.ts';

/** What one hypothesis shows of one character. */
const column = (of: Matrix, kind: 'truth' | 'slip', c: number, h: number) =>
  Array.from(
    { length: (of.firstRow[c + 1] as number) - (of.firstRow[c] as number) },
    (_, s) => of[kind][((of.firstRow[c] as number) + s) * of.hypotheses + h] as number,
  );
const close = (values: readonly number[]) => values.map((x) => expect.closeTo(x, 12));

describe('a compiled matrix', () => {
  test('gives every hypothesis shares of the states, and shares of the slips, that sum to 1', () => {
    fc.assert(
      fc.property(anyMatrix(), (spec) => {
        const matrix = compileMatrix(spec);
        spec.characters.forEach((_, c) => {
          for (let h = 0; h < matrix.hypotheses; h++)
            for (const kind of ['truth', 'slip'] as const) {
              const shares = column(matrix, kind, c, h);
              expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
              expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
            }
        });
        expect(matrix.logPrior.reduce((sum, log) => sum + Math.exp(log), 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('shares the prior among taxa by their weights, less what is kept for plants not in the key', () => {
    const matrix = matrixOf([native('a', 3), native('b', 1)], [], { outsidePrior: 0.2 });
    expect(Array.from(matrix.logPrior, Math.exp)).toEqual(close([0.6, 0.2, 0.2]));
  });

  test('reads an unknown trait as what the plants show of which it is known, the common ones most', () => {
    const matrix = matrixOf(
      [native('a', 3), native('b', 1), native('c', 5), native('d', 9)],
      [character('c', [[1, 0, 0], [0, 0.5, 0.5], undefined, 'absent'])],
    );
    expect(column(matrix, 'truth', 0, 2)).toEqual(close([0.75, 0.125, 0.125]));
  });

  test('takes a report of what a plant does not have for noise, slip or not', () => {
    const matrix = matrixOf([native('a'), native('b')], [character('c', [[1, 0, 0], 'absent'])]);
    expect(column(matrix, 'truth', 0, 1)).toEqual(close([1 / 3, 1 / 3, 1 / 3]));
    expect(column(matrix, 'slip', 0, 1)).toEqual(close([1 / 3, 1 / 3, 1 / 3]));
    expect(Array.from(matrix.applies)).toEqual([1, 0]);
  });

  test('lets a plant that is not in the key show half what plants here show and half anything', () => {
    const matrix = matrixOf([native('a', 3), native('b', 1)], [yesNo('leaf', [0, 1])], { outsidePrior: 0.1 });
    expect(column(matrix, 'truth', 0, matrix.outside)).toEqual(close([0.625, 0.375]));
  });

  test('lets it show above all the states that no plant here shows, where there are such', () => {
    const matrix = matrixOf([native('a')], [character('c', [[1, 0, 0]])], { outsidePrior: 0.1 });
    expect(column(matrix, 'truth', 0, matrix.outside)).toEqual(close([0.5, 0.25, 0.25]));
  });

  test('puts hypotheses into one profile only when they show the same, slip alike, and the character applies to both', () => {
    fc.assert(
      fc.property(anyMatrix(), (spec) => {
        const matrix = compileMatrix(spec);
        matrix.profiles.forEach(({ of, sample, members, first, absent }, c) => {
          expect(of).toHaveLength(matrix.hypotheses);
          expect(new Set(of)).toEqual(new Set(sample.keys()));
          expect(Array.from(members).sort((a, b) => a - b)).toEqual(Array.from(of.keys()));
          sample.forEach((_, g) => {
            expect(new Set(Array.from(members.slice(first[g], first[g + 1]), (h) => of[h]))).toEqual(new Set([g]));
          });
          of.forEach((g, h) => {
            for (const kind of ['truth', 'slip'] as const)
              expect(column(matrix, kind, c, h)).toEqual(column(matrix, kind, c, sample[g] as number));
            if (h < matrix.outside) expect(g === absent).toBe(matrix.applies[c * matrix.outside + h] === 0);
          });
        });
      }),
    );
  });

  test('knows the same trait again, however often it comes', () => {
    const traits = [[1, 0], [0, 1], undefined, 'absent', [1, 0], 'absent', undefined, [0.5, 0.5]] as const;
    const { profiles } = matrixOf(
      traits.map((_, t) => native(`t${t}`)),
      [character('leaf', traits)],
    );
    expect(Array.from(profiles[0]?.of ?? [])).toEqual([0, 1, 2, 3, 0, 3, 2, 4, 5]);
  });

  test('lets unknown count as applying', () => {
    expect(Array.from(matrixOf([native('a'), native('b')], [character('c', [undefined, [1, 0]])]).applies)).toEqual([
      1, 1,
    ]);
  });
});

describe('a specification is refused', () => {
  const taxa = [native('a'), invader('b')];
  test.each([
    ['without a taxon', specOf([], []), /at least one taxon/],
    ['with a trait missing', specOf(taxa, [yesNo('leaf', [0])]), /leaf: 1 traits for 2 taxa/],
    [
      'with shares that do not sum to 1',
      specOf(taxa, [
        character('leaf', [
          [0.5, 0.4],
          [1, 0],
        ]),
      ]),
      /leaf: .* summing to 0.9/,
    ],
    ['with a share too few', specOf(taxa, [character('leaf', [[1, 0], [1]])]), /leaf: 1 probabilities/],
    [
      'with sizes but no classes',
      specOf(taxa, [character('height', [{ low: 1, high: 2 }, undefined])]),
      /height: .*bounds/,
    ],
    ['without any weight', specOf([native('a', 0)], []), /prior/],
    ['with a certainty of not being in the key', specOf(taxa, [], { outsidePrior: 1 }), /prior/],
  ])('%s', (_, spec, message) => {
    expect(() => compileMatrix(spec)).toThrow(EngineError);
    expect(() => compileMatrix(spec)).toThrow(message);
  });
});
