// How leaves are set on a shoot. On stems a small view from above says it once more: the stem in the middle, its leaves around.
import type { Mark } from '../../key/index.ts';
import { add, type Curve, curved, ellipse, from, line, type Point, straight } from '../geometry.ts';
import { type LeafShape, leafOf } from '../leaf.ts';
import { along, put } from '../leaf-pose.ts';
import { bookOf, type Page } from './book.ts';
import { drawn, ripples, soil, sweep, way } from './leaf-strokes.ts';

const BLADE: LeafShape = { ratio: 6, widest: 0.36, parallel: 0.2, base: 'wedge', tip: 'pointed' };
const LEAF: LeafShape = { ratio: 2.3, widest: 0.42, base: 'wedge', tip: 'pointed' };
/** A leaf of a floating ring: a broad spoon. */
const PAD: LeafShape = { ratio: 1, widest: 0.55, base: 'wedge', tip: 'rounded' };
const RING = [0, 46, 92, 133, 180, 225, 268, 314];
const shifted = (shape: LeafShape, length: number, out: number): Curve =>
  put(leafOf(shape, length).blades[0] ?? [], [0, -out]);
const floating = (curve: Curve, turn: number, closed = false): string =>
  curved(put(curve, [48, 50], turn, 0.74), closed);
const blade = (at: Point, turn: number, length: number, shape: LeafShape = LEAF, flat = 1): string =>
  curved(put(leafOf(shape, length).blades[0] ?? [], at, turn, flat), true);
/** A long blade that leaves a stem to one side (1 right, -1 left) and bends over. */
const bending = (at: Point, side: 1 | -1, length: number): string =>
  curved(
    along(leafOf(BLADE, length).blades[0] ?? [], [
      at,
      add(at, [side * length * 0.2, -length * 0.4]),
      add(at, [side * length * 0.6, -length * 0.62]),
      add(at, [side * length * 0.92, -length * 0.3]),
    ]),
    true,
  );
/** The same towards the one who looks: it bends over in front of its stem. */
const facing = (y: number): string => `M22 ${y}Q28 ${y - 6} 34 ${y}Q34 ${y + 13} 27 ${y + 28}Q22 ${y + 13} 22 ${y}Z`;
const STEM: Mark = ['line', sweep(28, 94, 28, 60, 28.5, 30, 28, 6)];
/** Seen from above, in the corner: leaves towards these degrees. */
const above = (degrees: readonly number[], length = 17): Mark[] => [
  ['mark', degrees.map((angle) => blade(from([75, 75], angle, 2.5), angle, length, LEAF)).join('')],
  ['solid', ellipse([75, 75], 2.2)],
];

