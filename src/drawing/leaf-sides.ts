// The right side of a blade in its three parts: from the base to where it is widest, on to the tip, and what is cut into it.
import { add, between, type Curve, line, type Point, pointAt, pointsOf, spline } from './geometry.ts';
import type { LeafEdge, LeafShape, LeafTip } from './leaf.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** The right side from the base to where the blade is widest (h, y): a start, then handles and ends. */
export function lower(shape: LeafShape, length: number, h: number, y: number): Point[] {
  const { lobes = 0, inset = 0, sinus = 50 } = shape;
  const notch = inset * length;
  const bottom = notch + lobes * length;
  const rise = bottom - y;
  switch (shape.base) {
    case 'wedge':
      return [
        [0, 0],
        [h * 0.42, y * 0.38],
        [h, y * 0.6],
        [h, y],
      ];
    case 'narrowed':
      return [
        [0, 0],
        [h * 0.12, y * 0.42],
        [h, y * 0.55],
        [h, y],
      ];
    case 'rounded':
      return [
        [0, 0],
        [h * 0.62, 0],
        [h, y * 0.42],
        [h, y],
      ];
    case 'straight':
      return [[0, 0], ...line([0, 0], [h * 0.68, 0]), [h * 0.92, 0], [h, y * 0.3], [h, y]];
    case 'sheath':
      return [[0, 0], ...line([0, 0], [h * 0.8, 0]), [h * 0.9, y * 0.3], [h, y * 0.6], [h, y]];
    case 'shield':
      return [
        [0, bottom],
        [h * 0.56, bottom],
        [h, bottom - rise * 0.45],
        [h, y],
      ];
    case 'arrow': {
      const point: Point = [Math.min(tan(sinus / 2) * lobes * length, h * 0.9), bottom];
      return [
        [0, notch],
        [point[0] * 0.25, notch + lobes * length * 0.42],
        between([0, notch], point, 0.7),
        point,
        [point[0] + (h - point[0]) * 0.6, bottom - rise * 0.35],
        [h, y + rise * 0.45],
        [h, y],
      ];
    }
    case 'spear': {
      // Lobes that point outwards: the blade is widest at their points, and the body above is about half as wide.
      return [
        [0, notch],
        [h * 0.4, notch],
        [h * 0.7, bottom],
        [h, bottom],
        [h * 0.72, bottom - length * 0.07],
        [h * 0.5, bottom - length * 0.1],
        [h * 0.5, y],
      ];
    }
    default: {
      // Heart and ears: two rounded lobes beside a notch.
      const inner = tan(sinus / 2) * lobes * length;
      const end: Point = [Math.min(inner + h * 0.28, h * 0.66), bottom];
      const side: Point = [Math.min(inner * 0.8, end[0] * 0.8), notch + lobes * length * 0.75];
      return [
        [0, notch],
        side,
        [end[0] - (end[0] - Math.min(inner, end[0])) * 0.75 - (sinus > 30 ? h * 0.12 : 0), bottom],
        end,
        [end[0] + (h - end[0]) * 0.6, bottom],
        [h, y + rise * 0.5],
        [h, y],
      ];
    }
  }
}

/** The right side from where the blade is widest (h, y) to the tip (0, top): handles and ends. */
export function upper(tip: LeafTip, h: number, y: number, top: number): Point[] {
  const rise = y - top;
  switch (tip) {
    case 'pointed': {
      const slope = Math.min((1.1 * h) / rise, 0.8);
      return [
        [h, y - rise * 0.42],
        [slope * rise * 0.34, top + rise * 0.34],
        [0, top],
      ];
    }
    case 'long-pointed': {
      const slope = Math.min((0.4 * h) / rise, 0.3);
      return [
        [h, y - rise * 0.42],
        [slope * rise * 0.42, top + rise * 0.42],
        [0, top],
      ];
    }
    case 'blunt': {
      const down = Math.min(rise * 0.2, h * 0.45);
      return [
        [h, y - rise * 0.55],
        [Math.min(down * 1.35, h), top + down],
        [0, top],
      ];
    }
    case 'rounded':
      return [
        [h, y - rise * 0.55],
        [h * 0.58, top],
        [0, top],
      ];
    case 'notched': {
      const dip = Math.min(rise * 0.16, h * 0.3);
      return [
        [h, y - rise * 0.52],
        [h * 0.75, top],
        [h * 0.36, top],
        [h * 0.14, top],
        [0, top + dip * 0.5],
        [0, top + dip],
      ];
    }
  }
}

/** Cuts teeth, waves or lobes into one side, always inwards, so that the blade keeps its width and length. */
export function cut(side: Curve, edge: LeafEdge, h: number): Curve {
  if (edge === 'smooth') return side;
  const points = pointsOf(side);
  const [count, depth] = edge === 'toothed' ? [13, 0.13] : edge === 'wavy' ? [6, 0.1] : [4, 0.42];
  const inward = (share: number, by: number): Point => {
    const [here, ahead] = [pointAt(points, share), pointAt(points, share + 0.01)];
    const [dx, dy] = [ahead[0] - here[0], ahead[1] - here[1]];
    const size = Math.hypot(dx, dy) || 1;
    // The blade lies to the left of its right side as one goes up; never across the middle.
    const moved: Point = add(here, [(dy / size) * by, (-dx / size) * by]);
    return [Math.max(moved[0], Math.min(here[0], h * 0.12)), moved[1]];
  };
  const knots: Point[] = [side[0] as Point];
  for (let i = 0; i < count; i++) {
    const near = Math.min(1, pointAt(points, (i + 1) / count)[0] / (h * 0.6));
    // A tooth has one point near its upper end, a wave one in the middle; a lobe is broad.
    const crests = edge === 'toothed' ? [0.85] : edge === 'wavy' ? [0.5] : [0.34, 0.66];
    for (const crest of crests) knots.push(inward((i + crest) / count, 0));
    if (i < count - 1) knots.push(inward((i + 1) / count, h * depth * near));
  }
  knots.push(side[side.length - 1] as Point);
  return edge === 'toothed'
    ? [knots[0] as Point, ...knots.slice(1).flatMap((end, i) => line(knots[i] as Point, end))]
    : spline(knots);
}
