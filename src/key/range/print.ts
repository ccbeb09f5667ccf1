import { type System, systemOf, type Unit } from '../units.ts';
import { printNumber } from './numbers.ts';
import type { Alternative, Bounds, Extent, Range } from './range.ts';
import { shown } from './shown.ts';

/** The words of the notation, for another language. Only the English ones are read back by parseRange. */
export interface RangeWords {
  readonly about: string;
  readonly upTo: string;
  readonly atLeast: string;
  readonly or: string;
}

const ENGLISH: RangeWords = { about: 'ca.', upTo: 'to', atLeast: 'at least', or: 'or' };

export interface PrintOptions {
  /** For display: converted to the reader's units and rounded. Left out, every value is printed as it is. */
  readonly units?: System;
  readonly words?: RangeWords;
}

/** Prints botanical notation with en dashes: `(1.5–)2–6(–10) cm`. Without `units` parseRange gives the same range back. */
export function printRange(range: Range, { units, words = ENGLISH }: PrintOptions = {}): string {
  const show = (extent: Extent) => (units ? shown(extent, units) : extent);
  const along = show(range);
  const length = printExtent(along, words);
  if (!range.across) return `${length}${printUnit(along.unit)}${range.suffix ? `-${range.suffix}` : ''}`;
  const across = show(range.across);
  const between = along.unit === across.unit ? '' : printUnit(along.unit);
  return `${length}${between} × ${printExtent(across, words)}${printUnit(across.unit)}`;
}

function printUnit(unit: Unit): string {
  return unit === 'count' ? '' : ` ${unit}`;
}

function printExtent(extent: Extent, words: RangeWords): string {
  const number = (value: number) => printNumber(value, systemOf(extent.unit) === 'us');
  const bounds = printBounds(extent, words, number);
  const limit = extent.form === 'up-to' ? `${words.upTo} ` : extent.form === 'at-least' ? `${words.atLeast} ` : '';
  return `${limit}${extent.approximate ? `${words.about} ` : ''}${bounds}`;
}

function printBounds(bounds: Bounds, words: RangeWords, number: (value: number) => string): string {
  const below = (min: number | undefined) => (min === undefined ? '' : `(${number(min)}–)`);
  const above = (max: number | undefined) => (max === undefined ? '' : `(–${number(max)})`);
  switch (bounds.form) {
    case 'span':
      return `${below(bounds.min)}${number(bounds.low)}–${number(bounds.high)}${above(bounds.max)}`;
    case 'single':
      return `${below(bounds.min)}${number(bounds.typical)}${above(bounds.max)}`;
    case 'up-to':
      return `${number(bounds.high)}${above(bounds.max)}`;
    case 'at-least':
      return number(bounds.low);
    case 'alternatives':
      return printAlternatives(bounds.values, ` ${words.or} `, number);
  }
}

/** `(3 or)4 or 5(or 10)` */
function printAlternatives(values: readonly Alternative[], or: string, number: (value: number) => string): string {
  const first = values.findIndex(({ how }) => how === 'usually');
  const last = values.findLastIndex(({ how }) => how === 'usually');
  const list = (from: number, to: number) =>
    values
      .slice(from, to)
      .map(({ value }) => number(value))
      .join(or);
  const below = first > 0 ? `(${list(0, first)}${or.trimEnd()})` : '';
  const above = last + 1 < values.length ? `(${or.trimStart()}${list(last + 1, values.length)})` : '';
  return `${below}${list(first, last + 1)}${above}`;
}
