import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aFind, findArbitrary, tellingOf } from '../../../tests/support/finds.ts';
import { answersOf, streambank } from '../../../tests/support/streambank.ts';
import { readInquiry } from '../../key/index.ts';
import { SessionStore } from '../../session/index.ts';
import {
  answeredAnew,
  answersIn,
  doubtful,
  FindError,
  type FindPhoto,
  type FindProblem,
  findOf,
  isDay,
  isStamp,
  lacks,
  readFind,
  stampOf,
  writeFind,
} from './index.ts';

const NOW = '2026-09-14T09:40:00-05:00';
const ID = '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a01';

describe('a find made from a session', () => {
  const { snapshot } = answersOf('giant-reed');
  const find = findOf(snapshot, tellingOf('en'), { id: ID, now: NOW });

  test('has the trail in the order of the answers, in words, and what follows from it', () => {
    expect(find.trail.map(({ character }) => character)).toEqual(snapshot.trail.map(({ character }) => character));
    expect(find.trail.every(({ words, label }) => words !== '' && label !== '')).toBe(true);
    expect(find.verdict).toMatchObject({ kind: 'settled', taxa: ['arundo-donax'] });
    expect(find.verdict.probability).toBe(find.standing[0]?.probability);
    expect(find.standing.every(({ probability }) => probability >= 0.005)).toBe(true);
  });

  test('leads back to the same answers, and to the same standing', () => {
    const answers = readInquiry(streambank(), {
      month: find.month,
      observer: find.observer,
      answers: answersIn(find),
    }).answers;
    const again = new SessionStore(streambank(), { month: find.month, observer: find.observer, trail: answers });
    expect(again.snapshot.identification.standing).toEqual(snapshot.identification.standing);
  });

  test('tells how long an answer took, to a tenth of a second, where it was timed', () => {
    let now = 0;
    const store = new SessionStore(streambank(), { month: 7, clock: () => now });
    now = 12_345;
    store.request('answer', { answer: { character: 'growth-form', states: ['grass'], sureness: 'think' } });
    store.request('answer', { answer: { character: 'sap', skipped: true } });
    const { trail } = findOf(store.snapshot, tellingOf('es'), { id: ID, now: NOW });
    expect(trail.map(({ seconds, sureness, skipped }) => [seconds, sureness, skipped])).toEqual([
      [12.3, 'think', undefined],
      [0, undefined, true],
    ]);
    expect(find.trail.every(({ seconds }) => seconds === undefined)).toBe(true);
  });

  test('keeps what a person said of the place when answers change afterwards', () => {
    const full = aFind({ remarks: 'By the old bridge', changed: NOW });
    const later = answeredAnew(full, answersOf('arrow-arum').snapshot, tellingOf('en'), '2026-09-14T10:00:00-05:00');
    expect(later).toMatchObject({ id: full.id, made: full.made, place: full.place, remarks: 'By the old bridge' });
    expect(later.verdict.taxa[0]).toBe('peltandra-virginica');
    expect(later.changed).not.toBe(full.changed);
  });
});

