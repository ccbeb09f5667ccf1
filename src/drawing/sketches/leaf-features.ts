// Attitude, veins, edge: one leaf each time, and what the state is about accented on it.
import type { Mark } from '../../key/index.ts';
import { type Curve, curved, ellipse, type Point, pointAt, pointsOf, straight } from '../geometry.ts';
import { LEAF_SHAPES, type Leaf, type LeafShape, leafOf } from '../leaf.ts';
import { put } from '../leaf-pose.ts';
import type { Veins } from '../leaf-veins.ts';
import { bookOf, type Page } from './book.ts';
import { drawn, HEART, leafAt, OVAL, soil, sweep, tube, way } from './leaf-strokes.ts';

const SHIELD = LEAF_SHAPES.get('shield') as LeafShape;

/** A whole leaf on its stalk, its tip accented. */
function attitude(at: Point, turn: number, flat: number, root: readonly Point[]): Mark[] {
  const leaf = leafOf({ ...HEART, ratio: 1.12 }, 68);
  const right = pointsOf(leaf.blades[0] as Curve, 6);
  const end = right.filter(([, y]) => y < leaf.tip[1] * 0.52);
  return [
    ...tube([...root, at], 5, 3.5),
    ...leafAt(leaf, 68, at, { turn, flat, veins: 'from-base' }),
    ['mark', straight(put(end, at, turn, flat), true)],
  ];
}
const tips: Record<string, () => Page> = {
  down: () => [
    drawn(soil(), attitude([54, 34], 162, 1, way(22, 90, 26, 56, 38, 28))),
    'A heart-shaped leaf hangs from the top of its stalk; its tip points down to the ground.',
    'Una hoja con forma de corazón cuelga de lo alto de su tallito; la punta mira hacia el suelo.',
  ],
  level: () => [
    drawn(soil(), attitude([34, 42], 90, 0.6, way(24, 90, 26, 68, 30, 52))),
    'A heart-shaped leaf lies flat in the air at the top of its stalk; its tip points straight out to the side.',
    'Una hoja con forma de corazón queda horizontal en lo alto de su tallito; la punta mira hacia un lado.',
  ],
  up: () => [
    drawn(soil(), attitude([44, 56], 14, 1, way(24, 90, 28, 78, 38, 64))),
    'A heart-shaped leaf stands upright at the top of its stalk; its tip points to the sky.',
    'Una hoja con forma de corazón se levanta en lo alto de su tallito; la punta mira al cielo.',
  ],
};

const veined = (kind: Veins, rib: boolean): Mark[] =>
  leafAt({ ratio: 1.75, widest: 0.42, base: 'rounded', tip: 'pointed' }, 84, [48, 88], {
    veins: kind,
    vein: 'trace',
    rib: rib ? 'line' : 'face',
  });
const veins: Record<string, () => Page> = {
  parallel: () => [
    drawn(veined('parallel', false), ['trace', straight(way(48, 85, 48, 12))]),
    'A leaf with many equal veins that run side by side from the base to the tip.',
    'Una hoja con muchas venas iguales que corren una junto a otra desde la base hasta la punta.',
  ],
  'parallel-midrib': () => [
    drawn(
      veined('parallel', false).map(([pen, path]): Mark => [pen === 'trace' ? 'fine' : pen, path]),
      ['mark', curved(way(48, 88, 44.5, 60, 46, 30, 48, 5, 50, 30, 51.5, 60, 48, 88), true)],
    ),
    'A leaf with one strong band in the middle; fine veins run side by side along it.',
    'Una hoja con una franja fuerte en medio; las venas finas corren a lo largo, una junto a otra.',
  ],
  feather: () => [
    drawn(veined('feather', true)),
    'A leaf with one middle vein; side veins leave it on both sides all the way up, like a feather.',
    'Una hoja con una vena en medio; de ella salen venas a los dos lados, como en una pluma.',
  ],
  'from-base': () => [
    drawn(veined('from-base', true)),
    'A leaf whose veins all start from one point at the base and arch up to the tip.',
    'Una hoja cuyas venas salen todas de un punto en la base y van en arco hasta la punta.',
  ],
  'from-centre': () => [
    drawn(leafAt(SHIELD, 84, [48, 48], { veins: 'from-centre', vein: 'trace', rib: 'trace' }), [
      'solid',
      ellipse([48, 48], 3.5),
    ]),
    'A round leaf whose veins spread to all sides from its middle, like the spokes of a wheel.',
    'Una hoja redonda cuyas venas salen del centro hacia todos lados, como los rayos de una rueda.',
  ],
  faint: () => [
    drawn(veined('faint', false), ['fine', straight(way(48, 84, 48, 76))]),
    'A leaf whose face is even; hardly any vein is to be seen.',
    'Una hoja de cara pareja; casi no se ve ninguna vena.',
  ],
};

