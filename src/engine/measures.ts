// Sizes: the share of a taxon's plants in each class of size, and the likelihood of a typed number.
import { twoPiece, twoPieceBelow, twoPieceDensity } from './normal.ts';
import { type CharacterSpec, EngineError, type TraitSpec } from './spec.ts';

type RangeSpec = Extract<TraitSpec, { kind: 'range' }>;

/** A person judges a size at the bank to about 15 % (ours: standard deviation of its logarithm). */
export const EYE = 0.15;

/** Shares of the classes of `character`, summing to 1. */
export function classMass(character: CharacterSpec, range: RangeSpec): number[] {
  const { bounds } = character;
  if (bounds === undefined || bounds.length !== character.states.length - 1)
    throw new EngineError(`${character.id}: classes need bounds`);
  const d = twoPiece(range, EYE);
  const below = [0, ...bounds.map((b) => twoPieceBelow(d, b)), 1];
  return character.states.map((_, s) => (below[s + 1] as number) - (below[s] as number));
}

/** A slip of size: a good half more or less than it is (ours: standard deviation of the logarithm). */
const SLIP = Math.log(1.6);
/** One slip in twenty is of another kind altogether: the wrong organ, the wrong unit (ours). */
const WILD = 0.05;
/** Keeps a size beyond all sense from excluding any plant: such a slip is this dense at the least (ours). */
const FLOOR = 1e-4;

/** A size that any plant might have: spread over all classes of the character. */
function anySize(character: CharacterSpec): { low: number; high: number } {
  const bounds = character.bounds ?? [1];
  return { low: (bounds[0] as number) / 3, high: (bounds[bounds.length - 1] as number) * 3 };
}

/** Densities of a typed size, per unit of ln(size). */
export interface SizeDensity {
  /** Under no knowledge at all. */
  readonly any: number;
  /** Of plants with this range, read right. */
  right(range: RangeSpec): number;
  /** The same, misread. */
  slipped(range: RangeSpec): number;
}

export function sizeDensity(character: CharacterSpec, value: number): SizeDensity {
  const any = Math.max(FLOOR, twoPieceDensity(twoPiece(anySize(character), EYE), value));
  return {
    any,
    right: (range) => twoPieceDensity(twoPiece(range, EYE), value),
    slipped: (range) => (1 - WILD) * twoPieceDensity(twoPiece(range, SLIP), value) + WILD * any,
  };
}
