import { describe, expect, test } from 'vitest';
import { character, invader, matrixOf, native, say, yesNo } from '../../tests/support/build.ts';
import { type Sureness, USUAL_RATES } from './spec.ts';
import { posterior } from './standing.ts';
import { rivalsOf } from './telling.ts';

const taxa = [invader('invader'), native('look-alike'), native('other')];
const characters = [yesNo('leaf', [0, 1, 0]), yesNo('stem', [0, 0, 1]), yesNo('sap', [0, 1, 1])];
const pairs = [{ a: 1, b: 0, needs: 2 }];
const matrix = matrixOf(taxa, characters, { pairs, rates: USUAL_RATES });

describe('the look-alikes of a plant', () => {
  test('are those that the key names, whichever of the two comes first', () => {
    const from = posterior(matrix, []);
    expect(rivalsOf(from, 0, 3)).toEqual([{ taxon: 1, told: [], needs: 2 }]);
    expect(rivalsOf(from, 1, 3)).toEqual([{ taxon: 0, told: [], needs: 2 }]);
    expect(rivalsOf(from, 2, 3)).toEqual([]);
  });

  test('are put to the test by answers that speak for the one against the other, and by no others', () => {
    const from = posterior(matrix, [say(0, 0), say(1, 0), say(2, 1)]);
    expect(rivalsOf(from, 0, 3)).toEqual([{ taxon: 1, told: [0], needs: 2 }]);
    expect(rivalsOf(from, 1, 3)).toEqual([{ taxon: 0, told: [2], needs: 2 }]);
  });

  test('are put to the test less by a guess than by a sure answer', () => {
    const told = (sureness: Sureness) => rivalsOf(posterior(matrix, [say(0, 0, sureness)]), 0, 3)[0]?.told;
    expect(told('sure')).toEqual([0]);
    expect(told('guess')).toEqual([]);
  });

  test('are not told apart by a character that is easily misread, nor by states that are mixed up', () => {
    const hard = matrixOf(taxa, [yesNo('leaf', [0, 1, 0], { misread: 0.3 })], { pairs });
    expect(rivalsOf(posterior(hard, [say(0, 0)]), 0, 3)[0]?.told).toEqual([]);
    const shown = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    const told = (more: object) => {
      const from = posterior(matrixOf(taxa, [character('margin', shown, { misread: 0.3, ...more })], { pairs }), [
        say(0, 0),
      ]);
      return rivalsOf(from, 0, 3)[0]?.told;
    };
    expect(told({})).toEqual([0]);
    expect(told({ mixups: [{ a: 0, b: 1, share: 0.8 }] })).toEqual([]);
  });

  test('are told apart less well by an observer whose other answers contradict one another', () => {
    const many = Array.from({ length: 8 }, (_, c) => yesNo(`c${c}`, [0, 0, 0]));
    const one = matrixOf(taxa, [yesNo('leaf', [0, 1, 0], { misread: 0.18 }), ...many], { pairs, rates: USUAL_RATES });
    const told = (said: number) =>
      rivalsOf(posterior(one, [say(0, 0), ...many.map((_, c) => say(c + 1, c % 2 === 0 ? said : 0))]), 0, 3)[0]?.told;
    expect(told(0)).toEqual([0]);
    expect(told(1)).toEqual([]);
  });

  test('are not told apart by what is unknown of one of them', () => {
    const unknown = matrixOf(taxa, [character('leaf', [[1, 0], undefined, [1, 0]])], { pairs });
    expect(rivalsOf(posterior(unknown, [say(0, 0)]), 0, 3)[0]?.told).toEqual([]);
  });
});
