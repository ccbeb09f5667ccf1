// What a crew's files tell whoever leads it.
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { attempt, DAY, idOf, record, START } from '../../../tests/support/attempts.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import { learnerFigures } from '../learner/figures.ts';
import type { Attempt, PracticeRecord } from '../types.ts';
import { type CrewFigures, crewFigures, LEAST_READINGS } from './crew.ts';
import { attemptsCsv, plantsCsv } from './csv.ts';

const prepared = streambank();
const course = strictCourse(courses.courses[0] as LooseCourse);
const now = START + 3 * DAY;
const [REED, SWITCHGRASS, GAMAGRASS] = ['arundo-donax', 'panicum-virgatum', 'tripsacum-dactyloides'] as const;
const [ANN, BEA, CAL] = [idOf(0xa), idOf(0xb), idOf(0xc)] as const;
const figuresOf = (records: readonly PracticeRecord[]) => crewFigures(prepared, course, records, now);

const read = (n: number, said: string): Attempt =>
  attempt(n, SWITCHGRASS, {
    ...{ kind: 'read', item: 'character:growth-form', character: 'growth-form', options: ['tall-cane', 'grass'] },
    ...{ truth: 'grass', said, right: said === 'grass' },
  });
const plot = (n: number, seed: number, truth: string, said: string): Attempt =>
  attempt(n, REED, {
    ...{ kind: 'cover', item: `cover:${truth}`, specimen: { taxon: REED, month: 8, seed } },
    ...{ options: ['1', '2', '3', '4', '5', '6'], truth, said, right: said === truth },
  });
/** The same specimen for whoever is asked. */
const shared = (n: number, seed: number, truth: string, said: string, more: Partial<Attempt> = {}) =>
  attempt(n, truth, { specimen: { taxon: truth, month: 8, seed }, options: [REED, SWITCHGRASS], said, ...more });

/** The figures with every number rounded: sums in another order may differ in the last bits. */
const rounded = (figures: CrewFigures): unknown =>
  JSON.parse(
    JSON.stringify(figures, (_, value: unknown) => (value instanceof Map ? [...value] : value)),
    (_, value) => (typeof value === 'number' ? Math.round(value * 1e12) / 1e12 : value),
  );

describe('the files of a crew', () => {
  const ann = record([attempt(1, REED), attempt(2, SWITCHGRASS, { said: REED }), read(3, 'tall-cane')], {
    name: 'Ann',
  });
  const more = record([attempt(1, REED), attempt(4, REED, { day: 1 })], { name: 'Ann' });
  const bea = record([attempt(1, GAMAGRASS), attempt(2, REED)], { id: BEA, name: 'Bea' });
  const files = [
    ann,
    more,
    bea,
    record([attempt(9, REED)], { id: CAL, name: '' }),
    record([], { id: CAL, key: 'other', name: 'Cal' }),
  ];

  test('of the same person are one person, and no look counts twice', () => {
    const { members } = figuresOf([ann, more, ann, bea]);
    expect(members.map(({ name }) => name)).toEqual(['Ann', 'Bea']);
    expect(members[0]?.figures).toEqual(
      learnerFigures(prepared, course, [...ann.attempts, attempt(4, REED, { day: 1 })], now),
    );
    expect(rounded(figuresOf([ann, ann]))).toEqual(rounded(figuresOf([ann])));
  });

  test('of another key are told and not counted', () => {
    const { members, otherKey, lessons } = figuresOf(files);
    expect(members.map(({ id }) => id)).toEqual([ANN, BEA, CAL]);
    expect(otherKey).toEqual([{ id: CAL, name: 'Cal', key: 'other' }]);
    const wrong = [1, 2, 3, 4, 5].map((n) => attempt(n, REED, { said: SWITCHGRASS }));
    expect(lessons).toEqual([]);
    expect(figuresOf([...files, record(wrong, { id: CAL, key: 'other' })]).lessons).toEqual([]);
  });

  test('that tell one look differently are told', () => {
    expect(figuresOf([ann, record([attempt(1, REED, { seconds: 3 })])]).conflicts).toEqual([idOf(1)]);
    expect(figuresOf(files).conflicts).toEqual([]);
  });

  test('tell the same in any order', () => {
    const once = rounded(figuresOf(files));
    fc.assert(
      fc.property(fc.shuffledSubarray(files, { minLength: files.length }), (shuffled) => {
        expect(rounded(figuresOf(shuffled))).toEqual(once);
      }),
      { numRuns: 20, seed: 4 },
    );
  });
});

