// What is about the plant: others of its kind, and what lies below the ground or hangs in the water.
import type { Drawing } from '../../key/index.ts';
import { type Point, smooth } from '../geometry.ts';
import { ring, spine } from './blade.ts';
import { boundsOf, type Pad, type Piece, plain } from './pad.ts';
import type { Site } from './place.ts';

/** Of a drawing of what lies below the ground: the box, and where its ground is (as the drawings of states have it). */
const BELOW = { middle: 48, ground: 18, size: 0.6 };

/** What lies below the ground, from the drawing of its state; not to scale, and never to be dug for. */
export function drawBelow(pad: Pad, drawing: Drawing, [x, y]: Point): void {
  const { middle, ground, size } = BELOW;
  const at = `translate(${x - middle * size} ${y - ground * size}) scale(${size})`;
  for (const [pen, path] of drawing) {
    if (pen === 'ground') continue;
    // Nothing here is what a state is about.
    pad.put('below', pen === 'mark' ? 'face' : pen === 'trace' ? 'line' : pen, path, at);
    if (pen === 'mark') pad.put('below', 'wash-tan', path, at);
  }
  pad.show('underground');
}

/** Roots that hang in the water. */
export function drawHanging(pad: Pad, root: Point): void {
  for (let i = -3; i <= 3; i++) {
    const at = spine(root, 180 - i * 8, 30 - Math.abs(i) * 3, i * 3);
    pad.put('below', 'fine', smooth([at(0), at(0.5), at(1)]));
  }
}

/** Others of its kind behind it: how it grows together. They stand left of `to`. */
export function drawStand(
  pad: Pad,
  stand: string | undefined,
  plant: readonly Piece[],
  { base }: Site,
  to: number,
): void {
  const outline = plant
    .filter(({ group }) => group !== 'flower')
    .flatMap(({ marks }) => marks.filter(([pen]) => pen === 'face').map(([, path]) => plain(path)))
    .join('');
  const bounds = boundsOf([outline]);
  const spots: Readonly<Record<string, readonly (readonly [x: number, size: number])[]>> = {
    'dense-stand': [
      [30, 0.82],
      [66, 0.9],
      [100, 0.86],
      [160, 0.9],
      [194, 0.84],
      [228, 0.78],
    ],
    mat: [
      [34, 0.7],
      [222, 0.66],
    ],
    scattered: [
      [38, 0.62],
      [222, 0.56],
    ],
    clump: [],
    single: [],
  };
  if (stand === undefined) return;
  pad.show('stand');
  for (const [x, wanted] of spots[stand] ?? []) {
    const size = Math.min(
      wanted,
      (x - 4) / Math.max(1, base[0] - bounds[0]),
      (to - x) / Math.max(1, bounds[2] - base[0]),
    );
    if (outline === '' || size < 0.2) continue;
    const [dx, dy] = [x - base[0] * size, base[1] * (1 - size)].map((value) => Math.round(value * 10) / 10);
    pad.put('stand', 'scale', outline, `translate(${dx} ${dy}) scale(${Math.round(size * 100) / 100})`);
  }
  if (stand === 'clump')
    pad.put(
      'stand',
      'tint',
      smooth(
        [
          [base[0] - 34, base[1] + 1],
          [base[0], base[1] - 5],
          [base[0] + 36, base[1] + 1],
          [base[0], base[1] + 4],
        ],
        true,
      ),
    );
  if (stand === 'single') pad.put('stand', 'tint', ring([base[0] + 4, base[1] + 1], 12, 2.5));
}
