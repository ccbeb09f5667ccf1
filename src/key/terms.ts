// Finds the trade terms of a glossary in a sentence, so that each can say what it means where it stands.
import type { Term, TermText } from './album/types.ts';

/** A piece of a sentence: words as they stand, and the term they are, if any. */
export interface Piece {
  readonly text: string;
  readonly term?: Term;
}

/** Letters, digits and marks, held together by hyphens and apostrophes: "two-ranked" is one word, and no "ranked". */
const WORD = /[\p{L}\p{M}\p{N}]+(?:[-'’][\p{L}\p{M}\p{N}]+)*/gu;
const fold = (words: string): string => words.normalize('NFC').toLowerCase().replaceAll(/\s+/g, ' ');

/** Terms by their forms, folded. By glossary and language: a page looks for the same terms in every sentence it shows. */
const finders = new WeakMap<readonly Term[], Map<string, ReadonlyMap<string, Term>>>();

function formsOf(terms: readonly Term[], language: string): ReadonlyMap<string, Term> {
  const known = finders.get(terms) ?? new Map<string, ReadonlyMap<string, Term>>();
  finders.set(terms, known);
  // Of two terms that share a form, the first one written has it: it comes last here.
  const forms =
    known.get(language) ??
    new Map(
      [...terms].reverse().flatMap((term) => termIn(term, language).words.map((form) => [fold(form), term] as const)),
    );
  known.set(language, forms);
  return forms;
}

/** A term in a language, or in that of the key where it is not translated. */
export const termIn = (term: Term, language: string): TermText =>
  term.text.get(language) ?? term.text.get(language.split('-')[0] ?? '') ?? term;

/**
 * The sentence in pieces, which joined are the sentence. Whole words only, upper and lower case alike, the longest form
 * first, and each term once: where it stands first, `earlier` (what the same block said earlier) counted.
 */
export function termsIn(sentence: string, terms: readonly Term[], language: string, earlier = ''): readonly Piece[] {
  const forms = formsOf(terms, language);
  const seen = new Set(matches(earlier, forms).map(({ term }) => term));
  const pieces: Piece[] = [];
  let at = 0;
  for (const { start, end, term } of matches(sentence, forms)) {
    if (seen.has(term)) continue;
    seen.add(term);
    if (start > at) pieces.push({ text: sentence.slice(at, start) });
    pieces.push({ text: sentence.slice(start, end), term });
    at = end;
  }
  if (at < sentence.length) pieces.push({ text: sentence.slice(at) });
  return pieces;
}

/** Words in the longest form that is looked for (ours). */
const LONGEST = 8;

interface Match {
  readonly start: number;
  readonly end: number;
  readonly term: Term;
}

/** Every form in the sentence, the longest first at each word, none inside another. */
function matches(sentence: string, forms: ReadonlyMap<string, Term>): Match[] {
  const found: Match[] = [];
  const words = [...sentence.matchAll(WORD)];
  let free = 0;
  for (const [i, { index: start }] of words.entries()) {
    if (start < free) continue;
    for (const { 0: last, index } of words.slice(i, i + LONGEST).reverse()) {
      const end = index + last.length;
      const term = forms.get(fold(sentence.slice(start, end)));
      if (term === undefined) continue;
      found.push({ start, end, term });
      free = end;
      break;
    }
  }
  return found;
}