describe('a find as a file', () => {
  test('is read back as it was, whatever is in it, and written the same way again', () => {
    fc.assert(
      fc.property(findArbitrary, (find) => {
        const text = writeFind(find);
        const again = readFind(text);
        expect(again).toEqual(find);
        expect(writeFind(again)).toBe(text);
      }),
      { numRuns: 200 },
    );
  });

  test('holds photographs of many megabytes', () => {
    const [photo] = aFind().photos;
    const photos = [1, 2, 3].map((n) => ({ ...(photo as FindPhoto), id: `p${n}`, data: 'A'.repeat(8_000_000) }));
    const find = aFind({ photos });
    expect(readFind(writeFind(find))).toEqual(find);
    expect(() => readFind(writeFind(aFind()).replace('aGVsbG8=', 'aGV=bG8='))).toThrow('photos[0].data');
    expect(() => readFind(writeFind(aFind()).replace('aGVsbG8=', 'aGVsbG8'))).toThrow('photos[0].data');
  });

  test('does not depend on the order in which fields were set', () => {
    const find = aFind();
    const turned = Object.fromEntries(Object.entries(find).reverse());
    expect(writeFind(turned as unknown as typeof find)).toBe(writeFind(find));
  });

  const faultsOf = (text: string): readonly FindProblem[] => {
    try {
      readFind(text);
      return [];
    } catch (error) {
      if (error instanceof FindError) return error.problems;
      throw error;
    }
  };
  /** The find with one field set, by its path; undefined takes it out. */
  const broken = (path: readonly (string | number)[], value: unknown): string => {
    const content = JSON.parse(writeFind(aFind()));
    const last = path.at(-1) as string;
    let at = content;
    for (const step of path.slice(0, -1)) at = at[step];
    if (value === undefined) delete at[last];
    else at[last] = value;
    return JSON.stringify(content, undefined, 2);
  };

  test.each<[path: (string | number)[], value: unknown, at?: string]>([
    [['id'], 'no-uuid'],
    [['made'], '2026-02-30T10:00:00-05:00'],
    [['made'], '2026-09-14T10:00:00'],
    [['date'], '14.9.2026'],
    [['month'], 13],
    [['outside'], 1.5],
    [['place', 'lat'], 90.5, 'place.lat'],
    [['place', 'lon'], '-98', 'place.lon'],
    [['place', 'uncertainty'], 0, 'place.uncertainty'],
    [['place', 'uncertainty'], undefined, 'place.uncertainty'],
    [['place', 'altitude'], 3, 'place.altitude'],
    [['photos', 0, 'sha256'], 'ABC', 'photos[0].sha256'],
    [['photos', 0, 'data'], 'not base64!', 'photos[0].data'],
    [['photos', 0, 'type'], 'image', 'photos[0].type'],
    [['extent', 'grossArea'], { value: 2, unit: 'acres' }, 'extent.grossArea.unit'],
    [['extent', 'bankLength'], { value: 0, unit: 'm' }, 'extent.bankLength.value'],
    [['extent', 'bankLength'], { value: 3, unit: 'm', high: 2 }, 'extent.bankLength.high'],
    [['cover'], { scheme: 'daubenmire', class: 7 }, 'cover.class'],
    [['side'], 'north', 'side'],
    [['trail', 0, 'skipped'], true, 'trail[0]'],
    [['trail', 0, 'sureness'], undefined, 'trail[0].sureness'],
    [['trail', 1, 'character'], 'growth-form', 'trail[1].character'],
    [['review'], { status: 'confirmed', by: 'R. Example', date: '2026-09-20' }, 'review.taxon'],
    [['consent'], undefined, 'consent'],
    [['shoeSize'], 44, 'shoeSize'],
  ])('%j set to %j is refused, and where it stands is told', (path, value, at = path.join('.')) => {
    const problems = faultsOf(broken(path, value));
    expect(problems.map((one) => one.path)).toContain(at);
    expect(problems.every(({ line }) => line !== undefined && line > 0)).toBe(true);
  });

  test('is refused with every fault at once, and its line', () => {
    const text = broken(['place', 'lat'], 100).replace(/"month": \d+/, '"month": 0');
    const [month, lat] = faultsOf(text);
    expect([month?.path, lat?.path]).toEqual(['month', 'place.lat']);
    expect(text.split('\n')[(month?.line ?? 0) - 1]).toContain('"month": 0');
    expect(text.split('\n')[(lat?.line ?? 0) - 1]).toContain('"lat": 100');
  });

  test.each([
    ['', '(file)'],
    ['[]', '(file)'],
    ['{"id": 1, "id": 2}', 'id'],
    ['{"__proto__": {}}', '__proto__'],
    ['['.repeat(50), ''],
  ])('%j is no find', (text) => {
    expect(() => readFind(text)).toThrow(FindError);
  });

  test('of a later edition is told to be one, and nothing else', () => {
    const problems = faultsOf(JSON.stringify({ format: 2, anything: 'new' }));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ path: 'format', found: '2' });
    expect(problems[0]?.expected).toContain('later edition');
  });

  test('names are no way into the objects of the language', () => {
    expect(faultsOf(broken(['toString'], 'x')).map(({ path }) => path)).toEqual(['toString']);
    expect(() => readFind(broken(['consent', 'hasOwnProperty'], true))).toThrow('consent.hasOwnProperty');
  });
});

