// How easy a text is to read, by language.
import { type CountOptions, countText } from './count.ts';
import { englishSyllables } from './english.ts';
import { fernandezHuerta, fleschKincaidGrade } from './formulas.ts';
import { spanishSyllables } from './spanish.ts';

export { type CountOptions, countText } from './count.ts';
export { englishSyllables } from './english.ts';
export { type Counts, fernandezHuerta, fleschEase, fleschKincaidGrade } from './formulas.ts';
export { spanishSyllables } from './spanish.ts';

export interface Measure {
  /** What is measured, in words. */
  readonly name: string;
  /** NaN for pieces without words. */
  readonly of: (pieces: readonly string[], without?: readonly string[]) => number;
  /** Which way is harder. */
  readonly harder: 'more' | 'less';
  /** From here on a text is too hard for advice to the public (ours). */
  readonly limit: number;
}

const measure =
  (formula: typeof fernandezHuerta, syllables: CountOptions['syllables']) =>
  (pieces: readonly string[], without: readonly string[] = []) =>
    formula(countText(pieces, { syllables, without }));

/**
 * By language. Grade 7 and an ease of 70 go together: Flesch's scale calls an ease of 70 to 80 that of grade 7 (from
 * memory), and Fernandez Huerta's calls his 70 to 80 somewhat easy (as a Spanish page on readability gives it).
 */
export const MEASURES: ReadonlyMap<string, Measure> = new Map<string, Measure>([
  ['en', { name: 'Flesch-Kincaid grade', of: measure(fleschKincaidGrade, englishSyllables), harder: 'more', limit: 7 }],
  ['es', { name: 'Fernández Huerta ease', of: measure(fernandezHuerta, spanishSyllables), harder: 'less', limit: 70 }],
]);

export const isHard = ({ harder, limit }: Measure, value: number): boolean =>
  harder === 'more' ? value > limit : value < limit;
