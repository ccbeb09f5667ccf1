// Which photographs a specialist would confirm from: those that show what tells the remaining plants apart.
import {
  type Character,
  type Month,
  type Part,
  type PreparedKey,
  type Separation,
  separationOf,
  type Taxon,
} from '../../key/index.ts';

/**
 * A photograph for each part of the plant that can be looked at without breaking or digging: `whole` with something of
 * known size beside it, `place` with the water, `leaf` from behind with the end of its stalk, `collar` where blade and
 * stem meet, `stem` with a joint, `flower`, `fruit`.
 */
export const PHOTOS = [
  'whole',
  'leaf',
  'collar',
  'stem',
  'flower',
  'fruit',
  'place',
] as const satisfies readonly Part[];
export type PhotoKind = (typeof PHOTOS)[number];

export interface WantedPhoto {
  readonly id: PhotoKind;
  /** How much it separates, 0 to 1: the share of all doubt among the remaining plants that it could settle. */
  readonly separates: number;
  /** Ids of the characters that it shows and that tell remaining plants apart, the most telling first. */
  readonly settles: readonly string[];
  /** What is unsafe about looking, as the key says it. */
  readonly cautions: readonly string[];
}

/** Whatever else is in doubt, a specialist asks for the whole plant and for what surrounds it. */
const ALWAYS: ReadonlySet<PhotoKind> = new Set(['whole', 'place']);

/** How surely a character tells two taxa apart that differ so much in it (ours). */
const TELLS: Readonly<Record<Separation, number>> = { apart: 0.9, almost: 0.7, partly: 0.3, alike: 0, unknown: 0 };

/** Plants that stay in question: at least this share as likely as the likeliest, so many at most (ours). */
const SHARE = 0.02;
const MOST = 8;
/** A named look-alike of the leading plant weighs at least this much: it is what a specialist must exclude (ours). */
const ALIKE = 0.02;

interface Candidate {
  readonly taxon: Taxon;
  readonly weight: number;
}

/**
 * The photographs to ask for, those first that separate most. `standing` holds taxa with their probabilities, likeliest
 * first; what cannot be seen in the month is not asked for.
 */
export function wantedPhotos(
  prepared: PreparedKey,
  standing: readonly { readonly taxon: string; readonly probability: number }[],
  month: Month,
): readonly WantedPhoto[] {
  const candidates = candidatesOf(prepared, standing);
  const pairs = candidates.flatMap((a, i) =>
    candidates.slice(i + 1).map((b) => ({ a, b, weight: a.weight * b.weight })),
  );
  const total = pairs.reduce((sum, { weight }) => sum + weight, 0);
  const seen = prepared.key.characters.filter(
    ({ asked, effort, months }) => asked && effort !== 'dig' && months.includes(month),
  );
  return PHOTOS.map((id): WantedPhoto => {
    const shown = seen.filter(({ part }) => part === id);
    const worth = new Map<Character, number>(shown.map((character) => [character, 0]));
    let settled = 0;
    for (const { a, b, weight } of pairs) {
      let doubt = 1;
      for (const character of shown) {
        const tells = TELLS[separationOf(a.taxon, b.taxon, character)];
        doubt *= 1 - tells;
        worth.set(character, (worth.get(character) as number) + weight * tells);
      }
      settled += weight * (1 - doubt);
    }
    const telling = [...worth].filter(([, value]) => value > 0).sort(([, x], [, y]) => y - x);
    return {
      id,
      separates: total === 0 ? 0 : settled / total,
      settles: telling.map(([character]) => character.id),
      cautions: [...new Set(telling.flatMap(([{ caution }]) => caution ?? []))],
    };
  })
    .filter(({ id, separates }) => separates > 0 || ALWAYS.has(id))
    .sort((x, y) => y.separates - x.separates);
}

/** The plants still in question, and the look-alikes of the first; none that the key does not have. */
function candidatesOf(
  { key, taxonIndex }: PreparedKey,
  standing: readonly { readonly taxon: string; readonly probability: number }[],
): Candidate[] {
  const known = standing.flatMap(({ taxon: id, probability }) => {
    const taxon = key.taxa[taxonIndex.get(id) ?? -1];
    return taxon ? [{ taxon, weight: probability }] : [];
  });
  const [first] = known;
  if (first === undefined) return [];
  const left = known.filter(({ weight }) => weight >= first.weight * SHARE).slice(0, MOST);
  const weights = new Map(left.map(({ taxon, weight }) => [taxon, weight]));
  for (const { taxa } of key.lookalikes) {
    if (!taxa.includes(first.taxon.id)) continue;
    const other = key.taxa[taxonIndex.get(taxa.find((id) => id !== first.taxon.id) ?? '') ?? -1];
    if (other) weights.set(other, Math.max(weights.get(other) ?? 0, ALIKE));
  }
  return [...weights].map(([taxon, weight]) => ({ taxon, weight }));
}
