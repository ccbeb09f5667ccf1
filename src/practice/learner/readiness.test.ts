// The rule by which somebody can be trusted with a plant: each of its conditions, and who gets past it by calling everything
// by one name.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { attempt, DAY, idOf, START } from '../../../tests/support/attempts.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, type PassMark, strictCourse } from '../../key/courses/index.ts';
import { replay } from '../schedule/schedule.ts';
import type { Attempt } from '../types.ts';
import { type Readiness, readinessOf } from './readiness.ts';

const prepared = streambank();
const [REED, SWITCHGRASS, GAMAGRASS] = ['arundo-donax', 'panicum-virgatum', 'tripsacum-dactyloides'] as const;
const pass: PassMark = { right: 0.75, looks: 4, days: 2, alarms: 0 };
const given = strictCourse(courses.courses[0] as LooseCourse);
const course = {
  ...given,
  pass: new Map(given.taxa.map((taxon) => [taxon, pass])),
  test: { each: 2, kinds: given.kinds },
};

function of(taxon: string, attempts: readonly Attempt[], now = START + 2 * DAY): Readiness {
  const all = readinessOf(prepared, course, attempts, replay(prepared, attempts, now));
  return all.find((one) => one.taxon === taxon) as Readiness;
}

/** Right looks at a plant, two on each of two days, then two in a final test. */
const learnt = (taxon: string, from = 0): Attempt[] => [
  attempt(from + 1, taxon),
  attempt(from + 2, taxon),
  attempt(from + 3, taxon, { day: 1 }),
  attempt(from + 4, taxon, { day: 1 }),
  ...[5, 6].map((n) => attempt(from + n, taxon, { day: 1, test: idOf(0xff) })),
];
const mistaken = (n: number, truth: string, said: string, more = {}) => attempt(n, truth, { day: 1, said, ...more });
const taken = (n: number, more = {}) => mistaken(n, SWITCHGRASS, REED, more);

describe('the rule that decides', () => {
  test('nothing is missing', () => {
    expect(of(REED, learnt(REED))).toMatchObject({ ready: true, rule: 'ready', looks: 6, days: 2, alarms: 0 });
    expect(of(SWITCHGRASS, learnt(SWITCHGRASS))).toMatchObject({ ready: true, rule: 'ready' });
  });

  test('too few looks, be they all right', () => {
    expect(of(REED, learnt(REED).slice(0, 3))).toMatchObject({ ready: false, rule: 'looks', looks: 3 });
  });

  test('looks at others that were taken for it do not make up for looks at it', () => {
    expect(of(REED, [...learnt(REED).slice(0, 3), taken(20), taken(21)])).toMatchObject({ rule: 'looks', looks: 3 });
  });

  test('too few days', () => {
    const oneDay = [1, 2, 3, 4].map((n) => attempt(n, REED, { day: 1 }));
    expect(of(REED, oneDay)).toMatchObject({ rule: 'days', days: 1 });
  });

  test('a native that was called an invasive among the last looks, also when only its standing was said', () => {
    expect(of(SWITCHGRASS, [...learnt(SWITCHGRASS), taken(20)])).toMatchObject({ rule: 'alarm', alarms: 1 });
    const standing = { kind: 'standing', options: ['native', 'invasive'], truth: 'native' } as const;
    const wrong = mistaken(20, SWITCHGRASS, 'invasive', standing);
    expect(of(SWITCHGRASS, [...learnt(SWITCHGRASS), wrong])).toMatchObject({ rule: 'alarm', alarms: 1 });
  });

  test('the invasive that a native was taken for', () => {
    expect(of(REED, [...learnt(REED), taken(20)])).toMatchObject({ ready: false, rule: 'alarm', alarms: 1 });
  });

  test('as many alarms as the pass mark lets pass', () => {
    const lenient = { ...course, pass: new Map(given.taxa.map((taxon) => [taxon, { ...pass, alarms: 1 }])) };
    const attempts = [...learnt(REED), taken(20)];
    const [row] = readinessOf(prepared, lenient, attempts, replay(prepared, attempts, START + 2 * DAY));
    expect(row).toMatchObject({ taxon: REED, rule: 'ready', alarms: 1 });
  });

  test('too few of the last right: the plant missed, or others of its standing taken for it', () => {
    const missed = [20, 21].map((n) => mistaken(n, REED, SWITCHGRASS));
    expect(of(REED, [...learnt(REED), ...missed])).toMatchObject({ rule: 'share', right: { count: 2, n: 4 } });
    const named = [20, 21].map((n) => mistaken(n, GAMAGRASS, SWITCHGRASS));
    expect(of(SWITCHGRASS, [...learnt(SWITCHGRASS), ...named])).toMatchObject({ rule: 'share', alarms: 0 });
  });

  test('the share that is asked for is enough', () => {
    const one = [...learnt(REED), mistaken(20, REED, SWITCHGRASS)];
    expect(of(REED, one)).toMatchObject({ rule: 'ready', right: { count: 3, n: 4 } });
  });

  test('by now probably forgotten', () => {
    const late = of(REED, learnt(REED), START + 3000 * DAY);
    expect(late.rule).toBe('recall');
    expect(late.recall).toBeLessThan(0.8);
  });

  test('the final test not taken, or only that of another course', () => {
    const practised = learnt(REED).slice(0, 4);
    expect(of(REED, practised)).toMatchObject({ rule: 'no-test' });
    const other = learnt(REED).map((one) => ({ ...one, course: 'all' }));
    expect(of(REED, other)).toMatchObject({ rule: 'no-test' });
  });

  test('a mistake in the final test, though the last looks are right', () => {
    const again = [30, 31, 32, 33].map((n) => attempt(n, REED, { day: 1 }));
    const missed = mistaken(7, REED, SWITCHGRASS, { test: idOf(0xff) });
    expect(of(REED, [...learnt(REED), missed, ...again])).toMatchObject({ rule: 'test', right: { count: 4, n: 4 } });
    const natives = taken(7, { test: idOf(0xff) });
    const known = attempt(34, SWITCHGRASS, { day: 1 });
    expect(of(REED, [...learnt(REED), natives, ...again, known])).toMatchObject({ rule: 'test', alarms: 0 });
  });
});