const sets: Record<string, () => Page> = {
  'two-rows': () => [
    drawn(
      STEM,
      [
        'face',
        (
          [
            [84, 1],
            [70, -1],
            [56, 1],
            [42, -1],
            [29, 1],
            [18, -1],
          ] as const
        )
          .map(([y, side], i) => bending([28, y], side, 26 - i * 1.2))
          .join(''),
      ],
      above([90, 270]),
    ),
    'A stem with leaves one by one, left and right in turn; from above they lie in one flat line.',
    'Un tallo con hojas de una en una, a la izquierda y a la derecha; desde arriba quedan en una sola línea.',
  ],
  'three-rows': () => [
    drawn(
      STEM,
      [
        'face',
        (
          [
            [88, 1],
            [72, -1],
            [50, 1],
            [36, -1],
            [14, 1],
          ] as const
        )
          .map(([y, side]) => bending([28, y], side, 26))
          .join(''),
      ],
      ['face', facing(64) + facing(25)],
      ['fine', sweep(28, 64, 28.5, 76, 27.5, 86) + sweep(28, 25, 28.5, 37, 27.5, 47)],
      above([0, 120, 240]),
    ),
    'A stem with leaves one by one: to the right, to the left and to the front; from above they make a star of three.',
    'Un tallo con hojas de una en una: a la derecha, a la izquierda y al frente; desde arriba forman una estrella de tres.',
  ],
  spiral: () => [
    drawn(
      ['face', blade([28, 66], -24, 24) + blade([28, 36], 30, 22)],
      STEM,
      [
        'face',
        blade([28, 84], 72, 30) +
          blade([28, 72], -66, 28) +
          blade([28, 48], 62, 27) +
          blade([28, 40], -72, 25) +
          blade([28, 20], 52, 21) +
          blade([28, 24], -50, 20),
      ],
      ['face', blade([28, 58], 158, 19) + blade([28, 31], 200, 17) + blade([28, 17], 4, 12)],
      above([10, 82, 154, 226, 298]),
    ),
    'A stem with leaves one by one that point to all sides; from above they stand all round it.',
    'Un tallo con hojas de una en una que miran a todos lados; desde arriba lo rodean por completo.',
  ],
  opposite: () => [
    drawn(
      ['line', sweep(48, 94, 48.5, 60, 47.5, 30, 48, 6)],
      ['mark', [82, 55, 29].flatMap((y, i) => [64, -64].map((turn) => blade([48, y], turn, 42 - i * 5))).join('')],
      ['face', blade([48, 17], 26, 13) + blade([48, 17], -26, 13)],
      ['line', [82, 55, 29].map((y) => sweep(45, y, 48, y + 1.5, 51, y)).join('')],
    ),
    'A stem with leaves in pairs: at each joint one leaf to the left and one to the right.',
    'Un tallo con hojas en pares: en cada nudo una hoja a la izquierda y otra a la derecha.',
  ],
  basal: () => [
    drawn(
      soil(90),
      ['line', sweep(46, 90, 38, 62, 24, 44) + sweep(50, 90, 58, 62, 71, 44) + sweep(48, 90, 47, 66, 48, 46)],
      ['face', blade([48, 48], 2, 42, { ratio: 1.9, widest: 0.4, base: 'rounded', tip: 'pointed' })],
      [
        'face',
        blade([25, 46], -30, 38, { ratio: 1.9, widest: 0.4, base: 'rounded', tip: 'pointed' }) +
          blade([70, 46], 30, 38, { ratio: 1.9, widest: 0.4, base: 'rounded', tip: 'pointed' }),
      ],
      ['mark', ellipse([48, 88], 9, 5)],
    ),
    'Leaves on long stalks that all rise from one place on the ground; there is no stem.',
    'Hojas de tallitos largos que salen todas de un mismo lugar del suelo; no hay tallo.',
  ],
  rosette: () => [
    drawn(
      ripples(10),
      ['line', RING.map((turn) => floating([[0, 0], ...line([0, 0], [0, -22])], turn)).join('')],
      ['face', RING.map((turn) => floating(shifted(PAD, 25, 18), turn, true)).join('')],
      ['fine', RING.map((turn) => floating([[0, -24], ...line([0, -24], [0, -38])], turn)).join('')],
      [
        'face',
        RING.slice(0, 5)
          .map((_, i) => floating(shifted(PAD, 15, 5), i * 72 + 20, true))
          .join(''),
      ],
      ['mark', ellipse([48, 50], 6, 4.2)],
      ripples(91),
    ),
    'Leaves in a flat ring that floats on the water, all from one middle point.',
    'Hojas en un anillo plano que flota en el agua, todas desde un punto en el centro.',
  ],
  fans: () => [
    drawn(
      ['line', sweep(22, 94, 23, 60, 22, 30, 24, 4)],
      ['line', sweep(22.5, 74, 36, 66, 50, 62) + sweep(22.5, 44, 36, 36, 52, 30)],
      [
        'mark',
        (
          [
            [50, 64, 97],
            [52, 29, 80],
          ] as const
        )
          .flatMap(([x, y, middle]) =>
            [-52, -26, 0, 26, 52].map((off) => blade([x, y], middle + off, 29 - Math.abs(off) * 0.08, BLADE)),
          )
          .join(''),
      ],
      ['line', straight(way(19, 74, 26, 74)) + straight(way(19, 44, 26, 44))],
    ),
    'A stem with side twigs; at the end of each twig the leaves stand in a bunch like a fan.',
    'Un tallo con ramitas a los lados; en la punta de cada ramita las hojas forman un manojo como abanico.',
  ],
};

export const LEAF_SETS = [bookOf('leaf-arrangement', sets)];
