// The form of a find, field by field. The order is the one in which it is written.
import { SURENESS, type Sureness, type VerdictKind } from '../../engine/index.ts';
import type { Month, Unit } from '../../key/index.ts';
import { isDay, isStamp } from './dates.ts';
import { flag, listOf, maybe, number, object, oneOf, type Reader, text, textThat } from './reader.ts';
import {
  BANKS,
  COVER_CLASSES,
  type Extent,
  type Find,
  type FindPhoto,
  FORMAT,
  LANDS,
  MEASURED,
  type Measure,
  PHENOLOGY,
  PLACED,
  type Place,
  type Point,
  REVIEWED,
  type Review,
  SIDES,
  TREATED,
  type TrailAnswer,
  UPSTREAM,
} from './types.ts';
import { AREA_UNITS, GROUND_UNITS } from './units.ts';

const UUID = /^[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}$/i;
const TAG = /^[a-z]{2,8}(-[a-z\d]{1,8})*$/i;
const TYPE = /^[a-z]+\/[a-z\d.+-]+$/;
/** Searched for what does not belong: to match the whole of a photograph would take more stack than there is. */
const isBase64 = (data: string): boolean => data.length % 4 === 0 && !/[^A-Za-z\d+/]/.test(data.replace(/={1,2}$/, ''));

const id = text(200);
const line = text(500);
const prose = text(10_000);
const probability = number({ least: 0, most: 1 });
const stamp = textThat(isStamp, 'a time with its offset, as 2026-06-14T09:40:00-05:00');
const date = textThat((one) => isDay(one) || isStamp(one), 'a day as 2026-06-14, or a time with its offset');

const UNITS: readonly Unit[] = ['mm', 'cm', 'm', 'in', 'ft', 'count'];
const MONTHS: readonly Month[] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const KINDS: readonly VerdictKind[] = ['settled', 'leaning', 'open', 'outside'];

/** A size; a count may be none. */
const measure = <U extends string>(units: readonly U[]): Reader<Measure<U>> =>
  object<Measure<U>>(
    {
      value: number({ least: 0, most: 1e9 }),
      unit: oneOf<U>(units),
      high: maybe(number({ over: 0, most: 1e9 })),
    } as never,
    ({ value, unit, high }, at, faults) => {
      if (value === 0 && unit !== 'count') faults.wrong([...at, 'value'], 'a size above zero', value);
      if (high !== undefined && high < value) faults.wrong([...at, 'high'], `at least the value, ${value}`, high);
    },
  );

const answer = object<TrailAnswer>(
  {
    character: id,
    label: line,
    states: maybe(listOf(id, 100, 1)),
    value: maybe(measure(UNITS)),
    skipped: maybe(oneOf([true])),
    sureness: maybe(oneOf(Object.keys(SURENESS) as Sureness[])),
    seconds: maybe(number({ least: 0, most: 1e7 })),
    words: text(5000, 0),
  },
  ({ states, value, skipped, sureness }, at, faults) => {
    if ([states, value, skipped].filter((one) => one !== undefined).length !== 1)
      faults.note(at, 'exactly one of states, value and skipped', 'none, or several');
    if ((sureness === undefined) !== (skipped === true))
      faults.wrong([...at, 'sureness'], skipped ? 'nothing, since it was skipped' : 'how sure the answer is', sureness);
  },
);

const point = {
  lat: number({ least: -90, most: 90 }),
  lon: number({ least: -180, most: 180 }),
  uncertainty: number({ over: 0, most: 21_000_000 }),
};
const place = object<Place>({
  ...point,
  source: oneOf(PLACED),
  coarse: maybe(object<Point>(point)),
  words: maybe(prose),
});

const extent = object<Extent>({
  bankLength: maybe(measure(GROUND_UNITS)),
  width: maybe(measure(GROUND_UNITS)),
  grossArea: maybe(measure(AREA_UNITS)),
  infestedArea: maybe(measure(AREA_UNITS)),
  how: maybe(oneOf(MEASURED)),
});

