// Names as people type them, and those that several plants have.
import type { Key, Taxon } from './types.ts';

/** A name without its case, accents and punctuation: "Elephant's-Ear" and "elephants ear" are one. */
export function foldName(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/[\p{M}'’ʼ]/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

export interface SharedName {
  /** The name as the first of the taxa spells it. */
  readonly name: string;
  /** Every taxon that has it, in the order of the key. */
  readonly taxa: readonly Taxon[];
}

/** Names that more than one taxon has, in any of the key's languages, by the folded name. */
export function sharedNames(key: Pick<Key, 'taxa'>): ReadonlyMap<string, SharedName> {
  const all = new Map<string, { name: string; taxa: Set<Taxon> }>();
  for (const taxon of key.taxa) {
    for (const name of [...taxon.common.values()].flat()) {
      const folded = foldName(name);
      const known = all.get(folded) ?? { name, taxa: new Set() };
      known.taxa.add(taxon);
      all.set(folded, known);
    }
  }
  return new Map(
    [...all]
      .filter(([, { taxa }]) => taxa.size > 1)
      .map(([folded, { name, taxa }]) => [folded, { name, taxa: [...taxa] }]),
  );
}
