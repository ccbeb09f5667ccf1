// The place of a report: how uncertain it is, from what was typed.

/** Metres: a fair lower limit for a position whose precision nobody kept (Darwin Core, coordinateUncertaintyInMeters). */
export const LEAST_KNOWN = 30;

/** Metres of a degree, a minute and a second of latitude, rounded up (common practice, no source). */
const STEPS = [111_700, 1862, 31.1];

/**
 * How far off coordinates may be because they were rounded when they were written: half a step of their last digit, to
 * the corner; at least `LEAST_KNOWN` metres. `text` holds two coordinates.
 */
export function roundingOf(text: string): number {
  const numbers = text.match(/\d+(?:[.,]\d+)?/g) ?? [];
  const each = Math.floor(numbers.length / 2);
  const step = STEPS[each - 1];
  if (step === undefined) return LEAST_KNOWN;
  const digits = [numbers[each - 1], numbers[2 * each - 1]].map((one) => (one?.split(/[.,]/)[1] ?? '').length);
  return Math.max(LEAST_KNOWN, Math.ceil((step * Math.SQRT1_2) / 10 ** Math.min(...digits)));
}

/** A position as it is shown and typed: to the fifth decimal, about a metre. */
export const coordinatesOf = ({ lat, lon }: { readonly lat: number; readonly lon: number }): string =>
  `${lat.toFixed(5)}, ${lon.toFixed(5)}`;
