// How often a character is misread, learned from readings of plants whose name is known.
import { characterOf, evidenceOf, likelihoodOf } from '../likelihood.ts';
import type { Matrix } from '../matrix.ts';
import { slipTable } from '../slips.ts';
import { type Answer, SURENESS } from '../spec.ts';
import { betaQuantile } from './beta.ts';

/** One answer about a plant that proved to be `taxon` (index), from an observer with `times` the usual slips. */
export interface KnownReading {
  readonly taxon: number;
  readonly times: number;
  readonly answer: Answer;
  /** State (index) that this plant showed, where that is known, as of a drawn specimen: then a slip is seen. */
  readonly shown?: number;
}

export interface LearnedRate {
  /** Index of the character. */
  readonly character: number;
  readonly readings: number;
  /** Expected number of misreadings among them. */
  readonly misread: number;
  /** The key's own rate, and the posterior mean with its central 95 %. */
  readonly before: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export interface SeenMixup {
  readonly character: number;
  /** States by index: what the plant showed, and what was said. */
  readonly shown: number;
  readonly said: number;
  /** Expected number. */
  readonly count: number;
}

/** So many readings is the key's own rate worth (ours). */
export const USUAL_WEIGHT = 20;

/** Whether a reading tells anything of slips: something is known of the plant, and the answer leaves something out. */
export function tells(matrix: Matrix, { taxon, answer }: KnownReading): boolean {
  const character = characterOf(matrix, answer.character);
  const trait = character.traits[taxon];
  if (trait === undefined || trait.kind === 'absent') return false;
  return 'value' in answer ? trait.kind === 'range' : new Set(answer.states).size < character.states.length;
}

interface Weighed {
  readonly right: number;
  readonly slipped: number;
  /** How many times the usual slips: the observer's and those of the stated sureness. */
  readonly times: number;
}

/** Probability that a reading slipped, by Bayes' rule, at a usual rate of `rate` held to `cap`. */
function slippedAt({ right, slipped, times }: Weighed, rate: number, cap: number): number {
  const e = Math.min(cap, rate * times);
  const both = (1 - e) * right + e * slipped;
  return both > 0 ? (e * slipped) / both : 0;
}

function weigh(matrix: Matrix, { taxon, answer, times, shown }: KnownReading): Weighed {
  if (shown !== undefined && !('value' in answer)) {
    const right = answer.states.includes(shown) ? 1 : 0;
    return { right, slipped: 1 - right, times: times * SURENESS[answer.sureness] };
  }
  const evidence = evidenceOf(matrix, answer);
  const profile = evidence.of[taxon] as number;
  const right = likelihoodOf(evidence, profile, 0);
  return { right, slipped: likelihoodOf(evidence, profile, 1), times: times * SURENESS[answer.sureness] };
}

const MOST_ROUNDS = 1000;
const SAME = 1e-13;

/**
 * The rate of one character. Whether a reading slipped is not seen, so its probability w is counted, and the rate and the
 * counts are made to agree by repeating both steps: A. P. Dempster, N. M. Laird, D. B. Rubin (1977), J. R. Stat. Soc. B 39:
 * 1-38 (from memory). With a prior of `weight` readings at the key's rate, Beta(a, b), what follows is
 * Beta(a + sum of w, b + sum of k (1 - w)): k is how many times the usual slips a reading has, so that a right one of
 * somebody who slips half as often says half as much, as (1 - k e) is nearly (1 - e)^k (ours). The weight of both is
 * cut by the share of information that is missing since w is not 0 or 1: T. A. Louis (1982), J. R. Stat. Soc. B 44:
 * 226-233 (from memory).
 */
function learnOne(matrix: Matrix, character: number, readings: readonly KnownReading[], weight: number): LearnedRate {
  const before = characterOf(matrix, character).misread;
  const cap = matrix.cap[character] as number;
  const weighed = readings.map((reading) => weigh(matrix, reading));
  let mean = before;
  let misread = 0;
  let total = weight;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    misread = 0;
    let right = 0;
    for (const one of weighed) {
      const w = slippedAt(one, mean, cap);
      misread += w;
      right += one.times * (1 - w);
    }
    total = weight + misread + right;
    const next = (weight * before + misread) / total;
    const done = Math.abs(next - mean) < SAME;
    mean = next;
    if (done) break;
  }
  const missing = weighed.reduce((sum, one) => {
    const w = slippedAt(one, mean, cap);
    return sum + w * (1 - w);
  }, 0);
  const known = mean > 0 && mean < 1 ? Math.max(weight, total - missing / (mean * (1 - mean))) : total;
  const [a, b] = [known * mean, known * (1 - mean)];
  const at = (p: number) => (a > 0 && b > 0 ? betaQuantile(p, a, b) : mean);
  return { character, readings: readings.length, misread, before, mean, low: at(0.025), high: at(0.975) };
}

/** Readings of one character together; those that tell nothing are left out. */
function byCharacter(matrix: Matrix, readings: readonly KnownReading[]): Map<number, KnownReading[]> {
  const groups = new Map<number, KnownReading[]>();
  for (const reading of readings) {
    if (!tells(matrix, reading)) continue;
    const group = groups.get(reading.answer.character);
    if (group) group.push(reading);
    else groups.set(reading.answer.character, [reading]);
  }
  return groups;
}

/**
 * What the readings say of every character that was read, in the order of the characters. `weight`: how many readings the
 * key's own rates are worth, above 0. The order of the readings moves nothing but the last bits.
 */
export function learnRates(
  matrix: Matrix,
  readings: readonly KnownReading[],
  weight: number = USUAL_WEIGHT,
): LearnedRate[] {
  return [...byCharacter(matrix, readings)]
    .sort(([a], [b]) => a - b)
    .map(([character, group]) => learnOne(matrix, character, group, weight));
}

/**
 * The expected number of times that one state was said for another, most first. `rates` are those that were learned. An
 * answer of several states is shared out by how likely each is to have been said; typed sizes say no state.
 */
export function mixupsSeen(
  matrix: Matrix,
  readings: readonly KnownReading[],
  rates: readonly LearnedRate[],
): SeenMixup[] {
  const seen: SeenMixup[] = [];
  const groups = byCharacter(matrix, readings);
  for (const { character, mean } of rates) {
    const table = slipTable(characterOf(matrix, character));
    const S = table.length;
    const counts = new Array<number>(S * S).fill(0);
    const first = matrix.firstRow[character] as number;
    for (const reading of groups.get(character) ?? []) {
      const { answer, taxon } = reading;
      if ('value' in answer) continue;
      const w = slippedAt(weigh(matrix, reading), mean, matrix.cap[character] as number);
      const showing = (s: number) =>
        reading.shown === undefined
          ? (matrix.truth[(first + s) * matrix.hypotheses + taxon] as number)
          : Number(s === reading.shown);
      const pairs = answer.states.flatMap((said) =>
        table.map((row, shown) => ({ at: shown * S + said, p: showing(shown) * (row[said] as number) })),
      );
      const all = pairs.reduce((sum, { p }) => sum + p, 0);
      if (all > 0) for (const { at, p } of pairs) counts[at] = (counts[at] as number) + (w * p) / all;
    }
    counts.forEach((count, at) => {
      if (count > 0) seen.push({ character, shown: Math.floor(at / S), said: at % S, count });
    });
  }
  return seen.sort((a, b) => b.count - a.count || a.character - b.character || a.shown - b.shown || a.said - b.said);
}
