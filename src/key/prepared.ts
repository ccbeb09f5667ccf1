// A key made ready for the engine: ids on this side, indices on the other.
import {
  type CharacterSpec,
  compileMatrix,
  GainTable,
  type Matrix,
  type TaxonSpec,
  type TraitSpec,
  USUAL_RATES,
} from '../engine/index.ts';
import { spreadOf } from './range/index.ts';
import type { Character, Effort, Frequency, Key, Part, Taxon, Trait } from './types.ts';

/** What a look costs, in glances (ours). */
export const COST: Readonly<Record<Effort, number>> = { glance: 1, handle: 1.4, measure: 1.8, magnify: 3.5, dig: 10 };
/** How often a part is there to be looked at when somebody stands before the plant (ours); 1 for all others. */
export const THERE: Readonly<Partial<Record<Part, number>>> = { flower: 0.5, fruit: 0.4, sap: 0.3 };
/** How much each frequency weighs against the others of a trait (ours). */
export const SHARE: Readonly<Record<Frequency, number>> = { usually: 1, sometimes: 0.25, rarely: 0.05 };
/** Prior weights of abundance (ours). */
export const ABUNDANCE: Readonly<Record<Taxon['abundance'], number>> = { common: 3, occasional: 1.5, rare: 1 };

/** Of the plants outside a key, how many resemble one inside, and how often such a one differs in a character (ours). */
export const KIN = { share: 0.4, differs: 0.35 };

/** A key with its compiled matrix; made once, shared by everything that asks of the key. */
export interface PreparedKey {
  readonly key: Key;
  readonly matrix: Matrix;
  readonly gains: GainTable;
  readonly characterIndex: ReadonlyMap<string, number>;
  readonly taxonIndex: ReadonlyMap<string, number>;
}

export interface Reading {
  /**
   * Id of a character -> share of readings that are wrong, instead of the key's own; more than 0, less than 1. How much
   * of it can be told apart from guessing is the engine's affair, as of the key's own shares.
   */
  readonly misread?: ReadonlyMap<string, number>;
}

/** @throws RangeError for a character that the key does not have, and for what is no such share */
export function prepareKey(key: Key, { misread }: Reading = {}): PreparedKey {
  const taxonIndex = new Map(key.taxa.map((taxon, t) => [taxon.id, t]));
  const characterIndex = new Map(key.characters.map((c, i) => [c.id, i]));
  for (const [id, share] of misread ?? [])
    if (!characterIndex.has(id) || !(share > 0 && share < 1)) throw new RangeError(`misread ${id} ${share}`);
  const matrix = compileMatrix({
    taxa: key.taxa.map(taxonSpec),
    characters: key.characters.map((character) => characterSpec(key, character, misread?.get(character.id))),
    pairs: key.lookalikes.map(({ taxa: [a, b], needs }) => ({
      a: taxonIndex.get(a) as number,
      b: taxonIndex.get(b) as number,
      needs,
    })),
    outsidePrior: key.outsidePrior,
    kin: KIN,
    rates: USUAL_RATES,
  });
  return { key, matrix, gains: new GainTable(matrix), taxonIndex, characterIndex };
}

const taxonSpec = (taxon: Taxon): TaxonSpec => ({
  id: taxon.id,
  weight: ABUNDANCE[taxon.abundance],
  native: taxon.status === 'native',
  concern: taxon.status === 'invasive',
});

function characterSpec(key: Key, character: Character, misread = character.misread): CharacterSpec {
  const index = new Map(character.states.map((state, s) => [state.id, s]));
  return {
    id: character.id,
    kind: character.kind,
    states: character.states.map((state) => state.id),
    misread,
    mixups: character.mixups.map(({ states: [a, b], share }) => ({
      a: index.get(a) as number,
      b: index.get(b) as number,
      share,
    })),
    cost: COST[character.effort] / (THERE[character.part] ?? 1),
    // Digging is never proposed: it loosens the bank and spreads some of these plants.
    proposed: character.asked && character.effort !== 'dig',
    months: character.months,
    ...(character.kind === 'measure'
      ? { bounds: character.states.flatMap((state) => (state.to === undefined ? [] : [state.to])) }
      : {}),
    traits: key.taxa.map((taxon) => traitSpec(character, index, taxon)),
  };
}

function traitSpec(character: Character, index: ReadonlyMap<string, number>, taxon: Taxon): TraitSpec | undefined {
  if (!mayApply(character, taxon)) return { kind: 'absent' };
  const trait = taxon.traits.get(character.id);
  if (trait === undefined) return undefined;
  if (trait.kind === 'not-applicable') return { kind: 'absent' };
  if (trait.kind === 'range') return { kind: 'range', ...spreadOf(trait.range, character.unit) };
  const p = character.states.map(() => 0);
  for (const { state, how } of trait.states) p[index.get(state) as number] = SHARE[how];
  const total = p.reduce((a, b) => a + b, 0);
  return { kind: 'states', p: p.map((x) => x / total) };
}

/** A character that applies only to some plants does not apply to a taxon known never to be one of them. */
function mayApply(character: Character, taxon: Taxon): boolean {
  if (character.applies === undefined) return true;
  const other: Trait | undefined = taxon.traits.get(character.applies.character);
  if (other === undefined) return true;
  const wanted = character.applies.states;
  return other.kind === 'states' && other.states.some(({ state }) => wanted.includes(state));
}
