/** Longest piece of the text that a message repeats. */
const EXCERPT = 60;

/** A text that is not a botanical range. `column` counts from 1, in UTF-16 units, and may be one past the end. */
export class RangeNotationError extends Error {
  override readonly name = 'RangeNotationError';
  readonly column: number;
  readonly expected: string;

  constructor(text: string, column: number, expected: string, found?: string) {
    const excerpt = text.length > EXCERPT ? `${text.slice(0, EXCERPT)}…` : text;
    super(`"${excerpt}", column ${column}: expected ${expected}${found === undefined ? '' : `, found ${found}`}`);
    this.column = column;
    this.expected = expected;
  }
}
