// Which sentences "who helps near you" uses; each language is a file of its own, fetched with the part.
import type { NearbyWords } from './words.ts';

export type * from './words.ts';

const loaders: ReadonlyMap<string, () => Promise<NearbyWords>> = new Map([
  ['en', async () => (await import('./en.ts')).nearby],
  ['es', async () => (await import('./es.ts')).nearby],
]);

/** Sentences for a BCP 47 tag; English for a language that nobody translated. Asked for anew after a failure. */
export function nearbyWords(tag: string): Promise<NearbyWords> {
  const language = (tag.split('-')[0] ?? '').toLowerCase();
  return (loaders.get(language) ?? (loaders.get('en') as () => Promise<NearbyWords>))();
}
