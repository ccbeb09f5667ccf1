import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crossesItself, measure } from '../../tests/reference/outline.ts';
import { type Curve, pointsOf } from './geometry.ts';
import { LEAF_SHAPES, type LeafShape, leafOf } from './leaf.ts';
import { along, put } from './leaf-pose.ts';
import { inside, VEINS, veinsOf } from './leaf-veins.ts';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plain = fc.record({
  ratio: share(0.8, 12),
  widest: share(0.22, 0.75),
  base: fc.constantFrom('wedge', 'narrowed', 'rounded', 'straight', 'sheath'),
  tip: fc.constantFrom('pointed', 'long-pointed', 'blunt', 'rounded', 'notched'),
}) satisfies fc.Arbitrary<LeafShape>;
const lobed = fc.record({
  ratio: share(0.9, 2),
  widest: share(0.3, 0.5),
  base: fc.constantFrom('heart', 'arrow', 'shield'),
  tip: fc.constantFrom('pointed', 'long-pointed', 'blunt', 'rounded'),
  lobes: share(0.12, 0.36),
  inset: share(0, 0.15),
  sinus: share(8, 80),
}) satisfies fc.Arbitrary<LeafShape>;
const any: fc.Arbitrary<LeafShape> = fc.oneof(plain, lobed);
const outlineOf = (shape: LeafShape, steps = 16) => pointsOf(leafOf(shape, 100).blades[0] as Curve, steps);

test('a leaf is as wide, for its length, and widest where it was asked to be', () => {
  fc.assert(
    fc.property(any, (shape) => {
      const { ratio, widest } = measure(outlineOf(shape, 40));
      expect(ratio / shape.ratio).toBeCloseTo(1, 1);
      expect(Math.abs(widest - shape.widest)).toBeLessThan(0.06);
    }),
    { numRuns: 80 },
  );
});

test('what lies below the stalk is the lobes and the way from the notch to the stalk', () => {
  fc.assert(
    fc.property(lobed, (shape) => {
      const { below } = measure(outlineOf(shape));
      expect(below).toBeCloseTo(shape.lobes + shape.inset, 1);
    }),
    { numRuns: 60 },
  );
});

test('an outline is closed, the same on both sides, and does not cross itself', () => {
  fc.assert(
    fc.property(any, (shape) => {
      const points = outlineOf(shape, 6);
      const [first, last] = [points[0], points[points.length - 1]];
      expect([last?.[0], last?.[1]]).toEqual([
        expect.closeTo(first?.[0] ?? Number.NaN),
        expect.closeTo(first?.[1] ?? Number.NaN),
      ]);
      for (const [i, [x, y]] of points.entries()) {
        const other = points[points.length - 1 - i];
        expect(other?.[0]).toBeCloseTo(-x);
        expect(other?.[1]).toBeCloseTo(y);
      }
      expect(crossesItself(points.slice(0, -1))).toBe(false);
    }),
    { numRuns: 60 },
  );
});

test('a long point is sharper than a point, and a point sharper than a blunt or round tip', () => {
  const angles = (['long-pointed', 'pointed', 'blunt', 'rounded'] as const).map(
    (tip) => measure(outlineOf({ ratio: 1.5, widest: 0.4, base: 'rounded', tip }, 40)).tipAngle,
  );
  expect(angles).toEqual(angles.toSorted((a, b) => a - b));
  expect(angles[1]).toBeLessThan(90);
  expect(angles[2]).toBeGreaterThan(90);
});

test('teeth, waves and lobes are cut inwards: the blade keeps its bounds', () => {
  const whole: LeafShape = { ratio: 1.4, widest: 0.42, base: 'rounded', tip: 'pointed' };
  const bare = outlineOf(whole, 40);
  for (const edge of ['toothed', 'wavy', 'lobed'] as const) {
    const points = outlineOf({ ...whole, edge });
    expect(Math.max(...points.map(([x]) => x))).toBeLessThan(Math.max(...bare.map(([x]) => x)) * 1.06);
    expect(crossesItself(points.slice(0, -1))).toBe(false);
  }
});

test('with a stalk on the underside the notch stays open, and the stalk joins inside the blade', () => {
  const shape: LeafShape = { ratio: 1.1, widest: 0.34, base: 'heart', lobes: 0.26, sinus: 84, tip: 'pointed' };
  expect(inside(outlineOf({ ...shape, inset: 0.2 }), [0, 10])).toBe(true);
  expect(inside(outlineOf({ ...shape, inset: 0.2 }), [0, 30])).toBe(false);
  expect(inside(outlineOf(shape), [0, 10])).toBe(false);
});

test('a divided leaf has as many leaflets as it was asked for', () => {
  for (const kind of ['pedate', 'palmate', 'pinnate'] as const) {
    const leaf = leafOf({ ratio: 3, widest: 0.5, base: 'wedge', tip: 'pointed', divided: { kind, leaflets: 7 } }, 80);
    expect(leaf.blades).toHaveLength(7);
  }
});

test('veins stay on the blade', () => {
  for (const [form, shape] of LEAF_SHAPES) {
    const outline = outlineOf(shape, 24);
    for (const kind of VEINS) {
      const stray = veinsOf(leafOf(shape, 100), kind)
        .flatMap((vein) => pointsOf(vein, 6).slice(1, -1))
        .filter(([x, y]) => !inside(outline, [x * 0.97, y]) && !inside(outline, [x, y * 0.97]));
      expect(stray, `${form}, ${kind}`).toEqual([]);
    }
  }
});

test('a leaf laid along a straight line upward is the leaf itself', () => {
  const blade = leafOf({ ratio: 6, widest: 0.4, base: 'wedge', tip: 'pointed' }, 60).blades[0] as Curve;
  const laid = along(blade, [
    [0, 0],
    [0, -20],
    [0, -40],
    [0, -60],
  ]);
  const [a, b] = [measure(pointsOf(blade, 20)), measure(pointsOf(laid, 20))];
  expect(b.ratio).toBeCloseTo(a.ratio, 1);
  expect(b.widest).toBeCloseTo(a.widest, 1);
});

test('a leaf set down turned by a half turn points down', () => {
  const leaf = leafOf({ ratio: 2, widest: 0.4, base: 'wedge', tip: 'pointed' }, 60);
  const [tip] = put([leaf.tip], [10, 20], 180);
  expect(tip?.[0]).toBeCloseTo(10);
  expect(tip?.[1]).toBeCloseTo(80);
});
