// The outline of a leaf from a few numbers. Frame of the blade: the stalk joins at the origin, the tip is up (y below zero).
import { add, type Curve, line, type Point, scaled, spline, turned } from './geometry.ts';
import { cut, lower, upper } from './leaf-sides.ts';

export const LEAF_BASES = [
  'wedge',
  'narrowed',
  'rounded',
  'straight',
  'heart',
  'arrow',
  'spear',
  'shield',
  'sheath',
  'clasping',
] as const;
export type LeafBase = (typeof LEAF_BASES)[number];
export const LEAF_TIPS = ['pointed', 'long-pointed', 'blunt', 'rounded', 'notched'] as const;
export type LeafTip = (typeof LEAF_TIPS)[number];
export const LEAF_EDGES = ['smooth', 'wavy', 'toothed', 'lobed'] as const;
export type LeafEdge = (typeof LEAF_EDGES)[number];

export interface LeafShape {
  /** Length over width, lobes at the base included. */
  readonly ratio: number;
  /** Where the blade is widest: share of its length from the base, 0 to 1. */
  readonly widest: number;
  readonly base: LeafBase;
  readonly tip: LeafTip;
  readonly edge?: LeafEdge;
  /** Lobes at the base below the notch, as a share of the blade's length; of a shield what lies below the stalk. */
  readonly lobes?: number;
  /** How far inside the notch the stalk joins, as a share of the blade's length: 0 is right at the notch. */
  readonly inset?: number;
  /** Angle of the notch, in degrees: 8 is a slit, 60 open. */
  readonly sinus?: number;
  /** Share of the length along which the sides run side by side, about the widest place. */
  readonly parallel?: number;
  /** Separate leaflets; `ratio` and what follows then describe one leaflet. */
  readonly divided?: { readonly kind: 'pedate' | 'palmate' | 'pinnate'; readonly leaflets: number };
}

export interface Leaf {
  readonly shape: LeafShape;
  /** From the tip to the end of the lobes, in units of the drawing. */
  readonly length: number;
  /** Closed outlines: one, or one for each leaflet. They start at the notch or base and go up the right side. */
  readonly blades: readonly Curve[];
  /** From where each blade is held to its tip; of a divided leaf also what holds the leaflets, last. */
  readonly midribs: readonly Curve[];
  /** Where the stalk joins: the origin. */
  readonly attachment: Point;
  readonly tip: Point;
}

/** The leaf shapes that an identification key tells apart, by the name of their form; one without a blade is not among them. */
export const LEAF_SHAPES: ReadonlyMap<string, LeafShape> = new Map<string, LeafShape>([
  ['linear', { ratio: 16, widest: 0.4, parallel: 0.5, base: 'sheath', tip: 'long-pointed' }],
  ['strap', { ratio: 10, widest: 0.5, parallel: 0.75, base: 'sheath', tip: 'blunt' }],
  ['lance', { ratio: 4, widest: 0.32, base: 'wedge', tip: 'pointed' }],
  ['oval', { ratio: 1.7, widest: 0.42, base: 'rounded', tip: 'pointed' }],
  ['heart', { ratio: 1.2, widest: 0.3, base: 'heart', lobes: 0.2, sinus: 50, tip: 'pointed' }],
  ['arrowhead', { ratio: 1.45, widest: 0.22, base: 'arrow', lobes: 0.34, sinus: 66, tip: 'pointed' }],
  ['round', { ratio: 1, widest: 0.5, base: 'heart', lobes: 0.46, sinus: 9, tip: 'rounded' }],
  ['shield', { ratio: 1, widest: 0.5, base: 'shield', lobes: 0.5, tip: 'rounded' }],
  ['wedge', { ratio: 1.8, widest: 0.74, base: 'narrowed', tip: 'rounded' }],
  ['divided', { ratio: 3, widest: 0.5, base: 'wedge', tip: 'pointed', divided: { kind: 'pedate', leaflets: 7 } }],
]);

