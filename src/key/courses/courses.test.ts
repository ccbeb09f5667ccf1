// Courses of a key folder: read with every fault at its place, and filled in where they say nothing.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import streambankCourses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { changed, changesTo } from '../../../tests/support/mutate.ts';
import { smallKey } from '../../../tests/support/small-key.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { readKey } from '../folder.ts';
import { Problems } from '../problem.ts';
import { COURSES, type LooseCourse, readCourses, strictCourse, USUAL_PASS } from './read.ts';

const key = readKey(smallKey());
const [REED, NATIVE] = ['arundo-donax', 'phragmites-australis-subsp-americanus'] as const;
const words = { en: 'Reeds.', es: 'Carrizos.' };
const reeds: LooseCourse = {
  ...{ id: 'reeds', title: words, about: words, taxa: [REED, NATIVE], months: '5-10', kinds: ['read', 'name'] },
  ...{ characters: ['height'], pass: { default: { looks: 5 }, taxa: { [REED]: { right: 0.95, looks: 12 } } } },
  test: { each: 2, kinds: ['standing'] },
};

function read(courses: unknown, of = key) {
  const problems = new Problems();
  const text = typeof courses === 'string' ? courses : JSON.stringify({ courses }, null, 1);
  return { courses: readCourses(text, of, problems), problems: problems.list };
}

describe('courses', () => {
  test('of the demonstration, and of a key with everything that a course can say, are read as they stand', () => {
    expect(read([reeds])).toEqual({ courses: [reeds], problems: [] });
    const { courses, problems } = read(streambankCourses.courses, streambank().key);
    expect(problems).toEqual([]);
    expect(courses).toHaveLength(3);
  });

  test.each([
    ['a plant that is none', { taxa: [REED, 'oak'] }, 'taxa[1]', 'unknown-id'],
    ['a plant twice', { taxa: [REED, NATIVE, REED] }, 'taxa[2]', 'duplicate-id'],
    ['one plant alone', { taxa: [REED] }, 'taxa', 'length'],
    ['a month that is none', { months: '5-13' }, 'months', 'form'],
    ['a kind of task that is none', { kinds: ['guess'] }, 'kinds[0]', 'value'],
    ['no kind of task', { kinds: [] }, 'kinds', 'length'],
    ['a character that is none', { characters: ['oak'] }, 'characters[0]', 'unknown-id'],
    ['a character that nobody is asked for', { characters: ['height', 'sheaths'] }, 'characters[1]', 'value'],
    ['a title that lacks a language', { title: { en: 'Reeds.' } }, 'title', 'missing-field'],
    ['no words of what it is about', { about: undefined }, 'about', 'missing-field'],
    ['a share above all', { pass: { default: { right: 1.1 } } }, 'pass.default.right', 'bounds'],
    ['a share of none', { pass: { default: { right: 0 } } }, 'pass.default.right', 'bounds'],
    ['half a look', { pass: { default: { looks: 2.5 } } }, 'pass.default.looks', 'type'],
    ['a pass mark of a plant that is none', { pass: { taxa: { oak: {} } } }, 'pass.taxa.oak', 'unknown-id'],
    [
      'one of another course',
      { pass: { taxa: { 'arundinaria-gigantea': {} } } },
      'pass.taxa.arundinaria-gigantea',
      'value',
    ],
    ['a test of no specimen', { test: { each: 0 } }, 'test.each', 'bounds'],
    ['a test by a pair, which would tell half', { test: { each: 1, kinds: ['pair'] } }, 'test.kinds[0]', 'value'],
    ['no test', { test: undefined }, 'test', 'missing-field'],
    ['a field that nobody knows', { badges: 3 }, 'badges', 'unknown-field'],
  ] as const)('with %s are refused at the place', (_, change, place, code) => {
    const { courses, problems } = read([reeds, { ...reeds, id: 'other', ...change }]);
    expect(courses).toBeUndefined();
    expect(problems).toMatchObject([{ severity: 'error', file: COURSES, path: `courses[1].${place}`, code }]);
  });

  test('with an id twice are refused, and all faults are told together', () => {
    const { problems } = read([reeds, { ...reeds, taxa: ['oak', 'elm'] }]);
    const pass = 'courses[1].pass.taxa.arundo-donax';
    expect(problems.map(({ path }) => path).sort()).toEqual([
      'courses[1].id',
      pass,
      'courses[1].taxa[0]',
      'courses[1].taxa[1]',
    ]);
  });

  test.each([
    ['no JSON', '{"courses": [', 'json', 1],
    ['a field twice', '{\n "courses": [],\n "courses": []\n}', 'duplicate-field', 3],
    ['none', '{"courses": []}', 'length', undefined],
    ['another content', '[]', 'type', undefined],
  ] as const)('of a text with %s are refused', (_, text, code, line) => {
    const { courses, problems } = read(text);
    expect(courses).toBeUndefined();
    expect(problems).toMatchObject([{ file: COURSES, code, ...(line === undefined ? {} : { line }) }]);
  });

  test('changed in any way are either told at fault, or read and filled in', () => {
    const counts = { read: 0, told: 0 };
    fc.assert(
      fc.property(changesTo([reeds]), (changes) => {
        const { courses, problems } = read(changed([reeds], changes));
        if (courses === undefined) {
          counts.told++;
          expect(problems.length).toBeGreaterThan(0);
          for (const { file, expected, found } of problems)
            expect([file, expected === '', found === '']).toEqual([COURSES, false, false]);
          return;
        }
        counts.read++;
        expect(problems).toEqual([]);
        for (const { taxa, pass } of courses.map(strictCourse)) expect([...pass.keys()]).toEqual(taxa);
      }),
      { numRuns: 300, seed: 8 },
    );
    expect(Math.min(counts.read, counts.told)).toBeGreaterThan(5);
  });
});

describe('a course that says nothing of it', () => {
  const bare: LooseCourse = { id: 'reeds', title: words, about: words, taxa: [REED, NATIVE], test: { each: 1 } };

  test('is met all year, by every kind of task but cover, with the usual pass marks and a test of names', () => {
    const { months, kinds, pass, test, characters } = strictCourse(bare);
    expect(months).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(kinds).toEqual(['read', 'name', 'standing', 'pair', 'run']);
    expect([...pass]).toEqual([
      [REED, { right: 0.9, looks: 8, days: 2, alarms: 0 }],
      [NATIVE, USUAL_PASS],
    ]);
    expect(test).toEqual({ each: 1, kinds: ['name'] });
    expect(characters).toBeUndefined();
  });

  test('takes the rest of a pass mark from its own default, and that from the usual one', () => {
    const { pass, months, characters, test } = strictCourse(reeds);
    expect(pass.get(REED)).toEqual({ right: 0.95, looks: 12, days: 2, alarms: 0 });
    expect(pass.get(NATIVE)).toEqual({ right: 0.9, looks: 5, days: 2, alarms: 0 });
    expect(months).toEqual([5, 6, 7, 8, 9, 10]);
    expect(characters).toEqual(['height']);
    expect(test).toEqual({ each: 2, kinds: ['standing'] });
  });

  test('takes no pass mark from the names that every object has', () => {
    const { pass } = strictCourse({ ...bare, taxa: ['constructor', 'tostring'], pass: { taxa: {} } });
    expect([...pass.values()]).toEqual([USUAL_PASS, USUAL_PASS]);
  });
});
