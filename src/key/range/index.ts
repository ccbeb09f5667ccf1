export { RangeNotationError } from './error.ts';
export { parseRange } from './parse.ts';
export { type PrintOptions, printRange, type RangeWords } from './print.ts';
export {
  type Alternative,
  type Alternatives,
  type AtLeast,
  type Bounds,
  type Extent,
  largestOf,
  numbersOf,
  type Range,
  type Single,
  type Span,
  type UpTo,
} from './range.ts';
export { type Spread, spreadOf } from './spread.ts';
