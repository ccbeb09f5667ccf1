// A find in words, in the order in which a specialist reads it, without saying how it is drawn.
import { formatMeasure, type Key, type Month, type System, systemOf, translate } from '../../key/index.ts';
import {
  COVER,
  convertLength,
  type Find,
  type FindPhoto,
  formatGround,
  groundUnitIn,
  type Measure,
  PHOTOS,
  type PhotoKind,
  sendable,
  toldPlace,
} from '../find/index.ts';
import { namedIn, reviewedName } from './named.ts';
import type { FormWords } from './words.ts';

export interface FormOptions {
  readonly find: Find;
  /** The key it was made with; without it plants go by their scientific names, and no cautions are known. */
  readonly key: Key | undefined;
  readonly words: FormWords;
  /** For lengths that the report adds; what a person gave stays in the unit it was given in. */
  readonly units: System;
}

export interface Section {
  readonly id: keyof FormWords['own']['heading'];
  readonly heading: string;
  readonly facts: readonly (readonly [label: string, value: string])[];
  readonly table?: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };
  readonly notes: readonly string[];
  readonly photos: readonly { readonly photo: FindPhoto; readonly title: string }[];
}

export interface Report {
  readonly language: string;
  readonly title: string;
  /** The plant it is about, for a heading or a mail's subject. */
  readonly plant: string;
  readonly date: string;
  /** What may be said, how sure it is, and who said it. */
  readonly lead: readonly string[];
  readonly cautions: { readonly heading: string; readonly items: readonly string[] };
  /** Those that have something to say. */
  readonly sections: readonly Section[];
}

/** Without signs that steer a terminal, a printer or the direction of writing: they could disguise what stands there. */
const plain = (text: string): string => text.replace(/(?![\n\t])[\p{Cc}\u202a-\u202e\u2066-\u2069]|\p{Cs}/gu, '');

/** All that a find tells, in words; what its person does not want told is not in it. */
export function reportOf({ find: whole, key: given, words, units }: FormOptions): Report {
  const find = sendable(whole);
  const key = given?.id === find.key.id ? given : undefined;
  const { own, common } = words;
  const locale = words.language;
  const held = toldPlace(whole)?.coarse === true;
  const nameOf = (id: string): string => {
    const named = namedIn(find, key, id);
    const { taxon, scientificName = id } = named ?? {};
    const shown = taxon?.common.get(locale)?.[0] ?? taxon?.common.get(key?.languages[0] ?? '')?.[0];
    return shown === undefined || shown === scientificName ? scientificName : `${shown} (${scientificName})`;
  };
  const [first] = aboutIn(find);
  const plant = first === undefined ? words.verdict.outside : nameOf(first);

  function section(
    id: Section['id'],
    parts: {
      facts?: [string, string | undefined][];
      table?: Section['table'];
      notes?: (string | undefined)[];
      photos?: Section['photos'];
    },
  ): Section[] {
    const facts = (parts.facts ?? []).flatMap(([label, value]): [string, string][] =>
      value === undefined || value.trim() === '' ? [] : [[label, plain(value)]],
    );
    const notes = (parts.notes ?? []).flatMap((note) => (note ? [plain(note)] : []));
    const table = parts.table && parts.table.rows.length > 0 ? parts.table : undefined;
    if (facts.length + notes.length === 0 && !table && !parts.photos?.length) return [];
    return [{ id, heading: own.heading[id], facts, notes, photos: parts.photos ?? [], ...(table ? { table } : {}) }];
  }

  return {
    language: locale,
    title: own.title,
    plant,
    date: find.date ?? find.made.slice(0, 10),
    lead: leadOf(find, words, nameOf),
    cautions: cautionsOf(find, key, words, nameOf),
    sections: [
      ...section('where', {
        facts: [
          [find.detected ? own.date : own.looked, find.date],
          [own.position, find.place && positionOf(find.place, words, units)],
          [own.way, find.place?.words],
          [own.effort, find.effort],
        ],
        notes: [held ? own.coarse : undefined, find.place ? undefined : own.noPlace],
      }),
      ...section('answers', {
        table: {
          head: [own.feature, own.answer, own.sure, own.time],
          rows: (find.detected ? find.trail : []).map(({ label, words: answer, sureness, seconds }) => [
            plain(label),
            plain(answer),
            sureness ? words.sureness[sureness] : '',
            seconds === undefined ? '' : timeOf(seconds, locale),
          ]),
        },
      }),
      ...section('standing', {
        table: {
          head: [own.plant, own.here, own.odds],
          rows: find.detected
            ? [
                ...find.standing.map(({ taxon, probability }) => {
                  const status = namedIn(find, key, taxon)?.taxon?.status;
                  return [plain(nameOf(taxon)), status ? common.status[status] : '', common.odds(probability)];
                }),
                [own.outside, '', common.odds(find.outside)],
              ]
            : [],
        },
      }),
      ...section('stand', { facts: standOf(find, words), notes: [] }),
      ...section('photos', {
        photos: find.photos.map((photo) => ({ photo, title: titleOf(photo, words) })),
        notes: [
          find.photos.length > 0 ? own.attached(find.photos.length) : find.detected ? own.noPhotos : undefined,
          find.photos.length > 0 ? undefined : find.noPhotos,
        ],
      }),
      ...section('person', {
        facts: [
          [own.name, find.contact?.name],
          [own.phone, find.contact?.phone],
          [own.email, find.contact?.email],
          [own.land, find.land && own.lands[find.land]],
          [own.access, find.access],
          [own.remarks, find.remarks],
        ],
        notes: [find.contact ? undefined : own.noContact],
      }),
      ...section('review', { facts: reviewOf(find, key, words, nameOf) }),
      ...section('about', {
        facts: [
          [
            own.key,
            `${find.key.title} (${find.key.id} ${find.key.version}${find.key.hash ? `, ${find.key.hash}` : ''})`,
          ],
          [own.month, common.months[find.month as Month]],
          [own.observer, words.observers.get(find.observer) ?? find.observer],
          [own.number, find.id],
          [own.made, find.made],
          [own.changed, find.changed === find.made ? undefined : find.changed],
        ],
      }),
    ],
  };
}

