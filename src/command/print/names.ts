// What a plant is called in print.
import type { Key, Taxon } from '../../key/index.ts';

/** The first name in the key's own language, or the scientific one. */
export const commonName = (key: Key, taxon: Taxon): string =>
  taxon.common.get(key.languages[0] ?? '')?.[0] ?? taxon.name;

export const taxonOf = (key: Key, id: string): Taxon | undefined => key.taxa.find((taxon) => taxon.id === id);

export function nameOf(key: Key, id: string): string {
  const taxon = taxonOf(key, id);
  return taxon === undefined ? id : commonName(key, taxon);
}
