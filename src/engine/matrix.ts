// One compiled matrix per key: typed arrays that every later step only multiplies and adds.
import { classMass } from './measures.ts';
import { type Profiles, profilesOf } from './profiles.ts';
import { slipCap, slipTable } from './slips.ts';
import { type CharacterSpec, EngineError, type MatrixSpec, type TraitSpec } from './spec.ts';

/**
 * T taxa and, last, the hypothesis `not in this key`: H = T + 1 columns. Each state of each character is a row of H
 * numbers. What a person reports of a plant is linear in the rate of slips e:
 * P(report | taxon) = (1 - e) truth + e slip.
 */
export interface Matrix {
  readonly spec: MatrixSpec;
  readonly hypotheses: number;
  /** Index of `not in this key` (= number of taxa). */
  readonly outside: number;
  /** Natural logarithm of the prior of each hypothesis, length H. */
  readonly logPrior: Float64Array;
  /** First row of each character, and the number of all rows at the end: length C + 1. */
  readonly firstRow: Int32Array;
  /** P(state | hypothesis), rows x H. */
  readonly truth: Float64Array;
  /** P(state reported | hypothesis, the reading slipped), rows x H. */
  readonly slip: Float64Array;
  /** Highest rate of slips that makes sense of each character: beyond it a reading would speak against itself. */
  readonly cap: Float64Array;
  /** 1 where the character applies to the taxon (unknown counts as applying), C x T. */
  readonly applies: Uint8Array;
  /** One for each character: which hypotheses show the same of it. */
  readonly profiles: readonly Profiles[];
}

/** Compiles a specification. @throws EngineError when it contradicts itself. */
export function compileMatrix(spec: MatrixSpec): Matrix {
  const T = spec.taxa.length;
  const H = T + 1;
  const C = spec.characters.length;
  if (T === 0) throw new EngineError('a matrix needs at least one taxon');
  const firstRow = new Int32Array(C + 1);
  spec.characters.forEach((c, i) => {
    firstRow[i + 1] = (firstRow[i] as number) + c.states.length;
  });
  const rows = firstRow[C] as number;
  const truth = new Float64Array(rows * H);
  const slip = new Float64Array(rows * H);
  const cap = new Float64Array(C);
  const applies = new Uint8Array(C * T);
  const prior = priors(spec);
  const profiles = spec.characters.map((character, c): Profiles => {
    if (character.traits.length !== T)
      throw new EngineError(`${character.id}: ${character.traits.length} traits for ${T} taxa`);
    const table = slipTable(character);
    cap[c] = slipCap(table);
    const alike = profilesOf(character.traits);
    // The last profile is that of `not in this key`.
    const shown = Array.from(alike.sample.subarray(0, -1), (t) => profile(character, character.traits[t]));
    const background = mean(shown, alike, prior, character.states.length);
    const put = (g: number, p: readonly number[], reading: readonly number[]) => {
      for (let k = alike.first[g] as number; k < (alike.first[g + 1] as number); k++)
        for (let s = 0, i = (firstRow[c] as number) * H + (alike.members[k] as number); s < p.length; s++, i += H) {
          truth[i] = p[s] as number;
          slip[i] = reading[s] as number;
        }
    };
    const misreading = (p: readonly number[]) =>
      p.map((_, to) => p.reduce((sum, q, from) => sum + q * (table[from]?.[to] ?? 0), 0));
    // Where a character means nothing, a report of it is noise.
    const even = character.states.map(() => 1 / character.states.length);
    const anything = outsideProfile(background);
    shown.forEach((p, g) => {
      if (p === 'absent') put(g, even, even);
      else put(g, p ?? background, misreading(p ?? background));
    });
    put(shown.length, anything, misreading(anything));
    for (let t = 0; t < T; t++) applies[c * T + t] = alike.of[t] === alike.absent ? 0 : 1;
    return alike;
  });
  return {
    spec,
    hypotheses: H,
    outside: T,
    logPrior: prior.map(Math.log),
    firstRow,
    truth,
    slip,
    cap,
    applies,
    profiles,
  };
}

/** P(state | taxon) of one trait; the word `absent` and undefined (unknown) pass through. */
function profile(character: CharacterSpec, trait: TraitSpec | undefined): readonly number[] | 'absent' | undefined {
  if (trait === undefined) return undefined;
  if (trait.kind === 'absent') return 'absent';
  if (trait.kind === 'range') return classMass(character, trait);
  const sum = trait.p.reduce((a, b) => a + b, 0);
  if (trait.p.length !== character.states.length || Math.abs(sum - 1) > 1e-9)
    throw new EngineError(`${character.id}: ${trait.p.length} probabilities summing to ${sum}`);
  return trait.p;
}

/** The key's own background: what the plants of which this is known show, weighted by how common they are. */
function mean(
  shown: readonly (readonly number[] | 'absent' | undefined)[],
  { members, first }: Profiles,
  prior: Float64Array,
  S: number,
): number[] {
  const sum = new Array<number>(S).fill(0);
  let total = 0;
  shown.forEach((p, g) => {
    if (p === 'absent' || p === undefined) return;
    let w = 0;
    for (let k = first[g] as number; k < (first[g + 1] as number); k++) w += prior[members[k] as number] as number;
    total += w;
    for (let s = 0; s < S; s++) sum[s] = (sum[s] as number) + w * (p[s] as number);
  });
  return total > 0 ? sum.map((x) => x / total) : sum.map(() => 1 / S);
}

/**
 * What a plant outside the key shows (ours): half the time what plants of the key show; half the time any state alike,
 * or, where the author gave states that no plant of the key shows, one of those, since they are there for such plants.
 */
function outsideProfile(background: readonly number[]): number[] {
  const unshown = background.filter((b) => b === 0).length;
  const other = unshown > 0 ? (b: number) => (b === 0 ? 1 / unshown : 0) : () => 1 / background.length;
  return background.map((b) => (b + other(b)) / 2);
}

function priors(spec: MatrixSpec): Float64Array {
  const total = spec.taxa.reduce((sum, taxon) => sum + taxon.weight, 0);
  if (!(total > 0) || !(spec.outsidePrior >= 0 && spec.outsidePrior < 1))
    throw new EngineError('weights and outsidePrior must make a prior');
  return Float64Array.from([...spec.taxa.map((t) => (t.weight / total) * (1 - spec.outsidePrior)), spec.outsidePrior]);
}
