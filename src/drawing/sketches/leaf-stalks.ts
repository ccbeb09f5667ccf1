// How a leaf is joined, and what its stalk is like. The leaf is seen from behind, the stalk in front of it.
import type { Mark } from '../../key/index.ts';
import { add, curved, ellipse, type Point, pointsOf, straight } from '../geometry.ts';
import { LEAF_SHAPES, type LeafShape, leafOf } from '../leaf.ts';
import { along, put } from '../leaf-pose.ts';
import type { Veins } from '../leaf-veins.ts';
import { bookOf, type Page } from './book.ts';
import { drawn, HEART, leafAt, loop, ripples, sweep, tube, way } from './leaf-strokes.ts';

const BIG: LeafShape = { ...HEART, ratio: 1.08, lobes: 0.26, sinus: 84, widest: 0.34 };
/** The same blade, its stalk a little inside the notch. */
const TRAP: LeafShape = { ...BIG, inset: 0.26 };
const SPOON: LeafShape = { ratio: 2.1, widest: 0.7, base: 'narrowed', tip: 'rounded' };
const NARROW = LEAF_SHAPES.get('strap') as LeafShape;

/** A stem from bottom to top, with the ring of a node. */
const stem = (x: number, width = 11): Mark[] => [
  ['face', straight(way(x - width / 2, 95, x - width / 2, 2, x + width / 2, 2, x + width / 2, 95), true)],
];
/** A blade that leaves the stem to the right and arches over. */
const arching = (at: Point, length = 62, ratio = 5.4, shape = NARROW): string =>
  curved(
    along(leafOf({ ...shape, ratio, parallel: 0.3, tip: 'pointed' }, length).blades[0] ?? [], [
      at,
      add(at, [14, -26]),
      add(at, [30, -36]),
      add(at, [50, -20]),
    ]),
    true,
  );
/** A leaf of a river cane, broad right above its neck. */
const CANE_LEAF: LeafShape = { ratio: 2.9, widest: 0.3, base: 'rounded', tip: 'pointed' };
const NECK = straight(way(47, 57, 58, 37.5, 64, 41, 52.5, 60), true);
const SLEEVE = `${sweep(36, 95, 35.5, 70, 36, 52, 42, 49, 49, 50, 50.5, 70, 51, 95)}Z`;

/** A leaf from behind, its stalk in front; the place of the join and the edge of the notch are accented. */
function joined(shape: LeafShape, at: Point, veins: Veins): Mark[] {
  const leaf = leafOf(shape, 72);
  const right = (leaf.blades[0] ?? []).slice(0, 4);
  const notch = [...right.map(([x, y]): Point => [-x, y]).reverse(), ...right.slice(1)];
  return [
    ...leafAt(leaf, 72, at, { veins }),
    ['trace', curved(put(notch, at))],
    ...tube([[46, 96], [47, (at[1] + 96) / 2], at], 5, 4),
    ['mark', ellipse(at, 6)],
    ['solid', ellipse(at, 2.4)],
  ];
}

const joins: Record<string, () => Page> = {
  sheath: () => [
    drawn(
      stem(43),
      ['face', arching([45, 50])],
      ['face', SLEEVE],
      ['mark', SLEEVE],
      ['fine', sweep(40, 93, 40, 72, 40, 56) + sweep(46, 93, 46, 72, 46, 56)],
    ),
    'A long blade leaves the stem; its base wraps round the stem like a sleeve.',
    'Una hoja larga sale del tallo; su base lo envuelve como una funda.',
  ],
  'sheath-stalk': () => [
    drawn(
      stem(43),
      ['face', SLEEVE],
      ['fine', sweep(40, 93, 40, 72, 40, 56) + sweep(46, 93, 46, 72, 46, 56)],
      leafAt(CANE_LEAF, 42, [61.5, 39], { turn: 34 }),
      ['face', NECK],
      ['mark', NECK],
    ),
    'A blade on a short narrow neck, which stands on the sleeve round the stem.',
    'Una hoja sobre un cuello corto y angosto, que sale de la funda que rodea el tallo.',
  ],
  'at-edge': () => [
    drawn(joined(BIG, [48, 59], 'from-base')),
    'A heart-shaped leaf from behind: the stalk joins right at the notch, where the edge turns in.',
    'Una hoja con forma de corazón vista por detrás: el tallito se une justo en la muesca, donde entra el borde.',
  ],
  underneath: () => [
    drawn(joined(TRAP, [48, 40.3], 'from-centre')),
    'A heart-shaped leaf from behind: the stalk runs past the notch and joins well inside it, on the underside of the blade.',
    'Una hoja con forma de corazón vista por detrás: el tallito pasa la muesca y se une más adentro, por debajo de la hoja.',
  ],
  'no-stalk': () => [
    drawn(
      stem(30),
      leafAt({ ratio: 2.3, widest: 0.42, base: 'straight', tip: 'pointed' }, 58, [36, 52], {
        turn: 78,
        veins: 'feather',
      }),
      ['trace', sweep(36, 40, 37, 52, 36, 64)],
    ),
    'A leaf that sits right on the stem, with no stalk and no sleeve.',
    'Una hoja que nace directo del tallo, sin tallito ni funda.',
  ],
  tapers: () => [
    drawn(
      leafAt(SPOON, 88, [48, 92], { veins: 'feather' }),
      [
        'mark',
        straight(
          put(
            pointsOf(leafOf(SPOON, 88).blades[0] ?? [], 7).filter(([, y]) => y > -40),
            [48, 92],
          ),
          true,
        ),
      ],
      ['line', straight(way(48, 92, 47.5, 96))],
    ),
    'A leaf from behind: the blade grows slowly narrower until it is the stalk, with no joint to see.',
    'Una hoja vista por detrás: se va angostando hasta volverse tallito, sin que se vea dónde se unen.',
  ],
};

