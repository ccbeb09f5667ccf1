// From what a flora prints to what the engine needs: bounds in one unit, all above zero, gaps filled by rule.
import { toCanonical, type Unit } from '../units.ts';
import { type Bounds, type Extent, numbersOf, optional } from './range.ts';

/** 0 < min < low < high < max. `low` to `high` is the usual range; `min` and `max` only where exceptions are stated. */
export interface Spread {
  readonly min?: number;
  readonly low: number;
  readonly high: number;
  readonly max?: number;
}

// All four are ours, chosen without a source: change them here.
/** `to X` usually means 0.4 X to X; `at least X`, its mirror image, X to X / 0.4. */
const REACH = 0.4;
/** `ca. X`, or X alone, usually means 0.8 X to X / 0.8 = 1.25 X. */
const ABOUT = 0.8;
/** A zero counts as this share of the smallest number stated above it: log-normal sizes have no zero. */
const NOTHING = 0.05;

/**
 * The spread of one dimension in `unit` (its own unless given; a UnitError when one is a length and the other a count).
 * Rules, all ours:
 * - only an upper limit: from 0.4 times it; only a lower limit: to 2.5 times it;
 * - one value, marked as approximate or not, and a span of no width: 0.8 to 1.25 times it, but not past the middle
 *   (geometric mean) between the value and a stated exception;
 * - alternatives: smallest to largest usual one, the rare ones are exceptions;
 * - a zero: 0.05 times the smallest number stated above it.
 * An approximate span, or limit, is taken as it stands.
 */
export function spreadOf(extent: Extent, unit: Unit = extent.unit): Spread {
  const nothing = NOTHING * (numbersOf(extent).find((value) => value > 0) ?? 1);
  const positive = (value: number) => (value > 0 ? value : nothing);
  const stated = statedOf(extent);
  const min = stated.min === undefined ? undefined : positive(stated.min);
  const [low, high, max] = [positive(stated.low), positive(stated.high), stated.max];
  const usual = low < high ? { low, high } : widened(low, min, max);
  const to = (value: number) => toCanonical(value, extent.unit, unit);
  return Object.freeze({
    ...optional('min', min === undefined ? undefined : to(min)),
    low: to(usual.low),
    high: to(usual.high),
    ...optional('max', max === undefined ? undefined : to(max)),
  });
}

function widened(value: number, min = 0, max = Number.POSITIVE_INFINITY): { low: number; high: number } {
  return {
    low: Math.max(value * ABOUT, Math.sqrt(min * value)),
    high: Math.min(value / ABOUT, Math.sqrt(value * max)),
  };
}

/** The bounds as stated, limits completed, zeros and spans of no width not yet seen to. */
function statedOf(bounds: Bounds): Spread {
  switch (bounds.form) {
    case 'up-to':
      return { low: bounds.high * REACH, high: bounds.high, ...optional('max', bounds.max) };
    case 'at-least':
      return { low: bounds.low, high: bounds.low / REACH };
    case 'single':
      return { ...bounds, low: bounds.typical, high: bounds.typical };
    case 'span':
      return bounds;
    case 'alternatives': {
      const usual = bounds.values.filter(({ how }) => how === 'usually').map(({ value }) => value);
      const all = bounds.values.map(({ value }) => value);
      const [low = 0, high = low] = [usual[0], usual.at(-1)];
      const [min = low, max = high] = [all[0], all.at(-1)];
      return {
        low,
        high,
        ...optional('min', min < low ? min : undefined),
        ...optional('max', max > high ? max : undefined),
      };
    }
  }
}
