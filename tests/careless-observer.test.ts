// A check on our own design, not against anything outside it: does inferring the observer's rate of slips keep a careless
// observer from having natives settled as invaders? The matrix and the observers are made up; only the direction counts.
import { expect, test } from 'vitest';
import {
  type Answer,
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
} from '../src/engine/index.ts';
import { slipTable } from '../src/engine/slips.ts';
import { character, invader, native, rules, specOf } from './support/build.ts';
import { drawing } from './support/drawing.ts';

const PAIRS = 15;
const CHARACTERS = 24;
const PLANTS = 250;
const SEEDS = [1, 2, 3];
const MOST_QUESTIONS = 16;
const CARELESS = 2;

/** Natives, each with an invader that resembles it: the same in two characters of three. */
function madeUp(draw: () => number): MatrixSpec {
  const taxa = Array.from({ length: PAIRS }, (_, i) => [native(`native ${i}`), invader(`invader ${i}`)]).flat();
  const characters = Array.from({ length: CHARACTERS }, (_, c) => {
    const states = 2 + Math.floor(draw() * 3);
    const trait = () => {
      const usual = Math.floor(draw() * states);
      const sometimes = draw() < 0.3 ? Math.floor(draw() * states) : usual;
      return Array.from({ length: states }, (__, s) => (s === usual ? 0.8 : 0) + (s === sometimes ? 0.2 : 0));
    };
    const traits = Array.from({ length: PAIRS }, () => {
      const ofNative = trait();
      return [ofNative, draw() < 2 / 3 ? ofNative : trait()];
    }).flat();
    return character(`c${c}`, traits, { misread: 0.08 + 0.17 * draw() });
  });
  const pairs = Array.from({ length: PAIRS }, (_, i) => ({ a: 2 * i, b: 2 * i + 1, needs: 1 }));
  return specOf(taxa, characters, { pairs, outsidePrior: 0.05 });
}

const pick = (shares: readonly number[], at: number) => {
  let left = at;
  const found = shares.findIndex((share) => {
    left -= share;
    return left < 0;
  });
  return found < 0 ? shares.length - 1 : found;
};

/** What a careless observer reads of one plant, character by character, whatever is asked first. */
function readings(spec: MatrixSpec, taxon: number, draw: () => number): number[] {
  return spec.characters.map((one) => {
    const trait = one.traits[taxon] as { p: readonly number[] };
    const truth = pick(trait.p, draw());
    const slips = draw() < Math.min(0.9, one.misread * CARELESS);
    const astray = pick(slipTable(one)[truth] as readonly number[], draw());
    return slips ? astray : truth;
  });
}

/** Asks what the engine proposes until it settles or runs out of patience. */
function settled(matrix: Matrix, gains: GainTable, read: readonly number[]): number | undefined {
  const answers: Answer[] = [];
  for (;;) {
    const from = posterior(matrix, answers);
    const verdict = verdictOf(from, rules);
    if (verdict.kind === 'settled') return verdict.taxa[0];
    if (answers.length === MOST_QUESTIONS) return undefined;
    const passed = new Set(answers.map((answer) => answer.character));
    const times = nearestTimes(matrix, 1, meanTimes(from));
    const [next] = propose(gains, matrix, focusOf(from, verdict), times, 6, passed);
    if (next === undefined) return undefined;
    answers.push({ character: next.character, states: [read[next.character] as number], sureness: 'sure' });
  }
}

/** Of the natives of one made-up matrix: how many are settled as an invader, and how many as what they are. */
function tally(seed: number, rates: MatrixSpec['rates']): { asInvader: number; right: number } {
  const draw = drawing(seed);
  const spec = madeUp(draw);
  const matrix = compileMatrix({ ...spec, rates });
  const gains = new GainTable(matrix);
  let asInvader = 0;
  let right = 0;
  for (let plant = 0; plant < PLANTS; plant++) {
    const taxon = 2 * Math.floor(draw() * PAIRS);
    const named = settled(matrix, gains, readings(spec, taxon, draw));
    if (named === taxon) right++;
    else if (named !== undefined && spec.taxa[named]?.concern) asInvader++;
  }
  return { asInvader, right };
}

test('an observer who slips at twice the usual rate has fewer natives settled as invaders when the rate is inferred', () => {
  const sum = (rates: MatrixSpec['rates']) =>
    SEEDS.map((seed) => tally(seed, rates)).reduce((a, b) => ({
      asInvader: a.asInvader + b.asInvader,
      right: a.right + b.right,
    }));
  const assumed = sum([{ times: 1, prior: 1 }]);
  const inferred = sum(USUAL_RATES);
  // There is something to be kept from, and it is not kept from by never settling anything.
  expect(assumed.asInvader).toBeGreaterThan(10);
  expect(inferred.right).toBeGreaterThan((SEEDS.length * PLANTS) / 4);
  expect(inferred.asInvader).toBeLessThan(assumed.asInvader);
}, 60_000);
