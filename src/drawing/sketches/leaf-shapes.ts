// Shape and base: the whole leaf, seen flat.
import type { Mark } from '../../key/index.ts';
import { type Curve, curved, ellipse, from, line, type Point, smooth, straight } from '../geometry.ts';
import { LEAF_SHAPES, type LeafShape, leafOf } from '../leaf.ts';
import { along } from '../leaf-pose.ts';
import { bookOf, type Page } from './book.ts';
import { drawn, leafAt, lowerPart, soil, sweep, way } from './leaf-strokes.ts';

const shapeOf = (form: string): LeafShape => LEAF_SHAPES.get(form) as LeafShape;
const stalk = (...points: Point[]): Mark => ['line', smooth(points)];

/** A grass-like leaf bent over at its tip, on a piece of its stem. */
function bent(shape: LeafShape, length: number, at: Point, lean: number): Mark[] {
  const leaf = leafOf(shape, length);
  const spine: Curve = [
    at,
    [at[0], at[1] - length * 0.4],
    [at[0] + lean * 0.2, at[1] - length * 0.75],
    [at[0] + lean, at[1] - length * 0.96],
  ];
  return [
    ['mark', curved(along(leaf.blades[0] as Curve, spine), true)],
    ['fine', curved(along([[0, -2], ...line([0, -2], [0, -length * 0.9])], spine))],
  ];
}

/** Bare stems: foot, height of the top, place of the top. */
const STEMS = [
  [26, 24, 20],
  [38, 8, 36],
  [50, 14, 52],
  [62, 5, 66],
  [74, 28, 81],
] as const;

const shapes: Record<string, () => Page> = {
  linear: () => [
    drawn(bent({ ...shapeOf('linear'), ratio: 19 }, 98, [32, 93], 44)),
    'A very narrow leaf, many times longer than wide, its sides side by side, ending in a long thin point.',
    'Una hoja muy angosta, muchas veces más larga que ancha, de lados parejos, que acaba en una punta larga y fina.',
  ],
  strap: () => [
    drawn(bent({ ...shapeOf('strap'), ratio: 5.6, tip: 'rounded' }, 86, [44, 91], 10)),
    'A long leaf like a strap, equally wide from bottom to top, with a short rounded tip.',
    'Una hoja larga como una correa, igual de ancha de abajo arriba, con la punta corta y redonda.',
  ],
  lance: () => [
    drawn(
      stalk([48, 80], [48, 92]),
      leafAt({ ...shapeOf('lance'), ratio: 3.6 }, 76, [48, 81], { pen: 'mark', veins: 'feather' }),
    ),
    'A leaf almost four times as long as wide, widest below the middle, narrowing evenly to a point.',
    'Una hoja casi cuatro veces más larga que ancha, más ancha abajo de la mitad, que se angosta hasta acabar en punta.',
  ],
  oval: () => [
    drawn(
      stalk([48, 78], [48.5, 86], [47, 92]),
      leafAt({ ...shapeOf('oval'), ratio: 1.5 }, 73, [48, 79], { pen: 'mark', veins: 'feather' }),
    ),
    'An egg-shaped leaf, half again as long as wide, rounded at the stalk, with a short point.',
    'Una hoja con forma de huevo, una vez y media más larga que ancha, redonda junto al tallito y con una punta corta.',
  ],
  heart: () => [
    drawn(
      leafAt({ ...shapeOf('heart'), ratio: 1.08, lobes: 0.22 }, 78, [48, 65], { pen: 'mark', veins: 'from-base' }),
      stalk([48, 65], [48.5, 80], [47, 92]),
    ),
    'A heart-shaped leaf: two rounded lobes with a notch between them at the stalk, and a point at the tip.',
    'Una hoja con forma de corazón: dos lóbulos redondos con una muesca entre ellos junto al tallito, y una punta al final.',
  ],
  arrowhead: () => [
    drawn(
      leafAt({ ...shapeOf('arrowhead'), ratio: 1.25, lobes: 0.38 }, 82, [48, 55], { pen: 'mark', veins: 'from-base' }),
      stalk([48, 55], [48.5, 76], [47, 92]),
    ),
    'A leaf like an arrowhead: two long pointed lobes reach back on both sides of the stalk.',
    'Una hoja como punta de flecha: dos lóbulos largos y puntiagudos van hacia atrás a los lados del tallito.',
  ],
  round: () => [
    drawn(leafAt(shapeOf('round'), 84, [48, 51], { pen: 'mark', veins: 'from-centre' })),
    'A round leaf with a narrow slit that runs from the edge in to where the stalk joins.',
    'Una hoja redonda con una ranura angosta que va del borde hasta donde se une el tallito.',
  ],
  shield: () => [
    drawn(leafAt(shapeOf('shield'), 84, [48, 48], { pen: 'mark', veins: 'from-centre' }), [
      'solid',
      ellipse([48, 48], 3.5),
    ]),
    'A full round leaf without any slit; the veins spread from a spot in the middle, over the stalk.',
    'Una hoja redonda y entera, sin ranura; las venas salen de un punto en el centro, sobre el tallito.',
  ],
  wedge: () => [
    drawn(
      stalk([48, 80], [47, 92]),
      leafAt({ ...shapeOf('wedge'), ratio: 1.45, widest: 0.76 }, 78, [48, 85], { pen: 'mark', veins: 'feather' }),
    ),
    'A leaf like a spoon: broad and rounded near the tip, narrowing to the stalk.',
    'Una hoja como cuchara: ancha y redonda cerca de la punta, más angosta hacia el tallito.',
  ],
  divided: () => [
    drawn(
      stalk([48, 60], [48, 78], [46, 92]),
      leafAt({ ...shapeOf('divided'), ratio: 2.7 }, 60, [48, 60], { pen: 'mark' }),
    ),
    'One leaf made of seven separate leaflets, spread like fingers from the top of one stalk.',
    'Una hoja formada por siete hojitas separadas, abiertas como dedos desde la punta de un solo tallito.',
  ],
  leafless: () => [
    drawn(
      soil(91),
      [
        'mark',
        STEMS.map(([root, top, x]) =>
          straight(way(root - 2.6, 91, x - 2.4, top + 7, x, top, x + 2.4, top + 7, root + 2.6, 91), true),
        ).join(''),
      ],
      ['line', STEMS.map(([root], i) => sweep(root - 3, 80 - i, root + 3, 75 - i)).join('')],
    ),
    'Five smooth green stems stand up from the ground and end in points, without any leaf.',
    'Cinco tallos verdes y lisos salen del suelo y acaban en punta, sin ninguna hoja.',
  ],
};

