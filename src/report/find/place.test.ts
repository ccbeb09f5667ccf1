import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aFind } from '../../../tests/support/finds.ts';
import { coarsen, GRIDS, metresBetween, type Point, sendable, toldPlace } from './index.ts';

/**
 * Metres through the ground between two positions on WGS 84, by their coordinates from the Earth's centre: an independent
 * route, and shorter than any way along the surface by less than 1 part in 100 000 at 30 km. Axis and flattening of
 * WGS 84 are from memory.
 */
function chord(a: Pick<Point, 'lat' | 'lon'>, b: Pick<Point, 'lat' | 'lon'>): number {
  const axis = 6378137;
  const flattening = 1 / 298.257223563;
  const square = flattening * (2 - flattening);
  const at = ({ lat, lon }: typeof a) => {
    const [phi, lambda] = [(lat * Math.PI) / 180, (lon * Math.PI) / 180];
    const n = axis / Math.sqrt(1 - square * Math.sin(phi) ** 2);
    return [
      n * Math.cos(phi) * Math.cos(lambda),
      n * Math.cos(phi) * Math.sin(lambda),
      n * (1 - square) * Math.sin(phi),
    ] as const;
  };
  const [p, q] = [at(a), at(b)];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

const lat = fc.double({ min: -90, max: 90, noNaN: true });
const lon = fc.double({ min: -180, max: 180, noNaN: true });
const grid = fc.constantFrom(...GRIDS);

describe('a place told coarsely', () => {
  test('is the same for every place of its cell, and its circle holds all of them', () => {
    fc.assert(
      fc.property(
        lat,
        lon,
        grid,
        fc.array(fc.tuple(lat, lon), { minLength: 1, maxLength: 5 }),
        (y, x, side, others) => {
          const told = coarsen({ lat: y, lon: x, uncertainty: 5 }, side);
          expect(Math.abs(told.lat - y)).toBeLessThanOrEqual(side / 2 + 1e-9);
          expect(Math.abs(told.lon - x)).toBeLessThanOrEqual(side / 2 + 1e-9);
          for (const [v, u] of others) {
            // Any place of the same cell, its corners among them.
            const other = { lat: told.lat + ((v / 90) * side) / 2, lon: told.lon + ((u / 180) * side) / 2 };
            expect(chord(told, other) + 5).toBeLessThanOrEqual(told.uncertainty);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  test('is not told to be wider than need be: the corner is within 1 % and a metre of the circle', () => {
    fc.assert(
      fc.property(fc.double({ min: -80, max: 80, noNaN: true }), lon, grid, (y, x, side) => {
        const told = coarsen({ lat: y, lon: x, uncertainty: 1 }, side);
        const corners = [-1, 1].flatMap((v) =>
          [-1, 1].map((u) => chord(told, { lat: told.lat + (v * side) / 2, lon: told.lon + (u * side) / 2 })),
        );
        expect(told.uncertainty).toBeLessThanOrEqual(Math.max(...corners) * 1.01 + 2);
      }),
    );
  });

  test('stays on the map at its ends, and does not depend on where in the cell the place is', () => {
    expect(coarsen({ lat: 90, lon: 180, uncertainty: 1 }, 0.1)).toMatchObject({ lat: 89.95, lon: 179.95 });
    expect(coarsen({ lat: -90, lon: -180, uncertainty: 1 }, 0.01)).toMatchObject({ lat: -89.995, lon: -179.995 });
    const [one, other] = [30.2612, 30.2699].map((y) => coarsen({ lat: y, lon: -98.8721, uncertainty: 8 }, 0.01));
    expect(one).toEqual(other);
    expect(one).toMatchObject({ lat: 30.265, lon: -98.875 });
  });

  test('distances on the ground are never told too short', () => {
    fc.assert(
      fc.property(lat, lon, lat, lon, (a, b, c, d) => {
        const [p, q] = [
          { lat: a, lon: b },
          { lat: c, lon: d },
        ];
        expect(metresBetween(p, q)).toBeGreaterThanOrEqual(chord(p, q) * (1 - 1e-12) - 1e-6);
      }),
    );
  });
});

describe('what leaves the device', () => {
  test('has the exact place only with consent; else the coarse one, and neither the way there nor whom to ask', () => {
    const told = aFind();
    expect(toldPlace(told)).toMatchObject({ lat: 30.2612, coarse: false });
    expect(sendable(told)).toEqual(told);
    const held = aFind({ consent: { contact: false, exactPlace: false, photos: true } });
    const sent = sendable(held);
    const { source, coarse, ...point } = sent.place ?? {};
    expect(point).toEqual({ lat: 30.265, lon: -98.875, uncertainty: expect.any(Number) });
    expect({ source, coarse }).toEqual({ source: 'device', coarse: point });
    expect(sent.place?.uncertainty).toBeGreaterThan(700);
    expect(JSON.stringify(sent)).not.toMatch(/30\.2612|98\.8721|low crossing|555-0142|Beispiel|Call first/);
  });

  test('is not made coarser by whoever receives it and tells of it again', () => {
    const sent = sendable(aFind({ consent: { contact: false, exactPlace: false, photos: true } }));
    expect(sendable(sent)).toEqual(sent);
    expect(toldPlace(sent)).toMatchObject({ ...sent.place?.coarse, coarse: true });
  });

  test('has the coarse place that the person chose', () => {
    const coarse = { lat: 30.25, lon: -98.85, uncertainty: 8000 };
    const { place, ...rest } = aFind({ consent: { contact: true, exactPlace: false, photos: true } });
    const find = { ...rest, ...(place ? { place: { ...place, coarse } } : {}) };
    expect(sendable(find).place).toEqual({ ...coarse, source: 'device', coarse });
    expect(toldPlace({ consent: rest.consent })).toBeUndefined();
  });
});
