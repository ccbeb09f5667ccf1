// How few questions could do: what information theory allows, whatever is asked in whatever order.
import { slipRate } from '../slips.ts';
import type { CharacterSpec } from '../spec.ts';
import type { Book } from './book.ts';

const xlogx = (x: number): number => (x > 0 ? x * Math.log2(x) : 0);

export interface Bound {
  /** Bits that must be learned before the leading taxon can hold what a settled verdict asks of it. */
  readonly bits: number;
  /** The character that can tell most, and how many bits one question about it can carry at the very most. */
  readonly best: number;
  readonly capacity: number;
  /** bits / capacity: as if that best question could be asked again and again. */
  readonly questions: number;
  /** The same when each character can be asked but once, the best ones first; undefined when all together cannot do. */
  readonly once: number | undefined;
}

/**
 * A lower bound on the mean number of questions. No answer carries more than the capacity of its character's channel
 * (Shannon 1948, Bell System Tech. J. 27), less what is lost on people who cannot tell. To be settled, the entropy of the
 * standing must fall from that of the priors to h(s) + (1 - s) log2(H - 1), the most that is left when one of H hypotheses
 * holds s (Fano's inequality).
 */
export function boundOf(book: Book, tellable: readonly number[]): Bound {
  const { matrix, rules, start } = book;
  const H = matrix.hypotheses;
  const rest = 1 - rules.settled;
  const left = -xlogx(rules.settled) - xlogx(rest) + rest * Math.log2(Math.max(1, H - 1));
  const bits = Math.max(0, -start.p.reduce((sum, p) => sum + xlogx(p), 0) - left);
  const capacities = matrix.spec.characters
    .map((character, c) => ({ c, bits: character.proposed ? capacityOf(book, c) * (tellable[c] as number) : 0 }))
    .sort((a, b) => b.bits - a.bits);
  const [best = { c: 0, bits: 0 }] = capacities;
  let learned = 0;
  let once: number | undefined;
  capacities.forEach((one, i) => {
    if (once === undefined && one.bits > 0 && learned + one.bits >= bits) once = i + (bits - learned) / one.bits;
    learned += one.bits;
  });
  return { bits, best: best.c, capacity: best.bits, questions: bits / best.bits, once };
}

const ROUNDS = 200;
const CLOSE = 1e-6;

/**
 * Capacity in bits of one character's channel from taxon to report, by the algorithm of Blahut (1972, IEEE Trans. Inf.
 * Theory 18: 460-473) and Arimoto (1972, the same volume: 14-20), both from memory. The upper of its two bounds, so that
 * the result never falls short of the capacity.
 */
export function capacityOf({ matrix, observer }: Book, character: number): number {
  const { outside: T, hypotheses: H, truth, slip, cap, firstRow, spec } = matrix;
  const rate = slipRate(
    (spec.characters[character] as CharacterSpec).misread,
    cap[character] as number,
    observer,
    'sure',
  );
  const rows = Array.from(
    { length: (firstRow[character + 1] as number) - (firstRow[character] as number) },
    (_, s) => ((firstRow[character] as number) + s) * H,
  );
  const report = (row: number, t: number) => (1 - rate) * (truth[row + t] as number) + rate * (slip[row + t] as number);
  const channel = Array.from({ length: T }, (_, t) => rows.map((row) => report(row, t)));
  let input = new Array<number>(T).fill(1 / T);
  let upper = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const output = rows.map((_, s) =>
      channel.reduce((sum, row, t) => sum + (input[t] as number) * (row[s] as number), 0),
    );
    const divergence = channel.map((row) =>
      row.reduce((sum, p, s) => (p > 0 ? sum + p * Math.log2(p / (output[s] as number)) : sum), 0),
    );
    upper = Math.max(...divergence);
    const lifted = input.map((p, t) => p * 2 ** (divergence[t] as number));
    const total = lifted.reduce((a, b) => a + b, 0);
    if (upper - Math.log2(total) < CLOSE) break;
    input = lifted.map((x) => x / total);
  }
  return upper;
}
