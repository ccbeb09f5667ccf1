import { expect, test } from 'vitest';
import { compare, filesOf, notAtThePlant, notForLearning, ofPractice, tell } from './support/size.mjs';

const chunks = {
  'src/define.ts': { file: 'leadwort.js', imports: ['_shared'], dynamicImports: ['src/late.ts'] },
  _shared: { file: 'shared.js' },
  'src/late.ts': { file: 'late.js', imports: ['src/define.ts', '_shared', '_later'] },
  _later: { file: 'later.js' },
};

test('the first question needs what the entry imports at once, and not what is fetched late', () => {
  expect(filesOf(chunks, 'src/define.ts', false)).toEqual(['leadwort.js', 'shared.js']);
});

test('everything counts each file once, also when a late one leans back on the entry', () => {
  expect(filesOf(chunks, 'src/define.ts', true)).toEqual(['leadwort.js', 'shared.js', 'late.js', 'later.js']);
});

test('what is left out brings nothing of what only it needs', () => {
  const left = (name: string) => name === 'src/late.ts';
  expect(filesOf(chunks, 'src/define.ts', true, left)).toEqual(['leadwort.js', 'shared.js']);
});

test('at the plant nobody needs the other language, or what is for the desk', () => {
  expect(notAtThePlant('src/words/report/es.ts', 'en')).toBe(true);
  expect(notAtThePlant('src/words/es.ts', 'es')).toBe(false);
  expect(notAtThePlant('src/elements/review/define.ts', 'en')).toBe(true);
  expect(notAtThePlant('src/elements/report/define.ts', 'en')).toBe(false);
});

test('the practice room, its crew and its figures weigh on a row of their own, in one language', () => {
  for (const part of ['practice', 'crew', 'figures']) {
    const name = `src/elements/${part}/define.ts`;
    expect(ofPractice(name)).toBe(true);
    expect(notAtThePlant(name, 'en')).toBe(true);
    expect(notForLearning(name, 'en')).toBe(false);
  }
  expect(ofPractice('src/store/practice.ts')).toBe(true);
  expect(ofPractice('src/elements/question/define.ts')).toBe(false);
  expect(notForLearning('src/words/practice/es.ts', 'en')).toBe(true);
  expect(notForLearning('src/words/practice/en.ts', 'en')).toBe(false);
});

test('a chunk that the list lacks is an error, not a small page', () => {
  expect(() => filesOf({}, 'src/define.ts', false)).toThrow('the list of chunks lacks "src/define.ts"');
});

test('a byte over the ceiling is over, the ceiling itself is not; without one the budget is the ceiling', () => {
  const over = (limits: object) => compare({ a: 100, b: 101 }, limits).map((row) => row.over);
  expect(over({ a: { budget: 100 }, b: { budget: 100 } })).toEqual([false, true]);
  expect(over({ a: { budget: 90, ceiling: 99 }, b: { budget: 90, ceiling: 101 } })).toEqual([true, false]);
  expect(() => compare({}, { a: { budget: 1 } })).toThrow('the limits name "a", which is not measured');
});

test('the rows are aligned, and one that is over its budget says so even below its ceiling', () => {
  const limits = {
    'first question': { budget: 45000 },
    all: { budget: 110000 },
    later: { budget: 110000, ceiling: 140000 },
  };
  expect(tell(compare({ 'first question': 40100, all: 112000, later: 138400 }, limits))).toBe(
    [
      'first question    40.1 kB of   45.0 kB     4.9 kB to spare',
      'all              112.0 kB of  110.0 kB     2.0 kB too heavy: load something later, or lighten it',
      'later            138.4 kB of  110.0 kB    28.4 kB too heavy: held below 140.0 kB until it is lighter',
    ].join('\n'),
  );
});
