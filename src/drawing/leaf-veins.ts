// Where the veins of a leaf run, the midrib left out; they follow from the outline.
import { type Curve, from, type Point, pointsOf, spline } from './geometry.ts';
import type { Leaf } from './leaf.ts';

export const VEINS = ['parallel', 'parallel-midrib', 'feather', 'from-base', 'from-centre', 'faint'] as const;
export type Veins = (typeof VEINS)[number];

/** Whether a point lies inside a closed line of points (rule of crossings). */
export function inside(points: readonly Point[], [x, y]: Point): boolean {
  let within = false;
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length] as Point;
    if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) within = !within;
  }
  return within;
}

/** Half the width of the blade at a height. */
function halfWidth(points: readonly Point[], y: number): number {
  let widest = 0;
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length] as Point;
    if (a[1] > y !== b[1] > y) widest = Math.max(widest, ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]);
  }
  return widest;
}

/** A vein from a place: it starts at an angle to the midrib, bends by `bend` degrees, and stops short of the edge; empty where there is no room. */
function vein(points: readonly Point[], start: Point, degrees: number, bend: number, step: number): Curve {
  const way: Point[] = [start];
  for (let i = 0; i < 60; i++) {
    const next = from(way[i] as Point, degrees + bend * Math.min(1, i / 12), step);
    if (!inside(points, next)) break;
    way.push(next);
  }
  const end = Math.max(1, Math.floor((way.length - 1) * 0.9));
  if (way.length < 4) return [];
  return spline([start, way[Math.ceil(end / 2)] as Point, way[end] as Point]);
}

/** The veins of a leaf, in the blade's frame. A divided leaf shows only the midribs of its leaflets. */
export const veinsOf = (leaf: Leaf, kind: Veins): Curve[] => courses(leaf, kind).filter((vein) => vein.length > 0);

function courses(leaf: Leaf, kind: Veins): Curve[] {
  if (leaf.shape.divided || kind === 'faint') return [];
  const points = pointsOf(leaf.blades[0] as Curve, 8);
  const top = leaf.tip[1];
  const step = leaf.length / 50;
  const both = (draw: (side: 1 | -1) => Curve): Curve[] => [draw(1), draw(-1)];
  const lobed = (leaf.shape.lobes ?? 0) >= 0.1 && leaf.shape.base !== 'shield';
  // Into the lobes, the veins run down from where the stalk joins.
  const down = (degrees: number, bend: number): Curve[] =>
    both((side) => vein(points, [0, 0], side * degrees, side * bend, step));
  if (kind === 'from-centre')
    return [60, 120]
      .flatMap((angle) => down(angle, 0))
      .concat(down(28, 0), lobed ? down(152, 0) : [vein(points, [0, 0], 180, 0, step), ...down(150, 0)], down(90, 0));
  if (kind === 'feather') {
    const pairs = Array.from({ length: 5 }, (_, i) => 0.08 + i * 0.17).flatMap((share) =>
      both((side) => vein(points, [0, top * share], side * 62, side * -26, step)),
    );
    return lobed ? [...down(130, 16), ...pairs] : pairs;
  }
  const shares = kind === 'from-base' ? [0.36, 0.7] : [0.25, 0.5, 0.75];
  const heights = kind === 'from-base' ? [0.16, 0.42, 0.68, 0.88] : [0.04, 0.12, 0.22, 0.46, 0.72, 0.92];
  const long = shares.flatMap((share) =>
    both((side) => {
      const reach = heights.map((height): Point => {
        const spread = kind === 'from-base' ? Math.min(1, height / 0.45) ** 0.6 : 1;
        return [side * share * spread * halfWidth(points, top * height), top * height];
      });
      return spline(kind === 'from-base' ? [leaf.attachment, ...reach] : reach);
    }),
  );
  return kind === 'from-base' && lobed ? [...long, ...down(110, -30), ...down(140, 10)] : long;
}
