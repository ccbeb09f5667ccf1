// Strokes that flowers, seed heads and fruits share, written short. Lengths in units of the drawing, angles in degrees.
import type { Random } from '../../engine/trial/index.ts';
import { add, between, ellipse, from, num, type Point, straight } from '../geometry.ts';

const at = ([x, y]: Point): string => `${num(x)} ${num(y)}`;

/** The middle of two points, moved `bow` to the right of the way from one to the other. */
function bowed(a: Point, b: Point, bow: number, share = 0.5): Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return add(between(a, b, share), [(-(b[1] - a[1]) / length) * bow, ((b[0] - a[0]) / length) * bow]);
}

/** An arc from one point to another that passes `bow` / 2 to the right of the straight way. */
export const arc = (a: Point, b: Point, bow = 0): string => `M${at(a)}Q${at(bowed(a, b, bow))} ${at(b)}`;

/** The point of that arc at a share of its way. */
export function onArc(a: Point, b: Point, bow: number, share: number): Point {
  const c = bowed(a, b, bow);
  return between(between(a, c, share), between(c, b, share), share);
}

/** A short straight stroke. */
export const hair = (a: Point, degrees: number, length: number): string => straight([a, from(a, degrees, length)]);

/** A closed shape pointed at both ends: a spikelet, a narrow petal, a bract. */
export const lens = (a: Point, b: Point, width: number, skew = 0): string =>
  `M${at(a)}Q${at(bowed(a, b, width + skew))} ${at(b)}Q${at(bowed(a, b, skew - width))} ${at(a)}Z`;

/** A closed shape, narrow at `a` and round at `b`, where it is `width` wide near the far end. */
export function petal(a: Point, b: Point, width: number, pointed = 0): string {
  const side = (sign: number): readonly [Point, Point] => [
    bowed(a, b, sign * width * 0.55, 0.3),
    bowed(a, b, sign * width * (0.9 - 0.75 * pointed), 1 - 0.12 * pointed),
  ];
  const [[c, d], [e, f]] = [side(1), side(-1)];
  return `M${at(a)}C${at(c)} ${at(d)} ${at(b)}C${at(f)} ${at(e)} ${at(a)}Z`;
}

/** A round flower of `lobes` round lobes that reach `radius`. */
export function rosette(centre: Point, radius: number, lobes: number, degrees = 0): string {
  const half = Math.PI / lobes;
  // Each lobe is more than half a circle of 0.55 of the chord between two notches, bulging outward.
  const notch = radius / (Math.cos(half) + 2 * Math.sin(half) * (0.55 + Math.sqrt(0.55 ** 2 - 0.25)));
  const lobe = num(1.1 * notch * Math.sin(half));
  const place = (k: number): string => at(from(centre, degrees + ((k + 0.5) * 360) / lobes, notch));
  return `M${place(-1)}${upTo(lobes)
    .map((k) => `A${lobe} ${lobe} 0 1 1 ${place(k)}`)
    .join('')}Z`;
}

/** A dot as wide as the pen. */
export const dot = ([x, y]: Point): string =>
  straight([
    [x, y],
    [x + 0.3, y],
  ]);

/** A round spot. */
export const spot = (centre: Point, radius: number): string => ellipse(centre, radius);

/** The point at a share of the way along points, and where it heads there (0 up, 90 to the right). */
export function along(points: readonly Point[], share: number): { readonly point: Point; readonly heading: number } {
  const place = Math.min(Math.max(share, 0), 1) * (points.length - 1);
  const i = Math.min(Math.floor(place), points.length - 2);
  const [a, b] = [points[i] as Point, points[i + 1] as Point];
  return { point: between(a, b, place - i), heading: (Math.atan2(b[0] - a[0], a[1] - b[1]) * 180) / Math.PI };
}

/** Whole numbers 0 to n - 1. */
export const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

/**
 * A closed shape with a feathery edge about an axis (from its foot to its tip): on each side `locks` curved tips, each
 * reaching out `reach` of its share of the way and rising `rise` along the axis beyond where it leaves it.
 */
export function feathered(
  axis: readonly Point[],
  locks: number,
  reach: (share: number) => number,
  rise: number,
  random: Random,
): string {
  const [foot, tip] = [axis[0] as Point, axis[axis.length - 1] as Point];
  const side = (sign: number): [bulge: Point, end: Point, notch: Point][] =>
    upTo(locks).map((i) => {
      const share = (i + 0.2 + 0.3 * random.next()) / (locks + 0.4);
      const { point, heading } = along(axis, share);
      const out = reach(share) * (0.88 + 0.24 * random.next());
      const place = (far: number, up: number): Point =>
        from(from(point, heading + sign * 90, out * far), heading, rise * up);
      return [place(0.75, 0.2), place(1, 1), place(0.68, 0.72)];
    });
  const up = side(-1).map(([bulge, end, notch]) => `Q${at(bulge)} ${at(end)}L${at(notch)}`);
  const right = side(1).reverse();
  const down = right.map(([bulge, end], i) => `L${at(end)}Q${at(bulge)} ${at(right[i + 1]?.[2] ?? foot)}`);
  return `M${at(foot)}${up.join('')}L${at(tip)}L${at(right[0]?.[2] ?? foot)}${down.join('')}Z`;
}
