// From a language tag to a dictionary, loaded when it is first asked for.
import type { Words } from './words.ts';

const loaders: ReadonlyMap<string, () => Promise<Words>> = new Map([
  ['en', async () => (await import('./en.ts')).en],
  ['es', async () => (await import('./es.ts')).es],
]);
const loaded = new Map<string, Words>();
const coming = new Map<string, Promise<Words>>();

/** Primary language of a BCP 47 tag, lower case: `es` of `es-MX`; English for a language nobody translated. */
function known(tag: string): string {
  const language = (tag.split('-')[0] ?? '').toLowerCase();
  return loaders.has(language) ? language : 'en';
}

/** Words for a language tag: at once when they are there, else a promise; after a failure they are asked for anew. */
export function wordsFor(tag: string): Words | Promise<Words> {
  const language = known(tag);
  const have = loaded.get(language) ?? coming.get(language);
  if (have) return have;
  const words = (loaders.get(language) as () => Promise<Words>)().then((arrived) => {
    loaded.set(language, arrived);
    return arrived;
  });
  coming.set(language, words);
  words.catch(() => coming.delete(language));
  return words;
}
