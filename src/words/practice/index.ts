// Which sentences the practice room uses; each language is a file of its own, fetched with the part.
import type { PracticeWords } from './words.ts';

export type * from './words.ts';

const loaders: ReadonlyMap<string, () => Promise<PracticeWords>> = new Map([
  ['en', async () => (await import('./en.ts')).practice],
  ['es', async () => (await import('./es.ts')).practice],
]);

/** Sentences for a BCP 47 tag; English for a language that nobody translated. Asked for anew after a failure. */
export function practiceWords(tag: string): Promise<PracticeWords> {
  const language = (tag.split('-')[0] ?? '').toLowerCase();
  return (loaders.get(language) ?? (loaders.get('en') as () => Promise<PracticeWords>))();
}
