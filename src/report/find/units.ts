// Units of the ground: how far along the bank, how much of it.
import { type System, UnitError } from '../../key/index.ts';

export const GROUND_UNITS = ['m', 'ft', 'yd', 'km', 'mi'] as const;
export type GroundUnit = (typeof GROUND_UNITS)[number];
export const AREA_UNITS = ['m2', 'ft2', 'acre', 'ha'] as const;
export type AreaUnit = (typeof AREA_UNITS)[number];

/**
 * Metres in one of each, exactly: a foot of 0.3048 m, a yard of 3 and a mile of 5280 feet (Unicode CLDR,
 * supplemental/units.xml).
 */
const METRES: Readonly<Record<GroundUnit, number>> = { m: 1, ft: 0.3048, yd: 0.9144, km: 1000, mi: 1609.344 };

/** Square metres in one of each, exactly: an acre is 43 560 square feet (as above). */
const SQUARE_METRES: Readonly<Record<AreaUnit, number>> = {
  m2: 1,
  ft2: 0.09290304,
  acre: 4046.8564224,
  ha: 10_000,
};

const SYSTEM: Readonly<Record<GroundUnit | AreaUnit, System>> = {
  m: 'metric',
  km: 'metric',
  m2: 'metric',
  ha: 'metric',
  ft: 'us',
  yd: 'us',
  mi: 'us',
  ft2: 'us',
  acre: 'us',
};

const LENGTHS: readonly string[] = GROUND_UNITS;
const isLength = (unit: GroundUnit | AreaUnit): unit is GroundUnit => LENGTHS.includes(unit);

/** @throws UnitError unless the value is a number of at least zero. */
function checked(value: number): number {
  if (!Number.isFinite(value) || value < 0) throw new UnitError(`${value} is not a size`);
  return value;
}

/** A length in metres. @throws UnitError for what is no size. */
export const inMetres = (value: number, unit: GroundUnit): number => checked(value) * METRES[unit];

/** An area in square metres. @throws UnitError for what is no size. */
export const inSquareMetres = (value: number, unit: AreaUnit): number => checked(value) * SQUARE_METRES[unit];

/** A length in another unit. @throws UnitError for what is no size. */
export const convertLength = (value: number, from: GroundUnit, to: GroundUnit): number =>
  from === to ? checked(value) : inMetres(value, from) / METRES[to];

/** An area in another unit. @throws UnitError for what is no size. */
export const convertArea = (value: number, from: AreaUnit, to: AreaUnit): number =>
  from === to ? checked(value) : inSquareMetres(value, from) / SQUARE_METRES[to];

/** The square metres of a strip along the bank. @throws UnitError for what is no size. */
export const stripArea = (length: number, lengthUnit: GroundUnit, width: number, widthUnit: GroundUnit): number =>
  inMetres(length, lengthUnit) * inMetres(width, widthUnit);

/** Names of Intl; what it has no name for (areas by the square) is written out. */
const INTL: ReadonlyMap<string, string> = new Map([
  ['m', 'meter'],
  ['ft', 'foot'],
  ['yd', 'yard'],
  ['km', 'kilometer'],
  ['mi', 'mile'],
  ['acre', 'acre'],
  ['ha', 'hectare'],
]);
const SQUARE: ReadonlyMap<string, string> = new Map([
  ['m2', 'm²'],
  ['ft2', 'ft²'],
]);

/**
 * The unit of a system in which a size is shown: one of that system stays; others become feet under a tenth of a mile and
 * miles from there, metres and kilometres from 1 km; square feet and acres from a tenth of an acre, square metres and
 * hectares from a tenth of one. The limits are ours.
 */
export function groundUnitIn<U extends GroundUnit | AreaUnit>(value: number, unit: U, system: System): U;
export function groundUnitIn(value: number, unit: GroundUnit | AreaUnit, system: System): GroundUnit | AreaUnit {
  if (SYSTEM[unit] === system) return unit;
  if (isLength(unit)) {
    const metres = inMetres(value, unit);
    if (system === 'metric') return metres >= 1000 ? 'km' : 'm';
    return metres >= METRES.mi / 10 ? 'mi' : 'ft';
  }
  const square = inSquareMetres(value, unit);
  if (system === 'metric') return square >= SQUARE_METRES.ha / 10 ? 'ha' : 'm2';
  return square >= SQUARE_METRES.acre / 10 ? 'acre' : 'ft2';
}

/** A size of the ground for people: "120 ft", "0.4 ha". Three digits as given, two when converted. */
export function formatGround(
  value: number,
  unit: GroundUnit | AreaUnit,
  { system, locale }: { readonly system: System; readonly locale: string },
): string {
  const shown = groundUnitIn(value, unit, system);
  const converted = isLength(unit)
    ? convertLength(value, unit, shown as GroundUnit)
    : convertArea(value, unit, shown as AreaUnit);
  const intl = INTL.get(shown);
  const text = new Intl.NumberFormat(locale, {
    maximumSignificantDigits: shown === unit ? 3 : 2,
    ...(intl ? { style: 'unit', unit: intl, unitDisplay: 'short' } : {}),
  }).format(converted);
  // A space that does not break, as in all sizes.
  return intl ? text : `${text}\u00a0${SQUARE.get(shown)}`;
}
