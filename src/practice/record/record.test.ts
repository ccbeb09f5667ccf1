// A learner's file: read back as written, and whatever is wrong with it told with its place.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { attempt, idOf, record } from '../../../tests/support/attempts.ts';
import { changed, changesTo } from '../../../tests/support/mutate.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import { learnerFigures } from '../learner/figures.ts';
import type { Attempt, PracticeRecord } from '../types.ts';
import { isRecord, RecordError, readRecord, writeRecord } from './record.ts';

const prepared = streambank();
const course = strictCourse(courses.courses[0] as LooseCourse);

const read = (n: number): Attempt =>
  attempt(n, 'panicum-virgatum', {
    kind: 'read',
    item: 'character:growth-form',
    character: 'growth-form',
    options: ['tall-cane', 'grass'],
    truth: 'grass',
    said: 'tall-cane',
    right: false,
  });
const run = (n: number): Attempt =>
  attempt(n, 'panicum-virgatum', {
    kind: 'run',
    options: [],
    trail: [
      { character: 'growth-form', states: ['grass'], sureness: 'sure' },
      { character: 'height', value: 1.5, unit: 'm', sureness: 'think' },
      { character: 'habitat', skipped: true },
    ],
  });
const { sureness: _, ...unsure } = attempt(4, 'panicum-virgatum', { said: 'unsure' });
const whole: PracticeRecord = record([
  attempt(1, 'arundo-donax', { test: idOf(0xff) }),
  read(2),
  run(3),
  unsure,
  attempt(5, 'arundo-donax', { kind: 'cover', item: 'cover:3', options: ['2', '3'], truth: '3', said: '2' }),
]);

/** What is told of a text that is no learner's file. */
function problemsOf(text: string): RecordError['problems'] {
  try {
    readRecord(text);
  } catch (error) {
    if (error instanceof RecordError) return error.problems;
    throw error;
  }
  return [];
}

test('what is written is read back the same, and written again the same', () => {
  const text = writeRecord(whole);
  expect(readRecord(text)).toEqual(whole);
  expect(writeRecord(readRecord(text))).toBe(text);
  expect(readRecord(writeRecord(record([])))).toEqual(record([]));
});

test('the same attempts make the same text, in whatever order they and their fields stand', () => {
  const turned = whole.attempts.map((one) => Object.fromEntries(Object.entries(one).reverse()) as unknown as Attempt);
  expect(writeRecord({ ...whole, attempts: turned.reverse() })).toBe(writeRecord(whole));
});

test('attempts come back oldest first, however they stood', () => {
  const text = JSON.stringify({ ...whole, attempts: [...whole.attempts].reverse() });
  expect(readRecord(text).attempts).toEqual(whole.attempts);
});

// Each attempt is a line: the first stands on line 6.
test.each([
  ['a time that is none', 'attempts[1].at', 7, (text: string) => text.replace('T08:02:00.000Z', 'T28:02:00.000Z')],
  ['an id that is no UUID', 'learner.id', 3, (text: string) => text.replace(idOf(0xa), 'ann')],
  ['a kind of task that is none', 'attempts[2].kind', 8, (text: string) => text.replace('"run"', '"guess"')],
  ['a month that is none', 'attempts[0].specimen.month', 6, (text: string) => text.replace('"month":8', '"month":13')],
  ['more than an hour', 'attempts[0].seconds', 6, (text: string) => text.replace('"seconds":10', '"seconds":3601')],
  ['a seed of nothing', 'attempts[0].specimen.seed', 6, (text: string) => text.replace('"seed":3', '"seed":0')],
  ['the same id twice', 'attempts[1].id', 7, (text: string) => text.replace(idOf(2), idOf(1))],
  [
    'right, by what was not said',
    'attempts[1].right',
    7,
    (text: string) => text.replace('"right":false', '"right":true'),
  ],
  [
    'a character to read that is left out',
    'attempts[1].character',
    7,
    (text: string) => text.replace('"character":"growth-form","options"', '"options"'),
  ],
  [
    'a character where none is read',
    'attempts[0].character',
    6,
    (text: string) => text.replace('"kind":"name"', '"kind":"name","character":"height"'),
  ],
  [
    'a unit that is none',
    'attempts[2].trail[1].unit',
    8,
    (text: string) => text.replace('"unit":"m"', '"unit":"mile"'),
  ],
  ['a size of nothing', 'attempts[2].trail[1].value', 8, (text: string) => text.replace('"value":1.5', '"value":0')],
  ['no state', 'attempts[2].trail[0].states', 8, (text: string) => text.replace('"states":["grass"]', '"states":[]')],
  [
    'a field that nobody knows',
    'attempts[0].mood',
    6,
    (text: string) => text.replace('"kind":"name"', '"kind":"name","mood":"fine"'),
  ],
  ['a format of later days', 'format', 2, (text: string) => text.replace('"format": 1', '"format": 2')],
] as const)('%s is told at its place and line', (_title, path, line, break_) => {
  const text = writeRecord(whole);
  expect(break_(text)).not.toBe(text);
  expect(problemsOf(break_(text))).toMatchObject([{ path, line }]);
});

test('text that is no JSON is told with the line on which it breaks off', () => {
  const [problem] = problemsOf(writeRecord(whole).split('\n').slice(0, 6).join('\n'));
  expect(problem?.line).toBe(6);
});

// The seed is fixed so that a failure can be had again.
test('of a file changed in any way either every fault is told with its place, or it is read and its figures can be made', () => {
  const counts = { read: 0, told: 0 };
  fc.assert(
    fc.property(changesTo(whole), (changes) => {
      const text = JSON.stringify(changed(whole, changes), null, 1);
      try {
        const once = readRecord(text);
        expect(readRecord(writeRecord(once))).toEqual(once);
        learnerFigures(prepared, course, once.attempts, Date.parse('2026-06-01T00:00:00Z'));
        counts.read++;
      } catch (error) {
        if (!(error instanceof RecordError)) throw error;
        counts.told++;
        expect(error.problems.length).toBeGreaterThan(0);
        for (const { expected, found, line } of error.problems) {
          expect(expected).not.toBe('');
          expect(found).not.toBe('');
          expect(line).toBeGreaterThan(0);
        }
      }
    }),
    { numRuns: 400, seed: 5 },
  );
  expect(Math.min(counts.read, counts.told)).toBeGreaterThan(10);
});

describe('what says that it is a learner’s file', () => {
  test.each([
    ['one, in any order of its fields', { attempts: [], key: {}, learner: {}, format: 1 }, true],
    ['one whose attempts were lost', { format: 1, learner: {} }, true],
    ['a find', { format: 1, id: 'x', trail: [] }, false],
    ['a list', [], false],
    ['nothing', null, false],
    ['a word', 'learner', false],
  ] as const)('%s', (_, content, says) => {
    expect(isRecord(content)).toBe(says);
  });
});
