// The grammar of one dimension, by recursive descent. Words in quotes, `?` optional, `*` repeated:
//   bounds       = limit about? value after?  |  about? (before? value (dash value)? after? | alternatives)
//   limit        = 'up to' | 'to' | 'at most' | 'under' | 'less than' | 'at least' | 'over' | 'more than'
//   before       = '(' value dash? ')'
//   after        = '(' dash? value ')'
//   alternatives = ('(' (value 'or')* value 'or' ')')? value ('or' value)* ('(' ('or' value)* ')')?
//   value        = number | number 'ft' number 'in'
//   dash         = – | - | -- | 'to'
import { readUnit } from '../units.ts';
import type { Cursor } from './cursor.ts';
import type { Bounds } from './range.ts';
import { optional } from './range.ts';
import type { Token } from './tokens.ts';

/** A number with its place, for errors. `feet`: given as feet and inches, in inches. */
interface Mark {
  readonly value: number;
  readonly token: Token;
  readonly feet: boolean;
}

export interface BoundsRead {
  readonly bounds: Bounds;
  readonly approximate: boolean;
  /** Given as feet and inches, and now in inches: no unit may follow. */
  readonly feet: boolean;
  /** The limit excludes its own value ("under", "over"): the same as the limit for lengths, not for counts. */
  readonly strict?: Token;
}

const LIMITS = [
  { words: ['up', 'to'], upper: true, strict: false },
  { words: ['to'], upper: true, strict: false },
  { words: ['at', 'most'], upper: true, strict: false },
  { words: ['under'], upper: true, strict: true },
  { words: ['less', 'than'], upper: true, strict: true },
  { words: ['at', 'least'], upper: false, strict: false },
  { words: ['over'], upper: false, strict: true },
  { words: ['more', 'than'], upper: false, strict: true },
] as const;

export function readBounds(cursor: Cursor): BoundsRead {
  const first = cursor.peek();
  const limit = LIMITS.find(({ words }) => cursor.takeWords(words));
  const approximate = cursor.take('about') !== undefined;
  const marks: Mark[] = [];
  const bounds = limit === undefined ? readBetween(cursor, marks) : readLimited(cursor, limit.upper, marks);
  const feet = marks[0]?.feet ?? false;
  const other = marks.find((mark) => mark.feet !== feet);
  if (other !== undefined) cursor.fail('all numbers in feet and inches, or none', other.token);
  if (marks[0] !== undefined && marks.at(-1)?.value === 0) cursor.fail('a value above zero', marks[0].token);
  return { bounds, approximate, feet, ...optional('strict', limit?.strict === true ? first : undefined) };
}

function readLimited(cursor: Cursor, upper: boolean, marks: Mark[]): Bounds {
  const { value } = readValue(cursor, marks);
  if (!upper) return { form: 'at-least', low: value };
  const max = readAfter(cursor, marks);
  return { form: 'up-to', high: value, ...optional('max', max) };
}

function readBetween(cursor: Cursor, marks: Mark[]): Bounds {
  const open = cursor.take('open');
  const outer = open && readValue(cursor, marks).value;
  if (open && isWord(cursor, 'or')) return readAlternatives(cursor, marks, true);
  if (open) {
    takeDash(cursor);
    cursor.expect('close', '"–" and ")" after an exceptional value');
  }
  const low = readValue(cursor, marks, open ? 'above' : 'any').value;
  if (!open && (isWord(cursor, 'or') || (cursor.peek().kind === 'open' && isWord(cursor, 'or', 1)))) {
    return readAlternatives(cursor, marks, false);
  }
  const high = takeDash(cursor) ? readValue(cursor, marks, 'from').value : undefined;
  const exceptional = { ...optional('min', outer), ...optional('max', readAfter(cursor, marks)) };
  if (high === undefined) return { form: 'single', typical: low, ...exceptional };
  return { form: 'span', low, high, ...exceptional };
}

/** The exceptional value above, if one follows. */
function readAfter(cursor: Cursor, marks: Mark[]): number | undefined {
  if (!cursor.take('open')) return undefined;
  takeDash(cursor);
  const { value } = readValue(cursor, marks, 'above');
  cursor.expect('close', '")"');
  return value;
}

/** Goes on behind the first value, which stands in parentheses if `rare`. */
function readAlternatives(cursor: Cursor, marks: Mark[], rare: boolean): Bounds {
  const rareBelow = rare ? readRareBelow(cursor, marks) : 0;
  if (rare) readValue(cursor, marks, 'above');
  while (cursor.take('word', 'or')) readValue(cursor, marks, 'above');
  const usualEnd = marks.length;
  if (cursor.take('open')) {
    cursor.expect('word', '"or"', 'or');
    do readValue(cursor, marks, 'above');
    while (cursor.take('word', 'or'));
    cursor.expect('close', '"or" or ")"');
  }
  const how = (place: number): 'usually' | 'rarely' => (place < rareBelow || place >= usualEnd ? 'rarely' : 'usually');
  const values = marks.map(({ value }, place) => Object.freeze({ value, how: how(place) } as const));
  return { form: 'alternatives', values: Object.freeze(values) };
}

/** Reads on to the closing parenthesis of `(2 or 3 or)` and returns how many values it holds. */
function readRareBelow(cursor: Cursor, marks: Mark[]): number {
  for (;;) {
    cursor.expect('word', '"or"', 'or');
    if (cursor.take('close')) return marks.length;
    readValue(cursor, marks, 'above');
  }
}

/** Reads a value and adds it to the marks; it must lie above the last one, or from it on. */
function readValue(cursor: Cursor, marks: Mark[], order: 'any' | 'from' | 'above' = 'any'): Mark {
  const dash = cursor.peek().kind === 'dash';
  const token = cursor.expect('number', dash ? 'a number (sizes and counts are never negative)' : 'a number');
  const feet = unitAt(cursor) === 'ft' && cursor.peek(1).kind === 'number';
  const mark = { value: feet ? inInches(cursor, token) : token.value, token, feet };
  const last = marks.at(-1);
  if (last && order !== 'any' && (mark.value < last.value || (order === 'above' && mark.value === last.value))) {
    const least = order === 'above' ? 'above' : 'of at least';
    cursor.fail(`a value ${least} ${last.value} (a range rises, exceptional values lie outside it)`, token);
  }
  marks.push(mark);
  return mark;
}

/** Reads on after the number of feet of `5 ft 6 in`. */
function inInches(cursor: Cursor, feet: Token): number {
  if (!Number.isInteger(feet.value) || feet.value > 1000) cursor.fail('whole feet, at most 1000', feet);
  cursor.take('word');
  const inches = cursor.expect('number', 'inches');
  if (inches.value >= 12) cursor.fail('less than 12 inches', inches);
  if (unitAt(cursor) !== 'in') cursor.fail('"in" after feet and inches');
  cursor.take('word');
  return feet.value * 12 + inches.value;
}

function unitAt(cursor: Cursor): string | undefined {
  const { kind, text } = cursor.peek();
  return kind === 'word' ? readUnit(text) : undefined;
}

function takeDash(cursor: Cursor): boolean {
  return (cursor.take('dash') ?? cursor.take('word', 'to')) !== undefined;
}

function isWord(cursor: Cursor, text: string, ahead = 0): boolean {
  return cursor.peek(ahead).kind === 'word' && cursor.peek(ahead).text === text;
}
