// Every split on offer at a place, with what it costs and the least that the key must cost with it.
import { type Bounds, Sources } from './bounds.ts';
import { binaryEntropy, xlogx } from './count.ts';
import type { Place, Places } from './places.ts';
import type { KeyCharacter } from './problem.ts';
import { ABSENT, type Table } from './table.ts';

/** In place of the states of the first lead: a lead for each state. */
export const EACH = 0;

/** The splits of one place, on a heap by the bound of the key that begins with each. */
export class Splits {
  size = 0;
  character = new Int32Array(256);
  /** States of the first lead as bits, or EACH. */
  lead = new Int32Array(256);
  /** States that any taxon at the place may show. */
  shown = new Int32Array(256);
  /** Cost of asking, weight x glances. */
  cost = new Float64Array(256);
  /** Least cost of the key from here on when it begins so. */
  low = new Float64Array(256);
  /** 1 once `low` was reckoned from the places below and not only from the bits told. */
  looked = new Uint8Array(256);
  /** What the characters can still give from here on. */
  sources = new Sources();
  #heap = new Int32Array(256);
  #length = 0;

  clear(): void {
    this.size = 0;
    this.#length = 0;
  }

  add(character: number, lead: number, shown: number, cost: number, bits: number): void {
    if (this.size === this.character.length) this.#grow();
    const i = this.size;
    this.character[i] = character;
    this.lead[i] = lead;
    this.shown[i] = shown;
    this.cost[i] = cost;
    this.low[i] = bits;
    this.looked[i] = 0;
    this.size += 1;
  }

  get left(): number {
    return this.#length;
  }

  /** The split that comes first; ties go to the one found first. */
  get first(): number {
    return this.#heap[0] as number;
  }

  push(split: number): void {
    let i = this.#length;
    this.#length += 1;
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (!this.#before(split, this.#heap[up] as number)) break;
      this.#heap[i] = this.#heap[up] as number;
      i = up;
    }
    this.#heap[i] = split;
  }

  pop(): number {
    const out = this.first;
    this.#length -= 1;
    const split = this.#heap[this.#length] as number;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= this.#length) break;
      if (down + 1 < this.#length && this.#before(this.#heap[down + 1] as number, this.#heap[down] as number))
        down += 1;
      if (!this.#before(this.#heap[down] as number, split)) break;
      this.#heap[i] = this.#heap[down] as number;
      i = down;
    }
    this.#heap[i] = split;
    return out;
  }

  #before(a: number, b: number): boolean {
    const x = (this.low[a] as number) - (this.low[b] as number);
    return x < 0 || (x === 0 && a < b);
  }

  #grow(): void {
    const wider = <A extends Int32Array | Float64Array | Uint8Array>(from: A, to: A): A => {
      to.set(from);
      return to;
    };
    const n = 2 * this.character.length;
    this.character = wider(this.character, new Int32Array(n));
    this.lead = wider(this.lead, new Int32Array(n));
    this.shown = wider(this.shown, new Int32Array(n));
    this.cost = wider(this.cost, new Float64Array(n));
    this.low = wider(this.low, new Float64Array(n));
    this.looked = wider(this.looked, new Uint8Array(n));
    this.#heap = wider(this.#heap, new Int32Array(n));
  }
}

/** Finds the splits of places. Holds only scratch space. */
export class Splitter {
  readonly #places: Places;
  readonly #table: Table;
  readonly #bounds: Bounds;
  /** Weight, and number of taxa that show no other, of each state. */
  readonly #mass = new Float64Array(32);
  readonly #only = new Int32Array(32);
  readonly #several: Int32Array;
  readonly #support: Int32Array;
  #severals = 0;
  readonly #left: Int32Array;
  readonly #ways = new Map<number, Int32Array>();

  constructor(places: Places, bounds: Bounds) {
    this.#places = places;
    this.#table = places.table;
    this.#bounds = bounds;
    this.#several = new Int32Array(places.table.T);
    this.#support = new Int32Array(places.table.T);
    this.#left = new Int32Array(places.table.C);
  }

