// How every hypothesis stands after the answers, with the observer's own rate of slips inferred beside it.
import { type Evidence, evidenceOf, likelihoodOf, rateOf } from './likelihood.ts';
import type { Matrix } from './matrix.ts';
import { type Answer, EngineError } from './spec.ts';

/** The posterior, and the sums behind it, from which the chance of a slip in one answer is read. */
export interface Posterior {
  readonly matrix: Matrix;
  /** How many times a novice's slips this kind of observer is taken to make. */
  readonly observer: number;
  readonly evidence: readonly Evidence[];
  /** P(hypothesis | answers), length H, summing to 1. */
  readonly p: Float64Array;
  /** P(rate | answers), one for each of the matrix's rates. */
  readonly rates: Float64Array;
  /** Logarithms, (rates + 1) x H, not normalised; for the last row see priorJoint. */
  readonly joint: Float64Array;
  /** Logarithm of the likelihood of each answer, (rates + 1) x the profiles of its evidence. */
  readonly terms: readonly Float64Array[];
}

/**
 * Bayes' rule over taxa, `not in this key`, and a few rates of slips:
 * P(t, r | answers) is proportional to P(t) P(r) times the product over the answers of P(answer | t, r).
 * Work: answers x rates x H.
 */
export function posterior(matrix: Matrix, answers: readonly Answer[], observer = 1): Posterior {
  const seen = new Set(answers.map((a) => a.character));
  if (seen.size !== answers.length) throw new EngineError('a character is answered twice');
  const evidence = answers.map((answer) => evidenceOf(matrix, answer));
  const terms = evidence.map((e) => logTerms(matrix, e, observer));
  const joint = priorJoint(matrix);
  terms.forEach((term, k) => {
    add(joint, evidence[k] as Evidence, term);
  });
  return { matrix, observer, evidence, terms, joint, ...marginals(matrix, joint) };
}

/** One answer made ready to be added, so that where the same ones come again and again nothing is reckoned twice. */
export interface ReadyAnswer {
  readonly evidence: Evidence;
  /** As in Posterior.terms. */
  readonly term: Float64Array;
}

export function readyAnswer(matrix: Matrix, answer: Answer, observer = 1): ReadyAnswer {
  const evidence = evidenceOf(matrix, answer);
  return { evidence, term: logTerms(matrix, evidence, observer) };
}

/**
 * The posterior after one more answer, of a character not answered yet, made ready for the same matrix and observer.
 * The same as all answers at once, up to nothing but the order of the sum. Work: rates x H.
 */
export function extended(from: Posterior, { evidence, term }: ReadyAnswer): Posterior {
  const joint = from.joint.slice();
  add(joint, evidence, term);
  return {
    ...from,
    evidence: [...from.evidence, evidence],
    terms: [...from.terms, term],
    joint,
    ...marginals(from.matrix, joint),
  };
}

function add(joint: Float64Array, { of, right }: Evidence, term: Float64Array): void {
  const H = of.length;
  for (let row = 0, first = 0; row < joint.length; row += H, first += right.length)
    for (let h = 0; h < H; h++)
      joint[row + h] = (joint[row + h] as number) + (term[first + (of[h] as number)] as number);
}

/** The observer's mean rate of slips in multiples of a novice's, as the answers so far let it be judged. */
export function meanTimes(of: Posterior): number {
  return of.observer * of.matrix.spec.rates.reduce((sum, rate, r) => sum + rate.times * (of.rates[r] as number), 0);
}

/**
 * Logarithms of the priors, (rates + 1) x H. The last row is the other face of `not in this key`: plants that are not in
 * it but resemble one that is. Its columns are the plants they resemble; all its weight counts as outside.
 */
function priorJoint(matrix: Matrix): Float64Array {
  const { hypotheses: H, outside: T, logPrior, spec } = matrix;
  const kin = spec.kin?.share ?? 0;
  const joint = new Float64Array((spec.rates.length + 1) * H).fill(Number.NEGATIVE_INFINITY);
  spec.rates.forEach((rate, r) => {
    const log = Math.log(rate.prior);
    for (let h = 0; h < H; h++) joint[r * H + h] = log + (logPrior[h] as number);
    joint[r * H + T] = log + (logPrior[T] as number) + Math.log(1 - kin);
  });
  const last = spec.rates.length * H;
  const given = Math.log(kin * spec.outsidePrior) - Math.log(1 - spec.outsidePrior);
  for (let t = 0; t < T; t++) joint[last + t] = given + (logPrior[t] as number);
  return joint;
}

function logTerms(matrix: Matrix, evidence: Evidence, observer: number): Float64Array {
  const { rates, kin } = matrix.spec;
  const P = evidence.right.length;
  const term = new Float64Array((rates.length + 1) * P);
  const put = (row: number, times: number, differs: number) => {
    const rate = rateOf(matrix, evidence.answer, times * observer);
    const anything = differs * likelihoodOf(evidence, evidence.of[matrix.outside] as number, rate);
    for (let g = 0; g < P; g++)
      term[row * P + g] = Math.log((1 - differs) * likelihoodOf(evidence, g, rate) + anything);
  };
  rates.forEach((rate, r) => {
    put(r, rate.times, 0);
  });
  // Without kin that row has no weight, whatever its terms.
  if (kin) put(rates.length, 1, kin.differs);
  return term;
}

/** Its exponential is less than the least double. */
const NOTHING = -746;

function marginals(matrix: Matrix, joint: Float64Array): { p: Float64Array; rates: Float64Array } {
  const { hypotheses: H, outside: T } = matrix;
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < joint.length; i++) if ((joint[i] as number) > top) top = joint[i] as number;
  if (top === Number.NEGATIVE_INFINITY) throw new EngineError('no hypothesis can explain these answers');
  const R = matrix.spec.rates.length;
  const p = new Float64Array(H);
  const rates = new Float64Array(R);
  for (let r = 0; r <= R; r++) {
    let held = 0;
    for (let h = 0, i = r * H; h < H; h++, i++) {
      const log = (joint[i] as number) - top;
      if (log < NOTHING) continue;
      const weight = Math.exp(log);
      held += weight;
      if (r < R) p[h] = (p[h] as number) + weight;
    }
    if (r < R) rates[r] = held;
    else p[T] = (p[T] as number) + held;
  }
  return { p: normalised(p), rates: normalised(rates) };
}

function normalised(weights: Float64Array): Float64Array {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i] as number;
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] as number) / total;
  return weights;
}
