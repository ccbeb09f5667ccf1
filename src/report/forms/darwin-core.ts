// Finds as records of occurrences in Darwin Core, as the terms stand since 2026-05-26.
import type { Key, Taxon } from '../../key/index.ts';
import { type Find, inSquareMetres, type Phenology, toldPlace } from '../find/index.ts';
import { csvOf, defused } from './csv.ts';
import { certainName, type Named, namedIn, qualifierOf, reviewedName, soughtName } from './named.ts';

/** The columns, in the order of the standard's own list. */
export const COLUMNS = [
  'type',
  'modified',
  'language',
  'basisOfRecord',
  'informationWithheld',
  'dataGeneralizations',
  'dynamicProperties',
  'eventDate',
  'samplingEffort',
  'countryCode',
  'stateProvince',
  'locality',
  'decimalLatitude',
  'decimalLongitude',
  'geodeticDatum',
  'coordinateUncertaintyInMeters',
  'georeferenceSources',
  'identificationType',
  'verbatimIdentification',
  'isAcceptedIdentification',
  'taxonFormula',
  'identificationQualifier',
  'identifiedBy',
  'dateIdentified',
  'identificationReferences',
  'identificationVerificationStatus',
  'identificationRemarks',
  'occurrenceID',
  'recordedBy',
  'organismQuantity',
  'organismQuantityType',
  'lifeStage',
  'reproductiveCondition',
  'vitality',
  'establishmentMeans',
  'occurrenceStatus',
  'occurrenceRemarks',
  'previousIdentifications',
  'scientificName',
  'kingdom',
  'family',
  'genus',
  'specificEpithet',
  'infraspecificEpithet',
  'taxonRank',
  'vernacularName',
  'nomenclaturalCode',
] as const;
export type Column = (typeof COLUMNS)[number];
/** Every column; empty where there is nothing to say. */
export type Row = Readonly<Record<Column, string>>;

/** Columns of numbers: a minus sign there is no formula. */
export const NUMBERS: readonly Column[] = [
  'decimalLatitude',
  'decimalLongitude',
  'coordinateUncertaintyInMeters',
  'organismQuantity',
  'identificationVerificationStatus',
];

export interface RowOptions {
  /** Where all finds are, as the owner of the page knows it: ISO 3166-1 alpha-2, and the state in full. */
  readonly countryCode?: string;
  readonly stateProvince?: string;
  /** `older`: present and absent, as before 2026-05-26, for readers that know nothing else. */
  readonly status?: 'older';
}

const STATUS = { newer: ['detected', 'notDetected'], older: ['present', 'absent'] } as const;

/** What is told of a stage: the words are those of the standard's examples, or ours where it has none. */
const REPRODUCTIVE: Readonly<Partial<Record<Phenology, string>>> = {
  bud: 'in bud',
  flower: 'in bloom',
  fruit: 'fruit-bearing',
  'seed-shed': 'seed shed',
};

/**
 * Read, in the term itself (tdwg/dwc, vocabulary/term_versions.csv): a vocabulary such as that of HISPID and ABCD is best,
 * and `0` is "unverified" there. Read, in HISPID's vocabulary of 2015-10-23 (hiscom/hispid, vocabulary/
 * identification_verification_status.xml): words, of which `verified by specialist`, in that group of plants, may be `3`.
 * From memory: the older list runs to 4, `1` compared with named plants, `2` by a taxonomist with a herbarium or library.
 * Ours: every review is `1`, the least that a person's check is worth. Who reviews cannot be known here; whoever keeps the
 * records may raise it.
 */
const VERIFIED = { no: '0', yes: '1' } as const;

/** One find as a record. What its person does not want told is left out, and said to be. `key` is the one it was made with. */
export function darwinCoreRow(find: Find, key: Key | undefined, options: RowOptions = {}): Row {
  const reviewed = reviewedName(find, key);
  const sought = soughtName(find, key);
  const told = reviewed ?? sought ?? certainName(find, key);
  const given = reviewed ?? sought;
  const [detected, notDetected] = STATUS[options.status ?? 'newer'];
  const { contact, consent, review, detected: seen, phenology } = find;
  const person = (consent.contact && contact?.name) || '';
  const row: Partial<Record<Column, string>> = {
    type: 'Event',
    modified: find.changed,
    language: find.language,
    basisOfRecord: 'HumanObservation',
    dynamicProperties: JSON.stringify(properties(find)),
    eventDate: find.date ?? '',
    samplingEffort: find.effort ?? '',
    countryCode: options.countryCode ?? '',
    stateProvince: options.stateProvince ?? '',
    ...placed(find),
    identificationType: reviewed ? 'media' : find.detected ? 'features' : '',
    verbatimIdentification:
      sought?.scientificName ??
      find.verdict.taxa.map((id) => namedIn(find, key, id)?.scientificName ?? id).join(' or '),
    isAcceptedIdentification: reviewed ? 'true' : '',
    taxonFormula: given ? 'A' : formulaOf(find),
    identificationQualifier: given ? '' : qualifierOf(find, key, told),
    identifiedBy: reviewed ? (review?.by ?? '') : person,
    dateIdentified: reviewed ? (review?.date ?? '') : find.made,
    identificationReferences: `${find.key.title} (${find.key.id}), version ${find.key.version}`,
    identificationVerificationStatus: reviewed ? VERIFIED.yes : VERIFIED.no,
    identificationRemarks: remarksOf(find),
    occurrenceID: find.id,
    recordedBy: person,
    ...(seen ? amount(find) : {}),
    lifeStage: seen && phenology === 'seedling' ? 'seedling' : '',
    reproductiveCondition: (seen && phenology && REPRODUCTIVE[phenology]) || '',
    vitality: seen && phenology ? (phenology === 'dormant' ? 'uncertain' : 'alive') : '',
    establishmentMeans: told.taxon ? MEANS[told.taxon.status] : '',
    occurrenceStatus: seen ? detected : notDetected,
    occurrenceRemarks: find.remarks ?? '',
    previousIdentifications: reviewed ? certainName(find, key).scientificName : '',
    ...partsIn(told),
    kingdom: 'Plantae',
    vernacularName: vernacular(told, find.language),
    nomenclaturalCode: 'ICN',
  };
  return Object.fromEntries(COLUMNS.map((column) => [column, row[column] ?? ''])) as Row;
}