  /**
   * Fills `into` with the useful splits of a place whose bound is below `limit`. A split is useful when one of its leads
   * is closed to one of the taxa, and it tells two of them apart for certain or enough bits. A character that means
   * nothing for one of the taxa is put only where no other helps.
   * @returns whether any split is useful; if not, the key ends here.
   */
  find(place: Place, limit: number, into: Splits): boolean {
    const { C, flat } = this.#table;
    into.clear();
    const lost: number[] = [];
    for (let c = 0; c < C; c++) {
      this.#left[c] = 0;
      if (this.#gather(place, c)) this.#offer(place, c, into);
      else {
        lost.push(c);
        this.#left[c] = bitCount(this.#places.states[place.states + c] as number);
      }
    }
    if (into.size === 0)
      for (const c of lost) {
        this.#gather(place, c);
        this.#offer(place, c, into);
      }
    if (into.size === 0) return false;
    if (!flat) this.#bounds.fill(into.sources, this.#left);
    else into.sources = this.#bounds.sources;
    const entropy = this.#bounds.entropy(place);
    for (let i = 0; i < into.size; i++) {
      const low =
        (into.cost[i] as number) + this.#bounds.ofBits(entropy - (into.low[i] as number), place.weight, into.sources);
      into.low[i] = low;
      if (low < limit) into.push(i);
    }
    return true;
  }

  /** Weighs the states of a character at a place. @returns false when it means nothing for one of the taxa. */
  #gather(place: Place, c: number): boolean {
    const { T, crisp, share, support, firstRow, all } = this.#table;
    const { taxa, weight, states } = this.#places;
    const open = states[place.states + c] as number;
    this.#severals = 0;
    if ((open & (open - 1)) === 0) return true;
    for (let s = 0; 1 << s <= (all[c] as number) && s < 31; s++) {
      this.#mass[s] = 0;
      this.#only[s] = 0;
    }
    const base = c * T;
    const row = (firstRow[c] as number) * T;
    let lost = false;
    for (let i = place.at; i < place.at + place.count; i++) {
      const t = taxa[i] as number;
      const s = crisp[base + t] as number;
      const w = weight[i] as number;
      if (s >= 0) {
        this.#mass[s] = (this.#mass[s] as number) + w;
        this.#only[s] = (this.#only[s] as number) + 1;
        continue;
      }
      if (s === ABSENT) lost = true;
      const shows = (support[base + t] as number) & open;
      let total = 1;
      if (shows !== support[base + t]) {
        total = 0;
        for (let left = shows; left !== 0; left &= left - 1)
          total += share[row + (31 - Math.clz32(left & -left)) * T + t] as number;
      }
      for (let left = shows; left !== 0; left &= left - 1) {
        const state = 31 - Math.clz32(left & -left);
        this.#mass[state] = (this.#mass[state] as number) + (w * (share[row + state * T + t] as number)) / total;
      }
      this.#several[this.#severals] = i;
      this.#support[this.#severals] = shows;
      this.#severals += 1;
    }
    return !lost;
  }

