// Places of a key: which taxa are still there, with what weight, and which states of each character are still possible.
import { ABSENT, type Table } from './table.ts';

/** A place on the stack of places; it stands until the stack is cut back below it. */
export interface Place {
  /** Where its taxa begin. */
  readonly at: number;
  readonly count: number;
  readonly weight: number;
  /** Where its states begin: one word of bits for each character. */
  readonly states: number;
}

/**
 * A stack of places in three typed arrays. A taxon at a place weighs its prior times, for each character, the share of
 * its plants whose state is still possible there.
 */
export class Places {
  readonly table: Table;
  taxa: Int32Array;
  weight: Float64Array;
  states: Int32Array;
  #top = 0;
  #statesTop = 0;

  constructor(table: Table) {
    this.table = table;
    this.taxa = new Int32Array(Math.max(64, 8 * table.T));
    this.weight = new Float64Array(this.taxa.length);
    this.states = new Int32Array(16 * Math.max(1, table.C));
  }

  /** The start of the key. */
  root(): Place {
    const { T, C, weight, all } = this.table;
    this.#reserve(T, C);
    const place = this.#place(
      T,
      weight.reduce((sum, w) => sum + w, 0),
    );
    for (let t = 0; t < T; t++) {
      this.taxa[place.at + t] = t;
      this.weight[place.at + t] = weight[t] as number;
    }
    this.states.set(all, place.states);
    return place;
  }

  /** Where those go whose plant shows one of the states `lead` of character `c`. */
  branch(from: Place, c: number, lead: number): Place {
    const { T, C, crisp, share, firstRow } = this.table;
    this.#reserve(from.count, C);
    const { taxa, weight, states } = this;
    const at = this.#top;
    const open = states[from.states + c] as number;
    const base = c * T;
    const row = (firstRow[c] as number) * T;
    let count = 0;
    let sum = 0;
    for (let i = from.at; i < from.at + from.count; i++) {
      const t = taxa[i] as number;
      const s = crisp[base + t] as number;
      let w = weight[i] as number;
      if (s >= 0) {
        if ((lead & (1 << s)) === 0) continue;
      } else {
        let inside = 0;
        let total = 0;
        for (let left = open; left !== 0; left &= left - 1) {
          const bit = left & -left;
          const x = share[row + (31 - Math.clz32(bit)) * T + t] as number;
          total += x;
          if ((lead & bit) !== 0) inside += x;
        }
        if (inside === 0) continue;
        if (inside !== total) w *= inside / total;
      }
      taxa[at + count] = t;
      weight[at + count] = w;
      count += 1;
      sum += w;
    }
    const place = this.#place(count, sum);
    states.copyWithin(place.states, from.states, from.states + C);
    states[place.states + c] = open & lead;
    return place;
  }

  mark(): [top: number, statesTop: number] {
    return [this.#top, this.#statesTop];
  }

  /** Gives up every place made since `mark`. */
  cut([top, statesTop]: readonly [number, number]): void {
    this.#top = top;
    this.#statesTop = statesTop;
  }

  /**
   * The same text for places from which everything goes on alike: the same taxa, and the same states still possible
   * wherever that makes a difference to one of them (which fixes the weights too).
   */
  name(place: Place): string {
    const { T, C, crisp, support, all, settled } = this.table;
    const words = new Uint16Array(Math.ceil(T / 16));
    for (let i = place.at; i < place.at + place.count; i++) {
      const t = this.taxa[i] as number;
      words[t >> 4] = (words[t >> 4] as number) | (1 << (t & 15));
    }
    let name = String.fromCharCode(...words);
    if (settled) return name;
    for (let c = 0; c < C; c++) {
      const open = this.states[place.states + c] as number;
      if (open === all[c]) continue;
      let several = 0;
      for (let i = place.at; i < place.at + place.count; i++) {
        const cell = c * T + (this.taxa[i] as number);
        if ((crisp[cell] as number) < 0) several |= support[cell] as number;
      }
      if ((several & open) !== several) name += `${String.fromCharCode(c)}${(several & open).toString(36)};`;
    }
    return name;
  }

  /** Whether nothing is left to tell apart: one taxon, or one group. */
  named(place: Place): boolean {
    if (place.count <= 1) return true;
    const { taxa } = this.table.problem;
    const group = taxa[this.taxa[place.at] as number]?.group;
    if (group === undefined) return false;
    for (let i = place.at + 1; i < place.at + place.count; i++)
      if (taxa[this.taxa[i] as number]?.group !== group) return false;
    return true;
  }

  /** Whether character `c` means nothing for one of the taxa. */
  lost(place: Place, c: number): boolean {
    const { T, crisp } = this.table;
    for (let i = place.at; i < place.at + place.count; i++)
      if (crisp[c * T + (this.taxa[i] as number)] === ABSENT) return true;
    return false;
  }

  #place(count: number, weight: number): Place {
    const place = { at: this.#top, count, weight, states: this.#statesTop };
    this.#top += count;
    this.#statesTop += this.table.C;
    return place;
  }

  #reserve(taxa: number, characters: number): void {
    if (this.#top + taxa > this.taxa.length) {
      this.taxa = grown(this.taxa, new Int32Array(2 * (this.#top + taxa)));
      this.weight = grown(this.weight, new Float64Array(this.taxa.length));
    }
    if (this.#statesTop + characters > this.states.length)
      this.states = grown(this.states, new Int32Array(2 * (this.#statesTop + characters)));
  }
}

function grown<A extends Int32Array | Float64Array>(from: A, to: A): A {
  to.set(from);
  return to;
}
