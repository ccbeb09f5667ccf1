// Proving: dynamic programming over places, with bounds, to any depth or to the end.
import { Bounds } from './bounds.ts';
import { type Place, Places } from './places.ts';
import { EACH, Splits } from './splits.ts';
import { Splitter } from './splitter.ts';
import type { Table } from './table.ts';

/** What is known of one place, whichever way it is reached. Costs in weight x glances. */
export interface Known {
  /** No key from here on costs less. */
  lower: number;
  /** How many couplets deep `lower` was reckoned; Infinity once it is the least cost itself. */
  depth: number;
  /** Cost of the best key found. */
  upper: number;
  /** How that key begins: character, states of the first lead (or EACH), states shown. Absent at an end. */
  split?: { readonly character: number; readonly lead: number; readonly shown: number };
  /** How hard the search has tried. */
  effort: number;
}

export const splitOf = (splits: Splits, k: number): NonNullable<Known['split']> => ({
  character: splits.character[k] as number,
  lead: splits.lead[k] as number,
  shown: splits.shown[k] as number,
});

/** The search's memory and its count of places opened. */
export class Workings {
  readonly places: Places;
  readonly bounds: Bounds;
  readonly splitter: Splitter;
  readonly known = new Map<string, Known>();
  opened = 0;
  /** What a bit costs in the best key so far, in glances: what guesses reckon with. */
  rate = 1;
  /** Whether the cost that `prove` came back with is the least cost itself. */
  proved = false;
  /** Places that may be opened before the search is to stop. */
  allowed = Number.POSITIVE_INFINITY;
  readonly #free: Splits[] = [];

  constructor(table: Table) {
    this.places = new Places(table);
    this.bounds = new Bounds(this.places);
    this.splitter = new Splitter(this.places, this.bounds);
  }

  get spent(): boolean {
    return this.opened >= this.allowed;
  }

  of(place: Place): Known {
    const name = this.places.name(place);
    let known = this.known.get(name);
    if (known === undefined) {
      known = { lower: 0, depth: 0, upper: Number.POSITIVE_INFINITY, effort: -1 };
      this.known.set(name, known);
    }
    return known;
  }

  /** Notes the least cost of a place, and the split with which a key of that cost begins. */
  settle(known: Known, cost: number, splits: Splits, k: number): void {
    known.lower = cost;
    known.upper = cost;
    known.depth = Number.POSITIVE_INFINITY;
    known.split = splitOf(splits, k);
  }

  /** The splits of a place below `limit`; undefined when the key ends here. Hand them back with `done`. */
  open(place: Place, limit: number): Splits | undefined {
    this.opened += 1;
    const splits = this.#free.pop() ?? new Splits();
    if (this.splitter.find(place, limit, splits)) return splits;
    this.#free.push(splits);
    return undefined;
  }

  done(splits: Splits): void {
    this.#free.push(splits);
  }

  /** The places that the leads of a split lead to. */
  branches(place: Place, splits: Splits, k: number): Place[] {
    const shown = splits.shown[k] as number;
    return this.split(place, splits.character[k] as number, splits.lead[k] as number, shown);
  }

  split(place: Place, character: number, lead: number, shown: number): Place[] {
    if (lead !== EACH)
      return [this.places.branch(place, character, shown & ~lead), this.places.branch(place, character, lead)];
    const out: Place[] = [];
    for (let left = shown; left !== 0; left &= left - 1) out.push(this.places.branch(place, character, left & -left));
    return out;
  }

  /**
   * The splits most likely to begin a good key, best first: by their cost and that of the shortest codes below them, at
   * `rate` glances for a bit. A guess, and no bound.
   */
  likeliest(place: Place, splits: Splits, rate: number, width: number): number[] {
    const { places, bounds } = this;
    const guess = new Float64Array(splits.size);
    const order: number[] = [];
    for (let k = 0; k < splits.size; k++) {
      guess[k] = (splits.cost[k] as number) - rate * (splits.told[k] as number);
      order.push(k);
    }
    const byGuess = (a: number, b: number) => (guess[a] as number) - (guess[b] as number) || a - b;
    const first = order.sort(byGuess).slice(0, 3 * width + 3);
    for (const k of first) {
      const mark = places.mark();
      guess[k] = splits.cost[k] as number;
      for (const branch of this.branches(place, splits, k))
        guess[k] = (guess[k] as number) + rate * bounds.code(branch);
      places.cut(mark);
    }
    return first.sort(byGuess).slice(0, width);
  }

