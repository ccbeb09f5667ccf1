import { describe, expect, test } from 'vitest';
import { character, native, specOf, yesNo } from '../../../tests/support/build.ts';
import { natureOf, person, RULES, setupOf } from '../../../tests/support/natures.ts';
import { GainTable } from '../gain.ts';
import { compileMatrix } from '../matrix.ts';
import { Book } from './book.ts';
import { boundOf, capacityOf } from './bound.ts';
import { figuresOf } from './figures.ts';
import { Trial } from './trial.ts';

const bookOf = (spec: Parameters<typeof compileMatrix>[0], observer = 1) => {
  const matrix = compileMatrix(spec);
  return new Book(matrix, new GainTable(matrix), RULES, observer);
};
const h = (p: number) => -p * Math.log2(p) - (1 - p) * Math.log2(1 - p);

describe('the capacity of a question', () => {
  // Channels of Shannon (1948), Bell System Tech. J. 27: 379-423, 623-656, from memory.
  test.each([0.05, 0.11, 0.25])('with two states misread in %d of readings is 1 - h', (misread) => {
    const book = bookOf(specOf([native('a'), native('b')], [yesNo('leaf', [0, 1], { misread })]));
    expect(capacityOf(book, 0)).toBeCloseTo(1 - h(misread), 5);
  });

  test('without misreadings is the logarithm of the number of states', () => {
    const taxa = ['a', 'b', 'c', 'd', 'e'].map((id) => native(id));
    const shown = [0, 1, 2, 2, 1].map((s) => [0, 1, 2].map((one) => (one === s ? 1 : 0)));
    expect(capacityOf(bookOf(specOf(taxa, [character('leaf', shown, { misread: 0 })])), 0)).toBeCloseTo(
      Math.log2(3),
      5,
    );
  });

  // The Z channel with crossover 1/2: log2(5/4), from memory of any textbook of information theory.
  test('where one plant shows either state as often is log2(5/4)', () => {
    const spec = specOf(
      [native('a'), native('b')],
      [
        character(
          'leaf',
          [
            [1, 0],
            [0.5, 0.5],
          ],
          { misread: 0 },
        ),
      ],
    );
    expect(capacityOf(bookOf(spec), 0)).toBeCloseTo(Math.log2(5 / 4), 5);
  });
});

test('eight equal plants and questions that halve them without error need their bits, and get by on them', () => {
  const taxa = Array.from({ length: 8 }, (_, t) => native(`t${t}`));
  const spec = specOf(
    taxa,
    [0, 1, 2].map((bit) =>
      yesNo(
        `bit ${bit}`,
        taxa.map((_, t) => ((t >> bit) & 1) as 0 | 1),
        { misread: 0 },
      ),
    ),
  );
  const bound = boundOf(bookOf(spec), [1, 1, 1]);
  // 3 bits less what a standing of 95 % may leave open.
  expect(bound.bits).toBeCloseTo(3 - h(0.95) - 0.05 * Math.log2(8), 9);
  expect(bound.capacity).toBeCloseTo(1, 5);
  expect(bound.once).toBeCloseTo(bound.questions, 4);
  const { questionsToSettled } = figuresOf(
    new Trial(setupOf(natureOf(spec))).play({ observer: person(), from: 0, count: 40 }),
  );
  expect(questionsToSettled?.mean).toBe(3);
  expect(bound.questions).toBeLessThanOrEqual(3);
});

test('what people cannot tell carries nothing, and one question cannot do what takes several', () => {
  const taxa = Array.from({ length: 8 }, (_, t) => native(`t${t}`));
  const book = bookOf(
    specOf(taxa, [
      yesNo(
        'leaf',
        taxa.map((_, t) => (t % 2) as 0 | 1),
        { misread: 0 },
      ),
    ]),
  );
  expect(boundOf(book, [0.5]).capacity).toBeCloseTo(0.5, 5);
  expect(boundOf(book, [0.5]).once).toBeUndefined();
});
