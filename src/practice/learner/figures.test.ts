// A learner's figures, reckoned by hand from a handful of looks.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { attempt, DAY, START } from '../../../tests/support/attempts.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import type { Attempt } from '../types.ts';
import { confusionOf } from './confusion.ts';
import { learnerFigures, median } from './figures.ts';
import { rateOf, readingRates } from './rates.ts';
import { surenessOf } from './sureness.ts';

const prepared = streambank();
const course = strictCourse(courses.courses[0] as LooseCourse);
const [REED, SWITCHGRASS, GAMAGRASS] = ['arundo-donax', 'panicum-virgatum', 'tripsacum-dactyloides'] as const;
const read = (n: number, said: string, more: Partial<Attempt> = {}): Attempt =>
  attempt(n, SWITCHGRASS, {
    ...{ kind: 'read', item: 'character:growth-form', character: 'growth-form', options: ['tall-cane', 'grass'] },
    ...{ truth: 'grass', said, right: said === 'grass' },
    ...more,
  });

describe('what was taken for what', () => {
  const attempts = [
    ...[1, 2, 3].map((n) => attempt(n, REED)),
    attempt(4, REED, { said: SWITCHGRASS }),
    attempt(5, SWITCHGRASS, { kind: 'pair' }),
    attempt(6, SWITCHGRASS, { kind: 'run', options: [], said: REED }),
    attempt(7, SWITCHGRASS, { said: 'unsure' }),
    attempt(8, SWITCHGRASS, { kind: 'run', options: [], said: 'outside' }),
    attempt(9, SWITCHGRASS, { said: GAMAGRASS }),
  ];
  const { taxa, counts, agreement } = confusionOf(
    [REED, SWITCHGRASS],
    [
      ...attempts,
      attempt(10, GAMAGRASS),
      attempt(11, REED, { kind: 'standing', truth: 'invasive', said: 'native' }),
      read(12, 'grass'),
    ],
  );

  test('is counted by plant, what was not told apart in the last column, other plants and kinds of task left out', () => {
    expect(taxa).toEqual([REED, SWITCHGRASS]);
    expect(counts).toEqual([
      [3, 1, 0],
      [1, 1, 3],
    ]);
  });

  // Of six that were named, four agree: 2/3. Rows 4 and 2, columns 4 and 2: by chance (16 + 4) / 36 = 5/9. Kappa is
  // (2/3 - 5/9) / (1 - 5/9) = 1/4.
  test('agrees with the answer beyond chance as J. Cohen (1960) has it', () => {
    expect(agreement?.n).toBe(6);
    expect(agreement?.observed).toBeCloseTo(2 / 3, 12);
    expect(agreement?.chance).toBeCloseTo(5 / 9, 12);
    expect(agreement?.kappa).toBeCloseTo(1 / 4, 12);
  });
});

// Beta(2, 1) has the distribution x^2, Beta(1, 1) x: their quantiles are known in closed form.
test('a share after counting is that of Beta(1 + count, 1 + rest)', () => {
  const one = rateOf(1, 1);
  expect(one.mean).toBeCloseTo(2 / 3, 12);
  expect(one.low).toBeCloseTo(Math.sqrt(0.025), 9);
  expect(one.high).toBeCloseTo(Math.sqrt(0.975), 9);
  const none = rateOf(0, 0);
  expect([none.mean, none.low, none.high]).toEqual([0.5, expect.closeTo(0.025, 9), expect.closeTo(0.975, 9)]);
});