const photo = object<FindPhoto>({
  id,
  wants: maybe(id),
  type: textThat((one) => TYPE.test(one), 'a media type, as image/jpeg'),
  width: number({ least: 1, most: 100_000, whole: true }),
  height: number({ least: 1, most: 100_000, whole: true }),
  bytes: number({ least: 1, most: 1e9, whole: true }),
  sha256: textThat((one) => /^[\da-f]{64}$/.test(one), '64 hexadecimal digits'),
  hiddenDataKept: flag,
  caption: maybe(text(1000, 0)),
  data: maybe(textThat(isBase64, 'base64', 40_000_000)),
});

const review = object<Review>(
  {
    status: oneOf(REVIEWED),
    taxon: maybe(id),
    name: maybe(line),
    by: line,
    date,
    remarks: maybe(prose),
    wanted: maybe(listOf(line, 50)),
  },
  ({ status, taxon }, at, faults) => {
    if (status !== 'photo-wanted' && taxon === undefined)
      faults.note([...at, 'taxon'], 'the plant that it is, or outside', 'nothing');
  },
);

/** A find in the form that is written now. */
export const findForm: Reader<Find> = object<Find>(
  {
    format: oneOf([FORMAT]),
    id: textThat((one) => UUID.test(one), 'a UUID'),
    made: stamp,
    changed: stamp,
    language: textThat((one) => TAG.test(one), 'a language tag'),
    key: object<Find['key']>({ id, version: id, hash: maybe(id), title: line }),
    month: oneOf(MONTHS),
    observer: id,
    trail: listOf(answer, 2000),
    standing: listOf(object<Find['standing'][number]>({ taxon: id, name: line, probability }), 12),
    outside: probability,
    verdict: object<Find['verdict']>({ kind: oneOf(KINDS), taxa: listOf(id, 50), probability, concern: probability }),
    detected: flag,
    sought: maybe(object<Exclude<Find['sought'], undefined>>({ taxon: id, name: line })),
    date: maybe(date),
    place: maybe(place),
    photos: listOf(photo, 50),
    noPhotos: maybe(text(2000, 0)),
    extent: maybe(extent),
    cover: maybe(
      object<Exclude<Find['cover'], undefined>>({ scheme: oneOf(['daubenmire']), class: oneOf(COVER_CLASSES) }),
    ),
    height: maybe(measure(UNITS)),
    phenology: maybe(oneOf(PHENOLOGY)),
    bank: maybe(oneOf(BANKS)),
    side: maybe(oneOf(SIDES)),
    upstream: maybe(oneOf(UPSTREAM)),
    treated: maybe(oneOf(TREATED)),
    treatedNote: maybe(text(5000, 0)),
    land: maybe(oneOf(LANDS)),
    access: maybe(text(5000, 0)),
    contact: maybe(
      object<Exclude<Find['contact'], undefined>>({
        name: maybe(text(500, 0)),
        phone: maybe(text(100, 0)),
        email: maybe(text(500, 0)),
      }),
    ),
    consent: object<Find['consent']>({ contact: flag, exactPlace: flag, photos: flag }),
    remarks: maybe(text(10_000, 0)),
    effort: maybe(text(5000, 0)),
    review: maybe(review),
  },
  ({ trail, photos }, at, faults) => {
    once(trail, ({ character }) => character, [...at, 'trail'], 'character', faults);
    once(photos, (one) => one.id, [...at, 'photos'], 'id', faults);
  },
);

function once<T>(
  items: readonly T[],
  nameOf: (item: T) => string,
  at: readonly (string | number)[],
  field: string,
  faults: Parameters<Reader<unknown>>[2],
): void {
  const first = new Map<string, number>();
  items.forEach((item, i) => {
    const name = nameOf(item);
    const before = first.get(name);
    if (before !== undefined) faults.wrong([...at, i, field], `each once, but [${before}] has it too`, name);
    else first.set(name, i);
  });
}
