// Cover classes: how much of the ground a plant's canopy covers.
import type { CoverClass } from './types.ts';

/** Bounds of the classes of Daubenmire in percent (1959; the table as read in the project's notes on recording). */
export const COVER: Readonly<Record<CoverClass, readonly [from: number, to: number]>> = {
  1: [0, 5],
  2: [5, 25],
  3: [25, 50],
  4: [50, 75],
  5: [75, 95],
  6: [95, 100],
};

/** Percent of the ground that stands for a class: the middle of its bounds, as Daubenmire has it. */
export const middleOf = (id: CoverClass): number => (COVER[id][0] + COVER[id][1]) / 2;
