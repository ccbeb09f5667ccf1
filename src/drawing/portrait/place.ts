// Where the plant stands: the ground, the water, and someone beside it who tells its size.
import { handOf, MEASURES, personOf } from '../figures.ts';
import { type Point, smooth, straight } from '../geometry.ts';
import type { Pad } from './pad.ts';

export const WIDTH = 320;
export const HEIGHT = 374;
/** Where someone stands: dry ground. */
export const GROUND = 288;
/** Left of this there is only the place. */
export const EDGE = 8;

/** Where the plant's base is, and the bed below it, if it stands in water. */
export interface Site {
  readonly base: Point;
  readonly bed: Point;
  readonly water: number | undefined;
}

/** x of the plant. */
export const MIDDLE = 128;

/** By where it grows; `rises` for a plant that floats, or whose leaves do: it begins at the water, not at the bed. */
export function siteOf(habitat: string | undefined, rises: boolean): Site {
  const at = (y: number): Point => [MIDDLE, y];
  switch (habitat) {
    case 'open-water':
      return { base: at(292), bed: at(326), water: 292 };
    case 'standing-water':
      return { base: at(rises ? 291 : 306), bed: at(rises ? 326 : 306), water: 291 };
    case 'waterline':
      return { base: at(291), bed: at(291), water: 296 };
    default:
      return { base: at(GROUND), bed: at(GROUND), water: habitat === 'moist-bank' ? 304 : undefined };
  }
}

export function drawSite(pad: Pad, habitat: string | undefined, { bed, water }: Site): void {
  const bank: Readonly<Record<string, readonly Point[]>> = {
    'open-water': [
      [4, 328],
      [90, 329],
      [170, 326],
      [222, 313],
      [248, 296],
      [262, GROUND],
      [316, GROUND - 1],
    ],
    'standing-water': [
      [4, bed[1] + 3],
      [70, bed[1] + 1],
      [128, bed[1]],
      [196, bed[1] - 1],
      [238, 297],
      [258, GROUND],
      [316, GROUND - 1],
    ],
    waterline: [
      [4, 330],
      [44, 324],
      [92, 302],
      [128, 291],
      [160, GROUND],
      [220, GROUND - 1],
      [316, GROUND],
    ],
    'moist-bank': [
      [4, 324],
      [22, 316],
      [42, 297],
      [66, GROUND + 1],
      [128, GROUND],
      [220, GROUND - 1],
      [316, GROUND],
    ],
    'dry-ground': [
      [4, GROUND + 1],
      [70, GROUND - 1],
      [128, GROUND],
      [210, GROUND + 1],
      [316, GROUND],
    ],
  };
  const line = bank[habitat ?? ''] ?? (bank['dry-ground'] as readonly Point[]);
  if (habitat !== undefined) pad.show('habitat');
  pad.put('place', 'ground', smooth(line));
  if (water !== undefined) {
    const shore =
      habitat === 'open-water' ? 250 : habitat === 'standing-water' ? 243 : habitat === 'waterline' ? 106 : 32;
    for (const [i, y] of [water, water + 9, water + 18].entries()) {
      const to = shore - i * (shore > 200 ? 9 : 14);
      const points: Point[] = Array.from({ length: 9 }, (_, k) => [4 + ((to - 4) * k) / 8, y + (k % 2 ? 1.4 : -1.2)]);
      if (to > 12 && y < line.reduce((low, [x, deep]) => (x < to ? Math.max(low, deep) : low), 0) - 3)
        pad.put('place', 'water', smooth(points));
    }
  } else {
    for (const [x, y] of [
      [20, 0],
      [52, 1],
      [196, 1],
      [236, 0],
    ] as const)
      pad.put(
        'place',
        'fine',
        straight([
          [x - 3, GROUND + y - 6],
          [x, GROUND + y],
          [x + 3, GROUND + y - 7],
        ]),
      );
  }
}

/** What stands beside the plant, by how tall the plant is, in metres; and how much of the sky it may take (ours). */
export function beside(height: number): {
  readonly thing: 'person' | 'hand';
  readonly metres: number;
  readonly share: number;
} {
  if (height > 0.9) return { thing: 'person', metres: MEASURES.person / 100, share: 0.78 };
  return { thing: 'hand', metres: MEASURES.hand / 100, share: height < 0.16 ? 0.6 : 0.5 };
}

/** What stands beside the plant: its outline, and how far to the left it comes. `metre`: units of the figure for a metre. */
export function besideOf(height: number, metre: number): { readonly path: string; readonly left: number } {
  const { thing, metres } = beside(height);
  const size = metres * metre;
  // As far to the right as it can stand; both reach so many of their lengths to the right and to the left.
  const [of, right, left] = thing === 'person' ? ([personOf, 0.17, 0.17] as const) : ([handOf, 0.39, 0.27] as const);
  const x = WIDTH - 5 - size * right;
  return { path: of(size, [x, GROUND - 1]), left: x - size * left };
}
