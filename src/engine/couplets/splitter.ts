// Every useful split at a place, with its cost and its bound.
import type { Bounds } from './bounds.ts';
import type { Place, Places } from './places.ts';
import type { KeyCharacter } from './problem.ts';
import { EACH, type Splits } from './splits.ts';
import type { Table } from './table.ts';
import { bitCount, Weighing } from './weighing.ts';

export class Splitter {
  readonly #table: Table;
  readonly #bounds: Bounds;
  readonly #weighing: Weighing;
  /** What each character has left at the place at hand: states, and bits x weight. */
  readonly #left: Int32Array;
  readonly #tells: Float64Array;
  readonly #ways = new Map<number, Int32Array>();

  constructor(places: Places, bounds: Bounds) {
    this.#table = places.table;
    this.#bounds = bounds;
    this.#weighing = new Weighing(places);
    this.#left = new Int32Array(places.table.C);
    this.#tells = new Float64Array(places.table.C);
  }

  /**
   * Fills `into` with the useful splits of a place whose bound is below `limit`. A split is useful when one of its leads
   * is closed to one of the taxa, and it tells two of them apart for certain or enough bits. A character that means
   * nothing for one of the taxa is put only where no other helps.
   * @returns whether any split is useful; if not, the key ends here.
   */
  find(place: Place, limit: number, into: Splits): boolean {
    const { C, plain } = this.#table;
    into.clear();
    const lost: number[] = [];
    for (let c = 0; c < C; c++) {
      const applies = this.#weighing.weigh(place, c);
      this.#left[c] = bitCount(this.#weighing.shown);
      if (!plain) this.#tells[c] = this.#weighing.everything();
      if (applies) this.#offer(place, c, into);
      else lost.push(c);
    }
    if (into.size === 0)
      for (const c of lost) {
        this.#weighing.weigh(place, c);
        this.#offer(place, c, into);
      }
    if (into.size === 0) return false;
    if (plain) into.sources = this.#bounds.sources;
    else this.#bounds.fill(into.sources, this.#left, this.#tells);
    const entropy = this.#bounds.entropy(place);
    for (let i = 0; i < into.size; i++) {
      const below = this.#bounds.ofBits(entropy - (into.told[i] as number), place.weight, into.sources);
      into.low[i] = (into.cost[i] as number) + below;
      if ((into.low[i] as number) < limit) into.push(i);
    }
    return true;
  }

  /** Cost of one split, weight x glances. */
  cost(place: Place, c: number, lead: number): number {
    this.#weighing.weigh(place, c);
    return this.#weighing.cost(lead);
  }

  /** Adds the useful splits of the character just weighed. */
  #offer(place: Place, c: number, into: Splits): void {
    const { leads, ordered } = this.#table.problem.characters[c] as KeyCharacter;
    const { shown } = this.#weighing;
    if ((shown & (shown - 1)) === 0) return;
    if (leads !== 'each')
      for (const lead of this.#waysOf(shown, ordered)) {
        this.#weighing.inTwo(lead);
        this.#add(place, c, lead, into);
      }
    if (leads === 'two' || (leads === 'either' && bitCount(shown) === 2)) return;
    this.#weighing.inEach();
    this.#add(place, c, EACH, into);
  }

  /** Adds the split just measured, if it is useful. */
  #add(place: Place, c: number, lead: number, into: Splits): void {
    const { shown, told, inFirst, inOther } = this.#weighing;
    if (inFirst + inOther === 0) return;
    const certain = inFirst > 0 && inOther > 0;
    if (!certain && told < this.#table.problem.least * place.weight) return;
    into.add(c, lead, shown, this.#weighing.cost(lead), told);
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