/** The lower part of a leaf, large, with the edge of its base traced. */
function base(shape: LeafShape, length: number, at: Point, cut: number, traced = 0.42): Mark[] {
  const leaf = leafOf(shape, length);
  const { whole } = lowerPart(leaf, cut, at);
  const { edge } = lowerPart(leaf, cut * traced, at);
  const rib = straight([at, [at[0], at[1] + cut + 6]]);
  return [
    ['face', whole],
    ['line', rib],
    ['trace', edge],
  ];
}
const EAR = 'M22 52C20 66 25 80 35 81C43 81 45.5 75 44.5 69C43 63 40 61 36 63C31 64 26 60 22 52Z';
const EAR_RIGHT = 'M74 52C76 63 73 73 64 75C55 77 51.5 72 52 66C53 61 56 59 60 61C64 62 69 60 74 52Z';
const bases: Record<string, () => Page> = {
  narrowed: () => [
    drawn(
      stalk([48, 70], [47, 92]),
      base({ ratio: 1.7, widest: 0.62, base: 'narrowed', tip: 'pointed' }, 120, [48, 78], -70, 0.72),
    ),
    'The lower part of a leaf: both sides narrow slowly to the stalk.',
    'La parte baja de una hoja: los dos lados se angostan poco a poco hacia el tallito.',
  ],
  rounded: () => [
    drawn(
      stalk([48, 66], [47, 92]),
      base({ ratio: 1.6, widest: 0.36, base: 'rounded', tip: 'pointed' }, 124, [48, 68], -60),
    ),
    'The lower part of a leaf: its base is round, with the stalk in the middle.',
    'La parte baja de una hoja: la base es redonda, con el tallito en medio.',
  ],
  ears: () => [
    drawn(
      // The blade behind its stem, and from it two ears that come round to the front.
      ['face', 'M10 9C18 12 26 6 34 9C44 13 54 6 62 9C72 13 80 8 86 9C86 30 80 48 68 62L28 62C16 48 10 30 10 9Z'],
      ['fine', sweep(22, 12, 27, 36, 36, 58) + sweep(74, 12, 69, 36, 60, 58)],
      ['face', straight(way(39, 94, 40, 4, 56, 4, 57, 94), true)],
      ['fine', sweep(45, 92, 45.5, 50, 45, 6)],
      ['face', EAR + EAR_RIGHT],
      ['mark', EAR + EAR_RIGHT],
    ),
    'The lower part of a leaf that stands behind its stem: two lobes like ears reach round to the front and clasp it.',
    'La parte baja de una hoja, detrás de su tallo: dos lóbulos como orejas lo rodean hasta el frente y lo abrazan.',
  ],
  'round-lobes': () => [
    drawn(
      base({ ratio: 1.5, widest: 0.36, base: 'heart', lobes: 0.25, sinus: 56, tip: 'pointed' }, 124, [48, 56], -48),
      stalk([48, 56], [47.5, 74], [47, 92]),
    ),
    'The lower part of a leaf: two rounded lobes hang down on both sides of the stalk, with a notch between them.',
    'La parte baja de una hoja: dos lóbulos redondos bajan a los lados del tallito, con una muesca entre ellos.',
  ],
  'pointed-lobes': () => [
    drawn(
      base({ ratio: 1.5, widest: 0.24, base: 'arrow', lobes: 0.32, sinus: 66, tip: 'pointed' }, 124, [48, 48], -40),
      stalk([48, 48], [47.5, 72], [47, 92]),
    ),
    'The lower part of a leaf: two sharp lobes point down on both sides of the stalk, with a notch between them.',
    'La parte baja de una hoja: dos lóbulos con punta bajan a los lados del tallito, con una muesca entre ellos.',
  ],
  closed: () => [
    drawn(
      stalk([48, 60], [47, 92]),
      ['face', ellipse([48, 45], 40, 38)],
      [
        'fine',
        [20, 62, 105, 140, 180, 220, 255, 298, 340]
          .map((angle) => straight([from([48, 45], angle, 6), from([48, 45], angle, 30)]))
          .join(''),
      ],
      ['trace', ellipse([48, 45], 40, 38)],
      ['solid', ellipse([48, 45], 3.5)],
    ),
    'A round leaf whose edge is whole all the way round: no notch and no base; the stalk comes out from under it.',
    'Una hoja redonda con el borde entero todo alrededor: sin muesca ni base; el tallito sale por debajo.',
  ],
};

export const LEAF_OUTLINES = [bookOf('leaf-shape', shapes), bookOf('leaf-base', bases)];
