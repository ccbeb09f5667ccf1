// Which photographs of a key's plants are still wanted, worked out from the matrix and the look-alikes.
import type { LooseMonths } from '../loose.ts';
import { type Character, type Key, type Month, PARTS, type Part, type Taxon } from '../types.ts';
import type { Manifest, Wanted } from './loose.ts';

/** From where, and what tells the size. Common practice in documenting plants, no source. Nobody is asked to dig. */
const SHOTS: Readonly<Record<Part, readonly [angle: string, scale: string]>> = {
  whole: ['The whole plant from the side, from the ground or the water to its tip.', 'A person or a paddle beside it'],
  place: ["The plant where it grows, with the water's edge in the frame.", 'A person who stands safely'],
  leaf: ['One leaf from behind, with its stalk and the place where that joins the blade.', 'A hand or a ruler'],
  collar: ['Close up, where the blade leaves the stem, from the inner side so that the ligule shows.', 'A ruler in mm'],
  stem: [
    'A length of stem from the side, with two joints or two places where leaves leave it.',
    'A pencil or a finger',
  ],
  flower: ['All of one flower cluster from the side, and then close up.', 'A hand or a ruler'],
  fruit: ['Ripe fruit or seed heads close up.', 'A coin or a ruler'],
  sap: ['A leaf that is broken already, and what comes out of it. Break none, and keep it off your skin.', 'A finger'],
  underground: ['Only what the water has laid bare already. Dig nothing and pull nothing up.', 'A hand or a ruler'],
};
/** Asked for wherever the plant has them; further ones where they tell it from a look-alike. */
const ALWAYS: readonly Part[] = ['whole', 'place', 'leaf', 'collar', 'stem', 'flower'];
const MOST_OF_TAXON = 7;

/**
 * The photographs still wanted, taxon by taxon, those that tell look-alikes apart first. What the manifest has a
 * photograph of is left out; its rows with `keep` stand as they are, in place of what would be worked out.
 */
export function wantedOf(key: Key, { pictures, wanted = [] }: Pick<Manifest, 'pictures' | 'wanted'>): Wanted[] {
  const place = (taxon: string, organ: string) => `${taxon} ${organ}`;
  const kept = wanted.filter(({ keep }) => keep);
  const done = new Set([
    ...kept.map(({ taxon, organ }) => place(taxon, organ)),
    ...pictures.flatMap(({ shows }) => ('taxon' in shows ? [place(shows.taxon, shows.organ)] : [])),
  ]);
  const known = new Set(key.taxa.map(({ id }) => id));
  return [
    ...key.taxa.flatMap((taxon) => [
      ...kept.filter((row) => row.taxon === taxon.id),
      ...rowsOf(key, taxon).filter(({ organ }) => !done.has(place(taxon.id, organ))),
    ]),
    ...kept.filter((row) => !known.has(row.taxon)),
  ];
}

function rowsOf(key: Key, taxon: Taxon): Wanted[] {
  const why = reasonsOf(key, taxon);
  const organs = PARTS.filter((part) => why.has(part) || (ALWAYS.includes(part) && has(key, taxon, part)));
  const rows = organs.map((organ): Wanted => {
    const [angle, scale] = SHOTS[organ];
    const reason = why.get(organ);
    const season = seasonOf(key, taxon, organ);
    return { taxon: taxon.id, organ, angle, scale, season, ...(reason === undefined ? {} : { why: reason }) };
  });
  return [...rows.filter((row) => row.why), ...rows.filter((row) => !row.why)].slice(0, MOST_OF_TAXON);
}

/** By part: the first thing there that tells the plant from each of its look-alikes. */
function reasonsOf(key: Key, taxon: Taxon): ReadonlyMap<Part, string> {
  const parts = new Map(key.characters.map(({ id, part }) => [id, part]));
  const names = new Map(key.taxa.map(({ id, name }) => [id, name]));
  const reasons = new Map<Part, string>();
  for (const { taxa, separate } of key.lookalikes) {
    if (!taxa.includes(taxon.id)) continue;
    const other = names.get(taxa[0] === taxon.id ? taxa[1] : taxa[0]);
    for (const { character, words } of separate) {
      const part = parts.get(character);
      if (part !== undefined && !reasons.has(part)) reasons.set(part, `Tells it from ${other}: ${words}`);
    }
  }
  return reasons;
}

/** Characters of a part that mean something for the plant. */
const ofPart = ({ characters }: Key, { traits }: Taxon, part: Part): Character[] =>
  characters.filter((one) => one.part === part && (traits.get(one.id)?.kind ?? 'not-applicable') !== 'not-applicable');

const has = (key: Key, taxon: Taxon, part: Part): boolean =>
  part === 'whole' || part === 'place' || ofPart(key, taxon, part).length > 0;

/** Flowers, and the plant as a whole, in the months of its flowers where the key knows them; else when the part is seen. */
function seasonOf(key: Key, taxon: Taxon, part: Part): LooseMonths {
  const flowers = part === 'whole' || part === 'flower' ? flowering(key, taxon) : [];
  const months = flowers.length > 0 ? flowers : [...new Set(ofPart(key, taxon, part).flatMap((one) => one.months))];
  return printMonths(months.length > 0 ? months : [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
}

/** Months in which the plant usually or sometimes flowers, by the character whose twelve states are the months. */
function flowering({ characters }: Key, { traits }: Taxon): Month[] {
  const character = characters.find(({ draws, states }) => draws === 'flowering-month' && states.length === 12);
  const trait = character && traits.get(character.id);
  if (trait?.kind !== 'states') return [];
  const shown = new Set(trait.states.filter(({ how }) => how !== 'rarely').map(({ state }) => state));
  return (character?.states ?? []).flatMap(({ id }, i) => (shown.has(id) ? [(i + 1) as Month] : []));
}

/** As the files write months: "6-9", "11-2" over the turn of the year, "5"; a list where they do not follow on. */
export function printMonths(months: readonly number[]): LooseMonths {
  const there = new Set(months);
  if (there.size === 12) return '1-12';
  const next = (month: number, by: number) => ((month - 1 + by + 12) % 12) + 1;
  const starts = [...there].filter((month) => !there.has(next(month, -1)));
  const [start = 1] = starts;
  if (starts.length !== 1) return [...there].sort((a, b) => a - b);
  return there.size === 1 ? `${start}` : `${start}-${next(start, there.size - 1)}`;
}
