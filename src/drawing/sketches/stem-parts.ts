// Pieces of stems that several drawings share: a standing piece with its cut end, joints, small leaves.
import type { Mark, Pen } from '../../key/index.ts';
import { add, band, bezier, ellipse, from, num, type Point, smooth, straight } from '../geometry.ts';

/** How far a round end is seen from above, as a share of its width. */
const TILT = 0.36;

/** A round piece of stem from `top` to `bottom`, its upper end cut; `half` is half its width. */
export function piece(x: number, top: number, bottom: number, half: number, pen: Pen = 'face'): Mark[] {
  const ry = half * TILT;
  const side = `M${num(x - half)} ${num(top)}L${num(x - half)} ${num(bottom)}A${num(half)} ${num(ry)} 0 0 0 ${num(x + half)} ${num(bottom)}L${num(x + half)} ${num(top)}`;
  return [
    [pen, `${side}A${num(half)} ${num(ry)} 0 0 0 ${num(x - half)} ${num(top)}Z`],
    ['tint', shade(x, top, bottom, half)],
    ['line', side],
    ['face', ellipse([x, top], half, ry)],
  ];
}

/** The side away from the light. */
export function shade(x: number, top: number, bottom: number, half: number): string {
  const ry = half * TILT;
  return `M${num(x + half * 0.45)} ${num(top + ry * 0.8)}L${num(x + half * 0.45)} ${num(bottom + ry * 0.8)}Q${num(x + half)} ${num(bottom + ry * 0.6)} ${num(x + half - 1)} ${num(bottom)}L${num(x + half - 1)} ${num(top)}Q${num(x + half)} ${num(top + ry * 0.6)} ${num(x + half * 0.45)} ${num(top + ry * 0.8)}Z`;
}

/** The ring of a joint, as it runs round the front of the stem. */
export const ring = (x: number, y: number, half: number): string =>
  `M${num(x - half)} ${num(y)}A${num(half)} ${num(half * TILT)} 0 0 0 ${num(x + half)} ${num(y)}`;

/** A swollen joint: two rings and what bulges between them. */
export function joint(x: number, y: number, half: number, pen: Pen = 'line'): Mark[] {
  const out = half + 2.5;
  const [a, b] = [y - 3, y + 3];
  const belt = `M${num(x - half)} ${num(a)}Q${num(x - out)} ${num(y)} ${num(x - half)} ${num(b)}A${num(half)} ${num(half * TILT)} 0 0 0 ${num(x + half)} ${num(b)}Q${num(x + out)} ${num(y)} ${num(x + half)} ${num(a)}A${num(half)} ${num(half * TILT)} 0 0 1 ${num(x - half)} ${num(a)}Z`;
  return pen === 'mark'
    ? [
        ['face', belt],
        ['mark', belt],
      ]
    : [['face', belt]];
}

/** A pointed leaf from its base to its tip, broadest below the middle; with its midrib where there is room for it. */
export function blade(base: Point, degrees: number, length: number, width: number, bend = 0): Mark[] {
  const tip = from(base, degrees + bend, length);
  const [one, two] = [from(base, degrees - bend * 0.3, length * 0.35), from(base, degrees + bend * 0.4, length * 0.7)];
  const spine = bezier(base, one, two, tip, 4);
  const half = width * 0.75;
  const side = (sign: number): string => {
    const [a, b] = [from(one, degrees + 90 * sign, half), from(two, degrees + bend * 0.7 + 90 * sign, half * 0.8)];
    return sign < 0 ? `C${pair(a)} ${pair(b)} ${pair(tip)}` : `C${pair(b)} ${pair(a)} ${pair(base)}`;
  };
  const outline = `M${pair(base)}${side(-1)}${side(1)}Z`;
  return [['face', outline], ...(width < 5 ? [] : ([['fine', smooth(spine.slice(0, -1))]] as Mark[]))];
}
const pair = ([x, y]: Point): string => `${num(x)} ${num(y)}`;

/** A stalk or a thin stem, as wide as said at its foot and its top; of many points every few are enough. */
export function rod(points: readonly Point[], foot: number, top = foot): string {
  const step = Math.max(1, Math.floor((points.length - 1) / 4));
  const few = points.filter((_, i) => i % step === 0 && i < points.length - 1);
  return band([...few, points.at(-1) as Point], (share) => foot + (top - foot) * share);
}

/** The surface of the ground, a little uneven. */
export const soil = (y: number, a = 6, b = 90): Mark => [
  'ground',
  smooth([
    [a, y + 1],
    [a + (b - a) * 0.3, y - 0.8],
    [a + (b - a) * 0.62, y + 0.8],
    [b, y - 0.5],
  ]),
];

/** Short strokes that stand off from points at angles. */
export const bristles = (at: readonly (readonly [Point, number])[], length: number): string =>
  at.map(([point, degrees]) => straight([point, from(point, degrees, length)])).join('');

/** Points of a line, evenly spaced, both ends among them. */
export const along = (a: Point, b: Point, n: number): Point[] =>
  Array.from({ length: n }, (_, i) => add(a, [((b[0] - a[0]) * i) / (n - 1), ((b[1] - a[1]) * i) / (n - 1)]));
