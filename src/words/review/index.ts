// Which sentences a review uses; each language is a file of its own, fetched with the part.
import type { ReviewWords } from './words.ts';

export type * from './words.ts';

const loaders: ReadonlyMap<string, () => Promise<ReviewWords>> = new Map([
  ['en', async () => (await import('./en.ts')).review],
  ['es', async () => (await import('./es.ts')).review],
]);

/** Sentences for a BCP 47 tag; English for a language that nobody translated. Asked for anew after a failure. */
export function reviewWords(tag: string): Promise<ReviewWords> {
  const language = (tag.split('-')[0] ?? '').toLowerCase();
  return (loaders.get(language) ?? (loaders.get('en') as () => Promise<ReviewWords>))();
}
