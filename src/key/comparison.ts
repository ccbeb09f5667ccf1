// Two or three plants side by side: what tells them apart, the surest and easiest first, and what they have in common.
import { smallestSets } from '../engine/index.ts';
import type { KeyAnswer } from './answers.ts';
import { COST, type PreparedKey, THERE } from './prepared.ts';
import { separationOf } from './separation.ts';
import { type Shows, showsOf } from './shows.ts';
import { type Character, type Lookalike, MOST_COMPARED, type Month, type Taxon } from './types.ts';

/** Fewer than two plants, more than three, or one twice, or an id that the key does not have. */
export class ComparisonError extends Error {
  override readonly name = 'ComparisonError';
}

/**
 * How far a character tells two plants apart: in every case that is known; in what is usual; or only for some of what
 * either shows. Where the key's author claims less than the traits show, the author is followed, and the reverse.
 */
export type Difference = 'always' | 'usually' | 'partly';

/**
 * Whether it can be looked at now: at a glance, without touching; or why not yet: it takes care, a touch, a ruler, a
 * lens, another month; or it is never asked for, since it lies below the ground, or since it is a fact from a list.
 */
export type Looking = 'now' | 'careful' | 'handle' | 'measure' | 'magnify' | 'season' | 'dig' | 'fact';

/** How a character tells one pair of the plants apart, with the words of the key's author where there are any. */
export interface PairDifference {
  /** Ids, in the key's order of taxa. */
  readonly taxa: readonly [string, string];
  readonly difference: Difference;
  readonly words?: string;
}

export interface ComparedRow {
  readonly character: Character;
  /** One for each plant, in their order. */
  readonly shows: readonly Shows[];
  /** The pairs that it tells apart at all; none in rows that are alike. */
  readonly pairs: readonly PairDifference[];
  readonly looking: Looking;
  /** What the person said of it; not when it was skipped. */
  readonly answer?: KeyAnswer;
}

export interface Comparison {
  readonly taxa: readonly Taxon[];
  /** The surest and easiest first. */
  readonly telling: readonly ComparedRow[];
  /** Known of all, and the same. */
  readonly alike: readonly ComparedRow[];
  /** Known of one only, or of none. */
  readonly unknown: readonly Character[];
  /**
   * The fewest characters that together tell every pair apart, always or usually, each pair by as many as its author asks
   * for; by those to be looked at now where they suffice. Undefined where no characters that may be asked for do.
   */
  readonly enough?: { readonly characters: readonly string[]; readonly now: boolean };
}

export interface Compared {
  readonly month: Month;
  readonly answers: readonly KeyAnswer[];
}

/** A difference that the author writes of counts as so many times one that only the traits show (ours). */
const WRITTEN = 1.5;
/** What a difference is worth beside one that always holds (ours). */
const WORTH: Readonly<Record<Difference, number>> = { always: 1, usually: 0.7, partly: 0.25 };

/** @throws ComparisonError */
export function comparisonOf(prepared: PreparedKey, ids: readonly string[], { month, answers }: Compared): Comparison {
  const taxa = taxaOf(prepared, ids);
  const inOrder = [...taxa].sort((a, b) => indexOf(prepared, a) - indexOf(prepared, b));
  const pairs = inOrder.flatMap((a, i) => inOrder.slice(i + 1).map((b) => pairOf(prepared.key.lookalikes, a, b)));
  const rows = prepared.key.characters.map((character): ComparedRow => {
    const answer = answers.find((one) => one.character === character.id && !('skipped' in one));
    return {
      character,
      shows: taxa.map((taxon) => showsOf(taxon, character, answer)),
      pairs: pairs.flatMap((pair) => differenceOf(pair, character)),
      looking: lookingOf(character, month),
      ...(answer ? { answer } : {}),
    };
  });
  const telling = rows
    .filter((row) => row.pairs.length > 0)
    .map((row) => ({ row, worth: worthOf(row) }))
    .sort((a, b) => b.worth - a.worth)
    .map(({ row }) => row);
  const rest = rows.filter((row) => row.pairs.length === 0);
  const known = (row: ComparedRow) => row.shows.every(({ kind }) => kind === 'states' || kind === 'range');
  const both = rest.filter(({ shows }) => shows.some(({ kind }) => kind !== 'absent'));
  const enough = enoughOf(telling, pairs);
  return {
    taxa,
    telling,
    alike: both.filter(known),
    unknown: both.filter((row) => !known(row)).map(({ character }) => character),
    ...(enough ? { enough } : {}),
  };
}