describe('what to teach', () => {
  const taken = [1, 2].map((n) => attempt(n, SWITCHGRASS, { said: REED }));
  const missed = [3, 4, 5, 6].map((n) => attempt(n, GAMAGRASS, { said: SWITCHGRASS }));
  const right = [7, 8].map((n) => attempt(n, SWITCHGRASS));

  test('is pooled over all, natives called invasive before what is merely missed more often', () => {
    const { lessons } = figuresOf([
      record([...taken, right[0] as Attempt]),
      record([...missed, right[1] as Attempt], { id: BEA }),
    ]);
    expect(lessons.map(({ of, ids, alarms, wrong: { count, n } }) => [of, ids, alarms, count, n])).toEqual([
      ['taxon', [SWITCHGRASS], 2, 2, 4],
      ['pair', [SWITCHGRASS, GAMAGRASS], 0, 4, 4],
      ['taxon', [GAMAGRASS], 0, 4, 4],
    ]);
  });

  test('is nothing that was looked at three times, or that is nearly always right', () => {
    const some = [1, 2, 3].map((n) => attempt(n, SWITCHGRASS, { said: REED }));
    const most = Array.from({ length: 20 }, (_, n) => attempt(n + 10, REED, { said: n < 2 ? 'unsure' : REED }));
    expect(figuresOf([record([...some, ...most])]).lessons).toEqual([]);
  });
});

describe('a character to avoid', () => {
  // Of the growth form the key expects 0.08 of readings to be wrong, as if it had seen 20: with all of ten wrong the lower
  // end of the interval lies far above.
  const wrong = (n: number) => Array.from({ length: n }, (_, i) => read(i + 1, 'tall-cane'));

  test('is one that the whole crew misreads surely more often than the key believes', () => {
    const half = LEAST_READINGS / 2;
    const { avoid } = figuresOf([record(wrong(half)), record(wrong(half), { id: BEA })]);
    expect(avoid).toMatchObject([
      { character: 'growth-form', key: 0.08, wrong: { n: LEAST_READINGS, count: LEAST_READINGS } },
    ]);
    expect(avoid[0]?.wrong.low).toBeGreaterThan(0.08);
  });

  test('is none that was read fewer times, however often wrongly', () => {
    expect(figuresOf([record(wrong(LEAST_READINGS - 1))]).avoid).toEqual([]);
  });

  test('is none that is misread about as often as the key believes', () => {
    const some = Array.from({ length: 25 }, (_, n) => read(n + 1, n < 4 ? 'tall-cane' : 'grass'));
    expect(figuresOf([record(some)]).avoid).toEqual([]);
  });
});

