import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAreas } from './read.ts';
import { edgeDistance, helpAt, isInside, otherSide } from './where.ts';

type Ring = [number, number][];
const box = (west: number, south: number, east: number, north: number): Ring => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
  [west, south],
];
const feature = (id: string, coordinates: unknown, changes: object = {}) => ({
  type: 'Feature',
  id,
  properties: { programme: id, contacts: [{ phone: '555-0100' }], reviewed: '2026-05-01', ...changes },
  geometry: { type: 'MultiPolygon', coordinates },
});
const areasOf = (...features: object[]) => readAreas(JSON.stringify({ type: 'FeatureCollection', features }));
const only = (coordinates: unknown) => areasOf(feature('a', coordinates)).areas[0] as (typeof holed)['areas'][0];
const spot = (lon: number, lat: number, uncertainty = 10) => ({ lon, lat, uncertainty });
const TODAY = '2026-11-25';

// The polygon with a hole of RFC 7946, appendix A.3.
const holed = areasOf(feature('a', [[box(100, 0, 101, 1), box(100.2, 0.2, 100.8, 0.8)]]));
const area = only([[box(100, 0, 101, 1), box(100.2, 0.2, 100.8, 0.8)]]);

describe('a place and an area', () => {
  test.each<[number, number, boolean, string]>([
    [100.1, 0.5, true, 'between the rings'],
    [100.5, 0.5, false, 'in the hole'],
    [101.1, 0.5, false, 'beyond'],
    [100, 0.5, true, 'on the outer edge'],
    [100.37, 0, true, 'on the lower edge'],
    [101, 1, true, 'on a corner'],
    [100.2, 0.5, true, 'on the edge of the hole'],
    [100.8, 0.8, true, 'on a corner of the hole'],
    [100.5, 1.0000001, false, 'a hand beyond the edge'],
    [460.1, 0.5, true, 'a whole turn away'],
  ])('%d, %d: %s, %s', (lon, lat, inside) => {
    expect(isInside({ lon, lat }, area)).toBe(inside);
  });

  // The area between Fiji's bounds of RFC 7946, 5.2: 177 E to 178 W, 5 degrees wide.
  const cut = only([[box(177, -20, 180, -16)], [box(-180, -20, -178, -16)]]);
  const uncut = only([
    [
      [
        [177, -20],
        [-178, -20],
        [-178, -16],
        [177, -16],
        [177, -20],
      ],
    ],
  ]);
  test.each([
    [178, true],
    [180, true],
    [-180, true],
    [-179, true],
    [-178, true],
    [177, true],
    [-177.9, false],
    [176.9, false],
    [0, false],
  ])('across the antimeridian at %d: %s, cut or not', (lon, inside) => {
    expect(isInside({ lon, lat: -18 }, cut)).toBe(inside);
    expect(isInside({ lon, lat: -18 }, uncut)).toBe(inside);
    expect(edgeDistance({ lon, lat: -18 }, cut)).toBeCloseTo(edgeDistance({ lon, lat: -18 }, uncut), 3);
  });

  test('agree with the sum of angles, another way to tell, for any convex ring', () => {
    const angle = fc.integer({ min: 0, max: 359 }).map((degrees) => (degrees * Math.PI) / 180);
    fc.assert(
      fc.property(
        fc.uniqueArray(angle, { minLength: 3, maxLength: 12 }),
        angle,
        fc.integer({ min: 1, max: 40 }).map((n) => n / 20),
        (corners, way, far) => {
          const ring = corners
            .sort((a, b) => a - b)
            .map((a): [number, number] => [-98 + Math.cos(a), 30 + Math.sin(a)]);
          const place = { lon: -98 + far * Math.cos(way), lat: 30 + far * Math.sin(way) };
          let turn = 0;
          let least = Number.POSITIVE_INFINITY;
          ring.forEach(([x, y], i) => {
            const [u, v] = ring[(i + 1) % ring.length] as [number, number];
            const [ax, ay, bx, by] = [x - place.lon, y - place.lat, u - place.lon, v - place.lat];
            turn += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
            least = Math.min(least, Math.abs(ax * by - ay * bx));
          });
          // Upon an edge, and in a ring that is hardly one, rounding decides.
          fc.pre(least > 1e-9);
          const first = ring[0] as [number, number];
          expect(isInside(place, { polygons: [[[...ring, first]]] })).toBe(Math.abs(turn) > Math.PI);
        },
      ),
    );
  });

  test('inside an area and outside it the nearest edge is as far as it is', () => {
    // One hundredth of a degree along a meridian is 1.112 km on this sphere.
    expect(edgeDistance({ lon: 100.5, lat: 1.01 }, area)).toBeCloseTo(1111.95, 1);
    expect(edgeDistance({ lon: 100.5, lat: 0.79 }, area)).toBeCloseTo(1111.95, 1);
    expect(edgeDistance({ lon: 100.5, lat: 0.99 }, area)).toBeCloseTo(1111.95, 1);
    expect(edgeDistance({ lon: 100.5, lat: 1 }, area)).toBeLessThan(0.01);
  });
});