const indexOf = (prepared: PreparedKey, { id }: Taxon) => prepared.taxonIndex.get(id) as number;

function taxaOf({ key, taxonIndex }: PreparedKey, ids: readonly string[]): Taxon[] {
  if (ids.length < 2 || ids.length > MOST_COMPARED || new Set(ids).size < ids.length)
    throw new ComparisonError(`two or three different plants are compared, not ${ids.join(', ') || 'none'}`);
  return ids.map((id) => {
    const taxon = key.taxa[taxonIndex.get(id) ?? -1];
    if (taxon === undefined) throw new ComparisonError(`the key has no taxon ${id}`);
    return taxon;
  });
}

interface Pair {
  readonly a: Taxon;
  readonly b: Taxon;
  readonly named: Lookalike | undefined;
}

const pairOf = (lookalikes: readonly Lookalike[], a: Taxon, b: Taxon): Pair => ({
  a,
  b,
  named: lookalikes.find(({ taxa }) => taxa.includes(a.id) && taxa.includes(b.id)),
});

function differenceOf({ a, b, named }: Pair, character: Character): PairDifference[] {
  const said = named?.separate.find((one) => one.character === character.id);
  const separation = separationOf(a, b, character);
  const difference: Difference | undefined =
    separation === 'apart' && said?.how !== 'usually'
      ? 'always'
      : separation === 'apart' || separation === 'almost'
        ? 'usually'
        : separation === 'partly' || said
          ? 'partly'
          : undefined;
  if (difference === undefined) return [];
  return [{ taxa: [a.id, b.id], difference, ...(said ? { words: said.words } : {}) }];
}

function lookingOf({ asked, effort, months, caution }: Character, month: Month): Looking {
  if (effort === 'dig') return 'dig';
  if (!asked) return 'fact';
  if (!months.includes(month)) return 'season';
  if (effort !== 'glance') return effort;
  return caution === undefined ? 'now' : 'careful';
}

/** What a look promises: how sure the differences are and how well it is read, for what it costs. A fact and the ground come last. */
function worthOf({ character, pairs, looking }: ComparedRow): number {
  const sure = pairs.reduce((sum, { difference, words }) => sum + WORTH[difference] * (words ? WRITTEN : 1), 0);
  const worth = (sure * (1 - character.misread) * (THERE[character.part] ?? 1)) / COST[character.effort];
  return looking === 'fact' || looking === 'dig' ? worth / 100 : worth;
}

/** Characters to choose from, the most welcome first. */
const CHOICES: readonly ((looking: Looking) => boolean)[] = [
  (looking) => looking === 'now',
  (looking) => looking !== 'season' && looking !== 'dig' && looking !== 'fact',
  (looking) => looking !== 'dig' && looking !== 'fact',
];

function enoughOf(telling: readonly ComparedRow[], pairs: readonly Pair[]): Comparison['enough'] {
  for (const may of CHOICES) {
    const rows = telling.filter(({ looking }) => may(looking));
    const demands = pairs.map(({ a, b, named }) => ({
      members: rows.flatMap((row, r) => (tellsUsually(row, a.id, b.id) ? [r] : [])),
      times: named?.needs ?? 1,
    }));
    if (demands.some(({ members, times }) => members.length < times)) continue;
    const worth = (set: readonly number[]) => set.reduce((sum, r) => sum + worthOf(rows[r] as ComparedRow), 0);
    const [first = [], ...others] = smallestSets(demands).sets;
    const best = others.reduce((one, other) => (worth(other) > worth(one) ? other : one), first);
    const chosen = best.map((r) => rows[r] as ComparedRow);
    return {
      characters: chosen.map(({ character }) => character.id),
      now: chosen.every(({ looking }) => looking === 'now'),
    };
  }
  return undefined;
}

const tellsUsually = ({ pairs }: ComparedRow, a: string, b: string): boolean =>
  pairs.some(({ taxa, difference }) => taxa[0] === a && taxa[1] === b && difference !== 'partly');
