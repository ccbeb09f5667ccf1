// The splits on offer at one place, with what each costs and the least that the key must cost with it.
import { Sources } from './bounds.ts';

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
  /** Bits x weight that it tells of the taxa. */
  told = new Float64Array(256);
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

  add(character: number, lead: number, shown: number, cost: number, told: number): void {
    if (this.size === this.character.length) this.#grow();
    const i = this.size;
    this.character[i] = character;
    this.lead[i] = lead;
    this.shown[i] = shown;
    this.cost[i] = cost;
    this.told[i] = told;
    this.low[i] = cost;
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
    this.told = wider(this.told, new Float64Array(n));
    this.low = wider(this.low, new Float64Array(n));
    this.looked = wider(this.looked, new Uint8Array(n));
    this.#heap = wider(this.#heap, new Int32Array(n));
  }
}
