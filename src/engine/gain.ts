// What each further character may be expected to tell, and what is worth asking next.
import { characterOf } from './likelihood.ts';
import type { Matrix } from './matrix.ts';
import { slipRate } from './slips.ts';

/** One character that could be asked, and what it may be expected to tell. */
export interface Proposal {
  /** Index of the character. */
  readonly character: number;
  /** Expected information about the hypotheses, in bits. */
  readonly bits: number;
  /** Bits for each glance of effort: what proposals are ordered by. */
  readonly worth: number;
}

/** A question expected to tell less than this many bits is not worth a person's time (ours). */
export const WORTH_ASKING = 0.02;

/** x log2 x, 0 at 0. */
const xlogx = (x: number): number => (x > 0 ? x * Math.log2(x) : 0);

/**
 * Expected information of each character about the hypotheses, in bits, at a rate of slips `times` the usual:
 * I = H(report) - sum over h of w(h) H(report | h), Shannon's mutual information (Bell System Tech. J. 27, 1948),
 * with w the weights of the hypotheses (length H, summing to 1). Never below zero.
 */
export class GainTable {
  readonly #matrix: Matrix;
  /** H(report | hypothesis) by rate of slips, made once for each rate that occurs: C x H. */
  readonly #noise = new Map<number, Float64Array>();

  constructor(matrix: Matrix) {
    this.#matrix = matrix;
  }

  bits(character: number, weights: Float64Array, times: number): number {
    const { hypotheses: H, firstRow, truth, slip } = this.#matrix;
    const rate = this.#rate(character, times);
    let report = 0;
    for (let row = firstRow[character] as number; row < (firstRow[character + 1] as number); row++) {
      let right = 0;
      let slipped = 0;
      for (let h = 0, i = row * H; h < H; h++, i++) {
        const w = weights[h] as number;
        right += w * (truth[i] as number);
        slipped += w * (slip[i] as number);
      }
      report -= xlogx((1 - rate) * right + rate * slipped);
    }
    const noise = this.#noiseAt(times);
    let known = 0;
    for (let h = 0, i = character * H; h < H; h++, i++) known += (weights[h] as number) * (noise[i] as number);
    return Math.max(0, report - known);
  }

  #rate(character: number, times: number): number {
    return slipRate(characterOf(this.#matrix, character).misread, this.#matrix.cap[character] as number, times, 'sure');
  }

  #noiseAt(times: number): Float64Array {
    const made = this.#noise.get(times);
    if (made) return made;
    const { hypotheses: H, firstRow, truth, slip, spec } = this.#matrix;
    const noise = new Float64Array(spec.characters.length * H);
    spec.characters.forEach((_, c) => {
      const rate = this.#rate(c, times);
      for (let row = firstRow[c] as number; row < (firstRow[c + 1] as number); row++)
        for (let h = 0, i = row * H; h < H; h++, i++)
          noise[c * H + h] =
            (noise[c * H + h] as number) - xlogx((1 - rate) * (truth[i] as number) + rate * (slip[i] as number));
    });
    this.#noise.set(times, noise);
    return noise;
  }
}

/** Nearest of a few rates, so that the table of conditional entropies is made a few times and not for every answer. */
export function nearestTimes(matrix: Matrix, observer: number, mean: number): number {
  let best = observer;
  let gap = Number.POSITIVE_INFINITY;
  for (const { times } of matrix.spec.rates) {
    const distance = Math.abs(Math.log(times * observer) - Math.log(mean));
    if (distance < gap) [best, gap] = [times * observer, distance];
  }
  return best;
}

/**
 * The characters worth asking, best first: not yet answered, safe to look at, to be seen in `month`, and applying to
 * at least half of the weight that lies in the key.
 */
export function propose(
  table: GainTable,
  matrix: Matrix,
  weights: Float64Array,
  times: number,
  month: number,
  passed: ReadonlySet<number>,
): Proposal[] {
  const proposals: Proposal[] = [];
  matrix.spec.characters.forEach((character, c) => {
    if (!character.proposed || passed.has(c) || (character.months && !character.months.includes(month))) return;
    if (applyingShare(matrix, weights, c) < 0.5) return;
    const bits = table.bits(c, weights, times);
    proposals.push({ character: c, bits, worth: bits / character.cost });
  });
  return proposals.sort((a, b) => b.worth - a.worth || a.character - b.character);
}

/** Share of the weight inside the key on taxa to which the character applies; 1 when no weight is left inside. */
export function applyingShare(matrix: Matrix, weights: Float64Array, character: number): number {
  const T = matrix.outside;
  let inside = 0;
  let applying = 0;
  for (let t = 0; t < T; t++) {
    inside += weights[t] as number;
    if (matrix.applies[character * T + t] === 1) applying += weights[t] as number;
  }
  return inside > 0 ? applying / inside : 1;
}
