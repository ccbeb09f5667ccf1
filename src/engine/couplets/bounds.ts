// What no key can undercut from a place on.
import { huffman, xlogx } from './count.ts';
import type { Place, Places } from './places.ts';
import type { Table } from './table.ts';

/** Keeps rounding from lifting a bound above what it bounds. */
const SLACK = 1 - 1e-12;

/**
 * What a way must cost that takes so many tests, or yields so many bits: the cheapest characters first, each for no more
 * than it can give. Convex and piecewise linear, so what holds on average holds for the average.
 */
class Spend {
  #length = 0;
  readonly #upTo: number[] = [];
  readonly #cost: number[] = [];
  readonly #rate: number[] = [];

  clear(): void {
    this.#length = 0;
  }

  /** Adds a source that gives up to `amount` at `rate` glances for one; rates ascend. */
  add(amount: number, rate: number): void {
    const k = this.#length;
    this.#upTo[k] = this.most + amount;
    this.#cost[k] = (k > 0 ? (this.#cost[k - 1] as number) : 0) + amount * rate;
    this.#rate[k] = rate;
    this.#length += 1;
  }

  get most(): number {
    return this.#length > 0 ? (this.#upTo[this.#length - 1] as number) : 0;
  }

  /** Least cost of `amount`; beyond what the sources give, at the dearest rate. */
  of(amount: number): number {
    if (this.#length === 0) return 0;
    let k = 0;
    while (k < this.#length - 1 && (this.#upTo[k] as number) < amount) k += 1;
    return (this.#cost[k] as number) + (amount - (this.#upTo[k] as number)) * (this.#rate[k] as number);
  }
}

/** What the characters can still give at a place and below it, for how much. */
export class Sources {
  readonly bits = new Spend();
  readonly tests = new Spend();
  /** The cheapest look. */
  cheapest = 0;
}

/**
 * Lower bounds, in weight x glances. From any place the answers must carry the entropy of the sets of taxa that can never
 * end together (Shannon, C.E. 1948, Bell System Tech. J. 27); with two leads throughout, the lengths of the ways are
 * those of a binary code (Huffman, D.A. 1952, Proc. IRE 40). Bits and tests are then paid for as cheaply as any way could.
 */
export class Bounds {
  readonly #table: Table;
  readonly #places: Places;
  readonly #gathered: Float64Array;
  /** Characters, cheapest bits first. */
  readonly #order: number[];
  /** Of the whole problem. */
  readonly sources: Sources;

  constructor(places: Places) {
    this.#places = places;
    this.#table = places.table;
    const { T, C, least, problem } = this.#table;
    this.#gathered = new Float64Array(T);
    const states = problem.characters.map((character) => character.states);
    this.#order = Array.from({ length: C }, (_, c) => c).sort(
      (a, b) => (least[a] as number) - (least[b] as number) || a - b,
    );
    this.sources = this.fill(new Sources(), states);
  }

  /** Sets what there is to draw on: how many states of each character are left (below 2: nothing). */
  fill(sources: Sources, states: ArrayLike<number>): Sources {
    const { bits, tests } = sources;
    bits.clear();
    tests.clear();
    sources.cheapest = Number.POSITIVE_INFINITY;
    const { least, T, binary } = this.#table;
    if (!binary) this.#sort(states);
    for (const c of this.#order) {
      const left = states[c] as number;
      if (left < 2) continue;
      const cost = least[c] as number;
      bits.add(Math.log2(left), this.#rate(c, left));
      tests.add(left - 1, cost);
      sources.cheapest = Math.min(sources.cheapest, cost);
      if (binary && bits.most > Math.log2(T) + 1 && tests.most > T) break;
    }
    return sources;
  }

  /** Entropy x weight of what must be told apart at a place, in bits. */
  entropy(place: Place): number {
    return this.#entropy(place.weight, this.#gather(place));
  }

  /** Least cost of so many bits, each counted with the weight of the place where it is told. */
  ofBits(bits: number, weight: number, sources: Sources): number {
    return this.#rounded(weight * sources.bits.of(Math.max(0, bits) / weight));
  }

  /** Least cost from this place on. `sources`: of this place or of one above it. */
  from(place: Place, sources: Sources): number {
    if (place.count <= 1) return 0;
    const n = this.#gather(place);
    if (n <= 1) return 0;
    const { binary, flat, least } = this.#table;
    if (binary && flat) return this.#rounded((least[0] as number) * huffman(this.#gathered, n));
    const byBits = this.ofBits(this.#entropy(place.weight, n), place.weight, sources);
    const tests = binary ? sources.tests.of(huffman(this.#gathered, n) / place.weight) : sources.cheapest;
    return Math.max(byBits, this.#rounded(place.weight * tests));
  }

  #entropy(weight: number, n: number): number {
    let bits = xlogx(weight);
    for (let i = 0; i < n; i++) bits -= xlogx(this.#gathered[i] as number);
    return Math.max(0, bits);
  }

  /** Least cost of a bit: a couplet of two leads tells one, one of more leads as many as its leads can. */
  #rate(c: number, states: number): number {
    const two = this.#table.problem.characters[c]?.leads === 'two';
    return (this.#table.least[c] as number) / (two ? 1 : Math.log2(Math.max(2, states)));
  }

  /** With leads for each state the cheapest bits depend on the states left. All but in order already: by insertion. */
  #sort(states: ArrayLike<number>): void {
    const order = this.#order;
    for (let i = 1; i < order.length; i++) {
      const c = order[i] as number;
      const rate = this.#rate(c, states[c] as number);
      let j = i - 1;
      for (; j >= 0; j--) {
        const before = this.#rate(order[j] as number, states[order[j] as number] as number);
        if (before < rate || (before === rate && (order[j] as number) < c)) break;
        order[j + 1] = order[j] as number;
      }
      order[j + 1] = c;
    }
  }

  #rounded(cost: number): number {
    return this.#table.whole ? Math.ceil(cost - 1e-6) : cost * SLACK;
  }

  /** Weights of the sets of taxa to be told apart, into the scratch array; how many there are. */
  #gather({ at, count }: Place): number {
    const { apart, together } = this.#table;
    const { taxa, weight } = this.#places;
    const out = this.#gathered;
    if (apart) {
      for (let i = 0; i < count; i++) out[i] = weight[at + i] as number;
      return count;
    }
    const seen = new Map<number, number>();
    for (let i = 0; i < count; i++) {
      const set = together[taxa[at + i] as number] as number;
      seen.set(set, (seen.get(set) ?? 0) + (weight[at + i] as number));
    }
    let n = 0;
    for (const w of seen.values()) out[n++] = w;
    return n;
  }
}
