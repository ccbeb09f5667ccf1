// The fewest characters that tell rows of a table apart: a smallest hitting set, by branch and bound on bits.

/** What has to be met: at least `times` (1 unless said; at most as many as there are) of these members. */
export interface Demand {
  /** Indices of the characters in which two rows differ. */
  readonly members: readonly number[];
  readonly times?: number;
}

export interface SmallestSets {
  /** How many members each of the smallest sets has. */
  readonly size: number;
  /** Smallest sets, members and sets in rising order; the first `most` found when `complete` is false. */
  readonly sets: readonly (readonly number[])[];
  readonly complete: boolean;
  /** Members without which some demand cannot be met: they are in every set, the smallest or not. */
  readonly needed: readonly number[];
  /** How many demands have no member at all; nothing meets them, and they are left out. */
  readonly unmet: number;
}

/** Bits that fit a small integer. */
const BITS = 30;

/**
 * All smallest sets of members that meet every demand, or the first `most` of them. Exact: every set is either looked
 * at or ruled out by a bound (demands without a common member add up; so does what the members met most often can do).
 */
export function smallestSets(demands: readonly Demand[], most = 1000): SmallestSets {
  const some = demands.filter(({ members }) => members.length > 0);
  const count = some.reduce((max, { members }) => Math.max(max, ...members), -1) + 1;
  const hard = hardest(some, Math.ceil(count / BITS));
  const needed = [...new Set(hard.flatMap((one) => (one.times === one.members.length ? one.members : [])))];
  const search = new Search(hard, count, most);
  const sets = search.run();
  return {
    size: sets[0]?.length ?? 0,
    sets: sets.sort(rising),
    complete: search.complete,
    needed: needed.sort((a, b) => a - b),
    unmet: demands.length - some.length,
  };
}

/** The demands of a row of its own: what tells `row` from each other row. `differ` is a row's difference from another. */
export const diagnosisOf = (
  rows: number,
  row: number,
  differ: (a: number, b: number) => readonly number[],
): readonly Demand[] =>
  Array.from({ length: rows }, (_, other) => other)
    .filter((other) => other !== row)
    .map((other) => ({ members: differ(row, other) }));

/** The demands of every pair of rows that `apart` says is to be told apart; all of them unless said. */
export function pairsOf(
  rows: number,
  differ: (a: number, b: number) => readonly number[],
  apart: (a: number, b: number) => boolean = () => true,
): readonly Demand[] {
  const demands: Demand[] = [];
  for (let a = 0; a < rows; a++)
    for (let b = a + 1; b < rows; b++) if (apart(a, b)) demands.push({ members: differ(a, b) });
  return demands;
}

interface Hard {
  readonly members: readonly number[];
  readonly times: number;
  readonly bits: readonly number[];
}

/** Demands that no other one implies: one with fewer members, met as often, is the harder. */
function hardest(demands: readonly Demand[], words: number): Hard[] {
  const unlike = new Map<string, Hard>();
  for (const demand of demands) {
    const members = [...new Set(demand.members)].sort((a, b) => a - b);
    const times = Math.min(demand.times ?? 1, members.length);
    const id = members.join(' ');
    if ((unlike.get(id)?.times ?? 0) < times) unlike.set(id, { members, times, bits: bitsOf(members, words) });
  }
  const kept: Hard[] = [];
  for (const one of [...unlike.values()].sort((a, b) => a.members.length - b.members.length))
    if (
      !kept.some(
        (other) => other.times >= one.times && other.bits.every((bits, w) => (bits & ~(one.bits[w] as number)) === 0),
      )
    )
      kept.push(one);
  return kept;
}

function bitsOf(members: readonly number[], words: number): number[] {
  const bits = new Array<number>(words).fill(0);
  for (const m of members) bits[Math.floor(m / BITS)] = (bits[Math.floor(m / BITS)] as number) | (1 << (m % BITS));
  return bits;
}

/** Depth first, one size after the other. A member that was tried at a demand is closed to its later branches, so that no set comes twice. */
class Search {
  readonly #demands: readonly Hard[];
  /** Demands in which each member stands. */
  readonly #of: readonly (readonly number[])[];
  readonly #most: number;
  /** How often each demand must still be met, and by how many open members it can be. */
  readonly #left: number[];
  readonly #open: number[];
  readonly #closed: boolean[];
  readonly #chosen: number[] = [];
  readonly #found: number[][] = [];
  complete = true;

  constructor(demands: readonly Hard[], count: number, most: number) {
    this.#demands = demands;
    this.#most = most;
    this.#left = demands.map(({ times }) => times);
    this.#open = demands.map(({ members }) => members.length);
    this.#closed = new Array<boolean>(count).fill(false);
    this.#of = Array.from({ length: count }, (_, m) =>
      demands.flatMap(({ members }, d) => (members.includes(m) ? [d] : [])),
    );
  }

  run(): number[][] {
    for (let size = this.#bound(); ; size++) {
      this.#extend(size);
      if (this.#found.length > 0) return this.#found;
    }
  }

  /** Finds every way to meet what is left with `room` more members. */
  #extend(room: number): void {
    if (!this.complete) return;
    const tightest = this.#tightest();
    if (tightest === undefined) {
      if (this.#found.length === this.#most) this.complete = false;
      else this.#found.push([...this.#chosen].sort((a, b) => a - b));
      return;
    }
    if (this.#bound() > room) return;
    const tried: number[] = [];
    for (const m of tightest.members) {
      if (this.#closed[m]) continue;
      this.#choose(m, 1);
      this.#extend(room - 1);
      this.#choose(m, -1);
      this.#close(m, true);
      tried.push(m);
    }
    for (const m of tried) this.#close(m, false);
  }

  #choose(m: number, by: 1 | -1): void {
    if (by === 1) this.#chosen.push(m);
    else this.#chosen.pop();
    for (const d of this.#of[m] as readonly number[]) this.#left[d] = (this.#left[d] as number) - by;
    this.#close(m, by === 1);
  }

  #close(m: number, closed: boolean): void {
    this.#closed[m] = closed;
    for (const d of this.#of[m] as readonly number[]) this.#open[d] = (this.#open[d] as number) + (closed ? -1 : 1);
  }

  /** The unmet demand with the least choice. */
  #tightest(): Hard | undefined {
    let best: Hard | undefined;
    let slack = Number.POSITIVE_INFINITY;
    this.#demands.forEach((one, d) => {
      const left = this.#left[d] as number;
      const spare = (this.#open[d] as number) - left;
      if (left > 0 && spare < slack) [best, slack] = [one, spare];
    });
    return best;
  }

  /** No fewer members than this meet what is left; infinite where open members do not suffice. */
  #bound(): number {
    const used = new Set<number>();
    const met = new Array<number>(this.#closed.length).fill(0);
    let disjoint = 0;
    let left = 0;
    for (const [d, { members }] of this.#demands.entries()) {
      const times = this.#left[d] as number;
      if (times <= 0) continue;
      if ((this.#open[d] as number) < times) return Number.POSITIVE_INFINITY;
      left += times;
      const open = members.filter((m) => !this.#closed[m]);
      for (const m of open) met[m] = (met[m] as number) + 1;
      if (open.some((m) => used.has(m))) continue;
      for (const m of open) used.add(m);
      disjoint += times;
    }
    const best = met.sort((a, b) => b - a);
    let members = 0;
    for (; left > 0; members++) left -= best[members] as number;
    return Math.max(disjoint, members);
  }
}

function rising(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((m, i) => m !== b[i]);
  return at < 0 ? 0 : (a[at] as number) - (b[at] as number);
}
