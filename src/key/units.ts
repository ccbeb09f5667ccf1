// Units of measures: what a flora prints, what the engine computes in, what a reader is shown.

/** `count` is a number without a unit. */
export type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'count';
export type Length = Exclude<Unit, 'count'>;
/** The units a reader thinks in. */
export type System = 'metric' | 'us';

/** Lengths and counts were mixed, or a measured value is not a number. */
export class UnitError extends Error {
  override readonly name = 'UnitError';
}

/**
 * Tenths of a millimetre in one of each: whole numbers, so that 12 in are 1 ft to the last bit. 1 ft is 0.3048 m exactly
 * and 1 in a twelfth of it, 25.4 mm (Unicode CLDR, supplemental/units.xml, ft_to_m; that this goes back to the
 * international yard and pound agreement of 1959 is from memory).
 */
const TENTHS: Readonly<Record<Length, number>> = { mm: 10, cm: 100, m: 10_000, in: 254, ft: 3048 };

/** Every spelling that is read as a unit, in lower case. */
const SPELLINGS: ReadonlyMap<string, Length> = new Map([
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['m', 'm'],
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['ft', 'ft'],
  ['foot', 'ft'],
  ['feet', 'ft'],
]);

const INTL: Readonly<Record<Length, string>> = {
  mm: 'millimeter',
  cm: 'centimeter',
  m: 'meter',
  in: 'inch',
  ft: 'foot',
};

/** The unit that a word names, in any case; undefined when it names none. */
export function readUnit(word: string): Length | undefined {
  return SPELLINGS.get(word.toLowerCase());
}

/** The system a unit belongs to; undefined for a count. */
export function systemOf(unit: Unit): System | undefined {
  if (unit === 'count') return undefined;
  return unit === 'in' || unit === 'ft' ? 'us' : 'metric';
}

/** The value, given in `unit`, in `canonicalUnit`. Throws a UnitError for a length as a count, or the reverse. */
export function toCanonical(value: number, unit: Unit, canonicalUnit: Unit): number {
  if (!Number.isFinite(value)) throw new UnitError(`${value} is not a measured value`);
  if (unit === canonicalUnit) return value;
  if (unit === 'count' || canonicalUnit === 'count') {
    throw new UnitError(`a ${unit === 'count' ? 'count' : `length in ${unit}`} cannot be given in ${canonicalUnit}`);
  }
  return (value * TENTHS[unit]) / TENTHS[canonicalUnit];
}

/**
 * The unit in which a reader is shown sizes of which `largest`, in `unit`, is the largest. A unit of the reader's own
 * system stays. Otherwise feet and metres stand for each other, and inches for centimetres and millimetres; but what
 * reaches 5 ft is shown in feet and what stays under 2 ft in inches, what reaches 1.5 m in metres, what stays under
 * 60 cm in centimetres and under 1 cm in millimetres. The limits are ours.
 */
export function shownUnit(largest: number, unit: Unit, system: System): Unit {
  if (unit === 'count' || systemOf(unit) === system) return unit;
  const size = largest * TENTHS[unit];
  if (system === 'metric') {
    if (size < TENTHS.cm) return 'mm';
    return size >= 1.5 * TENTHS.m || (unit === 'ft' && size >= 0.6 * TENTHS.m) ? 'm' : 'cm';
  }
  return size >= 5 * TENTHS.ft || (unit === 'm' && size >= 2 * TENTHS.ft) ? 'ft' : 'in';
}

export interface MeasureFormat {
  readonly system: System;
  /** A language tag; an unknown one makes Intl throw its RangeError. */
  readonly locale: string;
  /** The word for "about" in that language, put in front. */
  readonly about?: string;
}

/** One measured value for people: "about 4.5 m", "15 ft". Two digits when converted, three when not. */
export function formatMeasure(value: number, unit: Unit, { system, locale, about }: MeasureFormat): string {
  const shown = shownUnit(value, unit, system);
  const format = new Intl.NumberFormat(locale, {
    maximumSignificantDigits: shown === unit ? 3 : 2,
    ...(shown === 'count' ? {} : { style: 'unit', unit: INTL[shown], unitDisplay: 'short' }),
  });
  const text = format.format(toCanonical(value, unit, shown));
  return about === undefined ? text : `${about} ${text}`;
}
