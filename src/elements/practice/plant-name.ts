// What to call a plant where several are named: one whose common name another bears too is told by its Latin name as well.
import type { Key, PreparedKey } from '../../key/index.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';

/** By key and language: common names that several plants show. */
const shared = new WeakMap<Key, Map<string, ReadonlySet<string>>>();

function sharedIn(key: Key, language: string): ReadonlySet<string> {
  const own = shared.get(key) ?? new Map<string, ReadonlySet<string>>();
  shared.set(key, own);
  const known = own.get(language);
  if (known) return known;
  const names = key.taxa.map((taxon) => plantName(key, taxon, language).text);
  const twice = new Set(names.filter((name, i) => names.indexOf(name) !== i));
  own.set(language, twice);
  return twice;
}

/** The id itself where the key has no such plant. */
export function ownName(prepared: PreparedKey, id: string, language: string): string {
  if (!prepared.taxonIndex.has(id)) return id;
  const { key } = prepared;
  const taxon = taxonOf(prepared, id);
  const { text } = plantName(key, taxon, language);
  return sharedIn(key, language).has(text) ? `${text} (${taxon.name})` : text;
}
