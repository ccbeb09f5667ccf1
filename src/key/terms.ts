// Finds the trade terms of a glossary in a sentence, so that each can say what it means where it stands.
import type { Term, TermText } from './album/types.ts';

/** A piece of a sentence: words as they stand, and the term they are, if any. */
export interface Piece {
  readonly text: string;
  readonly term?: Term;
}

/** Letters, digits and marks, held together by hyphens and apostrophes: "two-ranked" is one word, and no "ranked". */
const WORD = /[\p{L}\p{M}\p{N}]+(?:[-'’][\p{L}\p{M}\p{N}]+)*/gu;
const fold = (words: string): string => words.normalize('NFC').toLowerCase();

interface Finder {
  readonly terms: ReadonlyMap<string, Term>;
  /** Words in the longest form. */
  readonly longest: number;
}

/** By glossary and language: a page looks for the same terms in every sentence it shows. */
const finders = new WeakMap<readonly Term[], Map<string, Finder>>();

function finderOf(terms: readonly Term[], language: string): Finder {
  const known = finders.get(terms) ?? new Map<string, Finder>();
  finders.set(terms, known);
  const found = known.get(language);
  if (found) return found;
  // Of two terms that share a form, the first one written has it.
  const forms = new Map<string, Term>();
  for (const term of terms)
    for (const form of termIn(term, language).words) {
      const folded = fold((form.match(WORD) ?? []).join(' '));
      if (folded !== '' && !forms.has(folded)) forms.set(folded, term);
    }
  const longest = Math.max(0, ...[...forms.keys()].map((form) => form.split(' ').length));
  const finder = { terms: forms, longest };
  known.set(language, finder);
  return finder;
}

/** A term in a language, or in that of the key where it is not translated. */
export const termIn = (term: Term, language: string): TermText =>
  term.text.get(language) ?? term.text.get(language.split('-')[0] ?? '') ?? term;

/**
 * The sentence in pieces, which joined are the sentence. Whole words only, upper and lower case alike, the longest form
 * first, and each term once: where it stands first, `earlier` (what the same block said earlier) counted.
 */
export function termsIn(sentence: string, terms: readonly Term[], language: string, earlier = ''): readonly Piece[] {
  const finder = finderOf(terms, language);
  const seen = new Set([...matches(earlier, finder)].map(({ term }) => term));
  const pieces: Piece[] = [];
  let at = 0;
  for (const { start, end, term } of matches(sentence, finder)) {
    if (seen.has(term)) continue;
    seen.add(term);
    if (start > at) pieces.push({ text: sentence.slice(at, start) });
    pieces.push({ text: sentence.slice(start, end), term });
    at = end;
  }
  if (at < sentence.length) pieces.push({ text: sentence.slice(at) });
  return pieces;
}

interface Match {
  readonly start: number;
  readonly end: number;
  readonly term: Term;
}

function* matches(sentence: string, { terms, longest }: Finder): Generator<Match> {
  const words = [...sentence.matchAll(WORD)].map(({ 0: word, index }) => ({
    word,
    start: index,
    end: index + word.length,
  }));
  for (let first = 0; first < words.length; first += 1) {
    const last = lastOf(words, first, longest, sentence);
    for (let end = last; end >= first; end -= 1) {
      const run = words.slice(first, end + 1);
      const term = terms.get(fold(run.map(({ word }) => word).join(' ')));
      if (term === undefined) continue;
      yield { start: run[0]?.start ?? 0, end: run.at(-1)?.end ?? 0, term };
      first = end;
      break;
    }
  }
}

/** The last word that can belong to a form begun at `first`: nothing but space lies between. */
function lastOf(
  words: readonly { readonly start: number; readonly end: number }[],
  first: number,
  longest: number,
  sentence: string,
): number {
  let last = first;
  while (last + 1 < words.length && last + 1 - first < longest) {
    const between = sentence.slice(words[last]?.end, words[last + 1]?.start);
    if (between.trim() !== '') break;
    last += 1;
  }
  return last;
}