/** Finds as a table with one line of column names, safe to open in a spreadsheet. */
export function darwinCoreCsv(
  finds: readonly Find[],
  keyOf: (find: Find) => Key | undefined,
  options?: RowOptions,
): string {
  const rows = finds.map((find) => {
    const row = darwinCoreRow(find, keyOf(find), options);
    return COLUMNS.map((column) => (NUMBERS.includes(column) ? row[column] : defused(row[column])));
  });
  return csvOf([COLUMNS, ...rows]);
}

/** A key's plants of concern are introduced where the key is for. How far they spread, no single find says. */
const MEANS: Readonly<Record<Taxon['status'], string>> = {
  native: 'native',
  introduced: 'introduced',
  invasive: 'introduced',
};

/** A formula of one name, or of two between which it is open. */
function formulaOf({ verdict: { kind, taxa } }: Find): string {
  if (kind === 'settled') return 'A';
  if (kind === 'leaning') return 'A cf.';
  return kind === 'open' && taxa.length === 2 ? 'A or B' : '';
}

const partsIn = ({ taxon: _, ...parts }: Named): Partial<Row> => parts;

const vernacular = ({ taxon }: Named, language: string): string =>
  taxon?.common.get((language.split('-')[0] ?? '').toLowerCase())?.[0] ?? '';

/** Six decimals are about a tenth of a metre. */
const degrees = (value: number): string => String(Number(value.toFixed(6)));

function placed(find: Find): Partial<Row> {
  const place = toldPlace(find);
  const withheld = [
    ...(find.place && !find.consent.exactPlace ? ['exact place'] : []),
    ...(find.contact && !find.consent.contact ? ['name and contact of the person who reports'] : []),
    ...(find.photos.length > 0 && !find.consent.photos ? ['photographs'] : []),
  ];
  const informationWithheld = withheld.length > 0 ? `Held back at the person's request: ${withheld.join(', ')}.` : '';
  if (place === undefined) return { informationWithheld };
  return {
    informationWithheld,
    dataGeneralizations: place.coarse
      ? 'Coordinates made coarser at the request of the person who reports; the uncertainty holds the true place.'
      : '',
    locality: place.words ?? '',
    decimalLatitude: degrees(place.lat),
    decimalLongitude: degrees(place.lon),
    geodeticDatum: 'EPSG:4326',
    // Whole metres, upwards: zero is no uncertainty, and it is never told smaller than it is.
    coordinateUncertaintyInMeters: String(Math.max(1, Math.ceil(place.uncertainty))),
    georeferenceSources: SOURCES[place.source],
  };
}

const SOURCES = {
  device: 'position of the device',
  typed: 'typed in',
  map: 'map',
  photo: 'data of a photograph',
} as const;

/** Always a number and what it counts; the ground covered before the class of cover. */
function amount({ extent, cover }: Find): Partial<Row> {
  const covered = extent?.infestedArea;
  if (covered)
    return {
      organismQuantity: String(Number(inSquareMetres(covered.value, covered.unit).toPrecision(6))),
      organismQuantityType: 'square metres covered',
    };
  return cover ? { organismQuantity: String(cover.class), organismQuantityType: 'Daubenmire cover class' } : {};
}

/** What the specialist remarked, then the answers in words, what was passed over among them; of what was not seen, none. */
const remarksOf = ({ detected, trail, review }: Find): string =>
  [
    review?.remarks ?? '',
    ...(detected ? trail : []).map(
      ({ label, words, sureness }) => `${label}: ${words}${sureness && sureness !== 'sure' ? ` (${sureness})` : ''}`,
    ),
  ]
    .filter((one) => one !== '')
    .join('; ');

/** All that has no column of its own, and the answers as the key takes them: ids and numbers, no free text. */
function properties({
  key,
  month,
  observer,
  verdict,
  outside,
  trail,
  detected,
  ...find
}: Find): Record<string, unknown> {
  const { extent, cover, height, phenology, bank, side, upstream, treated, land, photos } = find;
  return {
    key: { id: key.id, version: key.version, hash: key.hash },
    month,
    observer,
    ...(detected
      ? { verdict: { ...verdict, outside }, answers: trail.map(({ label: _, words: __, ...answer }) => answer) }
      : {}),
    extent,
    cover,
    height,
    phenology,
    bank,
    side,
    upstream,
    treated,
    land,
    photos: photos.length,
  };
}
