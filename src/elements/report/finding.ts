// From what was typed to a find, and what in it cannot be read.
import { readCoordinates } from '../../guidance/nearby/index.ts';
import {
  type AreaUnit,
  BANKS,
  COVER_CLASSES,
  coarsen,
  doubtful,
  type Extent,
  type Find,
  GRIDS,
  type GroundUnit,
  inMetres,
  isDay,
  LANDS,
  MEASURED,
  PHENOLOGY,
  PLACED,
  type Place,
  SIDES,
  TREATED,
  UPSTREAM,
} from '../../report/find/index.ts';
import type { FieldTrouble } from '../../words/report/index.ts';
import { readSize } from '../question/draft.ts';
import type { Draft, Field } from './draft.ts';
import { heightOf } from './heights.ts';
import { roundingOf } from './where.ts';

export type Troubles = ReadonlyMap<Field, FieldTrouble>;

export interface Finding {
  readonly find: Find;
  /** What was typed and is not in the find because it cannot be read. */
  readonly troubles: Troubles;
}

export interface Around {
  /** The key's part of the find: from the session, or from an opened file. */
  readonly base: Find;
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly language: string;
  /** The scientific name of a taxon of the key; undefined for what the key does not have. */
  readonly scientific: (taxon: string) => string | undefined;
  /** Units that stand where nobody chose any. */
  readonly units: 'us' | 'metric';
}

/** The units that are meant where nobody chose any. */
export const usualUnits = (units: 'us' | 'metric'): { readonly length: GroundUnit; readonly area: AreaUnit } =>
  units === 'us' ? { length: 'ft', area: 'acre' } : { length: 'm', area: 'm2' };

const EMAIL = /^[^\s@]+@[^\s@]+\.[^\s@]+$/;

/** Id of the plant that was looked for: as chosen, else the one that the key's answers lead to; empty for none. */
export function soughtIn({ fields }: Draft, { verdict: { kind, taxa } }: Pick<Find, 'verdict'>): string {
  if (fields.sought !== '') return fields.sought;
  return (kind === 'settled' || kind === 'leaning' ? taxa[0] : undefined) ?? '';
}

/** What of a find no field of the form says: of an opened one, the rest is as it is typed now. */
const ofKey = ({ format, key, language, month, observer, trail, standing, outside, verdict, review }: Find) => ({
  ...{ format, key, language, month, observer, trail, standing, outside, verdict },
  ...(review ? { review } : {}),
});

/** A find with all that can be read of the draft; nothing of the draft is changed. */
export function findingOf(draft: Draft, { base, today, language, scientific, units }: Around): Finding {
  const { fields } = draft;
  const troubles = new Map<Field, FieldTrouble>();
  const usual = usualUnits(units);
  const said = (field: Field) => fields[field].trim();
  const text = (field: Field) => said(field) || undefined;
  const oneOf = <T extends string>(field: Field, all: readonly T[]) => all.find((one) => one === fields[field]);
  const size = (field: Field) => {
    if (said(field) === '') return undefined;
    const value = readSize(said(field));
    if (value === undefined) troubles.set(field, 'number');
    return value;
  };
  const length = (field: Field) => {
    const value = size(field);
    return value === undefined ? undefined : { value, unit: (fields.lengthUnit || usual.length) as GroundUnit };
  };
  const area = (field: Field) => {
    const value = size(field);
    return value === undefined ? undefined : { value, unit: (fields.areaUnit || usual.area) as AreaUnit };
  };

  const place = (): Place | undefined => {
    if (said('place') === '') return undefined;
    const read = readCoordinates(said('place'), language);
    if ('fault' in read) {
      troubles.set('place', read.fault === 'swapped' || read.fault === 'latitude' ? 'swapped' : 'place');
      return undefined;
    }
    const within = size('uncertainty');
    const unit = (fields.uncertaintyUnit || usual.length) as GroundUnit;
    const uncertainty = within === undefined ? roundingOf(said('place')) : inMetres(within, unit);
    const grid = GRIDS.find((one) => String(one) === fields.tell);
    const words = text('way');
    return {
      lat: read.lat,
      lon: read.lon,
      uncertainty,
      source: oneOf('source', PLACED) ?? 'typed',
      ...(grid === undefined ? {} : { coarse: coarsen({ ...read, uncertainty }, grid) }),
      ...(words === undefined ? {} : { words }),
    };
  };
  const date = (): string | undefined => {
    if (isDay(fields.date) && fields.date <= today) return fields.date;
    if (fields.date !== '') troubles.set('date', isDay(fields.date) ? 'future' : 'date');
    return undefined;
  };
  const email = (): string | undefined => {
    if (said('email') === '' || EMAIL.test(said('email'))) return text('email');
    troubles.set('email', 'email');
    return undefined;
  };

  const detected = fields.none !== 'yes';
  const extent: Extent = !detected
    ? {}
    : present({
        bankLength: length('bankLength'),
        width: length('width'),
        grossArea: area('gross'),
        infestedArea: area('infested'),
        how: oneOf('how', MEASURED),
      });
  const taxon = detected ? '' : soughtIn(draft, base);
  const name = taxon === base.sought?.taxon ? base.sought?.name : scientific(taxon);
  const cover = COVER_CLASSES.find((one) => String(one) === fields.cover);
  const contact = present({ name: text('name'), phone: text('phone'), email: email() });
  const find: Find = {
    ...ofKey(base),
    id: draft.id,
    made: draft.made,
    changed: draft.changed,
    photos: draft.photos.map(({ blob: _, ...photo }) => photo),
    detected,
    ...present({
      sought: name === undefined ? undefined : { taxon, name },
      effort: detected ? undefined : text('effort'),
      noPhotos: text('noPhotos'),
      date: date(),
      place: place(),
      // Of what was not seen nothing is told; what was typed of it stays in the draft.
      ...(detected
        ? {
            extent: hasAny(extent) ? extent : undefined,
            cover: cover && ({ scheme: 'daubenmire', class: cover } as const),
            height: heightOf(fields.height),
            phenology: oneOf('phenology', PHENOLOGY),
          }
        : {}),
      bank: oneOf('bank', BANKS),
      side: oneOf('side', SIDES),
      upstream: oneOf('upstream', UPSTREAM),
      treated: oneOf('treated', TREATED),
      treatedNote: text('treatedNote'),
      land: oneOf('land', LANDS),
      access: text('access'),
      contact: hasAny(contact) ? contact : undefined,
      remarks: text('remarks'),
    }),
    consent: {
      contact: fields.mayContact === 'yes',
      exactPlace: fields.tell === '',
      photos: fields.mayShow === 'yes',
    },
  };
  if (doubtful(find).includes('area')) troubles.set('infested', 'area');
  return { find, troubles };
}

const hasAny = (object: object): boolean => Object.keys(object).length > 0;

/** The same without what is undefined. */
function present<T extends object>(object: T): { [Name in keyof T]: Exclude<T[Name], undefined> } {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as {
    [Name in keyof T]: Exclude<T[Name], undefined>;
  };
}
