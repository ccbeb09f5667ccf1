// What each further character may be expected to tell, and what is worth asking next.
import { characterOf } from './likelihood.ts';
import type { Matrix } from './matrix.ts';
import type { Profiles } from './profiles.ts';
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
  /** By rate of slips, made once for each rate that occurs: one for each character. */
  readonly #reports = new Map<number, readonly Reports[]>();
  /** How much of the weight each profile holds; kept, so that asking makes nothing. */
  readonly #mass: Float64Array;

  constructor(matrix: Matrix) {
    this.#matrix = matrix;
    this.#mass = new Float64Array(matrix.hypotheses);
  }

  bits(character: number, weights: Float64Array, times: number): number {
    const { said, noise } = this.#reportsAt(times)[character] as Reports;
    const { members, first } = this.#matrix.profiles[character] as Profiles;
    const P = noise.length;
    const mass = this.#mass;
    for (let g = 0; g < P; g++) {
      let held = 0;
      const end = first[g + 1] as number;
      for (let k = first[g] as number; k < end; k++) held += weights[members[k] as number] as number;
      mass[g] = held;
    }
    let bits = 0;
    for (let g = 0; g < P; g++) bits -= (mass[g] as number) * (noise[g] as number);
    for (let row = 0; row < said.length; row += P) {
      let report = 0;
      for (let g = 0; g < P; g++) report += (mass[g] as number) * (said[row + g] as number);
      bits -= xlogx(report);
    }
    return Math.max(0, bits);
  }

  #reportsAt(times: number): readonly Reports[] {
    const made =
      this.#reports.get(times) ?? this.#matrix.spec.characters.map((_, c) => reportsOf(this.#matrix, c, times));
    this.#reports.set(times, made);
    return made;
  }
}

/** What is reported of one character at one rate of slips, over its profiles. */
interface Reports {
  /** P(state reported | profile), states x P. */
  readonly said: Float64Array;
  /** H(report | profile) in bits, length P. */
  readonly noise: Float64Array;
}

function reportsOf(matrix: Matrix, character: number, times: number): Reports {
  const { hypotheses: H, firstRow, truth, slip, cap } = matrix;
  const { sample } = matrix.profiles[character] as Profiles;
  const rate = slipRate(characterOf(matrix, character).misread, cap[character] as number, times, 'sure');
  const P = sample.length;
  const first = firstRow[character] as number;
  const said = new Float64Array(((firstRow[character + 1] as number) - first) * P);
  const noise = new Float64Array(P);
  for (let j = 0; j < said.length; j++) {
    const i = (first + Math.floor(j / P)) * H + (sample[j % P] as number);
    const report = (1 - rate) * (truth[i] as number) + rate * (slip[i] as number);
    said[j] = report;
    noise[j % P] = (noise[j % P] as number) - xlogx(report);
  }
  return { said, noise };
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
  if (matrix.profiles[character]?.absent === -1) return 1;
  let inside = 0;
  let applying = 0;
  for (let t = 0; t < T; t++) {
    inside += weights[t] as number;
    if (matrix.applies[character * T + t] === 1) applying += weights[t] as number;
  }
  return inside > 0 ? applying / inside : 1;
}
