// What no key can undercut from a place on.
import { huffman, xlogx } from './count.ts';
import type { Place, Places } from './places.ts';
import { type Prices, priceOfEach } from './prices.ts';
import type { KeyCharacter } from './problem.ts';
import type { Table } from './table.ts';

/** Keeps rounding from lifting a bound above what it bounds. */
const SLACK = 1 - 1e-12;

/**
 * What the ways from a place must cost that take so many looks, or yield so many bits: the cheapest characters first, each
 * for no more than it can give. Convex, so what holds on average holds for the average.
 */
class Spend {
  #length = 0;
  readonly #each: number[] = [];
  readonly #most: number[] = [];
  readonly #rate: number[] = [];

  clear(): void {
    this.#length = 0;
  }

  /** Adds a source that gives up to `each` for every unit of weight and `most` in all, at `rate` glances for one; rates ascend. */
  add(each: number, most: number, rate: number): void {
    const k = this.#length;
    this.#each[k] = each;
    this.#most[k] = most;
    this.#rate[k] = rate;
    this.#length += 1;
  }

  /** Least cost of `amount` for plants of this weight; beyond what the sources give, at the dearest rate. */
  of(amount: number, weight: number): number {
    let left = amount;
    let cost = 0;
    for (let k = 0; k < this.#length && left > 0; k++) {
      const last = k === this.#length - 1;
      const given = last ? left : Math.min(left, this.#most[k] as number, (this.#each[k] as number) * weight);
      cost += given * (this.#rate[k] as number);
      left -= given;
    }
    return cost;
  }
}

/** What the characters can still give at a place and below it, for how much. */
export class Sources {
  /** Bits, at the price of a bit. */
  readonly bits = new Spend();
  /** Couplets on one way, at the price of a look. */
  readonly looks = new Spend();
}

/**
 * Lower bounds, in weight x glances. From any place the answers must carry the entropy of the sets of taxa that can never
 * end together (Shannon, C.E. 1948, Bell System Tech. J. 27); with two leads throughout, the lengths of the ways are
 * those of a binary code (Huffman, D.A. 1952, Proc. IRE 40). Bits and looks are then paid for as cheaply as any way could.
 */
export class Bounds {
  readonly #table: Table;
  readonly #places: Places;
  readonly #gathered: Float64Array;
  /** Characters by the price of a look, cheapest first. */
  readonly #looks: Int32Array;
  /** Characters by the price of a bit as it was last, and that price. */
  readonly #bits: Int32Array;
  readonly #rates: Float64Array;
  /** Of the whole problem. */
  readonly sources: Sources;

  constructor(places: Places) {
    this.#places = places;
    this.#table = places.table;
    const { T, C, prices, problem } = this.#table;
    this.#gathered = new Float64Array(T);
    const look = (c: number) => prices[c]?.look as number;
    this.#bits = Int32Array.from({ length: C }, (_, c) => c);
    this.#looks = this.#bits.slice().sort((a, b) => look(a) - look(b) || a - b);
    this.#rates = new Float64Array(C);
    this.sources = this.fill(
      new Sources(),
      problem.characters.map(({ states }) => states),
    );
  }

  /**
   * Sets what there is to draw on at a place: how many states of each character are left (below 2: nothing), and the
   * bits x weight that it could tell of the taxa there by itself. Mutual information is concave and grows with every
   * weight, so below the place it can tell no more than that in all, however often and wherever it is asked.
   */
  fill(sources: Sources, states: ArrayLike<number>, tells?: ArrayLike<number>): Sources {
    const { bits, looks } = sources;
    bits.clear();
    looks.clear();
    this.#sort(states);
    const all = Number.POSITIVE_INFINITY;
    for (const c of this.#bits) {
      const left = states[c] as number;
      if (left >= 2) bits.add(Math.log2(left), (tells?.[c] as number | undefined) ?? all, this.#rates[c] as number);
    }
    for (const c of this.#looks) {
      const left = states[c] as number;
      if (left >= 2) looks.add(left - 1, all, this.#table.prices[c]?.look as number);
    }
    return sources;
  }

  /** Entropy x weight of what must be told apart at a place, in bits. */
  entropy(place: Place): number {
    return this.#entropy(place.weight, this.#gather(place));
  }

  /** Least cost of so many bits, each counted with the weight of the place where it is told. */
  ofBits(bits: number, weight: number, sources: Sources): number {
    return this.#rounded(sources.bits.of(bits, weight));
  }

  /** Least cost from this place on. `sources`: of this place or of one above it. */
  from(place: Place, sources: Sources): number {
    if (place.count <= 1) return 0;
    const n = this.#gather(place);
    if (n <= 1) return 0;
    const { binary, plain, prices } = this.#table;
    if (plain) return this.#rounded((prices[0]?.look as number) * huffman(this.#gathered, n));
    const byBits = this.ofBits(this.#entropy(place.weight, n), place.weight, sources);
    const looks = binary ? huffman(this.#gathered, n) : place.weight;
    return Math.max(byBits, this.#rounded(sources.looks.of(looks, place.weight)));
  }

  /** Looks x weight of the shortest code for what must be told apart here: no bound by itself where leads are more than two. */
  code(place: Place): number {
    return place.count <= 1 ? 0 : huffman(this.#gathered, this.#gather(place));
  }

  #entropy(weight: number, n: number): number {
    let bits = xlogx(weight);
    for (let i = 0; i < n; i++) bits -= xlogx(this.#gathered[i] as number);
    return Math.max(0, bits);
  }

  /** Least cost of a bit: a couplet of two leads tells one at the most, one of more leads as many as its leads can. */
  #rate(c: number, states: number): number {
    const { problem, prices } = this.#table;
    const character = problem.characters[c] as KeyCharacter;
    const { bit, lastBit } = prices[c] as Prices;
    const two = states > 2 ? bit : lastBit;
    if (character.leads === 'two') return two;
    const each = priceOfEach(problem, character) / Math.log2(Math.max(2, states));
    return character.leads === 'each' ? each : Math.min(two, each);
  }

  /** Orders the characters by the price of a bit; they are all but in order from the last time, so by insertion. */
  #sort(states: ArrayLike<number>): void {
    const order = this.#bits;
    const rates = this.#rates;
    for (let c = 0; c < rates.length; c++) rates[c] = this.#rate(c, states[c] as number);
    for (let i = 1; i < order.length; i++) {
      const c = order[i] as number;
      const rate = rates[c] as number;
      let j = i - 1;
      for (; j >= 0; j--) {
        const before = rates[order[j] as number] as number;
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
