// What a botanical range says, form by form, with nothing filled in.
import type { Unit } from '../units.ts';

/** `(1–)2–6(–8)`: usually `low` to `high`; exceptionally down to `min`, up to `max`. */
export interface Span {
  readonly form: 'span';
  readonly min?: number;
  readonly low: number;
  readonly high: number;
  readonly max?: number;
}

/** `to 4(–6)`: only the upper limit is given. */
export interface UpTo {
  readonly form: 'up-to';
  readonly high: number;
  readonly max?: number;
}

/** `at least 3`: only the lower limit is given. */
export interface AtLeast {
  readonly form: 'at-least';
  readonly low: number;
}

/** `10`, `5(–7)`: one usual value, perhaps with exceptional ones around it. */
export interface Single {
  readonly form: 'single';
  readonly min?: number;
  readonly typical: number;
  readonly max?: number;
}

/** `5 or 10`, `5(or 10)`, `(3 or)4`: alternatives without intermediates, rising; rare ones only at the ends. */
export interface Alternatives {
  readonly form: 'alternatives';
  readonly values: readonly Alternative[];
}

export interface Alternative {
  readonly value: number;
  readonly how: 'usually' | 'rarely';
}

export type Bounds = Span | UpTo | AtLeast | Single | Alternatives;

/** One dimension. Values are in `unit`, never negative, and rise; the largest is above zero. */
export type Extent = Bounds & {
  readonly unit: Unit;
  /** Marked as an approximation: ca., about, ±. */
  readonly approximate?: true;
};

/** A range. */
export type Range = Extent & {
  /** Of a length × width (which the rest then is the length of), the width. Both are lengths, or both counts. */
  readonly across?: Extent;
  /** The word joined to a count: `lobed` of `3–5-lobed`. */
  readonly suffix?: string;
};

/** The numbers in the order in which they are written. */
export function numbersOf(bounds: Bounds): readonly number[] {
  switch (bounds.form) {
    case 'alternatives':
      return bounds.values.map(({ value }) => value);
    case 'up-to':
      return stated(bounds.high, bounds.max);
    case 'at-least':
      return [bounds.low];
    case 'single':
      return stated(bounds.min, bounds.typical, bounds.max);
    case 'span':
      return stated(bounds.min, bounds.low, bounds.high, bounds.max);
  }
}

/** The largest number, exceptional ones included. */
export function largestOf(bounds: Bounds): number {
  return numbersOf(bounds).at(-1) ?? 0;
}

function stated(...values: readonly (number | undefined)[]): readonly number[] {
  return values.filter((value) => value !== undefined);
}

/** `{ [name]: value }`, or nothing when there is no value: for optional fields that must be absent, not undefined. */
export function optional<Name extends string, Value>(name: Name, value: Value | undefined): { [key in Name]?: Value } {
  return value === undefined ? {} : ({ [name]: value } as { [key in Name]: Value });
}