const mirrored = (curve: Curve): Point[] => [...curve].reverse().map(([x, y]): Point => [-x, y]);

function blade(shape: LeafShape, length: number): Leaf {
  const { lobes = 0, inset = 0, parallel = 0, widest } = shape;
  const bottom = (lobes + inset) * length;
  const top = bottom - length;
  const h = length / shape.ratio / 2;
  const [low, high] = [Math.max(widest - parallel / 2, 0.02), Math.min(widest + parallel / 2, 0.98)];
  const [from, to] =
    shape.base === 'spear'
      ? [bottom - length * 0.3, bottom - length * 0.3]
      : [bottom - low * length, bottom - high * length];
  const side = lower(shape, length, h, from);
  const shoulder = side[side.length - 1] as Point;
  if (to < from) side.push(...line(shoulder, [shoulder[0], to]));
  side.push(...upper(shape.tip, shoulder[0], to, top));
  const right = cut(side, shape.edge ?? 'smooth', h);
  const tip: Point = side[side.length - 1] as Point;
  return {
    shape,
    length,
    blades: [[...right, ...mirrored(right).slice(1)]],
    midribs: [[[0, 0], ...line([0, 0], tip)]],
    attachment: [0, 0],
    tip,
  };
}

/** Where each leaflet of a divided leaf is held, how it is turned and how long it is, in shares of the whole. */
function leaflets({
  kind,
  leaflets: count,
}: NonNullable<LeafShape['divided']>): { at: Point; turn: number; size: number }[] {
  const side = Math.max(1, Math.floor(count / 2));
  return Array.from({ length: count }, (_, i) => {
    const rank = i - (count - 1) / 2;
    const share = Math.abs(rank) / side;
    const sign = Math.sign(rank);
    if (kind === 'palmate')
      return { at: [0, 0], turn: rank * (150 / Math.max(count - 1, 1)), size: 0.8 - 0.25 * share ** 2 };
    if (kind === 'pedate') {
      // Two arms go out from the stalk and bend back; the leaflets stand on them, the middle one on the stalk itself.
      const at: Point = [sign * 0.26 * share ** 0.8, -0.12 * share + 0.3 * share ** 2.4];
      return { at, turn: sign * (18 + 88 * share) * (rank ? 1 : 0), size: 0.72 - 0.3 * share };
    }
    // Pinnate: pairs along a line, the last alone at its end.
    const pair = Math.floor(i / 2);
    const pairs = Math.floor((count - 1) / 2) || 1;
    if (i === count - 1 && count % 2) return { at: [0, -0.64], turn: 0, size: 0.36 };
    return { at: [0, -0.14 - (0.46 * pair) / pairs], turn: i % 2 ? 58 : -58, size: 0.36 };
  });
}

/** A leaf of a shape, `length` long from the tip to the end of its lobes. */
export function leafOf(shape: LeafShape, length: number): Leaf {
  if (!shape.divided) return blade(shape, length);
  const { divided, ...one } = shape;
  const set = leaflets(divided).map(({ at, turn, size }) => {
    const move = (point: Point): Point => add(turned(point, turn), scaled(at, length));
    const leaflet = blade(one, size * length);
    return { at: scaled(at, length), outline: leaflet.blades.flat().map(move), rib: leaflet.midribs.flat().map(move) };
  });
  const held = set.map(({ at }) => at);
  const holders =
    divided.kind === 'palmate'
      ? []
      : [
          spline(
            divided.kind === 'pinnate'
              ? [
                  [0, 0],
                  [0, -0.64 * length],
                ]
              : held,
          ),
        ];
  const ends = set.map(({ rib }) => rib[rib.length - 1] as Point);
  return {
    shape,
    length,
    blades: set.map(({ outline }) => outline),
    midribs: [...set.map(({ rib }) => rib), ...holders],
    attachment: [0, 0],
    tip: ends.reduce((best, end) => (end[1] < best[1] ? end : best)),
  };
}