describe('what is misread', () => {
  // The key says 0.08 for the growth form, worth 20 readings: (20 · 0.08 + 2) / (20 + 3).
  test('begins at the key’s own share, and moves by what was counted', () => {
    const rates = readingRates(prepared, [read(1, 'grass'), read(2, 'tall-cane'), read(3, 'tall-cane')]);
    expect([...rates.keys()]).toEqual(['growth-form']);
    expect(rates.get('growth-form')).toMatchObject({ n: 3, count: 2, mean: expect.closeTo(3.6 / 23, 12) });
  });

  test('leaves out who could not tell, and characters that the key no longer has', () => {
    expect(readingRates(prepared, [read(1, 'unsure'), read(2, 'grass', { character: 'gone' })]).size).toBe(0);
  });

  test('counts the way of a run, measured sizes by whether they fit what the plant shows', () => {
    const run = attempt(1, SWITCHGRASS, {
      ...{ kind: 'run', options: [] },
      trail: [
        { character: 'growth-form', states: ['tall-cane'], sureness: 'sure' },
        { character: 'height', value: 90, unit: 'm', sureness: 'sure' },
      ],
    });
    const rates = readingRates(prepared, [run]);
    expect(rates.get('growth-form')).toMatchObject({ n: 1, count: 1 });
    expect(rates.get('height')).toMatchObject({ n: 1, count: 1 });
  });

  test('leaves out the way of a run whose plant the key no longer has', () => {
    const trail = [{ character: 'growth-form', states: ['grass'], sureness: 'sure' }] as const;
    expect(readingRates(prepared, [attempt(1, 'gone', { kind: 'run', options: [], trail })]).size).toBe(0);
  });
});

// Sure is meant as 0.95, a guess as 0.5: (0.05^2 + 0.95^2 + 0.5^2) / 3.
test('who is sure and wrong pays most', () => {
  const { bins, brier } = surenessOf([
    attempt(1, REED, { sureness: 'sure' }),
    attempt(2, REED, { sureness: 'sure', said: SWITCHGRASS }),
    attempt(3, REED, { sureness: 'guess' }),
  ]);
  expect(brier).toBeCloseTo((0.0025 + 0.9025 + 0.25) / 3, 12);
  expect(bins.map(({ sureness, right: { n, count } }) => [sureness, n, count])).toEqual([
    ['sure', 2, 1],
    ['think', 0, 0],
    ['guess', 1, 1],
  ]);
  expect(surenessOf([]).brier).toBeUndefined();
});

describe('all figures of a learner', () => {
  const attempts = [
    attempt(1, REED, { seconds: 4 }),
    attempt(2, REED, { seconds: 8, said: SWITCHGRASS }),
    attempt(3, SWITCHGRASS, { day: 1, seconds: 5 }),
    attempt(4, SWITCHGRASS, { day: 1, kind: 'pair', seconds: 30 }),
    read(5, 'grass', { seconds: 3 }),
    attempt(6, 'colocasia-esculenta'),
  ];
  const now = START + 3 * DAY;
  const figures = learnerFigures(prepared, course, attempts, now);

  test('leave out the plants of other courses', () => {
    expect(figures.attempts).toBe(5);
    expect(figures.readiness.map(({ taxon }) => taxon)).toEqual(course.taxa);
  });

  test('tell the median seconds of each kind that was done, and the share right of each day', () => {
    expect([...figures.speed]).toEqual([
      ['read', 3],
      ['name', 5],
      ['pair', 30],
    ]);
    expect(figures.progress.map(({ day, right: { count, n } }) => [day, count, n])).toEqual([
      ['2026-05-04', 2, 3],
      ['2026-05-05', 2, 2],
    ]);
    expect([median([4, 1, 3]), median([4, 1, 3, 10]), median([7])]).toEqual([3, 3.5, 7]);
  });

  test('are the same in any order of the attempts', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(attempts, { minLength: attempts.length }), (shuffled) => {
        expect(learnerFigures(prepared, course, shuffled, now)).toEqual(figures);
      }),
      { numRuns: 30, seed: 2 },
    );
  });

  test('of nobody are empty, and nobody is ready', () => {
    const empty = learnerFigures(prepared, course, [], now);
    expect(empty).toMatchObject({ attempts: 0, progress: [], confusion: { agreement: undefined } });
    expect(empty.readiness.every(({ rule }) => rule === 'looks')).toBe(true);
  });
});
