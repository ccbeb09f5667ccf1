// Every role that can be drawn, by its name.
import type { SketchBook } from '../sketch.ts';
import { flowerColours } from './colour.ts';
import { LEAF_OUTLINES } from './leaf-shapes.ts';
import { floweringMonths } from './month.ts';
import { clusterPostures, spikeGaps } from './posture.ts';
import { saps } from './sap.ts';
import { stemBranchings, stemForms } from './stem.ts';
import { caneJoints, jointHairs, stemColours, stemFinishes, stemSpots } from './stem-surface.ts';
import { undergrounds } from './underground.ts';

const BOOKS: readonly SketchBook[] = [
  ...LEAF_OUTLINES,

  stemForms,
  stemBranchings,
  stemFinishes,
  stemColours,
  stemSpots,
  caneJoints,
  jointHairs,
  clusterPostures,
  flowerColours,
  floweringMonths,
  spikeGaps,
  saps,
  undergrounds,
];

/** The book of each role. */
export const SKETCHES: ReadonlyMap<string, SketchBook> = new Map(BOOKS.map((book) => [book.role, book]));