/** Ids of the plants that it may be; where none was seen, of the one that was looked for. */
const aboutIn = ({ detected, sought, verdict }: Find): readonly string[] =>
  detected || !sought ? verdict.taxa : [sought.taxon];

function leadOf(find: Find, words: FormWords, nameOf: (id: string) => string): string[] {
  const { own, common, verdict: said } = words;
  const { kind, probability } = find.verdict;
  const names = aboutIn(find).map(nameOf);
  const [name = ''] = names;
  const answers = find.trail.filter(({ skipped }) => skipped !== true).length;
  const reviewed = find.review && find.review.status !== 'photo-wanted';
  const verdict = { settled: said.settled(name), leaning: said.leaning(name), open: said.open, outside: said.outside };
  return [
    ...(find.detected ? [verdict[kind]] : [own.notDetected(common.or(names))]),
    ...(find.detected && kind === 'open' && names.length > 0 ? [said.couldBe(common.or(names))] : []),
    ...(find.detected ? [own.chance(common.odds(probability), answers)] : []),
    ...(reviewed || !find.detected ? [] : [own.unconfirmed]),
  ].map(plain);
}

/** What holds for every result, and what holds if it is one of the plants it may be. */
function cautionsOf(
  find: Find,
  key: Key | undefined,
  { own, common, language }: FormWords,
  nameOf: (id: string) => string,
): Report['cautions'] {
  const say = (sentence: string) => (key ? translate(key, language, sentence) : sentence);
  const ofPlants = new Map<string, string[]>();
  for (const taxon of aboutIn(find))
    for (const { topic, text } of key?.guidance.get(taxon)?.statements ?? [])
      if (topic === 'safety') ofPlants.set(text, [...(ofPlants.get(text) ?? []), taxon]);
  return {
    heading: own.cautions,
    items: [
      ...(key?.cautions ?? []).map(say),
      ...[...ofPlants].map(([text, taxa]) => `${own.cautionsOf(common.or(taxa.map(nameOf)))}: ${say(text)}`),
    ].map(plain),
  };
}

