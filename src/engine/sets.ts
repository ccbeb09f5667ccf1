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

/**
 * All smallest sets of members that meet every demand, or the first `most` of them. Exact: every set is either looked
 * at or ruled out by a bound, since what demands without a common member ask for adds up.
 */
export function smallestSets(demands: readonly Demand[], most = 1000): SmallestSets {
  const hard = hardest(demands);
  const sets: number[][] = [];
  let complete = true;
  /** Members that are taken, and those that are closed: tried before at a demand, so that no set comes twice. */
  const taken: (boolean | undefined)[] = [];
  const extend = (room: number): void => {
    let bound = 0;
    let spare = Number.POSITIVE_INFINITY;
    let tightest: readonly number[] | undefined;
    const used = new Set<number>();
    for (const { members, times } of hard) {
      const left = times - members.filter((m) => taken[m]).length;
      if (left <= 0) continue;
      const open = members.filter((m) => taken[m] === undefined);
      if (open.length - left < spare) {
        spare = open.length - left;
        tightest = open;
      }
      if (open.some((m) => used.has(m))) continue;
      for (const m of open) used.add(m);
      bound += left;
    }
    if (spare < 0 || bound > room || !complete) return;
    if (tightest === undefined) {
      complete = sets.length < most;
      if (complete) sets.push(taken.flatMap((one, m) => (one ? [m] : [])));
      return;
    }
    for (const m of tightest) {
      taken[m] = true;
      extend(room - 1);
      taken[m] = false;
    }
    for (const m of tightest) taken[m] = undefined;
  };
  for (let size = 0; sets.length === 0; size++) extend(size);
  return {
    size: (sets[0] as number[]).length,
    sets: sets.sort(rising),
    complete,
    needed: [...new Set(hard.flatMap(({ members, times }) => (times === members.length ? members : [])))].sort(
      (a, b) => a - b,
    ),
    unmet: demands.filter(({ members }) => members.length === 0).length,
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
  readonly bits: bigint;
}

/** Demands that no other one implies, the smallest first: one with fewer members, met as often, is the harder. */
function hardest(demands: readonly Demand[]): Hard[] {
  const unlike = new Map<bigint, Hard>();
  for (const { members: some, times: asked = 1 } of demands) {
    const members = [...new Set(some)];
    const bits = members.reduce((sum, m) => sum | (1n << BigInt(m)), 0n);
    const times = Math.min(asked, members.length);
    if ((unlike.get(bits)?.times ?? 0) < times) unlike.set(bits, { members, times, bits });
  }
  const kept: Hard[] = [];
  for (const one of [...unlike.values()].sort((a, b) => a.members.length - b.members.length))
    if (!kept.some(({ bits, times }) => times >= one.times && (bits & one.bits) === bits)) kept.push(one);
  return kept;
}

function rising(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((m, i) => m !== b[i]);
  return at < 0 ? 0 : (a[at] as number) - (b[at] as number);
}
