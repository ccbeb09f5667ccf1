// Numbers as floras and field guides print them: 2, 2.5, 1/2, 1 1/2, 1½.
import { RangeNotationError } from './error.ts';

/** Denominators that are read, and printed for inches and feet. */
const DENOMINATORS = [2, 3, 4, 8, 16] as const;

/** Bounds of what is believed, whatever the unit: also keeps decimals free of exponents both ways. */
const SMALLEST = 1e-6;
const LARGEST = 1e6;

const SIGNS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
]);

export interface NumberRead {
  readonly value: number;
  /** Index after the number. */
  readonly end: number;
}

/** Whether a number begins at this index. */
export function startsNumber(text: string, at: number): boolean {
  return isDigit(text, at) || (text[at] === '.' && isDigit(text, at + 1)) || SIGNS.has(text[at] ?? '');
}

/** Reads the number that begins at this index. */
export function readNumber(text: string, start: number): NumberRead {
  const read = readValue(text, start);
  if (read.value !== 0 && (read.value < SMALLEST || read.value > LARGEST)) {
    throw new RangeNotationError(text, start + 1, 'zero, or a number from 0.000001 to 1,000,000');
  }
  return read;
}

function readValue(text: string, start: number): NumberRead {
  const end = skipDigits(text, start);
  if (text[end] === '.' && isDigit(text, end + 1)) {
    const last = skipDigits(text, end + 1);
    return { value: Number(text.slice(start, last)), end: last };
  }
  if (end > start && text[end] === '/') return readFraction(text, start, 0);
  const whole = Number(text.slice(start, end));
  const next = skipSpace(text, end);
  const sign = SIGNS.get(text[next] ?? '');
  if (sign !== undefined) return { value: (whole * sign[1] + sign[0]) / sign[1], end: next + 1 };
  const upper = skipDigits(text, next);
  if (upper > next && text[upper] === '/') return readFraction(text, next, whole);
  return { value: whole, end };
}

/** Reads `1/2` at this index and adds it to the whole number in front. */
function readFraction(text: string, start: number, whole: number): NumberRead {
  const slash = skipDigits(text, start);
  const end = skipDigits(text, slash + 1);
  const upper = Number(text.slice(start, slash));
  const lower = DENOMINATORS.find((known) => String(known) === text.slice(slash + 1, end));
  if (lower === undefined) {
    throw new RangeNotationError(text, slash + 2, 'halves, thirds, quarters, eighths or sixteenths');
  }
  if (upper === 0 || upper >= lower) throw new RangeNotationError(text, start + 1, 'a fraction between 0 and 1');
  // One division of whole numbers, so that printNumber finds the very same value.
  return { value: (whole * lower + upper) / lower, end };
}

/** The shortest decimal that reads back as the same value; with `fractions`, `1 1/2` where one is exact. */
export function printNumber(value: number, fractions: boolean): string {
  if (!fractions || Number.isInteger(value)) return String(value);
  for (const lower of DENOMINATORS) {
    const upper = Math.round(value * lower);
    if (upper / lower === value) {
      const whole = Math.floor(upper / lower);
      return `${whole === 0 ? '' : `${whole} `}${upper - whole * lower}/${lower}`;
    }
  }
  return String(value);
}

function isDigit(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code >= 48 && code <= 57;
}

function skipDigits(text: string, from: number): number {
  let at = from;
  while (isDigit(text, at)) at++;
  return at;
}

/** The index of the next character that is no white space (of any kind, no-break space included). */
export function skipSpace(text: string, from: number): number {
  let at = from;
  while (at < text.length && text.charAt(at).trim() === '') at++;
  return at;
}
