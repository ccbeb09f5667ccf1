// Whether a find can be sent, and what in it a person may want to look at again.
import type { Find } from './types.ts';
import { inSquareMetres } from './units.ts';

/** In the order in which they are asked for. */
export const LACKS = ['result', 'sought', 'photos', 'place', 'date', 'effort'] as const;
export type Lack = (typeof LACKS)[number];

const said = (text: string | undefined) => text !== undefined && text.trim() !== '';

/**
 * What a find lacks before it can be sent; empty when it can. `result`: no question was answered; `photos`: neither a
 * photograph nor a reason why there is none. Where none was seen neither is needed, but `sought`: which plant somebody
 * looked for, and `effort`: how.
 */
export function lacks({ detected, sought, trail, photos, noPhotos, place, date, effort }: Find): readonly Lack[] {
  const lacking: Readonly<Record<Lack, boolean>> = {
    result: detected && !trail.some(({ skipped }) => skipped !== true),
    sought: !detected && sought === undefined,
    photos: detected && photos.length === 0 && !said(noPhotos),
    place: place === undefined,
    date: date === undefined,
    effort: !detected && !said(effort),
  };
  return LACKS.filter((lack) => lacking[lack]);
}

export type Doubtful = 'area' | 'contact';

/**
 * What is likely a slip, but keeps nothing from being sent. `area`: the plant stands on more ground than is to be
 * searched; `contact`: the person may be reached, but it is not said how.
 */
export function doubtful({ extent, consent, contact }: Find): readonly Doubtful[] {
  const { grossArea: gross, infestedArea: infested } = extent ?? {};
  const overfull =
    gross !== undefined &&
    infested !== undefined &&
    inSquareMetres(infested.value, infested.unit) > inSquareMetres(gross.high ?? gross.value, gross.unit) * (1 + 1e-9);
  const unreached = consent.contact && !said(contact?.phone) && !said(contact?.email);
  return [...(overfull ? (['area'] as const) : []), ...(unreached ? (['contact'] as const) : [])];
}