// Lengths of stalk, standing up, cut across at their upper end: the cut face is what they are about.
const GUTTER = loop(32, 41, 26, 33, 28, 21, 38, 11, 48, 9, 58, 11, 68, 21, 70, 33, 64, 41, 58, 32, 48, 27, 38, 32);
const FLOAT = loop(49.5, 47, 46.5, 52, 38, 60, 33.5, 70, 38, 80, 47, 88, 56, 80, 62, 70, 58.5, 60, 53.5, 52);
const FLOATING_BLADE = loop(50, 46, 36, 44, 22, 34, 23, 17, 37, 6, 54, 5, 71, 9, 80, 22, 75, 37, 62, 44);
const stalks: Record<string, () => Page> = {
  round: () => [
    drawn(
      ['face', 'M31 27L33 91Q48 96 63 91L65 27Z'],
      ['tint', 'M58 36L57 92L62 91L64 32Z'],
      ['face', ellipse([48, 26], 17, 13)],
      ['mark', ellipse([48, 26], 17, 13)],
    ),
    'A piece of stalk cut across: the cut is a full circle and the side is even, like a rod.',
    'Un trozo de tallito cortado: el corte es un círculo entero y el costado es parejo, como una varilla.',
  ],
  channelled: () => [
    drawn(
      ['face', 'M29 22L33 92Q37 96 41 92Q44 87 48 87Q52 87 55 92Q59 96 63 92L67 22Z'],
      ['tint', 'M39 32L44 89Q48 86 52 89L57 32Z'],
      ['line', straight(way(33, 38, 38, 94)) + straight(way(63, 38, 58, 94))],
      ['face', GUTTER],
      ['mark', GUTTER],
    ),
    'A piece of stalk cut across: the cut is a half moon and a groove runs down the side.',
    'Un trozo de tallito cortado: el corte es una media luna y por el costado baja un canal.',
  ],
  angled: () => [
    drawn(
      ['face', straight(way(25, 16, 32, 86, 49, 94, 65, 86, 71, 16), true)],
      ['tint', straight(way(49, 40, 49, 94, 65, 86, 71, 16), true)],
      ['line', straight(way(48, 40, 49, 94))],
      ['face', straight(way(25, 15, 71, 15, 48, 41), true)],
      ['mark', straight(way(25, 15, 71, 15, 48, 41), true)],
    ),
    'A piece of stalk cut across: the cut is a triangle and a sharp ridge runs down the side.',
    'Un trozo de tallito cortado: el corte es un triángulo y por el costado baja un filo marcado.',
  ],
  swollen: () => [
    drawn(
      ripples(73, 4, 33),
      ripples(73, 63, 92),
      [
        'fine',
        [36, 42, 48, 54, 60].map((x) => sweep(47, 87, (x + 47) / 2, 90, x, 96)).join('') +
          straight(way(41, 90, 37, 92)) +
          straight(way(55, 90, 60, 91)),
      ],
      ['face', FLOATING_BLADE],
      [
        'fine',
        [-19, 19].map((out) => sweep(50, 45, 51 + out * 0.9, 30, 51 + out * 0.7, 12)).join('') +
          sweep(50, 45, 51, 26, 52, 8),
      ],
      ['face', FLOAT],
      ['mark', FLOAT],
      ['fine', sweep(44, 80, 40, 71, 44, 61) + sweep(50, 83, 49, 70, 50, 57)],
    ),
    'A broad round leaf over the water; its stalk is swollen into a float, narrow above and below.',
    'Una hoja ancha y redonda sobre el agua; su tallito está hinchado como un flotador, angosto arriba y abajo.',
  ],
  none: () => [
    drawn(
      leafAt({ ratio: 1.5, widest: 0.45, base: 'rounded', tip: 'rounded' }, 62, [48, 66], { veins: 'from-base' }),
      ['face', straight(way(4, 66, 92, 66, 92, 78, 4, 78), true)],
      ['trace', straight(way(34, 66, 62, 66))],
    ),
    'A leaf that sits right on a creeping stem, with no stalk between.',
    'Una hoja que nace directo de un tallo rastrero, sin tallito.',
  ],
};
export const LEAF_STALKS = [bookOf('leaf-stalk', joins), bookOf('leaf-stalk-form', stalks)];
