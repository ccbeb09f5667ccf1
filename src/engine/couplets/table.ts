// A problem as typed arrays: what the search reads at every place of the key.
import { binaryEntropy } from './count.ts';
import { type Prices, pricesOf } from './prices.ts';
import { checked, type KeyCharacter, type KeyProblem } from './problem.ts';

/** In `crisp`: the taxon shows several states, or the character means nothing for it. */
export const SEVERAL = -1;
export const ABSENT = -2;

/** Characters with up to this many states keep the entropy of every split for every taxon with several states. */
const KEPT_STATES = 6;

export interface Table {
  readonly problem: KeyProblem;
  readonly T: number;
  readonly C: number;
  readonly weight: Float64Array;
  /** C x T: the one state of the taxon, or SEVERAL or ABSENT. */
  readonly crisp: Int8Array;
  /** C x T: bits of the states that the taxon may show; all of them where the character means nothing. */
  readonly support: Int32Array;
  /** First row of each character in `share`, length C + 1. */
  readonly firstRow: Int32Array;
  /** Rows x T. */
  readonly share: Float64Array;
  /** All states of each character, as bits. */
  readonly all: Int32Array;
  /** For each character: entropy in bits of the split into `lead` and the rest for each taxon, at lead x T + t. */
  readonly noise: readonly (Float64Array | undefined)[];
  /** For each character: share of the plants of each taxon in states that do not count for it, states x T. */
  readonly strays: readonly (Float64Array | undefined)[];
  /** Which taxa need never be told apart: the smallest index of those that may end together. */
  readonly together: Int32Array;
  /** Every taxon must be told from every other. */
  readonly apart: boolean;
  /** No character is put in more than two leads. */
  readonly binary: boolean;
  /** No taxon shows several states of a character. */
  readonly settled: boolean;
  /** Every cost is a whole number, so bounds may be rounded up. */
  readonly whole: boolean;
  readonly prices: readonly Prices[];
  /** Asking any character costs the same and nothing else has a price, in two leads: looks are all that counts. */
  readonly plain: boolean;
}

export function tableOf(problem: KeyProblem): Table {
  checked(problem);
  const T = problem.taxa.length;
  const C = problem.characters.length;
  const weight = Float64Array.from(problem.taxa, (taxon) => taxon.weight);
  const crisp = new Int8Array(C * T);
  const support = new Int32Array(C * T);
  const all = Int32Array.from(problem.characters, ({ states }) => 2 ** states - 1);
  const firstRow = new Int32Array(C + 1);
  problem.characters.forEach(({ states }, c) => {
    firstRow[c + 1] = (firstRow[c] as number) + states;
  });
  const share = new Float64Array((firstRow[C] as number) * T);
  problem.characters.forEach(({ shares, states }, c) => {
    shares.forEach((p, t) => {
      let bits = 0;
      for (let s = 0; s < states; s++) {
        const x = p === 'absent' ? 1 / states : (p[s] as number);
        share[((firstRow[c] as number) + s) * T + t] = x;
        if (x > 0) bits |= 1 << s;
      }
      support[c * T + t] = bits;
      crisp[c * T + t] = p === 'absent' ? ABSENT : (bits & (bits - 1)) === 0 ? 31 - Math.clz32(bits) : SEVERAL;
    });
  });
  const noise = problem.characters.map(({ states }, c) => {
    if (states > KEPT_STATES || !crisp.subarray(c * T, (c + 1) * T).some((s) => s < 0)) return undefined;
    const kept = new Float64Array(2 ** states * T);
    for (let lead = 0; lead < 2 ** states; lead++)
      for (let t = 0; t < T; t++) {
        let x = 0;
        for (let s = 0; s < states; s++)
          if (lead & (1 << s)) x += share[((firstRow[c] as number) + s) * T + t] as number;
        kept[lead * T + t] = binaryEntropy(x);
      }
    return kept;
  });
  const prices = problem.characters.map((character) => pricesOf(problem, character));
  const together = groupsOf(problem, support, crisp);
  const settled = crisp.every((s) => s >= 0);
  const binary = problem.characters.every(({ leads, states }) => leads === 'two' || states === 2);
  return {
    problem,
    T,
    C,
    weight,
    crisp,
    support,
    firstRow,
    share,
    all,
    noise,
    strays: problem.characters.map(straysOf),
    together,
    apart: together.every((first, t) => first === t),
    binary,
    settled,
    whole:
      settled &&
      problem.price === 0 &&
      problem.naming === 0 &&
      weight.every(Number.isInteger) &&
      problem.characters.every(({ cost }) => Number.isInteger(cost)),
    prices,
    plain:
      binary && problem.price === 0 && problem.characters.every(({ cost }) => cost === problem.characters[0]?.cost),
  };
}

function straysOf({ strays, states }: KeyCharacter): Float64Array | undefined {
  if (!strays?.some((of) => of?.some((x) => x > 0))) return undefined;
  const T = strays.length;
  const out = new Float64Array(states * T);
  strays.forEach((of, t) => {
    of?.forEach((x, s) => {
      out[s * T + t] = x;
    });
  });
  return out;
}

/**
 * Taxa that no single character tells apart for certain, and those of one group, may end together, and so may what
 * hangs together through them. Taxa of different sets never end together, whatever the key: the ground of every bound.
 */
function groupsOf(problem: KeyProblem, support: Int32Array, crisp: Int8Array): Int32Array {
  const T = problem.taxa.length;
  const first = Int32Array.from({ length: T }, (_, t) => t);
  const find = (t: number): number => {
    let root = t;
    while (first[root] !== root) root = first[root] as number;
    return root;
  };
  for (let a = 0; a < T; a++)
    for (let b = a + 1; b < T; b++) {
      const [x, y] = [find(a), find(b)];
      if (x === y) continue;
      const group = problem.taxa[a]?.group;
      const same = group !== undefined && group === problem.taxa[b]?.group;
      const told = problem.characters.some(
        (character, c) =>
          crisp[c * T + a] !== ABSENT &&
          crisp[c * T + b] !== ABSENT &&
          tells(problem, character, support[c * T + a] as number, support[c * T + b] as number),
      );
      if (same || !told) first[Math.max(x, y)] = Math.min(x, y);
    }
  return first.map((_, t) => find(t));
}

/** Whether some split on offer at every place has the states `a` in one lead and the states `b` in another. */
function tells(problem: KeyProblem, { leads, ordered, states }: KeyCharacter, a: number, b: number): boolean {
  if ((a & b) !== 0) return false;
  if (leads !== 'two') return true;
  const inOrder = (low: number, high: number) => Math.clz32(low) > Math.clz32(high & -high);
  if (inOrder(a, b) || inOrder(b, a)) return true;
  const single = (x: number) => (x & (x - 1)) === 0;
  return !ordered && (states <= problem.everySplit || single(a) || single(b));
}
