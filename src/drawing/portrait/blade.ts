// Leaves and petals as closed outlines along a bent middle line.
import { add, from, type Point, smooth } from '../geometry.ts';

/** A middle line: where a point lies that is `along` it (0 the start, 1 the end) and `across` units to its right. */
export type Spine = (along: number, across?: number) => Point;

/** From a point in a direction (0 is up, 90 to the right), bending by so many degrees on its way. */
export function spine(start: Point, degrees: number, length: number, bend = 0): Spine {
  const middle = from(start, degrees, length / 2);
  const end = from(middle, degrees + bend, length / 2);
  return (u, across = 0) => {
    const [a, b, c] = [(1 - u) * (1 - u), 2 * u * (1 - u), u * u];
    const x = a * start[0] + b * middle[0] + c * end[0];
    const y = a * start[1] + b * middle[1] + c * end[1];
    const dx = (1 - u) * (middle[0] - start[0]) + u * (end[0] - middle[0]);
    const dy = (1 - u) * (middle[1] - start[1]) + u * (end[1] - middle[1]);
    const size = Math.hypot(dx, dy) || 1;
    return add([x, y], [(-dy / size) * across, (dx / size) * across]);
  };
}

type Half = readonly (readonly [along: number, across: number])[];
const circle = (from: number): Half =>
  [0, 1, 2, 3, 4, 5, 6].map((i) => {
    const angle = from + ((Math.PI - from) * i) / 6;
    return [-0.5 * Math.cos(angle), Math.sin(angle)];
  });

/** One side of each leaf shape: shares of the length from where the stalk joins, and of half the width. */
const HALVES: Readonly<Record<string, Half>> = {
  linear: [
    [0, 0.6],
    [0.3, 1],
    [0.7, 0.75],
    [1, 0],
  ],
  strap: [
    [0, 0.8],
    [0.3, 1],
    [0.75, 0.95],
    [0.93, 0.6],
    [1, 0],
  ],
  lance: [
    [0, 0.1],
    [0.15, 0.75],
    [0.34, 1],
    [0.68, 0.58],
    [1, 0],
  ],
  oval: [
    [0, 0.08],
    [0.12, 0.68],
    [0.4, 1],
    [0.76, 0.72],
    [1, 0],
  ],
  heart: [
    [0, 0],
    [-0.16, 0.2],
    [-0.24, 0.52],
    [-0.12, 0.9],
    [0.14, 1],
    [0.5, 0.72],
    [0.8, 0.28],
    [1, 0],
  ],
  arrowhead: [
    [0, 0.05],
    [-0.2, 0.36],
    [-0.5, 0.84],
    [-0.28, 0.95],
    [0.02, 0.86],
    [0.35, 0.6],
    [0.72, 0.24],
    [1, 0],
  ],
  round: [[0, 0], ...circle(0.22)],
  shield: circle(0),
  wedge: [
    [0, 0.14],
    [0.35, 0.5],
    [0.72, 0.98],
    [0.9, 0.86],
    [1, 0],
  ],
};

export const isShape = (shape: string | undefined): boolean =>
  shape !== undefined && (Object.hasOwn(HALVES, shape) || shape === 'divided');

/** Leaflets of a divided leaf: turned so far, and so long, in shares of the whole. */
const LEAFLETS = [
  [-105, 0.5],
  [105, 0.5],
  [-72, 0.68],
  [72, 0.68],
  [-38, 0.86],
  [38, 0.86],
  [0, 1],
] as const;

/** Leaflets along a middle line, in pairs, and the last one at its end. */
const PAIRS = [
  [0.2, -62, 0.26],
  [0.24, 62, 0.26],
  [0.46, -58, 0.3],
  [0.5, 58, 0.3],
  [0.66, 0, 0.4],
] as const;

export interface Blade {
  readonly shape: string;
  readonly length: number;
  readonly width: number;
}

/** Outline of a blade held at a point. `bend`: how far it turns on its way. */
export function bladeOf({ shape, length, width }: Blade, start: Point, degrees: number, bend = 0): string {
  if (shape === 'divided')
    return LEAFLETS.map(([turn, size]) =>
      bladeOf({ shape: 'lance', length: length * size, width: length * 0.24 }, start, degrees + turn, bend * 0.3),
    ).join('');
  if (shape === 'pinnate') {
    const axis = spine(start, degrees, length, bend);
    return PAIRS.map(([u, turn, size]) =>
      bladeOf({ shape: 'oval', length: length * size, width: length * size * 0.72 }, axis(u), degrees + turn),
    ).join('');
  }
  const half = HALVES[shape] ?? (HALVES.oval as Half);
  // Lobes count as part of the length, as floras measure it.
  const whole = length / (1 - Math.min(...half.map(([u]) => u)));
  const at = spine(start, degrees, whole, bend);
  const side = (sign: number) =>
    half.map(([u, v]) =>
      at(u * (shape === 'shield' || shape === 'round' ? length / whole : 1), sign * v * (width / 2)),
    );
  return `${smooth(side(1))}L${smooth(side(-1).reverse()).slice(1)}Z`;
}

/** Its middle line, from a share of the length to another. */
export function ribOf({ shape, length }: Blade, start: Point, degrees: number, bend = 0, to = 0.9): string {
  if (shape === 'divided') return '';
  const half = HALVES[shape] ?? (HALVES.oval as Half);
  const at = spine(start, degrees, length / (1 - Math.min(...half.map(([u]) => u))), bend);
  return smooth([at(0), at(to / 2), at(to)]);
}

/** A leaf that lies on the water or is held level, seen from the side: a flat ring, with a notch towards the viewer. */
export function padOf([x, y]: Point, width: number, slit: boolean, flat = 0.3): string {
  const [rx, ry] = [width / 2, (width / 2) * flat];
  const points: Point[] = Array.from({ length: 9 }, (_, i) => {
    const angle = Math.PI * (0.62 + (slit ? 0.06 + i * 0.225 : i * 0.25));
    return [x + rx * Math.cos(angle), y + ry * Math.sin(angle)];
  });
  return slit ? `${smooth([...points, [x, y]])}Z` : smooth(points.slice(0, 8), true);
}

/** A small closed ring. */
export const ring = ([x, y]: Point, r: number, ry = r): string =>
  smooth(
    [
      [x - r, y],
      [x, y - ry],
      [x + r, y],
      [x, y + ry],
    ],
    true,
  );
