// Cuts a range into tokens: one pass, no regular expression over the text.
import { readUnit } from '../units.ts';
import { RangeNotationError } from './error.ts';
import { readNumber, skipSpace, startsNumber } from './numbers.ts';

export type TokenKind = 'number' | 'word' | 'dash' | 'suffix' | 'open' | 'close' | 'times' | 'about' | 'end';

export interface Token {
  readonly kind: TokenKind;
  /** Index of the first character. */
  readonly at: number;
  /** As written; of a word, in lower case and without its dot; of a suffix, without its hyphen. */
  readonly text: string;
  /** Of a number, its value; else 0. */
  readonly value: number;
}

const HYPHENS = '-\u2010\u2011';
const DASHES = `${HYPHENS}\u2012\u2013\u2014\u2212`;
const SINGLES: ReadonlyMap<string, readonly [TokenKind, string]> = new Map([
  ['(', ['open', '(']],
  [')', ['close', ')']],
  ['×', ['times', '×']],
  ['±', ['about', '±']],
  ['~', ['about', '~']],
  ["'", ['word', 'ft']],
  ['’', ['word', 'ft']],
  ['′', ['word', 'ft']],
  ['"', ['word', 'in']],
  ['”', ['word', 'in']],
  ['″', ['word', 'in']],
]);
const ABOUT: ReadonlySet<string> = new Set(['ca', 'c', 'circa', 'about']);
/** Words that a hyphen does not join to a count. */
const RESERVED: ReadonlySet<string> = new Set([...ABOUT, 'to', 'or', 'x']);

/** The tokens of the text, the last of kind `end`. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = skipSpace(text, 0);
  while (at < text.length) {
    const { token, end } = tokenAt(text, at);
    tokens.push(token);
    at = skipSpace(text, end);
  }
  tokens.push({ kind: 'end', at: text.length, text: '', value: 0 });
  return tokens;
}

function tokenAt(text: string, at: number): { token: Token; end: number } {
  const sign = text.charAt(at);
  if (startsNumber(text, at)) {
    const { value, end } = readNumber(text, at);
    return { token: { kind: 'number', at, text: text.slice(at, end), value }, end };
  }
  if (DASHES.includes(sign)) return dashAt(text, at);
  if (isLetter(sign)) {
    const end = skipWord(text, at, false);
    const word = text.slice(at, end).toLowerCase();
    const kind = word === 'x' ? 'times' : ABOUT.has(word) ? 'about' : 'word';
    return { token: { kind, at, text: word, value: 0 }, end: text[end] === '.' ? end + 1 : end };
  }
  const single = SINGLES.get(sign);
  if (single === undefined) {
    const hint =
      sign === ',' ? 'a decimal point (a comma has no place here)' : 'a number, dash, parenthesis, × or unit';
    throw new RangeNotationError(text, at + 1, hint, `"${String.fromCodePoint(text.codePointAt(at) ?? 0)}"`);
  }
  return { token: { kind: single[0], at, text: single[1], value: 0 }, end: at + 1 };
}

/** A dash between numbers (a double hyphen is a typed en dash), or a hyphen that joins a word: `3--5-lobed`. */
function dashAt(text: string, at: number): { token: Token; end: number } {
  if (HYPHENS.includes(text.charAt(at)) && isLetter(text.charAt(at + 1))) {
    const end = skipWord(text, at + 1, true);
    const word = text.slice(at + 1, end);
    if (!isReserved(word)) return { token: { kind: 'suffix', at, text: word, value: 0 }, end };
  }
  const end = text.startsWith('--', at) ? at + 2 : at + 1;
  return { token: { kind: 'dash', at, text: text.slice(at, end), value: 0 }, end };
}

function isReserved(word: string): boolean {
  return RESERVED.has(word.toLowerCase()) || readUnit(word) !== undefined;
}

function isLetter(sign: string): boolean {
  return sign.toLowerCase() !== sign.toUpperCase();
}

/** The index after a word; with `hyphens`, of words joined by single ones (`lobed`, `lobed-toothed`). */
function skipWord(text: string, from: number, hyphens: boolean): number {
  let at = from;
  while (isLetter(text.charAt(at)) || (hyphens && text[at] === '-' && isLetter(text.charAt(at + 1)))) at++;
  return at;
}
