// The branch that was walked into no longer holds the weight: where the ways part, what to look at again, where to go on.
import type { Identification } from '../key/index.ts';
import { type Branch, type Fork, heaviest, weights } from './forks.ts';
import type { Place, Walk } from './walk.ts';

export interface WrongTurn {
  /** Number of the couplet where the weight goes another way. */
  readonly parts: number;
  /** Id of the walked character most worth a second look; undefined when none was answered. */
  readonly second: string | undefined;
  /** Where the weight is. */
  readonly on: Place;
  /** Indices of the taxa that hold most of it, likeliest first. */
  readonly taxa: readonly number[];
}

/** A branch that keeps less than this share of the plants' weight is worth a word (ours). */
const KEEPS = 0.35;
/** The way to the weight leads on as long as one branch holds this share of what flows through the couplet (ours). */
const MOST = 0.8;
/** As many plants are named. */
const NAMED = 3;

/** @param p Probabilities by index of taxon. */
export function wrongTurn(
  { path, at, taxa }: Walk,
  recheck: Identification['recheck'],
  p: ArrayLike<number>,
): WrongTurn | undefined {
  const last = path.at(-1);
  if (last === undefined) return undefined;
  const here = at?.places ?? (last.fork.branches[last.lead] as Branch).places;
  const total = Array.from(path[0]?.fork.places.keys() ?? []).reduce((sum, t) => sum + (p[t] as number), 0);
  const kept = [...here.keys()].reduce((sum, t) => sum + (p[t] as number), 0);
  if (kept >= KEEPS * total || (at === undefined && taxa.length === 0)) return undefined;
  const parting = path.find(({ lead, weights }) => heaviest(weights) !== lead);
  if (parting === undefined) return undefined;
  const on = follow(parting.fork, p);
  if (on.lead === undefined && on.couplet === at?.number) return undefined;
  const walked = new Set(
    path.filter(({ open }) => !open).flatMap(({ fork, lead }) => fork.branches[lead]?.lead.character ?? []),
  );
  const there = (parting.fork.branches[heaviest(parting.weights)] as Branch).places;
  return {
    parts: parting.fork.number,
    second: recheck.find(({ character }) => walked.has(character))?.character,
    on,
    taxa: [...there.keys()].sort((a, b) => (p[b] as number) - (p[a] as number)).slice(0, NAMED),
  };
}

/** Down from a couplet with the weight, to the couplet where it divides, or to the end where all of it comes out. */
function follow(start: Fork, p: ArrayLike<number>): Place {
  for (let fork = start, first = true; ; first = false) {
    const shares = weights(fork, p);
    const lead = heaviest(shares);
    const all = shares.reduce((sum, share) => sum + share, 0);
    if (!first && (shares[lead] as number) < MOST * all) return { couplet: fork.number };
    const to = (fork.branches[lead] as Branch).to;
    if (to === undefined) return { couplet: fork.number, lead };
    fork = to;
  }
}
