// Distances on a sphere: enough for "how far is the area", within 0.6 % of the ellipsoid.
import type { Polygon, Position } from './types.ts';

/** Mean radius of the earth in metres (IUGG, rounded). */
export const RADIUS = 6_371_000;
const RAD = Math.PI / 180;
/** Degrees after which a straight line in longitude and latitude is taken up anew; a great circle strays from it. */
const STEP = 0.05;

type Vector = readonly [number, number, number];

const onSphere = ([lon, lat]: Position): Vector => {
  const flat = Math.cos(lat * RAD);
  return [flat * Math.cos(lon * RAD), flat * Math.sin(lon * RAD), Math.sin(lat * RAD)];
};
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const length = (a: Vector): number => Math.hypot(...a);
/** Good at every angle, where the arc cosine is not. */
const angle = (a: Vector, b: Vector): number => Math.atan2(length(cross(a, b)), dot(a, b));

/** Great-circle distance in metres. */
export const greatCircle = (a: Position, b: Position): number => RADIUS * angle(onSphere(a), onSphere(b));

/** Angle from `p` to the nearest point of the arc from `a` to `b`. */
function toArc(p: Vector, a: Vector, b: Vector): number {
  const normal = cross(a, b);
  const size = length(normal);
  // The foot of the perpendicular lies on the arc when it is past a and before b.
  if (size > 0 && dot(cross(normal, a), p) > 0 && dot(cross(b, normal), p) > 0)
    return Math.asin(Math.min(1, Math.abs(dot(normal, p)) / size));
  return Math.min(angle(p, a), angle(p, b));
}

/** From a place to an edge that is straight in longitude and latitude, as RFC 7946 (3.1.1) has it; metres. */
export function toSegment(place: Position, from: Position, to: Position): number {
  const p = onSphere(place);
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const pieces = Math.max(1, Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / STEP));
  let least = Number.POSITIVE_INFINITY;
  let a = onSphere(from);
  for (let i = 1; i <= pieces; i++) {
    const b = onSphere([from[0] + (dx * i) / pieces, from[1] + (dy * i) / pieces]);
    least = Math.min(least, toArc(p, a, b));
    a = b;
  }
  return RADIUS * least;
}

/** From a place to the nearest edge of a polygon, holes included; metres. A cut along the antimeridian may be no edge. */
export function toEdge(place: Position, polygon: Polygon, cutCounts: boolean): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of polygon)
    for (let i = 1; i < ring.length; i++) {
      const [a, b] = [ring[i - 1], ring[i]] as [Position, Position];
      if (!cutCounts && Math.abs(a[0]) === 180 && a[0] === b[0]) continue;
      least = Math.min(least, toSegment(place, a, b));
    }
  return least;
}