describe('who helps at a place', () => {
  const west = feature('west', [[box(-99, 30, -98.9, 30.1)]]);
  const reed = feature('reed', [[box(-98.95, 30, -98.85, 30.1)]], { plants: ['arundo-donax'] });
  const ear = feature('ear', [[box(-99, 30, -98.8, 30.1)]], { plants: ['colocasia-esculenta'] });
  const over = feature('over', [[box(-99, 30, -98.8, 30.1)]], { until: '2026-11-24' });
  const today = feature('today', [[box(-98.7, 30, -98.6, 30.1)]], { until: TODAY });
  const areas = areasOf(west, reed, ear, over, today);
  const ids = (lon: number, plant?: string) =>
    helpAt(spot(lon, 30.05), areas, TODAY, plant).offers.map((one) => one.area.id);

  test('inside: the programme for this plant first, then those for any, then near ones, those for others last', () => {
    expect(ids(-98.92, 'arundo-donax')).toEqual(['reed', 'west', 'ear']);
    expect(ids(-98.92, 'colocasia-esculenta')).toEqual(['ear', 'west', 'reed']);
    expect(ids(-98.97, 'arundo-donax')).toEqual(['west', 'reed', 'ear']);
  });

  test('a programme that has ended is told of where it was, and not offered; on its last day it is', () => {
    const there = helpAt(spot(-98.92, 30.05), areas, TODAY);
    expect(there.ended.map(({ id }) => id)).toEqual(['over']);
    expect(there.offers.map((one) => one.area.id)).not.toContain('over');
    const last = helpAt(spot(-98.65, 30.05), areas, TODAY);
    expect([last.kind, last.offers[0]?.area.id]).toEqual(['inside', 'today']);
    expect(helpAt(spot(-98.65, 30.05), areas, '2026-11-26').kind).toBe('near');
  });

  test('near is up to the distance that the file says, and outside is beyond it', () => {
    // 16 km on this sphere is 0.143892 degrees along a meridian.
    expect(helpAt(spot(-98.95, 30.1 + 0.1438), areas, TODAY).kind).toBe('near');
    const beyond = helpAt(spot(-98.95, 30.1 + 0.144), areas, TODAY);
    expect(beyond).toMatchObject({ kind: 'outside', offers: [] });
    expect(beyond.nearest?.distance).toBeCloseTo(16_012, -1);
  });

  test('says when the edge is nearer than the place is known, on either side of it', () => {
    const unsure = (lat: number, uncertainty: number) =>
      helpAt(spot(-98.97, lat, uncertainty), areas, TODAY).offers.find((one) => one.area.id === 'west')?.unsure;
    expect(unsure(30.099, 200)).toBe(true);
    expect(unsure(30.101, 200)).toBe(true);
    expect(unsure(30.099, 20)).toBe(false);
    expect(unsure(30.101, 20)).toBe(false);
  });

  test('says when the day for making sure has passed', () => {
    const due = (day: string) => helpAt(spot(-98.97, 30.05), areas, day).offers[0]?.due;
    expect(due('2027-05-01')).toBe(false);
    expect(due('2027-05-02')).toBe(true);
  });

  test('a minus that was left out is noticed, and nothing is suggested where it would not help', () => {
    expect(otherSide(spot(98.92, 30.05), areas, TODAY)).toMatchObject({ lon: -98.92, lat: 30.05 });
    expect(otherSide(spot(-98.92, 30.05), areas, TODAY)).toBeUndefined();
    expect(otherSide(spot(12, 50), areas, TODAY)).toBeUndefined();
  });
});
