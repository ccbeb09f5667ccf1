// A dimension in the reader's own units, rounded as people measure: for display only, never for computing.
import { type System, shownUnit, toCanonical, type Unit } from '../units.ts';
import { type Alternative, type Bounds, type Extent, largestOf, numbersOf, optional } from './range.ts';

type Rounding = (value: number) => number;

/**
 * The dimension in the reader's units; as it is when it already has them. Rounding (ours): the coarsest of steps a
 * tape shows, two digits and three digits that keeps every two values apart and moves none by more than a third.
 * When even three digits run together, so do the values, and the result is marked as approximate.
 */
export function shown(extent: Extent, system: System): Extent {
  const unit = shownUnit(largestOf(extent), extent.unit, system);
  if (unit === extent.unit) return extent;
  const exact = numbersOf(extent).map((value) => toCanonical(value, extent.unit, unit));
  const roundings = [...(system === 'us' ? [toTape(unit)] : []), toDigits(2), toDigits(3)];
  const rounding = roundings.find((round) => keeps(exact, round)) ?? toDigits(3);
  const bounds = convert(extent, (value) => rounding(toCanonical(value, extent.unit, unit)));
  const merged = bounds.form === 'single' && extent.form !== 'single';
  return { ...bounds, unit, ...optional('approximate', extent.approximate ?? (merged || undefined)) };
}

function keeps(exact: readonly number[], round: Rounding): boolean {
  return exact.every((value, place) => {
    const rounded = round(value);
    const before = exact[place - 1];
    const apart = before === undefined || before === value || round(before) < rounded;
    return apart && Math.abs(rounded - value) <= value / 3;
  });
}

/** Eighths of an inch below 2 in, quarters below 5 in or ft, halves below 10, then two digits. */
function toTape(unit: Unit): Rounding {
  return (value) => {
    if (value >= 10) return toDigits(2)(value);
    const steps = value < 2 && unit === 'in' ? 8 : value < 5 ? 4 : 2;
    return Math.round(value * steps) / steps;
  };
}

function toDigits(digits: number): Rounding {
  return (value) => Number(value.toPrecision(digits));
}

/** Converts every number; values that run together become one. */
function convert(bounds: Bounds, to: Rounding): Bounds {
  switch (bounds.form) {
    case 'at-least':
      return { form: 'at-least', low: to(bounds.low) };
    case 'up-to': {
      const high = to(bounds.high);
      return { form: 'up-to', high, ...optional('max', above(high, bounds.max, to)) };
    }
    case 'single': {
      const typical = to(bounds.typical);
      return { form: 'single', typical, ...exceptional(typical, typical, bounds, to) };
    }
    case 'span': {
      const [low, high] = [to(bounds.low), to(bounds.high)];
      const rest = exceptional(low, high, bounds, to);
      return low < high ? { form: 'span', low, high, ...rest } : { form: 'single', typical: low, ...rest };
    }
    case 'alternatives': {
      const values = new Map<number, Alternative>();
      for (const { value, how } of bounds.values) {
        const known = values.get(to(value));
        values.set(to(value), { value: to(value), how: known?.how === 'usually' ? 'usually' : how });
      }
      const [first, ...others] = values.values();
      if (first && others.length === 0) return { form: 'single', typical: first.value };
      return { form: 'alternatives', values: [...values.values()] };
    }
  }
}

function exceptional(
  low: number,
  high: number,
  { min, max }: { readonly min?: number; readonly max?: number },
  to: Rounding,
): { readonly min?: number; readonly max?: number } {
  const below = min === undefined || to(min) >= low ? undefined : to(min);
  return { ...optional('min', below), ...optional('max', above(high, max, to)) };
}

function above(high: number, max: number | undefined, to: Rounding): number | undefined {
  return max === undefined || to(max) <= high ? undefined : to(max);
}
