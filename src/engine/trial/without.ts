// A key without one of its plants.
import { compileMatrix, type Matrix } from '../matrix.ts';

/** The same key with taxon `left` taken out of it; taxa after it move up by one. */
export function without(matrix: Matrix, left: number): Matrix {
  const { spec } = matrix;
  const moved = (t: number) => (t > left ? t - 1 : t);
  return compileMatrix({
    ...spec,
    taxa: spec.taxa.filter((_, t) => t !== left),
    characters: spec.characters.map((character) => ({
      ...character,
      traits: character.traits.filter((_, t) => t !== left),
    })),
    pairs: spec.pairs
      .filter(({ a, b }) => a !== left && b !== left)
      .map((pair) => ({ ...pair, a: moved(pair.a), b: moved(pair.b) })),
  });
}

/** The index in the whole key of a taxon of the key without `left`. */
export const inTheWholeKey = (t: number, left: number | undefined): number =>
  left !== undefined && t >= left ? t + 1 : t;