describe('a second sitting of the final test', () => {
  const [first, second] = [idOf(0xff), idOf(0xfe)];

  test('that was broken off takes nothing from the plants that it did not ask', () => {
    const broken = attempt(40, SWITCHGRASS, { day: 1, test: second });
    expect(of(REED, [...learnt(REED), broken])).toMatchObject({ rule: 'ready' });
  });

  test('that was broken off half way through a plant leaves the sitting before it to count', () => {
    const failed = learnt(REED).map((one, n) => (n === 4 ? mistaken(5, REED, SWITCHGRASS, { test: first }) : one));
    const again = [30, 31, 32].map((n) => attempt(n, REED, { day: 1 }));
    const once = attempt(40, REED, { day: 1, test: second });
    const twice = attempt(41, REED, { day: 1, test: second });
    expect(of(REED, [...failed, ...again, once])).toMatchObject({ rule: 'test' });
    expect(of(REED, [...failed, ...again, once, twice])).toMatchObject({ rule: 'ready' });
  });
});

describe('who calls every plant giant reed', () => {
  const called = (taxa: readonly string[], day: number) =>
    taxa.map((taxon, n) => attempt(day * 100 + n, taxon, { said: REED, day, test: idOf(0xff) }));

  test('is not ready for it after as many looks, on as many days, as are asked for', () => {
    const attempts = [0, 1, 2, 3, 4].flatMap((day) => called(course.taxa, day));
    expect(of(REED, attempts, START + 5 * DAY)).toMatchObject({ ready: false, rule: 'alarm', looks: 5, days: 5 });
  });

  test('is never ready for it, whatever mix of plants they meet, once a native was among them', () => {
    const rules = new Set<string>();
    const many = fc.array(fc.constantFrom(REED, REED, REED, ...course.taxa), { minLength: 20, maxLength: 60 });
    fc.assert(
      fc.property(many, many, (first, second) => {
        const attempts = [...called([SWITCHGRASS, ...first], 0), ...called(second, 1)];
        const row = of(REED, attempts);
        rules.add(row.rule);
        expect(row.ready).toBe(false);
      }),
      { numRuns: 60, seed: 7 },
    );
    expect(rules).toContain('alarm');
  });
});

test('the last looks make good what went wrong before them, once what was taken for it is known again', () => {
  const again = [30, 31, 32, 33].map((n) => attempt(n, REED, { day: 1 }));
  const attempts = [...learnt(REED), taken(20), ...again];
  expect(of(REED, attempts)).toMatchObject({ rule: 'alarm', alarms: 1, right: { count: 4, n: 5 } });
  expect(of(REED, [...attempts, attempt(40, SWITCHGRASS, { day: 1 })])).toMatchObject({ rule: 'ready', alarms: 0 });
});
