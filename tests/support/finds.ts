// Finds for tests: one whole invented one, and any that the form allows.
import fc from 'fast-check';
import { said } from '../../src/elements/shared/said.ts';
import { type KeyAnswer, translate } from '../../src/key/index.ts';
import {
  AREA_UNITS,
  BANKS,
  COVER_CLASSES,
  type Find,
  findOf,
  GROUND_UNITS,
  LANDS,
  MEASURED,
  PHENOLOGY,
  PLACED,
  REVIEWED,
  SIDES,
  stampOf,
  type Telling,
  TREATED,
  UPSTREAM,
} from '../../src/report/find/index.ts';
import { en } from '../../src/words/en.ts';
import { es } from '../../src/words/es.ts';
import { answersOf, streambank } from './streambank.ts';

/** How finds of the demonstration key are put into words. */
export function tellingOf(language: 'en' | 'es'): Telling {
  const words = language === 'es' ? es : en;
  const say = (sentence: string) => translate(streambank().key, language, sentence);
  return {
    language,
    say,
    said: (character, answer: KeyAnswer) => said(character, answer, { words, language, units: 'us', say }),
    skipped: words.trail.skipped,
  };
}

/** An invented find with everything in it but a review. Place and people do not exist. */
export function aFind(
  changes: Partial<Find> = {},
  plant: Parameters<typeof answersOf>[0] = 'giant-reed',
  language: 'en' | 'es' = 'en',
): Find {
  const made = findOf(answersOf(plant).snapshot, tellingOf(language), {
    id: '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a01',
    now: '2026-09-14T09:40:00-05:00',
  });
  return {
    ...made,
    trail: made.trail.map((answer, i) => ({ ...answer, seconds: 4 + i })),
    date: '2026-09-14',
    place: { lat: 30.2612, lon: -98.8721, uncertainty: 12, source: 'device', words: 'Gate by the second low crossing' },
    photos: [
      {
        id: 'p1',
        wants: 'whole',
        type: 'image/jpeg',
        width: 1600,
        height: 1200,
        bytes: 5,
        sha256: 'a'.repeat(64),
        hiddenDataKept: false,
        caption: 'The stand from the water',
        data: 'aGVsbG8=',
      },
    ],
    extent: {
      bankLength: { value: 120, unit: 'ft' },
      width: { value: 15, unit: 'ft' },
      grossArea: { value: 0.5, unit: 'acre' },
      infestedArea: { value: 1800, unit: 'ft2' },
      how: 'paced',
    },
    cover: { scheme: 'daubenmire', class: 5 },
    height: { value: 12, unit: 'ft', high: 16 },
    phenology: 'flower',
    bank: 'waterline',
    side: 'left',
    upstream: 'seen',
    treated: 'yes',
    treatedNote: 'Mowed in spring',
    land: 'own',
    access: 'Call first; the dog is kind',
    contact: { name: 'Ana Beispiel', phone: '555-0142', email: 'ana@example.org' },
    consent: { contact: true, exactPlace: true, photos: true },
    remarks: 'It came with the flood two years ago.',
    ...changes,
  };
}

const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/);
/** Any text that is whole characters, with what breaks tables, pages and readers. */
const words = (maxLength: number, minLength = 1) =>
  fc.oneof(
    fc.string({ unit: 'grapheme', minLength, maxLength: maxLength / 10 }).filter((one) => one.length <= maxLength),
    fc.constantFrom(
      '=HYPERLINK("x")',
      '@SUM(1,2)',
      '+1',
      '-1',
      'a "quoted", text\r\nin two lines',
      '<script>alert(1)</script>&amp;',
      '\u202eright to left',
      'שלום, مرحبا',
      '🌾👩🏽‍🌾',
      '\ttab',
      "l'eau",
      '日本, 川',
    ),
  );
const probability = fc.double({ min: 0, max: 1, noNaN: true }).map((p) => (p === 0 ? 0 : p));
const size = fc.double({ min: 0.001, max: 1e6, noNaN: true });
const measure = <U extends string>(units: readonly U[]) =>
  fc
    .record({ value: size, unit: fc.constantFrom(...units), more: fc.option(size, { nil: undefined }) })
    .map(({ value, unit, more }) => ({ value, unit, ...(more === undefined ? {} : { high: value + more }) }));
const stamp = fc
  .tuple(fc.integer({ min: 0, max: 4_000_000_000 }), fc.integer({ min: -720, max: 840 }))
  .map(([seconds, offset]) => stampOf(seconds * 1000, offset));
const date = fc.oneof(
  stamp,
  stamp.map((one) => one.slice(0, 10)),
);
const point = {
  lat: fc.double({ min: -90, max: 90, noNaN: true }).map((x) => x + 0),
  lon: fc.double({ min: -180, max: 180, noNaN: true }).map((x) => x + 0),
  uncertainty: size,
};
const optional = <T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }, needed: (keyof T)[] = []) =>
  fc.record(model, { requiredKeys: needed as never }) as unknown as fc.Arbitrary<T>;

