// From a path in a find to the field in which it was typed.
import type { Field } from './draft.ts';

const AT: readonly (readonly [start: string, field: Field])[] = [
  ['/detected', 'none'],
  ['/sought', 'sought'],
  ['/effort', 'effort'],
  ['/photos', 'noPhotos'],
  ['/noPhotos', 'noPhotos'],
  ['/place/uncertainty', 'uncertainty'],
  ['/place/words', 'way'],
  ['/place', 'place'],
  ['/date', 'date'],
  ['/extent/bankLength', 'bankLength'],
  ['/extent/width', 'width'],
  ['/extent/grossArea', 'gross'],
  ['/extent/infestedArea', 'infested'],
  ['/treatedNote', 'treatedNote'],
  ['/access', 'access'],
  ['/contact/phone', 'phone'],
  ['/contact/email', 'email'],
  ['/contact', 'name'],
  ['/remarks', 'remarks'],
];

/** Undefined for what nobody typed. */
export const fieldAt = (path: string): Field | undefined =>
  AT.find(([start]) => path === start || path.startsWith(`${start}/`))?.[1];
