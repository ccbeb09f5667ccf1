// Every role that can be drawn, by its name.
import type { SketchBook } from '../sketch.ts';
import { COLLARS } from './collar.ts';
import { flowerColours } from './colour.ts';
import { FLOWER_CLUSTER } from './flower-cluster.ts';
import { FRUIT } from './fruit.ts';
import { LEAF_FEATURES } from './leaf-features.ts';
import { LEAF_SETS } from './leaf-sets.ts';
import { LEAF_OUTLINES } from './leaf-shapes.ts';
import { LEAF_STALKS } from './leaf-stalks.ts';
import { LEAF_FACES } from './leaf-surfaces.ts';
import { floweringMonths } from './month.ts';
import { PLACE_BOOKS } from './place.ts';
import { clusterPostures, spikeGaps } from './posture.ts';
import { saps } from './sap.ts';
import { SIZE_BOOKS } from './sizes.ts';
import { STAND } from './stand.ts';
import { stemForms } from './stem.ts';
import { stemBranchings } from './stem-branching.ts';
import { caneJoints, jointHairs, stemColours, stemFinishes, stemSpots } from './stem-surface.ts';
import { undergrounds } from './underground.ts';
import { WETLAND_STATUS } from './wetland.ts';
import { GROWTH_FORM } from './whole.ts';

const BOOKS: readonly SketchBook[] = [
  GROWTH_FORM,
  STAND,
  WETLAND_STATUS,
  ...PLACE_BOOKS,
  ...SIZE_BOOKS,
  ...LEAF_OUTLINES,
  ...LEAF_FEATURES,
  ...LEAF_FACES,
  ...LEAF_STALKS,
  ...LEAF_SETS,
  ...COLLARS,

  stemForms,
  stemBranchings,
  stemFinishes,
  stemColours,
  stemSpots,
  caneJoints,
  jointHairs,
  clusterPostures,
  FLOWER_CLUSTER,
  FRUIT,
  flowerColours,
  floweringMonths,
  spikeGaps,
  saps,
  undergrounds,
];

/** The book of each role. */
export const SKETCHES: ReadonlyMap<string, SketchBook> = new Map(BOOKS.map((book) => [book.role, book]));
