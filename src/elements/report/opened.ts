// From a find in a file back to what somebody typed.
import { convertArea, convertLength, type Find } from '../../report/find/index.ts';
import { fromBase64 } from '../../report/photos/index.ts';
import { blankDraft, type Draft, type DraftPhoto, type Field } from './draft.ts';
import { heightIndex } from './heights.ts';
import { coordinatesOf } from './where.ts';

/** A file's photograph has no picture in it, or one that is no base64. */
export class PictureError extends Error {
  override readonly name = 'PictureError';
}

/** @throws PictureError with the path of the photograph */
export function draftOf(find: Find): Draft {
  const { place, extent, contact, consent } = find;
  // One unit holds for both lengths, and one for both areas: the second of each follows the first.
  const { bankLength, width, grossArea: gross, infestedArea: infested } = extent ?? {};
  const lengthUnit = bankLength?.unit ?? width?.unit;
  const areaUnit = gross?.unit ?? infested?.unit;
  const number = (value: number) => String(Number(value.toPrecision(12)));
  const long = (one: typeof width) =>
    one && lengthUnit ? number(convertLength(one.value, one.unit, lengthUnit)) : undefined;
  const wide = (one: typeof gross) =>
    one && areaUnit ? number(convertArea(one.value, one.unit, areaUnit)) : undefined;
  const coarse = place?.coarse;
  const fields: Partial<Record<Field, string | undefined>> = {
    none: find.detected ? '' : 'yes',
    sought: find.sought?.taxon,
    effort: find.effort,
    keep: find.photos.some(({ hiddenDataKept }) => hiddenDataKept) ? 'yes' : '',
    noPhotos: find.noPhotos,
    place: place && coordinatesOf(place),
    source: place?.source,
    uncertainty: place && String(Math.round(place.uncertainty * 10) / 10),
    uncertaintyUnit: place && 'm',
    // The cells of the finer grid reach less than 1.6 km, those of the coarser at least 5.5 km, whatever the latitude.
    tell: consent.exactPlace ? '' : coarse && coarse.uncertainty - (place?.uncertainty ?? 0) > 3000 ? '0.1' : '0.01',
    way: place?.words,
    date: find.date?.slice(0, 10),
    bankLength: long(bankLength),
    width: long(width),
    lengthUnit,
    gross: wide(gross),
    infested: wide(infested),
    areaUnit,
    how: extent?.how,
    cover: find.cover && String(find.cover.class),
    height: heightIndex(find.height),
    phenology: find.phenology,
    bank: find.bank,
    side: find.side,
    upstream: find.upstream,
    treated: find.treated,
    treatedNote: find.treatedNote,
    land: find.land,
    access: find.access,
    name: contact?.name,
    phone: contact?.phone,
    email: contact?.email,
    mayContact: consent.contact ? 'yes' : '',
    mayShow: consent.photos ? 'yes' : '',
    remarks: find.remarks,
  };
  const said = Object.entries(fields).filter(([, value]) => value !== undefined) as [Field, string][];
  const blank = blankDraft(find.id, find.made, '');
  return {
    ...blank,
    base: find,
    fields: { ...blank.fields, ...Object.fromEntries(said) },
    photos: find.photos.map(pictured),
  };
}

function pictured({ data, ...photo }: Find['photos'][number], index: number): DraftPhoto {
  try {
    if (data === undefined) throw new Error('absent');
    return { ...photo, blob: fromBase64(data, photo.type) };
  } catch {
    throw new PictureError(`photos[${index}].data`);
  }
}
