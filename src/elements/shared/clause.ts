// The answers as one line of words.
import type { Character } from '../../key/index.ts';
import { asClause } from '../../words/clause.ts';

/** Fewer words than this leave open what was looked at: "No", "Smooth". */
const SPEAKS_FOR_ITSELF = 3;

/** One answer, itself a clause, as a piece of the line: with the character's label where the answer alone would not tell. */
export function clauseOf(character: Character, label: string, answer: string, language: string): string {
  const alone = character.kind !== 'measure' && answer.split(/\s+/).length >= SPEAKS_FOR_ITSELF;
  return alone ? answer : `${asClause(label, language)}: ${answer}`;
}

/** Clauses in a row, set apart by semicolons when one of them has a comma of its own. */
export function joined(clauses: readonly string[]): string {
  return clauses.join(clauses.some((clause) => clause.includes(',')) ? '; ' : ', ');
}
