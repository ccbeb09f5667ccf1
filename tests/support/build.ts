// Small matrices written out by hand, with everything that a test does not care about filled in.
import {
  type Answer,
  type CharacterSpec,
  compileMatrix,
  type Matrix,
  type MatrixSpec,
  type Sureness,
  type TaxonSpec,
  type TraitSpec,
  type VerdictRules,
} from '../../src/engine/index.ts';

export const native = (id: string, weight = 1): TaxonSpec => ({ id, weight, native: true, concern: false });
export const invader = (id: string, weight = 1): TaxonSpec => ({ id, weight, native: false, concern: true });

/** One trait: shares of the states, a range as [low, high] in an object, the word `absent`, or undefined for unknown. */
export type Trait =
  | readonly number[]
  | { low: number; high: number; min?: number; max?: number }
  | 'absent'
  | undefined;

const traitOf = (trait: Trait): TraitSpec | undefined => {
  if (trait === undefined) return undefined;
  if (trait === 'absent') return { kind: 'absent' };
  return 'low' in trait ? { kind: 'range', ...trait } : { kind: 'states', p: trait };
};

/** A character of which taxon number i shows `traits[i]`; as many states as the first list of shares, or as bounds need. */
export function character(id: string, traits: readonly Trait[], more: Partial<CharacterSpec> = {}): CharacterSpec {
  const shares = traits.find((trait) => Array.isArray(trait)) as readonly number[] | undefined;
  const count = more.bounds === undefined ? (shares?.length ?? 2) : more.bounds.length + 1;
  return {
    id,
    kind: more.bounds === undefined ? 'choice' : 'measure',
    states: Array.from({ length: count }, (_, s) => `${id} ${s}`),
    misread: 0.1,
    cost: 1,
    proposed: true,
    traits: traits.map(traitOf),
    ...more,
  };
}

/** A yes/no character: what each taxon always shows, as 0 or 1. */
export const yesNo = (id: string, shown: readonly (0 | 1)[], more: Partial<CharacterSpec> = {}): CharacterSpec =>
  character(
    id,
    shown.map((s) => (s === 0 ? [1, 0] : [0, 1])),
    more,
  );

/** One usual rate of slips and no `not in this key`, unless told otherwise. */
export const specOf = (
  taxa: readonly TaxonSpec[],
  characters: readonly CharacterSpec[],
  more: Partial<MatrixSpec> = {},
): MatrixSpec => ({ taxa, characters, pairs: [], outsidePrior: 0, rates: [{ times: 1, prior: 1 }], ...more });

export const matrixOf = (...parts: Parameters<typeof specOf>): Matrix => compileMatrix(specOf(...parts));

export const say = (character: number, states: number | readonly number[], sureness: Sureness = 'sure'): Answer => ({
  character,
  states: [states].flat(),
  sureness,
});

export const type = (character: number, value: number, sureness: Sureness = 'sure'): Answer => ({
  character,
  value,
  sureness,
});

/** Thresholds for made-up matrices: the design's own, whatever a key of the repository may state. */
export const rules: VerdictRules = {
  settled: 0.95,
  leaning: 0.7,
  outside: 0.5,
  nativesSettled: 0.01,
  nativesLeaning: 0.2,
  telling: 3,
};
