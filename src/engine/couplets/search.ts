// The best key that can be found, and how far from the best possible it may be at most.
import { type Known, prove, proveFurther, splitOf, Workings } from './exact.ts';
import type { Place } from './places.ts';
import type { KeyProblem } from './problem.ts';
import { tableOf } from './table.ts';
import { costOf, type KeyNode, shapeOf, treeOf } from './tree.ts';

export interface BuiltKey {
  readonly problem: KeyProblem;
  readonly root: KeyNode;
  /** Expected effort to the end of the key, in glances, wrong turns priced in; the mean over plants by weight. */
  readonly effort: number;
  /** No key for this problem needs less. */
  readonly bound: number;
  /** (effort - bound) / bound; 0 when both are 0. */
  readonly gap: number;
  /** The key is proved to be one of the best. */
  readonly exact: boolean;
  /** Couplets on the longest way. */
  readonly depth: number;
  /** Couplets on the way, on average. */
  readonly couplets: number;
  /** Sets of taxa that end together somewhere, smallest indices first. */
  readonly together: readonly (readonly number[])[];
  /** Places of possible keys that were opened. */
  readonly opened: number;
}

/** How much work may be done, counted in places opened, so that the result never depends on the machine's speed. */
export interface Work {
  /** For solving the whole problem. */
  readonly exact: number;
  /** For finding a good key, when that was not enough. */
  readonly search: number;
  /** For raising the bound under it. */
  readonly bound: number;
}
export const USUAL_WORK: Work = Object.freeze({ exact: 4000, search: 30000, bound: 30000 });

/** Looking ahead: how many first splits are tried at each level; level 0 takes the first. */
const WIDTHS = [1, 6, 12, 24] as const;
/** Places with up to this many taxa are solved, if that takes no more than so many places. */
const SMALL = 10;
const SMALL_WORK = 300;

/** Builds a key. Pure and deterministic: the same problem and work give the same key. */
export function buildKey(problem: KeyProblem, given: Partial<Work> = {}): BuiltKey {
  const allowed = { ...USUAL_WORK, ...given };
  const work = new Workings(tableOf(problem));
  const { places } = work;
  const root = places.root();
  const known = work.of(root);
  work.allowed = allowed.exact;
  let lower = prove(work, root, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
  if (!work.proved) {
    work.allowed = Number.POSITIVE_INFINITY;
    const bits = work.bounds.entropy(root);
    work.rate = bits > 0 ? work.bounds.from(root, work.bounds.sources) / bits : 1;
    improve(work, root, 0);
    const rounds = WIDTHS.length - 1;
    for (let round = 1; round <= rounds && lower < known.upper; round++) {
      work.allowed = work.opened + allowed.search / rounds;
      if (bits > 0) work.rate = known.upper / bits;
      improve(work, root, round);
      work.allowed = work.opened + allowed.bound / rounds;
      lower = Math.max(lower, known.lower, proveFurther(work, root, known.upper));
    }
  }
  const tree = treeOf(work, root);
  const total = root.weight;
  const effort = costOf(tree) / total;
  const bound = Math.min(effort, lower / total);
  return {
    problem,
    root: tree,
    effort,
    bound,
    gap: bound > 0 ? effort / bound - 1 : 0,
    exact: effort <= bound * (1 + 1e-9),
    ...shapeOf(tree),
    opened: work.opened,
  };
}

/**
 * Makes the best key known from `place` on better by looking ahead: each of the first splits is followed by the best key
 * found one level lower, and the best of them is then gone through in the same way, place by place. Small places are
 * solved. Splits that the bounds rule out are passed over.
 * @returns the cost of the best key known.
 */
function improve(work: Workings, place: Place, level: number): number {
  const { places } = work;
  if (places.named(place)) return 0;
  const known = work.of(place);
  if (known.effort >= level || known.depth === Number.POSITIVE_INFINITY) return known.upper;
  if (work.spent && known.upper < Number.POSITIVE_INFINITY) return known.upper;
  if (place.count <= SMALL && known.effort < 0 && solve(work, place, known)) return known.upper;
  const splits = work.open(place, known.upper);
  if (splits === undefined) {
    Object.assign(known, { lower: 0, upper: 0, depth: Number.POSITIVE_INFINITY });
    return 0;
  }
  for (const k of work.likeliest(place, splits, work.rate, WIDTHS[level] as number)) {
    if ((splits.low[k] as number) >= known.upper) continue;
    const mark = places.mark();
    let total = splits.cost[k] as number;
    for (const branch of work.branches(place, splits, k)) total += improve(work, branch, Math.max(0, level - 1));
    places.cut(mark);
    if (total < known.upper) {
      known.upper = total;
      known.split = splitOf(splits, k);
    }
    if (work.spent && known.upper < Number.POSITIVE_INFINITY) break;
  }
  work.done(splits);
  known.effort = Math.max(known.effort, level);
  if (level > 0 && known.split) again(work, place, known, level);
  return known.upper;
}

/** Goes on from the split chosen at a place, looking just as far ahead from the places below. */
function again(work: Workings, place: Place, known: Known, level: number): void {
  const { character, lead, shown } = known.split as NonNullable<Known['split']>;
  const mark = work.places.mark();
  let total = work.splitter.cost(place, character, lead);
  for (const branch of work.split(place, character, lead, shown)) total += improve(work, branch, level);
  work.places.cut(mark);
  known.upper = Math.min(known.upper, total);
}

/** Solves a small place within a stated amount of work. @returns whether it was solved. */
function solve(work: Workings, place: Place, known: Known): boolean {
  const { allowed } = work;
  work.allowed = work.opened + SMALL_WORK;
  prove(work, place, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
  work.allowed = allowed;
  return known.depth === Number.POSITIVE_INFINITY;
}
