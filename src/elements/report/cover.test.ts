import { expect, test } from 'vitest';
import { COVER, COVER_CLASSES, middleOf } from '../../report/find/index.ts';
import { coverPath, SIDE } from './cover.ts';

/** Area of closed paths of M, h, v and z by the shoelace formula, and the box they lie in. */
function measured(path: string): { area: number; low: number; high: number } {
  let area = 0;
  let low = Infinity;
  let high = -Infinity;
  for (const one of path.split('z').filter(Boolean)) {
    const corners: [number, number][] = [];
    for (const [, pen, first, second] of one.matchAll(/([Mhv])(-?\d+)(?: (-?\d+))?/g)) {
      const [x, y] = corners.at(-1) ?? [0, 0];
      const by = Number(first);
      corners.push(pen === 'M' ? [by, Number(second)] : pen === 'h' ? [x + by, y] : [x, y + by]);
    }
    const twice = corners.reduce((sum, [x, y], i) => {
      const [nx, ny] = corners[(i + 1) % corners.length] as [number, number];
      return sum + x * ny - nx * y;
    }, 0);
    area += Math.abs(twice) / 2;
    low = Math.min(low, ...corners.flat());
    high = Math.max(high, ...corners.flat());
  }
  return { area, low, high };
}

// "Daubenmire cover class method", Rangelands Gateway, University of Arizona and partners: classes and midpoints.
test.each([
  [1, 0, 5, 2.5],
  [2, 5, 25, 15],
  [3, 25, 50, 37.5],
  [4, 50, 75, 62.5],
  [5, 75, 95, 85],
  [6, 95, 100, 97.5],
] as const)('class %i is %i to %i %% of the ground, and %f %% of its square is drawn dark', (id, from, to, middle) => {
  expect(COVER[id]).toEqual([from, to]);
  expect(middleOf(id)).toBe(middle);
  const { area, low, high } = measured(coverPath(middle));
  expect((100 * area) / SIDE ** 2).toBe(middle);
  expect(low).toBeGreaterThanOrEqual(0);
  expect(high).toBeLessThanOrEqual(SIDE);
});

test('the classes follow on each other from nothing to all', () => {
  const classes = COVER_CLASSES.map((id) => COVER[id]);
  expect(classes[0]?.[0]).toBe(0);
  expect(classes.at(-1)?.[1]).toBe(100);
  for (const [i, [from]] of classes.entries()) if (i > 0) expect(from).toBe(classes[i - 1]?.[1]);
  expect(coverPath(0)).toBe('');
  expect(measured(coverPath(100)).area).toBe(SIDE ** 2);
  expect(coverPath(37.5)).toBe(coverPath(37.5));
});
