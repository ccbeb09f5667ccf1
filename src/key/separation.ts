// How far one character tells two taxa apart, by what the key says of them.
import { spreadOf } from './range/index.ts';
import type { Character, Taxon, Trait } from './types.ts';
import type { Unit } from './units.ts';

/**
 * `apart`: no state in common, or ranges that do not meet even with their exceptions; `almost`: so much for what is
 * usual, but not for the exceptions; `partly`: what is usual has less in common than not; `alike`: no more than that;
 * `unknown`: one of the two is unknown, or the character means nothing for it.
 */
export type Separation = 'apart' | 'almost' | 'partly' | 'alike' | 'unknown';

export function separationOf(a: Taxon, b: Taxon, character: Character): Separation {
  const [one, other] = [a.traits.get(character.id), b.traits.get(character.id)];
  if (one?.kind === 'states' && other?.kind === 'states') {
    return graded((usual) => sharedStates(statesOf(one, usual), statesOf(other, usual)));
  }
  if (one?.kind === 'range' && other?.kind === 'range') {
    const unit = character.unit ?? 'count';
    return graded((usual) => sharedSizes(boundsOf(one, unit, usual), boundsOf(other, unit, usual)));
  }
  return 'unknown';
}

/** Bits that fit a small integer. */
const BITS = 30;

/**
 * Whether any character keeps two of the taxa (by their indices) apart, as `separationOf` means it but far faster: a key
 * of thousands of taxa has millions of pairs.
 */
export function apartAmong(
  taxa: readonly Taxon[],
  characters: readonly Character[],
): (a: number, b: number) => boolean {
  const all = taxa.map((taxon) => characters.map((character) => extentOf(taxon, character)));
  const told = all.map((extents) => extents.flatMap((extent, c) => (extent ? [c] : [])));
  return (a, b) => {
    for (const c of told[a] ?? []) {
      const [one, other] = [all[a]?.[c], all[b]?.[c]];
      if (one && other && isApart(one, other)) return true;
    }
    return false;
  };
}

/** All that a taxon shows of a character, exceptions included. */
type Extent = { readonly sizes: Sizes } | { readonly states: readonly number[] };

function extentOf(taxon: Taxon, character: Character): Extent | undefined {
  const trait = taxon.traits.get(character.id);
  if (trait?.kind === 'range') return { sizes: boundsOf(trait, character.unit ?? 'count', false) };
  if (trait?.kind !== 'states') return undefined;
  const shown = statesOf(trait, false);
  const states = new Array<number>(Math.ceil(character.states.length / BITS)).fill(0);
  character.states.forEach(({ id }, s) => {
    const word = Math.floor(s / BITS);
    if (shown.has(id)) states[word] = (states[word] as number) | (1 << (s % BITS));
  });
  return { states };
}

function isApart(one: Extent, other: Extent): boolean {
  if ('states' in one)
    return 'states' in other && one.states.every((bits, w) => (bits & (other.states[w] as number)) === 0);
  return 'sizes' in other && sharedSizes(one.sizes, other.sizes) === 0;
}

/** `shared` is the share in common of all that either shows, 0 to 1: of what is usual, or with the exceptions. */
function graded(shared: (usual: boolean) => number): Separation {
  if (shared(false) === 0) return 'apart';
  const usual = shared(true);
  return usual === 0 ? 'almost' : usual < 0.5 ? 'partly' : 'alike';
}

type Of<Kind> = Extract<Trait, { readonly kind: Kind }>;

/** States shown usually, or all where none is; with the exceptions also those shown sometimes and rarely. */
function statesOf({ states }: Of<'states'>, usual: boolean): ReadonlySet<string> {
  const some = states.filter(({ how }) => !usual || how === 'usually');
  return new Set((some.length > 0 ? some : states).map(({ state }) => state));
}

function sharedStates(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  const shared = [...a].filter((state) => b.has(state)).length;
  return shared / (a.size + b.size - shared);
}

type Sizes = readonly [number, number];

function boundsOf({ range }: Of<'range'>, unit: Unit, usual: boolean): Sizes {
  const { low, high, min = low, max = high } = spreadOf(range, unit);
  return usual ? [low, high] : [min, max];
}

/** Sizes are compared by their ratios, since a centimetre is much on a small leaf and little on a large one. */
function sharedSizes(a: Sizes, b: Sizes): number {
  const shared = Math.log(Math.min(a[1], b[1]) / Math.max(a[0], b[0]));
  const all = Math.log(Math.max(a[1], b[1]) / Math.min(a[0], b[0]));
  return Math.max(0, shared / all);
}
