// How well every hypothesis explains one answer.
import type { Matrix } from './matrix.ts';
import { sizeDensity } from './measures.ts';
import type { Profiles } from './profiles.ts';
import { slipRate } from './slips.ts';
import { type Answer, type CharacterSpec, EngineError } from './spec.ts';

/**
 * One answer as two columns over the profiles of its character (see Profiles; for a size, every hypothesis is a profile of
 * its own): the likelihood of it when read right and when the reading slipped.
 */
export interface Evidence {
  readonly answer: Answer;
  readonly right: Float64Array;
  readonly slipped: Float64Array;
  /** The place of each hypothesis in them, length H. */
  readonly of: Int32Array;
}

export function characterOf(matrix: Matrix, index: number): CharacterSpec {
  const character = matrix.spec.characters[index];
  if (character === undefined) throw new EngineError(`no character ${index}`);
  return character;
}

/** Gathers the evidence of one answer. Several states ticked mean any of them: their probabilities add up. */
export function evidenceOf(matrix: Matrix, answer: Answer): Evidence {
  return 'value' in answer ? ofNumber(matrix, answer, answer.value) : ofStates(matrix, answer, answer.states);
}

function ofStates(matrix: Matrix, answer: Answer, states: readonly number[]): Evidence {
  const { hypotheses: H, firstRow, truth, slip } = matrix;
  const character = characterOf(matrix, answer.character);
  const { of, sample } = matrix.profiles[answer.character] as Profiles;
  const ticked = new Set(states);
  const right = new Float64Array(sample.length);
  const slipped = new Float64Array(sample.length);
  // Every state ticked says nothing; written out, so that rounding cannot make it say something.
  if (ticked.size === character.states.length) return { answer, right: right.fill(1), slipped: slipped.fill(1), of };
  for (const state of ticked) {
    if (character.states[state] === undefined) throw new EngineError(`${character.id}: no state ${state}`);
    const row = ((firstRow[answer.character] as number) + state) * H;
    for (let g = 0; g < sample.length; g++) {
      const i = row + (sample[g] as number);
      right[g] = (right[g] as number) + (truth[i] as number);
      slipped[g] = (slipped[g] as number) + (slip[i] as number);
    }
  }
  return { answer, right, slipped, of };
}

function ofNumber(matrix: Matrix, answer: Answer, value: number): Evidence {
  const character = characterOf(matrix, answer.character);
  if (character.kind !== 'measure' || !(value > 0 && value < Number.POSITIVE_INFINITY))
    throw new EngineError(`${character.id}: ${value} is not a size`);
  const H = matrix.hypotheses;
  const density = sizeDensity(character, value);
  const right = new Float64Array(H).fill(density.any);
  const slipped = new Float64Array(H).fill(density.any);
  let known = 0;
  let weight = 0;
  character.traits.forEach((trait, t) => {
    if (trait?.kind !== 'range') return;
    right[t] = density.right(trait);
    slipped[t] = density.slipped(trait);
    const prior = Math.exp(matrix.logPrior[t] as number);
    known += prior * (right[t] as number);
    weight += prior;
  });
  const background = weight > 0 ? known / weight : density.any;
  character.traits.forEach((trait, t) => {
    if (trait === undefined) right[t] = background;
  });
  right[matrix.outside] = (background + density.any) / 2;
  return { answer, right, slipped, of: Int32Array.from(right.keys()) };
}

/** The rate of slips of this answer for an observer with `times` the usual rate. */
export function rateOf(matrix: Matrix, answer: Answer, times: number): number {
  return slipRate(
    characterOf(matrix, answer.character).misread,
    matrix.cap[answer.character] as number,
    times,
    answer.sureness,
  );
}

/** P(answer | profile) at one rate of slips. */
export function likelihoodOf({ right, slipped }: Evidence, profile: number, rate: number): number {
  return (1 - rate) * (right[profile] as number) + rate * (slipped[profile] as number);
}

/** The same for all hypotheses: gives P(answer | hypothesis) by its index. */
export function likelihoodAt(evidence: Evidence, rate: number): (hypothesis: number) => number {
  return (hypothesis) => likelihoodOf(evidence, evidence.of[hypothesis] as number, rate);
}
