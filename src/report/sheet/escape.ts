// Text from outside, made harmless where it is put.

const SIGNS: ReadonlyMap<string, string> = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
  ["'", '&#39;'],
]);

/** For the text of an element, or an attribute's value in quotes. */
export const html = (text: string): string => text.replace(/[&<>"']/g, (sign) => SIGNS.get(sign) as string);

/** A string of a style sheet, quotes included: all but letters and digits by their code points (CSS Syntax 3, 4.3.7). */
export const cssString = (text: string): string =>
  `"${text.replace(/[^a-zA-Z0-9 ]/gu, (sign) => `\\${(sign.codePointAt(0) as number).toString(16)} `)}"`;
