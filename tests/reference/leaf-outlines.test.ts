// The outlines of leaves against the words of published glossaries: tests/reference/data/leaf_terms.json says where each
// was read. How a word is turned into a number is ours and stands at each check.
import { expect, test } from 'vitest';
import { type Curve, LEAF_SHAPES, type LeafShape, type LeafTip, leafOf, pointsOf } from '../../src/drawing/index.ts';
import TERMS from './data/leaf_terms.json' with { type: 'json' };
import { crossesItself, measure } from './outline.ts';

const outline = (shape: LeafShape) => pointsOf(leafOf(shape, 100).blades[0] as Curve, 24);
const measured = (form: string) => measure(outline(LEAF_SHAPES.get(form) as LeafShape));

test('every term that names one of our forms is one we draw', () => {
  const forms = TERMS.terms.flatMap(({ form }) => (form === null ? [] : [form]));
  expect(forms.filter((form) => !LEAF_SHAPES.has(form))).toEqual([]);
  expect(TERMS.terms.filter(({ source }) => !Object.hasOwn(TERMS.sources, source))).toEqual([]);
});

test('linear: very narrow, sides parallel (Flora of Australia); of about the same width throughout (Parsons)', () => {
  const { ratio, widthAt } = measured('linear');
  expect(ratio).toBeGreaterThan(10);
  for (const share of [0.2, 0.3, 0.4, 0.5, 0.6]) expect(widthAt(share)).toBeGreaterThan(0.93);
});

test('lanceolate: about four times as long as broad, broadest in the lower half (Flora of Australia), about one third from the base (1995 list)', () => {
  const { ratio, widest, widthAt, tipAngle } = measured('lance');
  expect(ratio).toBeGreaterThan(3.5);
  expect(ratio).toBeLessThan(4.5);
  expect(Math.abs(widest - 1 / 3)).toBeLessThan(0.05);
  expect(widthAt(0.8)).toBeLessThan(widthAt(0.5));
  expect(tipAngle).toBeLessThan(45);
});

test('ovate: like the section of an egg, attached by the wider end (Flora of Australia)', () => {
  const { ratio, widest, widthAt } = measured('oval');
  expect(ratio).toBeGreaterThan(1);
  expect(ratio).toBeLessThan(2.5);
  expect(widest).toBeLessThan(0.5);
  expect(widthAt(0.2)).toBeGreaterThan(widthAt(0.8));
});

test('elliptical: twice or thrice as long as broad, both ends alike (Parsons), widest at the centre (Flora of Australia)', () => {
  const { ratio, widest, widthAt } = measure(outline({ ratio: 2.5, widest: 0.5, base: 'rounded', tip: 'rounded' }));
  expect(ratio).toBeGreaterThan(2);
  expect(ratio).toBeLessThan(3);
  expect(widest).toBeCloseTo(0.5, 1);
  for (const share of [0.1, 0.2, 0.3, 0.4]) expect(Math.abs(widthAt(share) - widthAt(1 - share))).toBeLessThan(0.12);
});

test('cordate: broad and notched at the base (Flora of Australia); ovate, with a heart-shaped base (Parsons)', () => {
  const { ratio, widest, below, tipAngle } = measured('heart');
  expect(ratio).toBeGreaterThan(0.9);
  expect(ratio).toBeLessThan(1.6);
  expect(widest).toBeLessThan(0.5);
  expect(below).toBeGreaterThan(0.1);
  expect(tipAngle).toBeLessThan(100);
});

test('sagittate: acute ears turned downward, the body tapering upward (Parsons)', () => {
  const points = outline(LEAF_SHAPES.get('arrowhead') as LeafShape);
  const { below, widthAt } = measure(points);
  expect(below).toBeGreaterThan(0.25);
  expect(widthAt(0.9)).toBeLessThan(widthAt(0.6));
  // The ends of the ears are points: no piece of the outline is flat there, and they lie well away from the stalk.
  const lowest = points.reduce((best, point) => (point[0] > 0 && point[1] > best[1] ? point : best), [
    0, 0,
  ] as readonly [number, number]);
  const ear = points.filter(([x, y]) => x > 0 && y > lowest[1] - 2);
  expect(Math.max(...ear.map(([x]) => x)) - Math.min(...ear.map(([x]) => x))).toBeLessThan(4);
  expect(lowest[0]).toBeGreaterThan(10);
});

test('hastate: narrow and pointed, two basal lobes spreading approximately at right angles (Flora of Australia)', () => {
  const { widest, widthAt, tipAngle } = measure(
    outline({ ratio: 1.5, widest: 0, base: 'spear', lobes: 0.1, tip: 'pointed' }),
  );
  expect(widest).toBeLessThan(0.05);
  expect(widthAt(0.35)).toBeLessThan(0.6);
  expect(tipAngle).toBeLessThan(90);
});

test('orbicular: rounded in outline, with length equal to width (1995 list)', () => {
  for (const form of ['round', 'shield']) {
    const { ratio, widest } = measured(form);
    expect(ratio).toBeCloseTo(1, 1);
    expect(widest).toBeCloseTo(0.5, 1);
  }
});

test('peltate: rounded, the stalk attached to the centre or near it (Parsons), the edge unbroken', () => {
  const points = outline(LEAF_SHAPES.get('shield') as LeafShape);
  const radii = points.map(([x, y]) => Math.hypot(x, y));
  expect(Math.min(...radii)).toBeGreaterThan(45);
  expect(Math.max(...radii)).toBeLessThan(55);
});

test('obovate and spathulate: like ovate but attached at the narrower end, broad at the tip, narrowed to the base (Flora of Australia)', () => {
  const { widest, widthAt } = measured('wedge');
  expect(widest).toBeGreaterThan(0.6);
  expect(widthAt(0.15)).toBeLessThan(0.3);
  expect(widthAt(0.9)).toBeGreaterThan(0.5);
});

test('truncate: an abruptly transverse end, as if cut off (Flora of Australia)', () => {
  const { widthAt } = measure(outline({ ratio: 1.5, widest: 0.4, base: 'straight', tip: 'pointed' }));
  expect(widthAt(0.01)).toBeGreaterThan(0.6);
});

test('acute: 45 to 90 degrees; attenuate: concave, below 45; obtuse: blunt, above 90 (Northern Ontario Plant Database)', () => {
  const tip = (name: LeafTip) => measure(outline({ ratio: 1.7, widest: 0.42, base: 'rounded', tip: name }));
  expect(tip('pointed').tipAngle).toBeGreaterThan(45);
  expect(tip('pointed').tipAngle).toBeLessThan(90);
  expect(tip('long-pointed').tipAngle).toBeLessThan(45);
  // Concave: half way to the tip the blade is narrower than straight sides would leave it.
  expect(tip('long-pointed').widthAt(0.9)).toBeLessThan((1 - 0.9) / (1 - 0.42));
  expect(tip('blunt').tipAngle).toBeGreaterThan(90);
});

test('no form that is drawn crosses its own outline', () => {
  const crossing = [...LEAF_SHAPES].filter(([, shape]) =>
    leafOf(shape, 100).blades.some((blade) => crossesItself(pointsOf(blade, 8))),
  );
  expect(crossing.map(([form]) => form)).toEqual([]);
});