  /** Takes the split that comes first once its bound has been reckoned from the places below; -1 when none is left. */
  next(place: Place, splits: Splits): number {
    const { places, bounds } = this;
    while (splits.left > 0) {
      const k = splits.pop();
      if (splits.looked[k] === 1) return k;
      const mark = places.mark();
      let low = splits.cost[k] as number;
      for (const branch of this.branches(place, splits, k)) low += bounds.from(branch, splits.sources);
      places.cut(mark);
      splits.looked[k] = 1;
      if (low > (splits.low[k] as number)) splits.low[k] = low;
      if (splits.left === 0 || (splits.low[k] as number) <= (splits.low[splits.first] as number)) return k;
      splits.push(k);
    }
    return -1;
  }
}

/**
 * Least cost from `place` on, looking `depth` couplets ahead and bounding what lies beyond. What comes back is no more
 * than the least cost, or it is `limit` or more and so is the least cost. `work.proved` then says whether a cost below
 * `limit` is the least cost itself. With the work allowed spent, what comes back is still no more than the least cost.
 */
export function prove(work: Workings, place: Place, depth: number, limit: number): number {
  const { places, bounds } = work;
  work.proved = true;
  if (places.named(place)) return 0;
  work.proved = false;
  const base = bounds.from(place, bounds.sources);
  if (depth === 0 || base >= limit) return base;
  const known = work.of(place);
  if (known.lower < base) known.lower = base;
  work.proved = known.depth === Number.POSITIVE_INFINITY;
  if (known.depth >= depth || known.lower >= limit || work.spent) return known.lower;
  const splits = work.open(place, limit);
  if (splits === undefined) {
    work.proved = true;
    Object.assign(known, { lower: 0, upper: 0, depth: Number.POSITIVE_INFINITY });
    return 0;
  }
  let best = limit;
  let chosen = -1;
  let proved = false;
  for (let k = work.next(place, splits); k >= 0 && (splits.low[k] as number) < best; k = work.next(place, splits)) {
    const total = proveSplit(work, place, splits, k, depth, best);
    if (total < best) [best, chosen, proved] = [total, k, work.proved];
  }
  known.lower = Math.max(known.lower, best);
  work.proved = proved;
  if (proved) work.settle(known, best, splits, chosen);
  else if (chosen >= 0 && !work.spent) known.depth = depth;
  work.done(splits);
  return proved ? best : Math.max(best, base);
}

/** Least cost of a key that begins with split `k`, as `prove` reckons it for all. */
export function proveSplit(
  work: Workings,
  place: Place,
  splits: Splits,
  k: number,
  depth: number,
  limit: number,
): number {
  const { places, bounds } = work;
  const mark = places.mark();
  const branches = work.branches(place, splits, k).sort((a, b) => a.count - b.count || a.at - b.at);
  const lows = branches.map((branch) => bounds.from(branch, splits.sources));
  let total = lows.reduce((sum, low) => sum + low, splits.cost[k] as number);
  let proved = total < limit;
  let cut = total >= limit;
  for (let b = 0; b < branches.length && !cut; b++) {
    const others = total - (lows[b] as number);
    const cost = prove(work, branches[b] as Place, depth - 1, limit - others);
    // Said outright, since rounding could bring the sum back under the limit.
    cut = cost >= limit - others;
    total = cut ? Math.max(limit, others + cost) : others + cost;
    proved &&= work.proved && !cut;
  }
  places.cut(mark);
  work.proved = proved;
  return total;
}

/**
 * The best bound that the work allowed can prove from `place` on: the beginnings that bound the key lowest are looked
 * into one couplet deeper, again and again, until the work is spent or the bound has met `upper`.
 */
export function proveFurther(work: Workings, place: Place, upper: number): number {
  if (work.places.named(place)) return 0;
  const splits = work.open(place, Number.POSITIVE_INFINITY);
  if (splits === undefined) return 0;
  const depth = new Map<number, number>();
  let lower = 0;
  for (;;) {
    const k = work.next(place, splits);
    if (k < 0) break;
    lower = Math.max(lower, Math.min(upper, splits.low[k] as number));
    if (lower >= upper || work.spent) break;
    const deeper = (depth.get(k) ?? 1) + 1;
    const total = proveSplit(work, place, splits, k, deeper, upper);
    if (work.proved && total < upper) {
      upper = total;
      Object.assign(work.of(place), { upper, split: splitOf(splits, k) });
    }
    depth.set(k, deeper);
    if (total > (splits.low[k] as number)) splits.low[k] = total;
    splits.push(k);
  }
  work.done(splits);
  return lower;
}