/** The leaf with an edge; only the edge is traced. */
function edged(shape: LeafShape): Mark[] {
  const leaf = leafOf(shape, 84);
  return [
    ...leafAt(leaf, 84, [48, 88], { veins: shape.edge === 'lobed' ? 'faint' : 'feather' }),
    ['trace', curved(put(leaf.blades[0] as Curve, [48, 88]), true)],
  ];
}
const WIDE: LeafShape = { ...OVAL, ratio: 1.35 };
/** A strip whose right side carries barbs that lean up, along a line. */
function saw(side: readonly Point[], count: number): string {
  const points: Point[] = [];
  for (let i = 0; i < count; i++) {
    const [x, y] = pointAt(side, i / count);
    points.push([x + 3, y], [x + 11, y - 9], [x + 3.5, y - 6.5]);
  }
  return straight([...points, ...[...side].reverse()], true);
}
/** A leaf whose edge rises and falls: a fold runs in from each dip, its lower side in shade. */
function ruffled(leaf: Leaf, at: Point): Mark[] {
  const outline = pointsOf(leaf.blades[0] as Curve, 4);
  const side = outline.slice(0, (outline.length + 1) / 2);
  const folds = [1, 2, 3, 4, 5].flatMap((i) => {
    const [dip, crest] = [pointAt(side, i / 6), pointAt(side, (i - 0.45) / 6)];
    const inner: Point = [dip[0] * 0.5, dip[1] + 9];
    return [1, -1].map((sign) => [inner, crest, dip].map(([x, y]): Point => [at[0] + sign * x, at[1] + y]));
  });
  return [
    ...leafAt(leaf, leaf.length, at),
    ['tint', folds.map((fold) => straight(fold, true)).join('')],
    ['fine', folds.map(([inner, , dip]) => straight([inner as Point, dip as Point])).join('')],
    ['trace', curved(put(leaf.blades[0] as Curve, at), true)],
  ];
}
const edges: Record<string, () => Page> = {
  smooth: () => [
    drawn(edged(WIDE)),
    'A leaf whose edge is one even line, without teeth.',
    'Una hoja cuyo borde es una línea pareja, sin dientes.',
  ],
  wavy: () => [
    drawn(ruffled(leafOf({ ...WIDE, edge: 'wavy' }, 84), [48, 88])),
    'A leaf whose edge goes up and down in soft waves, like a ruffle.',
    'Una hoja cuyo borde sube y baja en ondas suaves, como un olán.',
  ],
  rough: () => [
    drawn(
      leafAt(WIDE, 80, [36, 86], { veins: 'feather' }),
      ['face', ellipse([66, 62], 27)],
      ['line', sweep(85, 81, 92, 90)],
      ['fine', sweep(46, 78, 45, 62, 48, 46) + sweep(53, 84, 52, 62, 56, 40)],
      ['mark', saw(way(63, 86, 62, 74, 62, 62, 64, 50, 67, 39), 6)],
    ),
    'A leaf with an even edge; under a lens the edge carries tiny sharp barbs that lean toward the tip.',
    'Una hoja de borde parejo; con una lupa se ven en el borde púas muy pequeñas y filosas, inclinadas hacia la punta.',
  ],
  toothed: () => [
    drawn(edged({ ...WIDE, edge: 'toothed' })),
    'A leaf whose edge is cut into many small teeth, like a saw.',
    'Una hoja cuyo borde tiene muchos dientes pequeños, como un serrucho.',
  ],
  lobed: () => [
    drawn(edged({ ...WIDE, ratio: 1.2, edge: 'lobed' })),
    'A leaf cut in from the sides into a few large lobes.',
    'Una hoja cortada desde los lados en unos cuantos lóbulos grandes.',
  ],
};

export const LEAF_FEATURES = [bookOf('leaf-tip', tips), bookOf('leaf-veins', veins), bookOf('leaf-edge', edges)];
