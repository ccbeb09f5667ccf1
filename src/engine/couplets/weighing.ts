// One character at one place: how the plants there divide over its states.
import { binaryEntropy, xlogx } from './count.ts';
import type { Place, Places } from './places.ts';
import type { KeyCharacter } from './problem.ts';
import { EACH } from './splits.ts';
import { ABSENT, type Table } from './table.ts';

/** Weighs characters at places, one after the other, into the same few arrays. */
export class Weighing {
  readonly #places: Places;
  readonly #table: Table;
  /** Weight of each state. */
  readonly #mass = new Float64Array(32);
  /** How many taxa show this state and no other. */
  readonly #only = new Int32Array(32);
  /** From x 32 + to: weight of plants of the taxa that count under `from` but show `to`, which does not count. */
  readonly #strays = new Float64Array(32 * 32);
  #stray = false;
  /** Positions of the taxa that show several states, and those states. */
  readonly #several: Int32Array;
  readonly #support: Int32Array;
  #severals = 0;
  /** By character, states shown, and states of the first lead. */
  readonly #wrongs: readonly Map<number, Map<number, Float64Array>>[];
  #place: Place = { at: 0, count: 0, weight: 0, states: 0 };
  #character = 0;
  /** States that any of the taxa may show, as bits. */
  shown = 0;
  /** Of the last split measured: bits x weight told, and taxa that go only into the first lead, and only into the other. */
  told = 0;
  inFirst = 0;
  inOther = 0;

  constructor(places: Places) {
    this.#places = places;
    this.#table = places.table;
    this.#several = new Int32Array(places.table.T);
    this.#support = new Int32Array(places.table.T);
    this.#wrongs = places.table.problem.characters.map(() => new Map());
  }

  /** Weighs character `c` at a place. @returns false when it means nothing for one of the taxa. */
  weigh(place: Place, c: number): boolean {
    const { T, crisp, share, support, firstRow, strays, problem } = this.#table;
    const { taxa, weight, states } = this.#places;
    const open = states[place.states + c] as number;
    this.#place = place;
    this.#character = c;
    this.#severals = 0;
    this.#stray = false;
    this.shown = 0;
    if ((open & (open - 1)) === 0) return true;
    const mass = this.#mass;
    const only = this.#only;
    const S = problem.characters[c]?.states ?? 0;
    mass.fill(0, 0, S);
    only.fill(0, 0, S);
    const base = c * T;
    const row = (firstRow[c] as number) * T;
    let lost = false;
    for (let i = place.at; i < place.at + place.count; i++) {
      const t = taxa[i] as number;
      const s = crisp[base + t] as number;
      const w = weight[i] as number;
      if (s >= 0) {
        mass[s] = (mass[s] as number) + w;
        only[s] = (only[s] as number) + 1;
      } else {
        if (s === ABSENT) lost = true;
        const shows = (support[base + t] as number) & open;
        const total = this.#sum(row + t, shows);
        for (let left = shows; left !== 0; left &= left - 1) {
          const state = 31 - Math.clz32(left & -left);
          mass[state] = (mass[state] as number) + (w * (share[row + state * T + t] as number)) / total;
        }
        this.#several[this.#severals] = i;
        this.#support[this.#severals] = shows;
        this.#severals += 1;
      }
      if (strays[c]) this.#weighStrays(t, w, row, (support[base + t] as number) & open, S);
    }
    for (let s = 0; s < S; s++) if ((mass[s] as number) > 0) this.shown |= 1 << s;
    return !lost;
  }

