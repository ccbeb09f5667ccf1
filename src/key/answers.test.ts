import { describe, expect, test } from 'vitest';
import { smallKey } from '../../tests/support/small-key.ts';
import { AnswersError, engineAnswers, readInquiry } from './answers.ts';
import { readKey } from './folder.ts';
import { prepareKey } from './prepared.ts';

const prepared = prepareKey(readKey(smallKey()));
const asked = (...answers: unknown[]) => ({ month: 9, answers });

function faults(content: unknown): readonly { path: string; expected: string }[] {
  try {
    readInquiry(prepared, content);
    return [];
  } catch (error) {
    if (error instanceof AnswersError) return error.problems;
    throw error;
  }
}

test('an inquiry is read with what it leaves out', () => {
  const inquiry = readInquiry(
    prepared,
    asked(
      { character: 'growth-form', states: ['grass', 'tall-cane'], sureness: 'guess' },
      { character: 'height', value: 10, unit: 'ft' },
      { character: 'leaf-width', value: 3 },
      { character: 'habitat', skipped: true },
    ),
  );
  expect(inquiry).toEqual({
    month: 9,
    observer: 'novice',
    answers: [
      { character: 'growth-form', states: ['grass', 'tall-cane'], sureness: 'guess' },
      { character: 'height', value: 10, unit: 'ft', sureness: 'sure' },
      { character: 'leaf-width', value: 3, unit: 'cm', sureness: 'sure' },
      { character: 'habitat', skipped: true },
    ],
  });
  // A foot is 0.3048 m exactly (international foot, 1959; from memory). What was skipped is no answer.
  expect(engineAnswers(prepared, inquiry.answers)).toEqual([
    { character: 0, states: [1, 0], sureness: 'guess' },
    { character: 2, value: expect.closeTo(3.048, 12), sureness: 'sure' },
    { character: 3, value: 3, sureness: 'sure' },
  ]);
});

describe('refused, with the place and what was expected:', () => {
  test.each<[string, unknown, string, string]>([
    ['no object', [], '(file)', 'an object with month, observer and answers'],
    ['nothing', null, '(file)', 'an object'],
    ['no month', { answers: [] }, 'month', 'a month, 1 to 12'],
    ['a month beyond the year', { month: 13, answers: [] }, 'month', 'a month'],
    ['half a month', { month: 1.5, answers: [] }, 'month', 'a month'],
    ['an unknown observer', { month: 1, observer: 'toString', answers: [] }, 'observer', 'one of novice, technician'],
    ['a list of observers', { month: 1, observer: ['novice'], answers: [] }, 'observer', 'one of'],
    ['a field too many', { month: 1, answers: [], place: 'x' }, 'place', 'only month, observer and answers'],
    ['no answers', { month: 1 }, 'answers', 'a list of answers'],
    ['an answer that is none', asked('height'), 'answers[0]', 'an object'],
    ['an unknown character', asked({ character: 'constructor', states: ['a'] }), 'answers[0].character', 'the id'],
    ['an answer without any', asked({ character: 'height' }), 'answers[0]', 'exactly one of'],
    [
      'an answer of two kinds',
      asked({ character: 'height', value: 1, skipped: true }),
      'answers[0]',
      'exactly one of states, value and skipped',
    ],
    ['a field too many', asked({ character: 'habitat', skipped: true, no: 1 }), 'answers[0].no', 'only character'],
    ['what is skipped and not', asked({ character: 'habitat', skipped: false }), 'answers[0].skipped', 'true'],
    ['no state', asked({ character: 'habitat', states: [] }), 'answers[0].states', 'at least one state'],
    [
      'a state of another',
      asked({ character: 'habitat', states: ['grass'] }),
      'answers[0].states[0]',
      'one of standing',
    ],
    ['a state that is a number', asked({ character: 'habitat', states: [0] }), 'answers[0].states[0]', 'one of'],
    [
      'a state given twice',
      asked({ character: 'habitat', states: ['waterline', 'waterline'] }),
      'answers[0].states[1]',
      'each state once',
    ],
    [
      'another sureness',
      asked({ character: 'habitat', states: ['waterline'], sureness: 'very' }),
      'answers[0].sureness',
      'one of sure, think, guess',
    ],
    ['a number for a choice', asked({ character: 'habitat', value: 1 }), 'answers[0].value', 'states, since'],
    ['nothing tall', asked({ character: 'height', value: 0 }), 'answers[0].value', 'a size above zero'],
    ['a height in words', asked({ character: 'height', value: '3' }), 'answers[0].value', 'a size above zero'],
    [
      'the height of a mountain range',
      asked({ character: 'height', value: 1e7 }),
      'answers[0].value',
      'up to a million',
    ],
    [
      'another unit',
      asked({ character: 'height', value: 1, unit: 'yd' }),
      'answers[0].unit',
      'one of mm, cm, m, in, ft',
    ],
  ])('%s', (_, content, path, expected) => {
    expect(faults(content)).toEqual([{ path, expected: expect.stringContaining(expected) }]);
  });

  test('a character answered twice, and every other fault beside it', () => {
    const twice = asked(
      { character: 'height', value: 1 },
      { character: 'habitat', states: ['x'] },
      { character: 'height', skipped: true },
    );
    expect(faults(twice).map(({ path }) => path)).toEqual(['answers[1].states[0]', 'answers[2].character']);
  });
});
