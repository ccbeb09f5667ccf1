// A place told more coarsely: as the middle of a cell of a fixed grid, so that telling it often tells no more.
import type { Find, Place, Point } from './types.ts';

/** Sides of the cells, in degrees: about 1 km and about 11 km from south to north. */
export const GRIDS = [0.01, 0.1] as const;
export type Grid = (typeof GRIDS)[number];

/**
 * The greatest radius of curvature of WGS 84 in metres, a^2 / b, at the poles: on a sphere of this radius no two points
 * lie closer than on the ellipsoid, so that a distance on it is never too short. The axes are from memory.
 */
const RADIUS = 6378137 ** 2 / 6356752.3142;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Metres between two positions, never less than on the ground and at most 0.7 % more: the haversine formula. */
export function metresBetween(a: Pick<Point, 'lat' | 'lon'>, b: Pick<Point, 'lat' | 'lon'>): number {
  const [la, lb] = [radians(a.lat), radians(b.lat)];
  const h = Math.sin((lb - la) / 2) ** 2 + Math.cos(la) * Math.cos(lb) * Math.sin(radians(b.lon - a.lon) / 2) ** 2;
  return 2 * RADIUS * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** The middle and the bounds of the cell that holds `degrees`, of cells that fill -limit to limit. */
function cell(degrees: number, limit: number, perDegree: number): { low: number; middle: number; high: number } {
  const step = Math.min(Math.floor(degrees * perDegree), limit * perDegree - 1);
  return { low: step / perDegree, middle: (2 * step + 1) / (2 * perDegree), high: (step + 1) / perDegree };
}

/**
 * The middle of the grid's cell that holds the place. Its uncertainty in whole metres reaches the farthest corner of the
 * cell, and as far beyond as the place itself was uncertain: the circle holds the place whatever the ellipsoid.
 */
export function coarsen({ lat, lon, uncertainty }: Point, grid: Grid): Point {
  const perDegree = Math.round(1 / grid);
  const [north, east] = [cell(lat, 90, perDegree), cell(lon, 180, perDegree)];
  const middle = { lat: north.middle, lon: east.middle };
  const corners = [north.low, north.high].flatMap((y) => [east.low, east.high].map((x) => ({ lat: y, lon: x })));
  const reach = Math.max(...corners.map((corner) => metresBetween(middle, corner)));
  return { ...middle, uncertainty: Math.ceil(reach + uncertainty) };
}

/** What may be told of a find's place: the exact one only with consent. `coarse`: something was held back. */
export function toldPlace({
  place,
  consent,
}: Pick<Find, 'place' | 'consent'>):
  | (Point & { readonly coarse: boolean; readonly source: Place['source']; readonly words?: string })
  | undefined {
  if (place === undefined) return undefined;
  const { lat, lon, uncertainty, source, words, coarse } = place;
  if (consent.exactPlace)
    return { lat, lon, uncertainty, source, coarse: false, ...(words === undefined ? {} : { words }) };
  return { ...(coarse ?? coarsen(place, GRIDS[0])), source, coarse: true };
}

/** The find as it may leave the device: without what its person does not want told. Photographs stay. */
export function sendable(find: Find): Find {
  const { place, contact, access, ...rest } = find;
  const told = toldPlace(find);
  const held = told?.coarse === true;
  return {
    ...rest,
    ...(told && place ? { place: held ? coarsePlace(told) : place } : {}),
    // How to get there tells where it is.
    ...(access !== undefined && !held ? { access } : {}),
    ...(contact && find.consent.contact ? { contact } : {}),
  };
}

/** Says of itself that it is the coarse one: whoever tells of it later leaves it as it is. */
function coarsePlace({ lat, lon, uncertainty, source }: Point & Pick<Place, 'source'>): Place {
  return { lat, lon, uncertainty, source, coarse: { lat, lon, uncertainty } };
}
