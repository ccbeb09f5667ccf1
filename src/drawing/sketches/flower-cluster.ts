// The book of flower clusters and seed heads. The stalk enters at (48, 96) and the cluster spans from y = 8 to about
// y = 72, about an upright axis: a portrait sets these drawings on its plants.
import { BLOOMS } from './cluster-blooms.ts';
import { GRASS_HEADS } from './cluster-grasses.ts';
import { SMALL_FLOWERS } from './cluster-small.ts';
import { SPIKES } from './cluster-spikes.ts';
import { FLOWER_ALT } from './flower-alt.ts';
import { bookFrom } from './flower-book.ts';

export const FLOWER_CLUSTER = bookFrom(
  'flower-cluster',
  { ...GRASS_HEADS, ...SPIKES, ...BLOOMS, ...SMALL_FLOWERS },
  FLOWER_ALT,
);
