// Classes of size in the units a person thinks in, rounded as people round: for display only, never for computing.
import type { Character, State } from './types.ts';
import { type Length, type System, toCanonical } from './units.ts';

export type { System };

/** A length for people: the rounded value and its unit. */
export interface Shown {
  readonly value: number;
  readonly unit: Length;
}

const UNIT_SYSTEM: Readonly<Record<Length, System>> = { mm: 'metric', cm: 'metric', m: 'metric', in: 'us', ft: 'us' };

/** Units of a system from the smallest, each with the length in it from which the next one serves better (ours). */
const LADDER: Readonly<Record<System, readonly { readonly unit: Length; readonly upTo: number }[]>> = {
  metric: [
    { unit: 'mm', upTo: 10 },
    { unit: 'cm', upTo: 100 },
    { unit: 'm', upTo: Number.POSITIVE_INFINITY },
  ],
  us: [
    { unit: 'in', upTo: 24 },
    { unit: 'ft', upTo: Number.POSITIVE_INFINITY },
  ],
};

/** How far rounding may move a length: a tenth of it, less than a person misjudges by eye (ours). */
const MOVED = 0.1;

/** The system's units for typing, and the one that suits a length given in `unit`. */
export function unitsFor(value: number, unit: Length, system: System): { units: readonly Length[]; best: Length } {
  const units = LADDER[system].map((step) => step.unit);
  return { units, best: show(value, unit, system).unit };
}

/** Steps of a tape in inches, from the coarsest; feet stop at quarters. */
const TAPE = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16] as const;
/** Shorter than this no tape in inches helps: everybody is shown millimetres. */
const TAPE_ENDS_MM = 3;

/** One length, by the coarsest rounding that moves it by no more than a tenth (a tape ends at sixteenths); not rounded when its unit is the system's own. */
export function show(value: number, unit: Length, system: System): Shown {
  const small = toCanonical(value, unit, 'mm') < TAPE_ENDS_MM;
  const steps = LADDER[small ? 'metric' : system];
  const last = steps[steps.length - 1] as (typeof steps)[0];
  const step = steps.find((one) => toCanonical(value, unit, one.unit) < one.upTo - 1e-9) ?? last;
  const exact = toCanonical(value, unit, step.unit);
  return { value: UNIT_SYSTEM[unit] === UNIT_SYSTEM[step.unit] ? exact : rounded(exact, step.unit), unit: step.unit };
}

function rounded(exact: number, unit: Length): number {
  const near = (value: number) => Math.abs(value - exact) <= MOVED * exact;
  const digit = Number(exact.toPrecision(1));
  if (UNIT_SYSTEM[unit] === 'metric' || exact >= 10) return near(digit) ? digit : Number(exact.toPrecision(2));
  const tape = TAPE.slice(0, unit === 'ft' ? 3 : undefined).map((step) => Math.round(exact / step) * step);
  return tape.find(near) ?? (tape[tape.length - 1] as number);
}

const INTL: Readonly<Record<Length, string>> = {
  mm: 'millimeter',
  cm: 'centimeter',
  m: 'meter',
  in: 'inch',
  ft: 'foot',
};
const SIXTEENTHS = ' 1/16 ⅛ 3/16 ¼ 5/16 ⅜ 7/16 ½ 9/16 ⅝ 11/16 ¾ 13/16 ⅞ 15/16'.split(' ');

/** "50 cm", "3 ft", "¾ in": inches in the fractions of a tape; `bare` leaves the unit to what follows. */
export function lengthWords({ value, unit }: Shown, language: string, bare = false): string {
  const format = new Intl.NumberFormat(language, {
    ...(bare ? {} : { style: 'unit', unit: INTL[unit] }),
    maximumFractionDigits: 2,
  });
  const sixteenths = value * 16;
  if (UNIT_SYSTEM[unit] === 'metric' || Number.isInteger(value) || !Number.isInteger(sixteenths))
    return format.format(value);
  const whole = Math.floor(value);
  const fraction = SIXTEENTHS[sixteenths % 16] as string;
  return format
    .formatToParts(value)
    .filter(({ type }) => type !== 'decimal' && type !== 'fraction')
    .map((part) => (part.type === 'integer' ? `${whole === 0 ? '' : whole}${fraction}` : part.value))
    .join('');
}

/** Words around sizes, in the reader's language. */
export interface SizeWords {
  readonly under: (size: string) => string;
  readonly between: (from: string, to: string) => string;
  readonly over: (size: string) => string;
}

/** The bounds of one class of size of a measure: "under 6 in", "20 in to 3 ft", "over 12 ft". */
export function classWords(
  character: Character,
  state: State,
  words: SizeWords,
  language: string,
  system: System,
): string {
  const { unit } = character;
  if (unit === undefined) return '';
  const shown = (value: number) => (unit === 'count' ? { value, unit } : show(value, unit, system));
  const from = shown(state.from ?? 0);
  const to = shown(state.to ?? 0);
  const say = (size: typeof from, bare = false) =>
    size.unit === 'count'
      ? new Intl.NumberFormat(language).format(size.value)
      : lengthWords({ value: size.value, unit: size.unit }, language, bare);
  if (state.to === undefined) return words.over(say(from));
  return from.value === 0 ? words.under(say(to)) : words.between(say(from, from.unit === to.unit), say(to));
}
