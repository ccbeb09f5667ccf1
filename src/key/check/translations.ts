import { printPath, show } from '../path.ts';
import type { Problems } from '../problem.ts';
import { sentencesOf } from '../sentences.ts';
import type { Key } from '../types.ts';

/** How many of the missing are told. */
const TOLD = 3;

/** For each language but the first: sentences and names without a translation, and translations without a sentence. */
export function checkTranslations(key: Key, problems: Problems): void {
  const sentences = [...sentencesOf(key)];
  const shown = new Map(sentences.filter((one) => one.shown).map((one) => [one.text, one]));
  const known = new Set(sentences.map(({ text }) => text));
  for (const language of key.languages.slice(1)) {
    const file = `text/${language}.json`;
    const text = key.text.get(language) ?? new Map<string, string>();
    const warn = (
      code: 'untranslated' | 'unused-translation',
      expected: string,
      what: string,
      examples: readonly string[],
    ) => {
      if (examples.length === 0) return;
      const more = examples.length > TOLD ? ` and ${examples.length - TOLD} more` : '';
      problems.warn(
        file,
        ['text'],
        code,
        expected,
        `${examples.length} ${what}: ${examples.slice(0, TOLD).join('; ')}${more}`,
      );
    };
    warn(
      'untranslated',
      `a translation of each of ${shown.size} sentences`,
      'missing',
      [...shown.values()]
        .filter((one) => !text.has(one.text))
        .map((one) => `${show(one.text)} (${one.file} ${printPath(one.at)})`),
    );
    warn(
      'untranslated',
      `a common name in this language for each of ${key.taxa.length} taxa`,
      'missing',
      key.taxa.filter(({ common }) => !common.has(language)).map(({ name }) => name),
    );
    warn(
      'unused-translation',
      'translations of sentences that the key has',
      'of others',
      [...text.keys()].filter((one) => !known.has(one)).map(show),
    );
  }
}