  /** Bits x weight that the states themselves tell of the taxa: mutual information. */
  everything(): number {
    const { taxa, weight } = this.#places;
    const { T, firstRow, share } = this.#table;
    let told = xlogx(this.#place.weight);
    for (let left = this.shown; left !== 0; left &= left - 1)
      told -= xlogx(this.#mass[31 - Math.clz32(left & -left)] as number);
    for (let k = 0; k < this.#severals; k++) {
      const i = this.#several[k] as number;
      const row = (firstRow[this.#character] as number) * T + (taxa[i] as number);
      const shows = this.#support[k] as number;
      const total = this.#sum(row, shows);
      for (let left = shows; left !== 0; left &= left - 1)
        told += (weight[i] as number) * xlogx((share[row + (31 - Math.clz32(left & -left)) * T] as number) / total);
    }
    return Math.max(0, told);
  }

  /** Measures the split into the states `lead` and the others. */
  inTwo(lead: number): void {
    const { T, noise, support } = this.#table;
    const { taxa, weight } = this.#places;
    const c = this.#character;
    const place = this.#place;
    const rest = this.shown & ~lead;
    let inside = 0;
    let inFirst = 0;
    for (let left = lead; left !== 0; left &= left - 1) {
      const s = 31 - Math.clz32(left & -left);
      inside += this.#mass[s] as number;
      inFirst += this.#only[s] as number;
    }
    let inOther = place.count - this.#severals - inFirst;
    let told = xlogx(place.weight) - xlogx(inside) - xlogx(place.weight - inside);
    const kept = noise[c];
    for (let k = 0; k < this.#severals; k++) {
      const shows = this.#support[k] as number;
      if ((shows & rest) === 0) inFirst += 1;
      else if ((shows & lead) === 0) inOther += 1;
      else {
        const i = this.#several[k] as number;
        const t = taxa[i] as number;
        const row = (this.#table.firstRow[c] as number) * T + t;
        const spread =
          kept && shows === support[c * T + t]
            ? (kept[lead * T + t] as number)
            : binaryEntropy(this.#sum(row, shows & lead) / this.#sum(row, shows));
        told -= (weight[i] as number) * spread;
      }
    }
    this.told = Math.max(0, told);
    this.inFirst = inFirst;
    this.inOther = inOther;
  }

  /** Measures the split into each state. `inFirst` and `inOther` only say whether there are any that some lead shuts out. */
  inEach(): void {
    let shared = this.shown;
    let all = true;
    for (let left = this.shown; left !== 0; left &= left - 1) {
      const bit = left & -left;
      if ((this.#only[31 - Math.clz32(bit)] as number) === 0) continue;
      shared &= bit;
      all = false;
    }
    for (let k = 0; k < this.#severals; k++) {
      shared &= this.#support[k] as number;
      all &&= this.#support[k] === this.shown;
    }
    this.told = this.everything();
    this.inFirst = all ? 0 : 1;
    // While some state is shared by all, no two are told apart for certain.
    this.inOther = shared === 0 ? 1 : 0;
  }

  /**
   * Cost of the split, weight x glances: effort, the states to be named, and the price of the chance of a wrong turn. A
   * slip into a state of another lead leads astray, one into a state of no lead half the time (ours: the person sees that
   * nothing fits, or takes the nearer lead); and so do plants that show a state which does not count for their taxon.
   */
  cost(lead: number): number {
    const { price, naming, characters } = this.#table.problem;
    const { cost, misread, states } = characters[this.#character] as KeyCharacter;
    const { shown } = this;
    const named = lead === EACH ? bitCount(shown) - 2 : Math.min(bitCount(lead), bitCount(shown & ~lead)) - 1;
    const look = (cost + naming * named) * this.#place.weight;
    if (price === 0 || (misread === 0 && !this.#stray)) return look;
    const wrong = this.#wrong(lead);
    let astray = 0;
    for (let left = shown; left !== 0; left &= left - 1) {
      const from = 31 - Math.clz32(left & -left);
      astray += misread * (this.#mass[from] as number) * (wrong[from] as number);
      if (!this.#stray) continue;
      const own = ownLead(lead, shown, left & -left);
      for (let to = 0; to < states; to++)
        if ((own & (1 << to)) === 0)
          astray += (this.#strays[32 * from + to] as number) * ((shown & (1 << to)) !== 0 ? 1 : 0.5);
    }
    return look + price * astray;
  }

  /** Of the slips from each state, the share that leads astray; made once for each split. */
  #wrong(lead: number): Float64Array {
    const { confused, states } = this.#table.problem.characters[this.#character] as KeyCharacter;
    const { shown } = this;
    const ofCharacter = this.#wrongs[this.#character] as Map<number, Map<number, Float64Array>>;
    const ofShown = ofCharacter.get(shown) ?? new Map<number, Float64Array>();
    if (ofShown.size === 0) ofCharacter.set(shown, ofShown);
    const made = ofShown.get(lead);
    if (made) return made;
    const wrong = new Float64Array(states);
    for (let left = shown; left !== 0; left &= left - 1) {
      const from = 31 - Math.clz32(left & -left);
      const own = ownLead(lead, shown, left & -left);
      confused[from]?.forEach((share, to) => {
        if ((own & (1 << to)) === 0)
          wrong[from] = (wrong[from] as number) + share * ((shown & (1 << to)) !== 0 ? 1 : 0.5);
      });
    }
    ofShown.set(lead, wrong);
    return wrong;
  }

  #weighStrays(t: number, w: number, row: number, shows: number, S: number): void {
    const { T, share, strays } = this.#table;
    const of = strays[this.#character] as Float64Array;
    if (!this.#stray) this.#strays.fill(0);
    this.#stray = true;
    const total = this.#sum(row + t, shows);
    for (let to = 0; to < S; to++) {
      const stray = of[to * T + t] as number;
      if (stray === 0) continue;
      for (let left = shows; left !== 0; left &= left - 1) {
        const from = 31 - Math.clz32(left & -left);
        const at = 32 * from + to;
        this.#strays[at] = (this.#strays[at] as number) + (w * stray * (share[row + from * T + t] as number)) / total;
      }
    }
  }

  /** Sum of the shares of some states, where `at` is the place of the first state's share. */
  #sum(at: number, states: number): number {
    const { T, share } = this.#table;
    let sum = 0;
    for (let left = states; left !== 0; left &= left - 1)
      sum += share[at + (31 - Math.clz32(left & -left)) * T] as number;
    return sum;
  }
}

/** The states of the lead that state `bit` is in. */
const ownLead = (lead: number, shown: number, bit: number): number =>
  lead === EACH ? bit : (lead & bit) !== 0 ? lead : shown & ~lead;

export function bitCount(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}
