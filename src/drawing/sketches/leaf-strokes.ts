// What the books of leaves share: a leaf with its ribs, a torn-off part of one, a stalk.
import type { Drawing, Mark, Pen } from '../../key/index.ts';
import { band, type Curve, curved, ellipse, type Point, pointsOf, smooth, spline, straight } from '../geometry.ts';
import { type Leaf, type LeafShape, leafOf } from '../leaf.ts';
import { put } from '../leaf-pose.ts';
import { type Veins, veinsOf } from '../leaf-veins.ts';

/** The one leaf that several books show, so that only what they are about changes. */
export const OVAL: LeafShape = { ratio: 1.55, widest: 0.4, base: 'rounded', tip: 'pointed' };
export const HEART: LeafShape = { ratio: 1.2, widest: 0.32, base: 'heart', lobes: 0.24, sinus: 54, tip: 'pointed' };

/** Points from their numbers: x, y, x, y ... */
export const way = (...xy: number[]): Point[] =>
  Array.from({ length: xy.length >> 1 }, (_, i): Point => [xy[2 * i] as number, xy[2 * i + 1] as number]);
/** A smooth stroke through points given by their numbers. */
export const sweep = (...xy: number[]): string => smooth(way(...xy));
export const loop = (...xy: number[]): string => smooth(way(...xy), true);

export interface Look {
  readonly turn?: number;
  readonly flat?: number;
  readonly pen?: Pen;
  readonly rib?: Pen;
  readonly veins?: Veins;
  readonly vein?: Pen;
}

/** A leaf set down at a place: outline, midrib, veins (these in one mark). */
export function leafAt(shape: LeafShape | Leaf, length: number, at: Point, look: Look = {}): Mark[] {
  const leaf = 'blades' in shape ? shape : leafOf(shape, length);
  const { turn = 0, flat = 1, pen = 'face', rib = 'line', veins, vein = 'fine' } = look;
  const path = (curve: Curve, closed = false): string => curved(put(curve, at, turn, flat), closed);
  const marks: Mark[] = leaf.blades.map((outline): Mark => [pen, path(outline, true)]);
  const runs = veins ? veinsOf(leaf, veins) : [];
  if (runs.length) marks.push([vein, runs.map((run) => path(run)).join('')]);
  if (rib !== 'face') marks.push([rib, leaf.midribs.map((run) => path(run)).join('')]);
  return marks;
}

/** A stalk or stem along points, as a tube with an outline and a shaded right side. */
export function tube(points: readonly Point[], width: number, end = width): Mark[] {
  const along = pointsOf(spline(points), 5);
  return [['face', band(thinned(along), (share) => width + (end - width) * share)]];
}
const thinned = (points: readonly Point[]): Point[] => points.filter((_, i) => i % 3 === 0 || i === points.length - 1);

/** The lower part of a leaf, torn off along a wavy line at a height (below zero) of its frame; and its edge alone, from left to right. */
export function lowerPart(leaf: Leaf, cut: number, at: Point): { whole: string; edge: string } {
  const points = pointsOf(leaf.blades[0] as Curve, 9).filter(([, y]) => y > cut);
  const gap = points.findIndex(([x]) => x < -0.01);
  const [right, left] = [points.slice(0, gap), points.slice(gap)];
  const wide = (right[right.length - 1] as Point)[0];
  const torn: Point[] = [0.8, 0.55, 0.3, 0.05, -0.2, -0.5, -0.8].map((share, i) => [
    wide * share,
    cut + 2.5 * Math.sin(i * 1.3),
  ]);
  const set = (line: readonly Point[]): Curve => put(line, at);
  const edge = set([...left, ...right]);
  return { whole: straight(set([...right, ...torn, ...left]), true), edge: straight(edge) };
}

/** Dots of one mark, each of a radius about a place. */
export const dots = (places: readonly Point[], radius: number): string =>
  places.map((at) => ellipse(at, radius)).join('');

/** Grass and water: short wavy lines on a level. */
export const ripples = (y: number, from = 6, to = 90): Mark => [
  'water',
  smooth([
    [from, y],
    [(from * 3 + to) / 4, y - 2],
    [(from + to) / 2, y],
    [(from + to * 3) / 4, y + 2],
    [to, y],
  ]),
];
export const soil = (y = 90): Mark => [
  'ground',
  smooth([
    [5, y],
    [30, y - 1.5],
    [62, y + 0.5],
    [91, y - 1],
  ]),
];

/** The drawing without marks that came out empty. */
export const drawn = (...marks: readonly (Mark | readonly Mark[])[]): Drawing =>
  marks
    .flatMap((mark) => (typeof mark[0] === 'string' ? [mark as Mark] : (mark as readonly Mark[])))
    .filter(([, path]) => path !== '');
