import { RangeNotationError } from './error.ts';
import { type Token, type TokenKind, tokensOf } from './tokens.ts';

/** Walks the tokens of one text once, from left to right. */
export class Cursor {
  readonly #text: string;
  readonly #tokens: readonly Token[];
  #next = 0;

  constructor(text: string) {
    this.#text = text;
    this.#tokens = tokensOf(text);
  }

  /** The token `ahead` of the next one; past the end, the end. */
  peek(ahead = 0): Token {
    const token = this.#tokens[this.#next + ahead] ?? this.#tokens.at(-1);
    if (token === undefined) throw new Error('a text without an end token');
    return token;
  }

  /** Takes the next token if it is of this kind (and, of a word, says `text`). */
  take(kind: TokenKind, text?: string): Token | undefined {
    const token = this.peek();
    if (token.kind !== kind || (text !== undefined && token.text !== text)) return undefined;
    this.#next++;
    return token;
  }

  /** Takes these words if they come next, all of them. */
  takeWords(words: readonly string[]): boolean {
    const all = words.every((word, ahead) => this.peek(ahead).kind === 'word' && this.peek(ahead).text === word);
    if (all) this.#next += words.length;
    return all;
  }

  expect(kind: TokenKind, expected: string, text?: string): Token {
    return this.take(kind, text) ?? this.fail(expected);
  }

  /** Refuses the next token, or the one given. */
  fail(expected: string, { at, kind, text } = this.peek()): never {
    throw new RangeNotationError(this.#text, at + 1, expected, kind === 'end' ? 'the end' : `"${text}"`);
  }
}
