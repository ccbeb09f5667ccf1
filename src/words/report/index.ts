// Which sentences a report uses; each language is a file of its own, fetched with the part.
import type { ReportWords } from './words.ts';

export type * from './words.ts';

const loaders: ReadonlyMap<string, () => Promise<ReportWords>> = new Map([
  ['en', async () => (await import('./en.ts')).report],
  ['es', async () => (await import('./es.ts')).report],
]);

/** Sentences for a BCP 47 tag; English for a language that nobody translated. Asked for anew after a failure. */
export function reportWords(tag: string): Promise<ReportWords> {
  const language = (tag.split('-')[0] ?? '').toLowerCase();
  return (loaders.get(language) ?? (loaders.get('en') as () => Promise<ReportWords>))();
}
