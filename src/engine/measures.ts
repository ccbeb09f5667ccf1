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

/** A size that any plant might have: spread over all classes of the character, so that a slip of the pen excludes nothing. */
function anySize(character: CharacterSpec): { low: number; high: number } {
  const bounds = character.bounds ?? [1];
  return { low: (bounds[0] as number) / 3, high: (bounds[bounds.length - 1] as number) * 3 };
}

/** Density of a typed size under what a range says and under no knowledge at all, per unit of ln(size). */
export function sizeDensity(
  character: CharacterSpec,
  value: number,
): { any: number; of: (range: RangeSpec) => number } {
  return {
    any: twoPieceDensity(twoPiece(anySize(character), EYE), value),
    of: (range) => twoPieceDensity(twoPiece(range, EYE), value),
  };
}
