// Who helps at a place: inside an area, near one, or outside all.
import pointInPolygon from 'point-in-polygon-hao';
import { toEdge } from './distance.ts';
import { boundsOf, toward } from './rings.ts';
import type { Area, Areas, Polygon, Position } from './types.ts';

/** Decimal degrees on WGS 84, and the radius in metres within which the place really is. */
export interface Spot {
  readonly lat: number;
  readonly lon: number;
  readonly uncertainty: number;
}

/** A programme that may help at the place. */
export interface Offer {
  readonly area: Area;
  readonly inside: boolean;
  /** Metres to the nearest edge; 0 inside. */
  readonly distance: number;
  /** The edge is nearer than the place is known. */
  readonly unsure: boolean;
  /** It is for the plant, or for any plant, or nobody said which plant. */
  readonly fits: boolean;
  /** The day for making sure of it has passed. */
  readonly due: boolean;
}

export interface Help {
  readonly kind: 'inside' | 'near' | 'outside';
  /** Those for the plant first, inside before near, the nearest before the farther. Empty outside. */
  readonly offers: readonly Offer[];
  /** Programmes for this place that have come to their end. They are not offered. */
  readonly ended: readonly Area[];
  /** Outside: the nearest area of a programme that goes on, and metres to it. */
  readonly nearest?: { readonly area: Area; readonly distance: number };
}

/** Whether a place lies in an area; its edges, those of its holes too, belong to it. */
export function isInside(spot: Pick<Spot, 'lat' | 'lon'>, { polygons }: Pick<Area, 'polygons'>): boolean {
  return polygons.some((polygon) => pointInPolygon(shifted(spot, polygon), rings(polygon)) !== false);
}

const rings = (polygon: Polygon): number[][][] => polygon as unknown as number[][][];

/** The place with its longitude by whole turns as near to the polygon as can be. */
function shifted({ lat, lon }: Pick<Spot, 'lat' | 'lon'>, polygon: Polygon): [number, number] {
  const { west, east } = boundsOf(polygon[0] ?? []);
  return [toward(lon, (west + east) / 2), lat];
}

/** Metres from a place to the nearest edge of an area, from within or from without. */
export function edgeDistance({ lat, lon }: Pick<Spot, 'lat' | 'lon'>, area: Pick<Area, 'polygons'>): number {
  const place: Position = [lon, lat];
  const inside = isInside({ lat, lon }, area);
  return Math.min(...area.polygons.map((polygon) => toEdge(place, polygon, !inside)));
}

/**
 * Who helps at a place.
 * @param today - The day it is there, YYYY-MM-DD
 * @param plant - Id of the taxon it is about, where it is known
 */
export function helpAt(spot: Spot, { areas, near }: Areas, today: string, plant?: string): Help {
  const going = areas.filter(({ until }) => until === undefined || until >= today);
  const all = going.map((area): Offer => {
    const inside = isInside(spot, area);
    const edge = edgeDistance(spot, area);
    return {
      area,
      inside,
      distance: inside ? 0 : edge,
      unsure: edge <= spot.uncertainty,
      fits: plant === undefined || area.plants === undefined || area.plants.includes(plant),
      due: area.due < today,
    };
  });
  const offers = all
    .filter(({ distance }) => distance <= near)
    .sort((a, b) => rank(a, plant) - rank(b, plant) || a.distance - b.distance);
  const ended = areas.filter((area) => !going.includes(area) && isInside(spot, area));
  const kind = offers.some(({ inside }) => inside) ? 'inside' : offers.length > 0 ? 'near' : 'outside';
  if (kind !== 'outside') return { kind, offers, ended };
  const [nearest] = all.sort((a, b) => a.distance - b.distance);
  return { kind, offers, ended, ...(nearest ? { nearest: { area: nearest.area, distance: nearest.distance } } : {}) };
}

/** Inside and for this plant, inside for any, near for this plant, near for any, for other plants. */
function rank({ area, inside, fits }: Offer, plant: string | undefined): number {
  if (!fits) return inside ? 4 : 5;
  const meant = plant !== undefined && area.plants?.includes(plant);
  return (inside ? 0 : 2) + (meant ? 0 : 1);
}

/**
 * The same place on the other side of the first meridian, when help is there and none here: somebody left out the
 * minus, or the W.
 */
export function otherSide(spot: Spot, areas: Areas, today: string): Spot | undefined {
  if (helpAt(spot, areas, today).kind !== 'outside') return undefined;
  const other = { ...spot, lon: -spot.lon };
  return helpAt(other, areas, today).kind === 'outside' ? undefined : other;
}
