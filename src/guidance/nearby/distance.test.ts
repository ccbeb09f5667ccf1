import { describe, expect, test } from 'vitest';
import golden from '../../../tests/reference/data/geodesics.json' with { type: 'json' };
import { greatCircle, toSegment } from './distance.ts';
import type { Position } from './types.ts';

const at = (position: readonly number[]) => position as unknown as Position;
/** By how much a sphere of the mean radius can differ from the ellipsoid, seen over all directions. */
const SPHERE = 0.006;

describe('distances on a sphere', () => {
  // Rosetta Code, "Haversine formula": airports of Nashville and Los Angeles, radius 6371.0 km.
  test('match a published worked example to the millimetre', () => {
    expect(greatCircle([-86.67, 36.12], [-118.4, 33.94])).toBeCloseTo(2_886_444.443, 3);
  });

  test.each(golden.pairs)('from $a to $b are within 0.6 % of the ellipsoid', ({ a, b, metres }) => {
    expect(Math.abs(greatCircle(at(a), at(b)) - metres)).toBeLessThanOrEqual(SPHERE * metres + 0.01);
  });

  test.each(golden.edges)('from $place to the edge $from $to are within 0.6 % of the ellipsoid', (one) => {
    const { place, from, to, metres } = one;
    // The nearest point is that of a straight line in longitude and latitude.
    expect(Math.abs(toSegment(at(place), at(from), at(to)) - metres)).toBeLessThanOrEqual(SPHERE * metres + 0.5);
    expect(toSegment(at(place), at(to), at(from))).toBeCloseTo(toSegment(at(place), at(from), at(to)), 3);
  });

  test('do not care on which side of the antimeridian a position is written', () => {
    expect(greatCircle([179.9, 10], [-179.9, 10])).toBeCloseTo(greatCircle([179.9, 10], [180.1, 10]), 6);
    expect(toSegment([-179.9, 10], [179.5, 9], [179.5, 11])).toBeCloseTo(greatCircle([180.1, 10], [179.5, 10]), -2);
  });

  test('are those to an end where the foot of the perpendicular lies beyond it, and none on the edge', () => {
    expect(toSegment([3, 0], [0, 0], [1, 0])).toBeCloseTo(greatCircle([3, 0], [1, 0]), 3);
    expect(toSegment([0.5, 0], [0, 0], [1, 0])).toBeLessThan(0.001);
    expect(toSegment([2, 2], [1, 1], [1, 1])).toBeCloseTo(greatCircle([2, 2], [1, 1]), 3);
  });
});