  /** Adds the useful splits of the character just weighed. */
  #offer(place: Place, c: number, into: Splits): void {
    const { all, problem } = this.#table;
    const open = this.#places.states[place.states + c] as number;
    if ((open & (open - 1)) === 0) return;
    let shown = 0;
    for (let s = 0; 1 << s <= (all[c] as number) && s < 31; s++) if ((this.#mass[s] as number) > 0) shown |= 1 << s;
    if ((shown & (shown - 1)) === 0) return;
    const count = bitCount(shown);
    this.#left[c] = count;
    const character = problem.characters[c];
    if (character === undefined) return;
    if (character.leads !== 'each')
      for (const lead of this.#waysOf(shown, character.ordered)) this.#two(place, c, shown, lead, into);
    if (character.leads === 'each' || (character.leads === 'either' && count > 2)) this.#each(place, c, shown, into);
  }

  #two(place: Place, c: number, shown: number, lead: number, into: Splits): void {
    const { T, noise, problem } = this.#table;
    const { taxa, weight } = this.#places;
    const rest = shown & ~lead;
    let inside = 0;
    let onlyIn = 0;
    for (let left = lead; left !== 0; left &= left - 1) {
      const s = 31 - Math.clz32(left & -left);
      inside += this.#mass[s] as number;
      onlyIn += this.#only[s] as number;
    }
    let onlyOut = place.count - this.#severals - onlyIn;
    let told = xlogx(place.weight) - xlogx(inside) - xlogx(Math.max(0, place.weight - inside));
    const kept = noise[c];
    for (let k = 0; k < this.#severals; k++) {
      const shows = this.#support[k] as number;
      if ((shows & rest) === 0) onlyIn += 1;
      else if ((shows & lead) === 0) onlyOut += 1;
      else {
        const i = this.#several[k] as number;
        const t = taxa[i] as number;
        const whole = shows === this.#table.support[c * T + t];
        told -=
          (weight[i] as number) *
          (kept && whole ? (kept[lead * T + t] as number) : binaryEntropy(this.#part(c, t, shows, lead)));
      }
    }
    if (onlyIn + onlyOut === 0) return;
    if ((onlyIn === 0 || onlyOut === 0) && told < problem.least * place.weight) return;
    into.add(c, lead, shown, this.#cost(place, c, shown, lead), told);
  }

  #each(place: Place, c: number, shown: number, into: Splits): void {
    const { problem } = this.#table;
    const { taxa, weight } = this.#places;
    let told = xlogx(place.weight);
    let alone = 0;
    let shared = shown;
    for (let left = shown; left !== 0; left &= left - 1) {
      const s = 31 - Math.clz32(left & -left);
      told -= xlogx(this.#mass[s] as number);
      if ((this.#only[s] as number) > 0) {
        alone |= 1 << s;
        shared &= 1 << s;
      }
    }
    let closed = alone !== 0;
    for (let k = 0; k < this.#severals; k++) {
      const shows = this.#support[k] as number;
      const i = this.#several[k] as number;
      if (shows !== shown) closed = true;
      shared &= shows;
      for (let left = shows; left !== 0; left &= left - 1)
        told += (weight[i] as number) * xlogx(this.#part(c, taxa[i] as number, shows, left & -left));
    }
    if (!closed) return;
    // Some state that all share means that no two are told apart for certain; without one, some two are (or nearly).
    if (shared !== 0 && told < problem.least * place.weight) return;
    into.add(c, EACH, shown, this.#cost(place, c, shown, EACH), told);
  }

  /** The share of a taxon's plants, of those still possible here, that show one of the states `lead`. */
  #part(c: number, t: number, shows: number, lead: number): number {
    const { T, share, firstRow } = this.#table;
    const row = (firstRow[c] as number) * T + t;
    let inside = 0;
    let total = 0;
    for (let left = shows; left !== 0; left &= left - 1) {
      const bit = left & -left;
      const x = share[row + (31 - Math.clz32(bit)) * T] as number;
      total += x;
      if ((lead & bit) !== 0) inside += x;
    }
    return inside / total;
  }

  /** Cost of one split, weight x glances. */
  cost(place: Place, c: number, lead: number, shown: number): number {
    this.#gather(place, c);
    return this.#cost(place, c, shown, lead);
  }

  /**
   * Effort, the states to be named, and the price of the chance of a wrong turn: a slip into a state of another lead leads
   * astray, one into a state of no lead half the time (ours: the person sees that nothing fits, or takes the nearer lead).
   */
  #cost(place: Place, c: number, shown: number, lead: number): number {
    const { price, naming, characters } = this.#table.problem;
    const { cost, misread, confused, states } = characters[c] as KeyCharacter;
    const named = lead === EACH ? bitCount(shown) - 2 : Math.min(bitCount(lead), bitCount(shown & ~lead)) - 1;
    const look = (cost + naming * named) * place.weight;
    if (price === 0 || misread === 0) return look;
    let astray = 0;
    for (let left = shown; left !== 0; left &= left - 1) {
      const bit = left & -left;
      const from = 31 - Math.clz32(bit);
      const own = lead === EACH ? bit : (lead & bit) !== 0 ? lead : shown & ~lead;
      const row = confused[from] as readonly number[];
      let wrong = 0;
      for (let to = 0; to < states; to++)
        if ((own & (1 << to)) === 0) wrong += (row[to] as number) * ((shown & (1 << to)) !== 0 ? 1 : 0.5);
      astray += (this.#mass[from] as number) * wrong;
    }
    return look + price * misread * astray;
  }

  /** The ways to put these states in two leads; the first state is never in the lead that is returned. */
  #waysOf(shown: number, ordered: boolean): Int32Array {
    const id = ordered ? -shown : shown;
    const made = this.#ways.get(id);
    if (made) return made;
    const states: number[] = [];
    for (let left = shown; left !== 0; left &= left - 1) states.push(left & -left);
    const ways = new Set<number>();
    const n = states.length;
    if (!ordered && n <= this.#table.problem.everySplit)
      for (let way = 1; way < 2 ** (n - 1); way++)
        ways.add(states.reduce((lead, bit, k) => (k > 0 && (way & (1 << (k - 1))) !== 0 ? lead | bit : lead), 0));
    else {
      for (let k = 1; k < n; k++) ways.add(states.slice(k).reduce((lead, bit) => lead | bit, 0));
      if (!ordered) for (const bit of states) ways.add(bit === states[0] ? shown & ~bit : bit);
    }
    const out = Int32Array.from(ways);
    this.#ways.set(id, out);
    return out;
  }
}

export function bitCount(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}
