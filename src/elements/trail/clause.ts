// The answers as one line of words.
import type { Character } from '../../key/index.ts';

/** Fewer words than this leave open what was looked at: "No", "Smooth". */
const SPEAKS_FOR_ITSELF = 3;

/** One answer, itself a clause, as a piece of the line: with the character's label where the answer alone would not tell. */
export function clauseOf(character: Character, label: string, answer: string, language: string): string {
  const alone = character.kind !== 'measure' && answer.split(/\s+/).length >= SPEAKS_FOR_ITSELF;
  return alone ? answer : `${asClause(label, language)}: ${answer}`;
}

/** A sentence's beginning as a piece of a line: its first letter small, unless it is more than a first letter ("V-shaped"). */
export function asClause(text: string, language: string): string {
  const [first = '', second = ''] = text;
  return /[\p{Ll}\s]/u.test(second) ? first.toLocaleLowerCase(language) + text.slice(first.length) : text;
}
