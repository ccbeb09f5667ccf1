// The key's couplets as a stream that divides: each couplet a fork, each lead a branch, and which taxa come out below.
import type { Lead, PreparedKey } from '../key/index.ts';
import { SessionError } from './error.ts';

export interface Branch {
  readonly lead: Lead;
  /** The couplet it leads to; undefined at an end. */
  readonly to: Fork | undefined;
  /** Ids of the taxa that come out here; empty where it goes on. */
  readonly taxa: readonly string[];
  /** Index of each taxon that comes out below -> in how many places. */
  readonly places: ReadonlyMap<number, number>;
}

export interface Fork {
  /** Number of the couplet. */
  readonly number: number;
  /** The character that its leads are about; undefined where they are about several, or about none. */
  readonly character: string | undefined;
  readonly branches: readonly Branch[];
  /** Index of each taxon that comes out below -> places, summed over the branches. */
  readonly places: ReadonlyMap<number, number>;
}

export interface Forks {
  readonly first: Fork;
  /** Couplets that can be reached from the first, by number. */
  readonly all: ReadonlyMap<number, Fork>;
  /** The couplet and the branch that lead to a couplet; of several the first. */
  readonly above: ReadonlyMap<Fork, { readonly fork: Fork; readonly branch: number }>;
}

const known = new WeakMap<PreparedKey, Forks | undefined>();

/** The key's couplets; undefined when it has none. Made once for each key. */
export function forksOf(prepared: PreparedKey): Forks | undefined {
  if (!known.has(prepared)) known.set(prepared, build(prepared));
  return known.get(prepared);
}

/** @throws SessionError when the key has no such couplet, or none at all. */
export function forkAt(forks: Forks | undefined, couplet: number): Fork {
  const fork = forks?.all.get(couplet);
  if (fork === undefined) throw new SessionError(`the key has no couplet ${couplet}`);
  return fork;
}

function build({ key, taxonIndex }: PreparedKey): Forks | undefined {
  const [start] = key.couplets;
  if (start === undefined) return undefined;
  const couplets = new Map(key.couplets.map((couplet) => [couplet.number, couplet]));
  const all = new Map<number, Fork>();
  const above = new Map<Fork, { fork: Fork; branch: number }>();
  /** Branches that end at a taxon; a place that several ways lead to counts once. */
  const endsOf = new Map<Fork, ReadonlySet<Branch>>();

  const count = (ends: Iterable<Branch>) => {
    const places = new Map<number, number>();
    for (const { taxa } of ends)
      for (const id of taxa) {
        const t = taxonIndex.get(id) as number;
        places.set(t, (places.get(t) ?? 0) + 1);
      }
    return places;
  };

  const visit = (number: number): Fork | undefined => {
    const done = all.get(number);
    const couplet = couplets.get(number);
    if (done || couplet === undefined) return done;
    const ends = new Set<Branch>();
    const branches = couplet.leads.map((lead): Branch => {
      const to = typeof lead.to === 'number' ? visit(lead.to) : undefined;
      const taxa = typeof lead.to === 'number' ? [] : lead.to;
      const end = { lead, to, taxa, places: count([{ taxa } as Branch]) };
      if (to === undefined) {
        ends.add(end);
        return end;
      }
      const below = endsOf.get(to) as ReadonlySet<Branch>;
      for (const one of below) ends.add(one);
      return { ...end, places: to.places };
    });
    const characters = new Set(couplet.leads.map((lead) => lead.character));
    const [character] = characters;
    const fork = { number, character: characters.size === 1 ? character : undefined, branches, places: count(ends) };
    all.set(number, fork);
    endsOf.set(fork, ends);
    branches.forEach(({ to }, branch) => {
      if (to && !above.has(to)) above.set(to, { fork, branch });
    });
    return fork;
  };
  return { first: visit(start.number) as Fork, all, above };
}

/**
 * How the weight of the taxa below a fork divides over its branches: summing to that weight. A taxon that comes out in
 * several places is split evenly over them. `p` are probabilities by index of taxon.
 */
export function weights({ branches }: Fork, p: ArrayLike<number>): number[] {
  const places = new Map<number, number>();
  for (const branch of branches) for (const [t, n] of branch.places) places.set(t, (places.get(t) ?? 0) + n);
  return branches.map((branch) =>
    [...branch.places].reduce((sum, [t, n]) => sum + ((p[t] as number) * n) / (places.get(t) as number), 0),
  );
}

/** Index of the greatest; of equal ones the first. */
export const heaviest = (of: readonly number[]): number => of.indexOf(Math.max(...of));