const answer = fc
  .tuple(
    fc.record({ character: id, label: words(500), words: words(5000) }),
    fc.oneof(
      fc.record({
        states: fc.uniqueArray(id, { minLength: 1, maxLength: 4 }),
        sureness: fc.constantFrom('sure', 'think', 'guess'),
      }),
      fc.record({
        value: measure(['mm', 'cm', 'm', 'in', 'ft']),
        sureness: fc.constantFrom('sure', 'think', 'guess'),
      }),
      fc.constant({ skipped: true }),
    ),
    fc.option(fc.double({ min: 0, max: 1e5, noNaN: true }), { nil: undefined }),
  )
  .map(([base, said, seconds]) => ({ ...base, ...said, ...(seconds === undefined ? {} : { seconds: seconds + 0 }) }));

/** Any find that the form allows. */
export const findArbitrary = fc.record(
  {
    format: fc.constant(1),
    id: fc.uuid(),
    made: stamp,
    changed: stamp,
    language: fc.constantFrom('en', 'es', 'es-MX'),
    key: fc.record({ id, version: id, hash: id, title: words(500) }, { requiredKeys: ['id', 'version', 'title'] }),
    month: fc.integer({ min: 1, max: 12 }),
    observer: id,
    trail: fc.uniqueArray(answer, { maxLength: 8, selector: ({ character }) => character }),
    standing: fc.array(fc.record({ taxon: id, name: words(500), probability }), { maxLength: 12 }),
    outside: probability,
    verdict: fc.record({
      kind: fc.constantFrom('settled', 'leaning', 'open', 'outside'),
      taxa: fc.array(id, { maxLength: 5 }),
      probability,
      concern: probability,
    }),
    detected: fc.boolean(),
    sought: fc.record({ taxon: id, name: words(500) }),
    date,
    place: fc.record(
      { ...point, source: fc.constantFrom(...PLACED), coarse: fc.record(point), words: words(5000) },
      { requiredKeys: ['lat', 'lon', 'uncertainty', 'source'] },
    ),
    photos: fc.uniqueArray(
      fc.record(
        {
          id,
          wants: id,
          type: fc.constantFrom('image/jpeg', 'image/webp'),
          width: fc.integer({ min: 1, max: 9000 }),
          height: fc.integer({ min: 1, max: 9000 }),
          bytes: fc.integer({ min: 1, max: 1e7 }),
          sha256: fc.stringMatching(/^[0-9a-f]{64}$/),
          hiddenDataKept: fc.boolean(),
          caption: words(1000),
          data: fc.base64String({ maxLength: 40 }),
        },
        { requiredKeys: ['id', 'type', 'width', 'height', 'bytes', 'sha256', 'hiddenDataKept'] },
      ),
      { maxLength: 3, selector: (one) => one.id },
    ),
    noPhotos: words(2000, 0),
    extent: optional({
      bankLength: measure(GROUND_UNITS),
      width: measure(GROUND_UNITS),
      grossArea: measure(AREA_UNITS),
      infestedArea: measure(AREA_UNITS),
      how: fc.constantFrom(...MEASURED),
    }),
    cover: fc.record({ scheme: fc.constant('daubenmire'), class: fc.constantFrom(...COVER_CLASSES) }),
    height: measure(['m', 'ft']),
    phenology: fc.constantFrom(...PHENOLOGY),
    bank: fc.constantFrom(...BANKS),
    side: fc.constantFrom(...SIDES),
    upstream: fc.constantFrom(...UPSTREAM),
    treated: fc.constantFrom(...TREATED),
    treatedNote: words(5000, 0),
    land: fc.constantFrom(...LANDS),
    access: words(5000, 0),
    contact: optional({ name: words(500), phone: words(100), email: words(500) }),
    consent: fc.record({ contact: fc.boolean(), exactPlace: fc.boolean(), photos: fc.boolean() }),
    remarks: words(5000, 0),
    effort: words(5000, 0),
    review: fc.record(
      {
        status: fc.constantFrom(...REVIEWED),
        taxon: fc.oneof(id, fc.constant('outside')),
        name: words(500),
        by: words(500),
        date,
        remarks: words(5000),
        wanted: fc.array(words(500), { maxLength: 3 }),
      },
      { requiredKeys: ['status', 'taxon', 'by', 'date'] },
    ),
  },
  {
    requiredKeys: [
      'format',
      'id',
      'made',
      'changed',
      'language',
      'key',
      'month',
      'observer',
      'trail',
      'standing',
      'outside',
      'verdict',
      'detected',
      'photos',
      'consent',
    ],
  },
) as unknown as fc.Arbitrary<Find>;
