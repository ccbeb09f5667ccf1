// How hard a text is to read, from how long its sentences and its words are.

/** What the formulas need to know of a text; all are counts. */
export interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

/**
 * Flesch-Kincaid grade: the year of school in the United States that a text asks for (Kincaid and others 1975; the
 * constants as a US health-research instrument page gives them, archived 2009). NaN for a text without words.
 */
export const fleschKincaidGrade = ({ words, sentences, syllables }: Counts): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/** Flesch reading ease, higher is easier (same page). NaN for a text without words. */
export const fleschEase = ({ words, sentences, syllables }: Counts): number =>
  206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);

/**
 * Fernandez Huerta's reading ease for Spanish (1959), higher is easier: 70 to 80 is somewhat easy. It is mostly printed
 * with the number of *sentences* in a hundred words, which would reward long ones; as a note on a linguists' list of 2011
 * argues, words for each sentence must be meant. NaN for a text without words.
 */
export const fernandezHuerta = ({ words, sentences, syllables }: Counts): number =>
  206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);