describe('whether two say the same', () => {
  const of = (ann: readonly Attempt[], bea: readonly Attempt[]) =>
    figuresOf([record(ann, { name: 'Ann' }), record(bea, { id: BEA, name: 'Bea' })]).between[0];

  // Four tasks: both say reed twice, both switchgrass once, once they differ. 3/4 agree; rows 3 and 1 of four, columns 2
  // and 2: by chance (3 · 2 + 1 · 2) / 16 = 1/2. Kappa is (3/4 - 1/2) / (1 - 1/2) = 1/2.
  test('is reckoned over the specimens that both named, as J. Cohen (1960) has it', () => {
    const ann = [REED, REED, SWITCHGRASS, REED].map((said, n) => shared(n + 1, n + 1, SWITCHGRASS, said));
    const bea = [REED, REED, SWITCHGRASS, SWITCHGRASS].map((said, n) => shared(n + 30, n + 1, SWITCHGRASS, said));
    const between = of(ann, [...bea, shared(50, 99, SWITCHGRASS, REED)]);
    expect(between?.members).toEqual([ANN, BEA]);
    expect(between?.agreement).toMatchObject({ n: 4, observed: 0.75, chance: 0.5, kappa: 0.5 });
  });

  test('takes a task for the same whose options stood in another order, and not one that asked otherwise', () => {
    const mine = shared(1, 1, SWITCHGRASS, REED);
    const turned = shared(30, 1, SWITCHGRASS, REED, { options: [SWITCHGRASS, REED] });
    expect(of([mine], [turned])?.agreement?.n).toBe(1);
    expect(of([mine], [{ ...turned, kind: 'pair' }])?.agreement).toBeUndefined();
    expect(of([mine], [{ ...turned, options: [SWITCHGRASS, REED, GAMAGRASS] }])?.agreement).toBeUndefined();
    expect(of([mine], [{ ...turned, specimen: { ...turned.specimen, month: 9 } }])?.agreement).toBeUndefined();
  });

  test('counts a task once, by the first reply', () => {
    const twice = [shared(1, 1, SWITCHGRASS, REED), shared(2, 1, SWITCHGRASS, SWITCHGRASS)];
    expect(of(twice, [shared(30, 1, SWITCHGRASS, REED)])?.agreement).toMatchObject({ n: 1, observed: 1 });
  });

  test('leaves out standings and characters, whose words are no names', () => {
    const standing = { kind: 'standing', truth: 'native', said: 'native', right: true } as const;
    const [ann, bea] = [1, 30].map((n) => [
      shared(n, 1, SWITCHGRASS, REED, standing),
      { ...read(n + 1, 'grass'), specimen: { taxon: SWITCHGRASS, month: 8 as const, seed: 5 } },
    ]);
    expect(of(ann as Attempt[], bea as Attempt[])?.agreement).toBeUndefined();
  });

  // Middles of classes 2, 3 and 4: 15, 37.5 and 62.5 percent. Differences 0 and 25, so 12.5 in the mean.
  test('is told of cover by the plots that both judged, in percent of the ground', () => {
    const ann = [plot(1, 1, '2', '2'), plot(2, 3, '4', '4'), plot(3, 5, '1', 'unsure')];
    const bea = [plot(30, 1, '2', '2'), plot(31, 3, '4', '3'), plot(32, 5, '1', '1'), plot(33, 1, '3', '1')];
    const between = of(ann, bea);
    expect(between?.cover.classes?.n).toBe(2);
    expect(between?.cover.difference?.mean).toBeCloseTo(12.5, 12);
    expect(between?.agreement).toBeUndefined();
  });
});

describe('the tables', () => {
  const trail = [{ character: 'growth-form', states: ['grass', 'rush-like'], sureness: 'sure' }] as const;
  const run = attempt(3, SWITCHGRASS, { kind: 'run', options: [], trail });
  const { sureness: _, ...unsure } = attempt(4, SWITCHGRASS, { said: 'unsure', test: idOf(0xff) });
  const attempts = [attempt(1, REED), read(2, 'grass'), run, unsure];
  const name = '=SUM("a",b)\nAnn';

  test('of looks hold every field of every attempt, as a reader of CSV reads them', () => {
    const rows: Record<string, string>[] = parse(attemptsCsv([record(attempts, { name })]), { columns: true });
    expect(rows).toHaveLength(attempts.length);
    const back = rows.map((row) => ({
      ...{ id: '', at: row.at, course: row.course, kind: row.kind, item: row.item },
      ...(row.test ? { test: row.test } : {}),
      specimen: { taxon: row.taxon, month: Number(row.month), seed: Number(row.seed) },
      ...(row.character ? { character: row.character } : {}),
      options: (row.options ?? '').split(' ').filter(Boolean),
      ...{ truth: row.truth, said: row.said, right: row.right === 'true', seconds: Number(row.seconds) },
      ...(row.sureness ? { sureness: row.sureness } : {}),
      ...(row.trail ? { trail: JSON.parse(row.trail) } : {}),
    }));
    expect(back).toEqual(attempts.map((one) => ({ ...one, id: '' })));
    expect(rows[0]).toMatchObject({ learner: ANN, name: `'${name}` });
  });

  test('of plants say who is ready for what, and why not', () => {
    const { members } = figuresOf([record(attempts, { name })]);
    const rows: Record<string, string>[] = parse(plantsCsv(course.id, members), { columns: true });
    expect(rows.map(({ taxon }) => taxon)).toEqual(course.taxa);
    expect(rows[0]).toMatchObject({
      name: `'${name}`,
      taxon: REED,
      ready: 'false',
      rule: 'looks',
      looks: '1',
      days: '1',
    });
    expect(rows[1]).toMatchObject({ looks: '0', recall: '' });
  });
});
