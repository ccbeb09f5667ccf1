// What is timed of the engine, in whichever engine this runs.
import {
  compileMatrix,
  focusOf,
  GainTable,
  type Matrix,
  type MatrixSpec,
  meanTimes,
  nearestTimes,
  posterior,
  propose,
  USUAL_RATES,
  verdictOf,
} from '../../src/engine/index.ts';
import { KIN } from '../../src/key/prepared.ts';
import { rules } from '../support/build.ts';
import type { Time } from './bench.ts';
import { time } from './clock.ts';
import { answersOf, type Synthetic, specOf, synthetic, unasked, withSizes } from './synthetic.ts';

/** Posterior after the answers, then what each further character is expected to tell. */
export interface Work {
  readonly posterior: Time;
  readonly gains: Time;
  readonly both: Time;
}

/** Four rates of slips, `not in this key` and its kin: what a key does. */
export interface InAKey {
  readonly both: Time;
  /** With verdict, focus and the order of the proposals: from an answer to the next question. */
  readonly turn: Time;
  /** Milliseconds to compile the matrix, once for each key. */
  readonly compile: number;
}

export interface Measured {
  /** One rate of slips and no `not in this key`: what numpy does too. */
  readonly oneRate: Work;
  readonly inAKey: InAKey;
  /** At one rate: probabilities of the taxa, and bits of the characters not asked. */
  readonly p: readonly number[];
  readonly bits: readonly number[];
}

const ONE_RATE = [{ times: 1, prior: 1 }];
const OUTSIDE = { outsidePrior: 0.05, kin: KIN };

/** Probabilities of the taxa after the answers, and bits of the characters not asked, at one rate of slips. */
export function reckon(made: Synthetic): { p: number[]; bits: number[] } {
  const matrix = compileMatrix(specOf(made, ONE_RATE));
  const gains = new GainTable(matrix);
  const { p } = posterior(matrix, answersOf(made));
  return { p: [...p.subarray(0, made.taxa)], bits: unasked(made).map((c) => gains.bits(c, p, 1)) };
}

export function measure(taxa: number, characters: number): Measured {
  const made = synthetic(taxa, characters);
  return {
    oneRate: work(made, compileMatrix(specOf(made, ONE_RATE))),
    inAKey: inAKey(made, specOf(made, USUAL_RATES, OUTSIDE)),
    ...reckon(made),
  };
}

export function measureWithSizes(taxa: number, characters: number): InAKey {
  const made = synthetic(taxa, characters);
  return inAKey(made, withSizes(specOf(made, USUAL_RATES, OUTSIDE)));
}

function work(made: Synthetic, matrix: Matrix): Work {
  const gains = new GainTable(matrix);
  const answers = answersOf(made);
  const open = unasked(made);
  const tell = (p: Float64Array) => open.reduce((sum, c) => sum + gains.bits(c, p, 1), 0);
  const { p } = posterior(matrix, answers);
  return {
    posterior: time(() => posterior(matrix, answers)),
    gains: time(() => tell(p)),
    both: time(() => tell(posterior(matrix, answers).p)),
  };
}

function inAKey(made: Synthetic, spec: MatrixSpec): InAKey {
  const start = performance.now();
  const matrix = compileMatrix(spec);
  const compile = performance.now() - start;
  const gains = new GainTable(matrix);
  const answers = answersOf(made);
  const passed = new Set(made.asked);
  const turn = time(() => {
    const from = posterior(matrix, answers);
    const times = nearestTimes(matrix, 1, meanTimes(from));
    return propose(gains, matrix, focusOf(from, verdictOf(from, rules)), times, 6, passed);
  });
  return { both: work(made, matrix).both, turn, compile };
}
