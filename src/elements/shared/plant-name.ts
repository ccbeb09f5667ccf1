// What to call a plant in a sentence.
import type { Key, PreparedKey, Taxon } from '../../key/index.ts';

const primary = (tag: string): string => (tag.split('-')[0] ?? '').toLowerCase();

/** The name to use in a sentence: in the reader's language, else in the key's own, else the scientific one. */
export function plantName(key: Key, taxon: Taxon, language: string): { readonly text: string; readonly lang: string } {
  for (const lang of [primary(language), key.languages[0] ?? '']) {
    const text = taxon.common.get(lang)?.[0];
    if (text !== undefined) return { text, lang };
  }
  return { text: taxon.name, lang: 'la' };
}

export function taxonOf(prepared: PreparedKey, id: string): Taxon {
  const taxon = prepared.key.taxa[prepared.taxonIndex.get(id) ?? -1];
  if (taxon === undefined) throw new Error(`the key has no taxon ${id}`);
  return taxon;
}
