// Rings of positions: across the antimeridian, their winding, and where they lie.
import type { Position, Ring } from './types.ts';

/** The longitude, by whole turns, that lies nearest to another. */
export const toward = (lon: number, other: number): number => lon + 360 * Math.round((other - lon) / 360);

/**
 * The same course with longitudes that run on across the antimeridian instead of jumping by a turn: 179, -179 becomes
 * 179, 181. RFC 7946 (3.1.9) asks writers to cut there; readers meet courses that are not cut.
 */
export function unrolled(course: readonly Position[]): Position[] {
  const flat: Position[] = [];
  for (const [lon, lat] of course) {
    const before = flat.at(-1)?.[0];
    flat.push([before === undefined || Math.abs(lon - before) <= 180 ? lon : toward(lon, before), lat]);
  }
  return flat;
}

/** Area within a ring in square degrees, by the shoelace formula; above zero when it runs counter-clockwise. */
export function signedArea(ring: Ring): number {
  // Against its first position, so that no digits are lost in a small ring far from zero.
  const [x0, y0] = ring[0] as Position;
  let twice = 0;
  for (let i = 1; i < ring.length; i++) {
    const [ax, ay] = ring[i - 1] as Position;
    const [bx, by] = ring[i] as Position;
    twice += (ax - x0) * (by - y0) - (bx - x0) * (ay - y0);
  }
  return twice / 2;
}

/** The ring as RFC 7946 (3.1.6) winds it: an outer one counter-clockwise, a hole clockwise. */
export const wound = (ring: Ring, hole: boolean): Ring => (signedArea(ring) > 0 === hole ? ring.toReversed() : ring);

export interface Bounds {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

export function boundsOf(positions: readonly Position[]): Bounds {
  let [west, south, east, north] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const [lon, lat] of positions) {
    west = Math.min(west, lon);
    east = Math.max(east, lon);
    south = Math.min(south, lat);
    north = Math.max(north, lat);
  }
  return { west, south, east, north };
}
