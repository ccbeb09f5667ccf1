// What the engine is given: plain data, already checked. The key's compile step makes it; so may anyone else.

/** What is known of one character of one taxon; `undefined` in a list of traits means unknown. */
export type TraitSpec =
  /** Probability of each state, summing to 1, in the order of the character's states. */
  | { readonly kind: 'states'; readonly p: readonly number[] }
  /** The usual range (central 90 %) and its rare extremes, all > 0, in the character's unit. */
  | {
      readonly kind: 'range';
      readonly low: number;
      readonly high: number;
      readonly min?: number;
      readonly max?: number;
    }
  /** The character means nothing for this taxon. */
  | { readonly kind: 'absent' };

export interface CharacterSpec {
  readonly id: string;
  readonly kind: 'choice' | 'scale' | 'measure';
  readonly states: readonly string[];
  /** Measures: inner bounds between the classes, ascending, one fewer than the states. */
  readonly bounds?: readonly number[];
  /** Share of readings that are wrong for the usual observer, 0 (golden tables only) to below 1. */
  readonly misread: number;
  /** Of the misreadings of either state, this share goes to the other; what is left over goes to the rest. */
  readonly mixups?: readonly { readonly a: number; readonly b: number; readonly share: number }[];
  /** What it costs to look, in glances. */
  readonly cost: number;
  /** False: may be answered, is never proposed (unsafe to look, or a fact that is only looked up). */
  readonly proposed: boolean;
  /** Months 1..12 in which it can be seen; all when absent. */
  readonly months?: readonly number[];
  /** One for each taxon. */
  readonly traits: readonly (TraitSpec | undefined)[];
}

export interface TaxonSpec {
  readonly id: string;
  /** Relative prior weight, > 0. */
  readonly weight: number;
  readonly native: boolean;
  /** A plant of concern. */
  readonly concern: boolean;
}

/** Two taxa (by index) taken for one another; `needs` = how many telling answers must stand between them. */
export interface PairSpec {
  readonly a: number;
  readonly b: number;
  readonly needs: number;
}

/** How many times the usual rate of misreading an observer may have, and how likely each is beforehand. */
export interface RateSpec {
  readonly times: number;
  readonly prior: number;
}

export interface MatrixSpec {
  readonly taxa: readonly TaxonSpec[];
  readonly characters: readonly CharacterSpec[];
  readonly pairs: readonly PairSpec[];
  /** Prior probability of `not in this key`; 0 leaves that hypothesis out of every result. */
  readonly outsidePrior: number;
  /**
   * Of that, the `share` held by plants that resemble one of the key's: each character has a chance of `differs` to be
   * anything instead of what the plant in the key shows. Without it a plant outside is like none in the key.
   */
  readonly kin?: { readonly share: number; readonly differs: number };
  readonly rates: readonly RateSpec[];
}

/** Half, usual, twice and three times the usual slips; the weights are ours, the usual rate weighing most. */
export const USUAL_RATES: readonly RateSpec[] = Object.freeze([
  { times: 0.5, prior: 0.2 },
  { times: 1, prior: 0.45 },
  { times: 2, prior: 0.25 },
  { times: 3, prior: 0.1 },
]);

/** How sure a person is of one answer, and how many times the usual slips that stands for (ours). */
export const SURENESS = Object.freeze({ sure: 1, think: 1.75, guess: 3 });
export type Sureness = keyof typeof SURENESS;

/** What a person says of one character (by index). A skipped character is no answer and costs nothing. */
export type Answer =
  | { readonly character: number; readonly states: readonly number[]; readonly sureness: Sureness }
  | { readonly character: number; readonly value: number; readonly sureness: Sureness };

/** Thrown when the engine is handed what it cannot compute with: a fault of the caller, never of a visitor. */
export class EngineError extends Error {
  override readonly name = 'EngineError';
}
