// From a language tag to a dictionary, loaded when it is first asked for.
import { en } from './en.ts';
import type { Words } from './words.ts';

const loaded = new Map<string, Words>([['en', en]]);
const loaders: ReadonlyMap<string, () => Promise<Words>> = new Map([['es', async () => (await import('./es.ts')).es]]);

/** Primary language of a BCP 47 tag, lower case: `es` of `es-MX`. */
const primary = (tag: string): string => (tag.split('-')[0] ?? '').toLowerCase();

/** Words for a language tag: at once when they are there, else a promise; English for a language nobody translated. */
export function wordsFor(tag: string): Words | Promise<Words> {
  const language = primary(tag);
  const have = loaded.get(language);
  if (have) return have;
  const load = loaders.get(language);
  if (load === undefined) return en;
  return load().then((words) => {
    loaded.set(language, words);
    return words;
  });
}
