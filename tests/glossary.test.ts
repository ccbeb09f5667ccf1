// The demonstration key's glossary: nothing left out, nothing half translated, and plain where it says so.
import { describe, expect, test } from 'vitest';
import characters from '../keys/streambank/characters.json' with { type: 'json' };
import glossary from '../keys/streambank/glossary.json' with { type: 'json' };
import sources from '../keys/streambank/sources.json' with { type: 'json' };
import text from '../keys/streambank/text/es.json' with { type: 'json' };
import { type Term, termsIn } from '../src/key/index.ts';

const terms: readonly Term[] = glossary.terms.map((term) => ({
  ...term,
  text: new Map(Object.entries(term.text)),
})) as unknown as readonly Term[];
const spanish = new Map(Object.entries(text.text));

interface Said {
  readonly id: string;
  readonly trade?: string;
}
const kept = characters.characters as readonly (Said & { states?: readonly Said[]; classes?: readonly Said[] })[];
const trade = new Set(
  kept.flatMap(({ states = [], classes = [], ...one }) =>
    [one, ...states, ...classes].flatMap((said) => said.trade ?? []),
  ),
);
const places = new Set(
  kept.flatMap(({ id, states = [], classes = [] }) => [...states, ...classes].map((state) => `${id}/${state.id}`)),
);

/** Vowels in a row are one syllable, a silent e at the end none: the usual rule of thumb. */
function syllables(word: string): number {
  const runs = word.toLowerCase().match(/[aeiouy]+/g)?.length ?? 0;
  return Math.max(1, runs - (/[^l]e$|[^aeiouy]es$|[^td]ed$/i.test(word) ? 1 : 0));
}

/** Flesch-Kincaid grade: Kincaid, Fishburne, Rogers and Chissom 1975; the formula from memory. */
function grade(sentence: string): number {
  const words = sentence.match(/[a-z'-]+/gi) ?? [];
  const count = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * words.length + (11.8 * count) / words.length - 15.59;
}

describe('every trade word of the key is explained', () => {
  test('there is a fair number of them', () => {
    expect(trade.size).toBeGreaterThan(150);
  });
  test.each([...trade])('%s, in both languages', (words) => {
    expect(termsIn(words, terms, 'en').some(({ term }) => term !== undefined)).toBe(true);
    const translated = spanish.get(words) ?? '';
    expect(
      termsIn(translated, terms, 'es').some(({ term }) => term !== undefined),
      translated,
    ).toBe(true);
  });
});

describe('every term is whole', () => {
  test.each(terms.map((term) => [term.id, term] as const))('%s', (_, term) => {
    const es = term.text.get('es');
    for (const one of [term, es])
      for (const said of [one?.term, one?.plain, one?.definition, one?.where, one?.words.join()])
        expect(said?.trim() ?? '').not.toBe('');
    for (const sentence of [term.plain, term.definition, term.where, es?.plain, es?.definition, es?.where])
      expect(sentence).toMatch(/\.$/);
    if (term.picture) expect(places).toContain(`${term.picture.character}/${term.picture.state}`);
    for (const source of term.source) expect(sources.sources.map(({ id }) => id)).toContain(source);
    expect(grade(term.plain), term.plain).toBeLessThanOrEqual(7);
  });

  test('no form belongs to two of them, in either language', () => {
    for (const language of ['en', 'es']) {
      const forms = terms.flatMap((term) =>
        (language === 'en' ? term.words : (term.text.get('es')?.words ?? [])).map((form) => form.toLowerCase()),
      );
      expect(forms.filter((form, i) => forms.indexOf(form) !== i)).toEqual([]);
      for (const form of forms) expect(form.split(' ').length, form).toBeLessThanOrEqual(8);
    }
  });
});

test('the measure of plainness tells a plain sentence from a learned one', () => {
  expect(grade('The stalk of a leaf.')).toBeLessThan(4);
  expect(
    grade('Indeterminate inflorescence exhibiting unidirectional pedicellate floral orientation.'),
  ).toBeGreaterThan(15);
});
