// What a trial knows of the plants themselves, and of people before them, beyond what the engine is told.
import type { Matrix } from '../matrix.ts';

/** The world in which plants are met. Lists run over the characters of the matrix. */
export interface Nature {
  /** All plants that may be met, and what they show. */
  readonly matrix: Matrix;
  /** Name of the part each character looks at: answers about one part may hang together. */
  readonly parts: readonly string[];
  /** True where a character is a length, which halves on a dwarfed plant. */
  readonly lengths: readonly boolean[];
  /** Chance that a person before the plant can tell at all, 0 to 1: a hand lens is needed, nothing tears open. */
  readonly tellable: readonly number[];
  /**
   * Chance that the plant shows the part in a month (1 to 12) at all. Characters of one `organ` are there or missing
   * together; those without are always there.
   */
  readonly organs: readonly (string | undefined)[];
  readonly present: (character: number, taxon: number, month: number) => number;
  /** The character whose twelve states are the months: what is seen of it is the month in which one looks. */
  readonly season?: number;
}