function positionOf(
  { lat, lon, uncertainty, source }: NonNullable<Find['place']>,
  words: FormWords,
  units: System,
): string {
  // Rounded upwards in the unit that is shown: it is never told smaller than it is.
  const unit = groundUnitIn(uncertainty, 'm', units);
  const step = unit === 'm' || unit === 'ft' ? 1 : 0.1;
  const whole = Math.ceil(convertLength(uncertainty, 'm', unit) / step) * step;
  const distance = formatGround(whole, unit, { system: units, locale: words.language });
  return `${lat.toFixed(5)}, ${lon.toFixed(5)} (${words.own.within(distance)}, ${words.own.placed[source]})`;
}

const timeOf = (seconds: number, locale: string): string => {
  const long = seconds >= 90;
  return new Intl.NumberFormat(locale, {
    style: 'unit',
    unit: long ? 'minute' : 'second',
    unitDisplay: 'short',
    maximumFractionDigits: 0,
  }).format(long ? seconds / 60 : seconds);
};

const ranged = <U extends string>(
  { value, unit, high }: Measure<U>,
  say: (value: number, unit: U) => string,
): string => (high === undefined || high === value ? say(value, unit) : `${say(value, unit)} – ${say(high, unit)}`);

function standOf(find: Find, { own, language: locale }: FormWords): [string, string | undefined][] {
  const { extent = {}, cover, height, phenology, bank, side, upstream, treated, treatedNote } = find;
  const ground = (size: Measure<'m' | 'ft' | 'yd' | 'km' | 'mi' | 'm2' | 'ft2' | 'acre' | 'ha'> | undefined) =>
    size &&
    ranged(size, (value, unit) =>
      formatGround(value, unit, { system: ['m', 'km', 'm2', 'ha'].includes(unit) ? 'metric' : 'us', locale }),
    );
  return [
    [own.bankLength, ground(extent.bankLength)],
    [own.width, ground(extent.width)],
    [own.grossArea, ground(extent.grossArea)],
    [own.infestedArea, ground(extent.infestedArea)],
    [own.how, extent.how && own.measured[extent.how]],
    [own.cover, cover && own.coverClass(cover.class, ...COVER[cover.class])],
    [
      own.height,
      height &&
        ranged(height, (value, unit) => formatMeasure(value, unit, { system: systemOf(unit) ?? 'metric', locale })),
    ],
    [own.phenology, phenology && own.phenologies[phenology]],
    [own.bank, bank && own.banks[bank]],
    [own.side, side && own.sides[side]],
    [own.upstream, upstream && own.upstreams[upstream]],
    [own.treated, treated && `${own.treatments[treated]}${treatedNote ? `: ${treatedNote}` : ''}`],
  ];
}

/** A photograph's name: what it was to show, then what its person says of it. */
function titleOf({ wants, caption }: FindPhoto, words: FormWords): string {
  const known = PHOTOS.includes(wants as PhotoKind) ? words.own.photo[wants as PhotoKind].title : undefined;
  return plain([known, caption].filter((one) => one).join('. '));
}

function reviewOf(
  find: Find,
  key: Key | undefined,
  { own }: FormWords,
  nameOf: (id: string) => string,
): [string, string | undefined][] {
  const { review } = find;
  if (review === undefined) return [];
  const { status, taxon, name, by, date, remarks, wanted } = review;
  const named = taxon !== undefined && taxon !== 'outside' ? nameOf(taxon) : undefined;
  const outside = taxon === 'outside' ? (name ?? own.outside) : undefined;
  return [
    [
      own.reviewed[status],
      status === 'photo-wanted' ? undefined : (outside ?? named ?? reviewedName(find, key)?.scientificName),
    ],
    [own.wanted, wanted?.map((one) => own.photo[one as PhotoKind]?.title ?? one).join('; ')],
    [own.by, by],
    [own.date, date],
    [own.remarks, remarks],
  ];
}
