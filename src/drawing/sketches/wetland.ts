// How often in wetlands: of six places where the plant grows, how many are wet.
import type { Drawing, Mark } from '../../key/index.ts';
import type { Point } from '../geometry.ts';
import type { Sketch } from '../sketch.ts';
import { bookOf, tuft } from './strokes.ts';

/** Places in which the plant grows, and how many of six of them are wet: see the test for the published shares. */
export const WET_OF_SIX = new Map([
  ['obl', 6],
  ['facw', 5],
  ['fac', 3],
  ['facu', 1],
  ['upl', 0],
]);
const SPOTS: readonly Point[] = [
  [18, 40],
  [48, 40],
  [78, 40],
  [18, 84],
  [48, 84],
  [78, 84],
];
const sprig = ([x, y]: Point): string =>
  tuft(
    [x, y],
    [
      [-34, 22],
      [0, 28],
      [34, 22],
    ],
    3,
  );
function places(wet: number): Drawing {
  const [pools, dry] = [SPOTS.slice(0, wet), SPOTS.slice(wet)];
  const pool = ([x, y]: Point): string => `M${x - 13} ${y}q3-6 13-6q10 0 13 6q-3 6-13 6q-10 0-13-6z`;
  return [
    ...(pools.length ? [['mark', pools.map(pool).join('')] as Mark] : []),
    ...(pools.length
      ? [['water', pools.map(([x, y]) => `M${x - 8} ${y + 2}h5M${x + 3} ${y + 2}h5`).join('')] as Mark]
      : []),
    ...(dry.length ? [['ground', dry.map(([x, y]) => `M${x - 12} ${y}q12-3 24 0`).join('')] as Mark] : []),
    ...(dry.length
      ? [['fine', dry.map(([x, y]) => `M${x - 7} ${y + 4}h1M${x} ${y + 3}h1M${x + 6} ${y + 5}h1`).join('')] as Mark]
      : []),
    ['face', SPOTS.map(sprig).join('')],
    ['wash-green', SPOTS.map(sprig).join('')],
  ];
}
const status = (en: string, es: string) => ({
  en: `Six places where the plant grows; ${en}.`,
  es: `Seis lugares donde crece la planta; ${es}.`,
});
const STATUSES = new Map<string, Sketch>([
  ['obl', { drawing: places(6), alt: status('all six are wet', 'los seis son húmedos') }],
  ['facw', { drawing: places(5), alt: status('five are wet and one is dry', 'cinco son húmedos y uno seco') }],
  ['fac', { drawing: places(3), alt: status('three are wet and three are dry', 'tres son húmedos y tres secos') }],
  ['facu', { drawing: places(1), alt: status('one is wet and five are dry', 'uno es húmedo y cinco secos') }],
  ['upl', { drawing: places(0), alt: status('all six are dry', 'los seis son secos') }],
]);

export const WETLAND_STATUS = bookOf('wetland-status', STATUSES);