describe('a find that is to be sent', () => {
  const bare = findOf(answersOf('giant-reed').snapshot, tellingOf('en'), { id: ID, now: NOW });

  test('lacks four things at first: photographs, a place and a date, beside the result', () => {
    const empty = findOf(new SessionStore(streambank(), { month: 7 }).snapshot, tellingOf('en'), { id: ID, now: NOW });
    expect(lacks(empty)).toEqual(['result', 'photos', 'place', 'date']);
    expect(lacks(bare)).toEqual(['photos', 'place', 'date']);
    expect(lacks(aFind())).toEqual([]);
    const { place, date } = aFind();
    expect(lacks({ ...bare, ...(place ? { place } : {}), ...(date ? { date } : {}), noPhotos: 'too dark' })).toEqual(
      [],
    );
    expect(lacks({ ...aFind(), photos: [], noPhotos: '  ' })).toEqual(['photos']);
  });

  test('needs a plant and an effort where somebody looked and saw none, and neither answers nor a photograph', () => {
    const none = { ...aFind({ detected: false }), photos: [], trail: [] };
    expect(lacks(none)).toEqual(['sought', 'effort']);
    const sought = { taxon: 'arundo-donax', name: 'Arundo donax' };
    expect(lacks({ ...none, sought, effort: 'Walked 200 m of bank' })).toEqual([]);
  });

  test('is asked about again where more ground stands full than is to be searched, in whatever units', () => {
    const of = (infested: number, unit: 'ft2' | 'm2' | 'acre') =>
      doubtful(aFind({ extent: { grossArea: { value: 1, unit: 'acre' }, infestedArea: { value: infested, unit } } }));
    expect(of(43_560, 'ft2')).toEqual([]);
    expect(of(43_600, 'ft2')).toEqual(['area']);
    expect(of(4046, 'm2')).toEqual([]);
    expect(of(4047, 'm2')).toEqual(['area']);
    expect(
      doubtful(aFind({ consent: { contact: true, exactPlace: true, photos: true }, contact: { name: 'A' } })),
    ).toEqual(['contact']);
  });
});

describe('dates', () => {
  test.each([
    ['2026-06-14', true],
    ['2024-02-29', true],
    ['2026-02-29', false],
    ['2000-02-29', true],
    ['1900-02-29', false],
    ['2026-13-01', false],
    ['2026-6-14', false],
    ['2026-06-31', false],
  ])('%s is a day: %s', (text, is) => expect(isDay(text)).toBe(is));

  // ISO 8601 from memory.
  test.each([
    ['2026-06-14T09:40-05:00', true],
    ['2026-06-14T09:40:12.5Z', true],
    ['2026-06-14T24:00-05:00', false],
    ['2026-06-14T09:61Z', false],
    ['2026-06-14T09:40', false],
    ['2026-06-14', false],
  ])('%s has a time and an offset: %s', (text, is) => expect(isStamp(text)).toBe(is));

  test('a moment is written as the clock on the wall shows it', () => {
    const ms = Date.UTC(2026, 5, 14, 2, 40, 5);
    expect(stampOf(ms, -300)).toBe('2026-06-13T21:40:05-05:00');
    expect(stampOf(ms, 345)).toBe('2026-06-14T08:25:05+05:45');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4e12 }), fc.integer({ min: -720, max: 840 }), (at, offset) => {
        const stamp = stampOf(at, offset);
        expect(isStamp(stamp)).toBe(true);
        expect(Date.parse(stamp)).toBe(at - (at % 1000));
      }),
    );
  });
});
