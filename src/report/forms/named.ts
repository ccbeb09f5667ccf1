// The name of a find at the lowest rank that is certain, as a record of an occurrence needs it.
import type { Key, Taxon } from '../../key/index.ts';
import type { Find } from '../find/index.ts';

/** A scientific name in its parts; a part that the rank does not have is empty. */
export interface Named {
  readonly scientificName: string;
  readonly taxonRank: string;
  readonly family: string;
  readonly genus: string;
  readonly specificEpithet: string;
  readonly infraspecificEpithet: string;
  /** The taxon of the key, where it is one. */
  readonly taxon?: Taxon;
}

/** Above the rank of family nothing is told apart. */
const PLANTS: Named = {
  scientificName: 'Plantae',
  taxonRank: 'kingdom',
  family: '',
  genus: '',
  specificEpithet: '',
  infraspecificEpithet: '',
};

const RANKS: ReadonlyMap<string, string> = new Map([
  ['subsp.', 'subspecies'],
  ['var.', 'variety'],
  ['f.', 'form'],
]);

/** The parts of a name as floras write it: `Genus`, `Genus epithet`, `Genus epithet subsp. epithet`, with × for a hybrid. */
export function partsOf(name: string, family = '', taxon?: Taxon): Named {
  const [genus = '', ...rest] = name.trim().split(/\s+/);
  const of = rest[0] === '×' ? rest.splice(0, 2).join(' ') : (rest.shift() ?? '');
  const [marker = '', infraspecificEpithet = ''] = rest;
  return {
    scientificName: name.trim(),
    taxonRank: RANKS.get(marker) ?? (of === '' ? 'genus' : 'species'),
    family,
    genus,
    specificEpithet: of,
    infraspecificEpithet,
    ...(taxon ? { taxon } : {}),
  };
}

/** What all of these names have in common. */
export function commonOf(names: readonly Named[]): Named {
  const [first, ...rest] = names;
  if (first === undefined) return PLANTS;
  const all = (field: keyof Named) => first[field] !== '' && rest.every((one) => one[field] === first[field]);
  const { family, genus, specificEpithet } = first;
  if (all('scientificName')) return first;
  if (all('genus') && all('specificEpithet')) return partsOf(`${genus} ${specificEpithet}`, family);
  if (all('genus')) return partsOf(genus, family);
  return all('family') ? { ...PLANTS, scientificName: family, taxonRank: 'family', family } : PLANTS;
}

/** The next rank up: what is only leaned to is not told as if it were settled. */
const above = ({ genus, specificEpithet, infraspecificEpithet, family }: Named): Named =>
  partsOf(infraspecificEpithet === '' ? genus : `${genus} ${specificEpithet}`, family);

/** The parts of a taxon by its id: from the key, else as the find names it. */
export function namedIn(
  { key: { id }, standing, sought }: Find,
  key: Key | undefined,
  taxon: string,
): Named | undefined {
  const known = key?.id === id ? key.taxa.find((one) => one.id === taxon) : undefined;
  if (known) return partsOf(known.name, known.family, known);
  const told = [...standing, ...(sought ? [sought] : [])].find((one) => one.taxon === taxon);
  return told && partsOf(told.name);
}

/** Weight that the plants of a common name must hold together, where the key does not say (ours). */
const CERTAIN = 0.95;

/** The plant that was looked for and not seen; undefined where it was seen, and where it is not said. */
export const soughtName = (find: Find, key: Key | undefined): Named | undefined =>
  find.detected || !find.sought ? undefined : namedIn(find, key, find.sought.taxon);

/**
 * The name that the key's answers make certain: of a settled verdict its plant, of a leaning or open one what the
 * likeliest plants have in common that together hold the weight of a settled one, of none of the key's plants, Plantae.
 */
export function certainName(find: Find, key: Key | undefined): Named {
  const { verdict, standing } = find;
  const [lead] = verdict.taxa;
  if (verdict.kind === 'outside' || lead === undefined) return PLANTS;
  if (verdict.kind === 'settled') return namedIn(find, key, lead) ?? PLANTS;
  const needed = key?.thresholds.settled ?? CERTAIN;
  const names: Named[] = [];
  let held = 0;
  for (const { taxon, probability } of standing) {
    names.push(namedIn(find, key, taxon) ?? PLANTS);
    held += probability;
    if (held < needed) continue;
    const shared = commonOf([...names, ...verdict.taxa.flatMap((id) => namedIn(find, key, id) ?? PLANTS)]);
    return shared.taxon ? above(shared) : shared;
  }
  return PLANTS;
}

/** The name that a specialist gave; undefined while there is none. */
export function reviewedName(find: Find, key: Key | undefined): Named | undefined {
  const { review } = find;
  if (review === undefined || review.status === 'photo-wanted' || review.taxon === undefined) return undefined;
  if (review.taxon === 'outside') return review.name === undefined ? PLANTS : partsOf(review.name);
  return namedIn(find, key, review.taxon) ?? (review.name === undefined ? PLANTS : partsOf(review.name));
}

/** The doubt of a name that is leaned to, as `cf. donax` beside the genus; empty where there is none to tell. */
export function qualifierOf(find: Find, key: Key | undefined, told: Named): string {
  const [lead] = find.verdict.taxa;
  const leaned = find.verdict.kind === 'leaning' && lead !== undefined ? namedIn(find, key, lead) : undefined;
  if (leaned === undefined || leaned.scientificName === told.scientificName) return '';
  const rest = leaned.scientificName.startsWith(`${told.scientificName} `)
    ? leaned.scientificName.slice(told.scientificName.length + 1)
    : leaned.scientificName;
  return `cf. ${rest}`;
}
