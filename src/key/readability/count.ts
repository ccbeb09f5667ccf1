// A text as counts. What is a word, what ends a sentence and what is left out is ours: the formulas do not say.
import type { Counts } from './formulas.ts';

export interface CountOptions {
  readonly syllables: (word: string) => number;
  /** Names that a reader passes over, such as scientific ones: left out before anything is counted. */
  readonly without?: readonly string[];
}

const WORD = /[\p{L}\p{N}]+(?:['’.,-](?=[\p{L}\p{N}])[\p{L}\p{N}]+)*/gu;

/**
 * Of the pieces of a text, such as the items of a list: each piece ends a sentence, as do `.`, `!` and `?` before a
 * space. A number in figures is one word of one syllable; words joined by a hyphen are one word.
 */
export function countText(pieces: readonly string[], { syllables, without = [] }: CountOptions): Counts {
  // Longer names first, that none is left in part.
  const names = [...without].sort((a, b) => b.length - a.length);
  let [words, sentences, total] = [0, 0, 0];
  for (const piece of pieces) {
    const bare = names.reduce((text, name) => text.replaceAll(name, ' '), piece);
    for (const sentence of bare.split(/(?<=[.!?]["”»)]?)\s+/u)) {
      const found = sentence.match(WORD) ?? [];
      if (found.length === 0) continue;
      sentences++;
      words += found.length;
      for (const word of found) {
        total += /\p{L}/u.test(word)
          ? word.split(/[-.]/).reduce((sum, part) => sum + (/\p{L}/u.test(part) ? syllables(part) : 1), 0)
          : 1;
      }
    }
  }
  return { words, sentences, syllables: total };
}
