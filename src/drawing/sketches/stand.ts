// How it grows together: stems of one plant, near or far, or a mat.
import type { Drawing, Mark } from '../../key/index.ts';
import type { Sketch } from '../sketch.ts';
import { bookOf, cane } from './strokes.ts';

const GROUND: Mark = ['ground', 'M4 88q44-2 88 0'];
/** Stems of the same plant, rooted where said: root x, height, lean. */
function stems(
  of: readonly (readonly [x: number, height: number, lean: number])[],
  leaves: number,
  reach: number,
): Mark[] {
  const canes = of.map(([x, height, lean]) => cane([x, 88], height, lean, leaves, reach));
  return [
    ['trace', canes.map(({ stem }) => stem).join('')],
    ['mark', canes.map(({ blades }) => blades).join('')],
  ];
}
const OTHERS: readonly Mark[] = [
  ['fine', 'M8 88V62M8 72q-6-2-4-8q5 2 4 8M8 68q6-2 5-9q-6 2-5 9M8 62q-4-5 0-9q4 4 0 9'],
  ['fine', 'M36 88Q36 74 30 62M36 88Q38 72 42 60M36 88Q34 80 25 72M36 88Q40 78 48 70'],
  [
    'fine',
    'M66 88V60M66 78q-7-2-7-8q7 1 7 8M66 72q7-2 7-8q-7 1-7 8M66 60l-7-5M66 60l-3-8M66 60l3-8M66 60l7-5M58 54q1-2 2 1M62 51q1-2 2 1M68 51q1-2 2 1M72 54q1-2 2 1',
  ],
  ['fine', 'M91 88Q90 76 84 70M91 88Q92 74 92 66M91 88Q88 82 80 80'],
];
const clump: Drawing = [
  GROUND,
  ...stems(
    [
      [43, 54, -25],
      [46, 68, -12],
      [48, 74, 2],
      [50, 66, 14],
      [53, 54, 26],
    ],
    3,
    14,
  ),
];
const dense: Drawing = [
  GROUND,
  ...stems(
    [
      [13, 72, 0],
      [23, 79, 1],
      [33, 73, -1],
      [43, 81, 1],
      [53, 74, 0],
      [63, 80, -1],
      [73, 72, 1],
      [83, 78, 0],
    ],
    4,
    9,
  ),
];
const scattered: Drawing = [
  GROUND,
  ...OTHERS,
  ...stems(
    [
      [21, 70, 2],
      [54, 78, -2],
      [77, 64, 2],
    ],
    4,
    14,
  ),
];
const single: Drawing = [
  GROUND,
  ['fine', 'M38 88l3-3l3 3M47 88l2-2l2 2M56 88l3-3l3 3'],
  ...stems(
    [
      [22, 62, -1],
      [75, 70, 1],
    ],
    5,
    17,
  ),
];
/** A lens-shaped small leaf. */
const leaflet = (x: number, y: number): string => `M${x} ${y}q5-5 11-1q-5 5-11 1l6 0`;
const MAT = 'M6 88q-4-12 6-14q4-9 12-6q5-7 11-2q5-7 12-1q5-6 11 1q6-5 11 2q7-4 10 3q11 0 12 10q1 5-2 7z';
const mat: Drawing = [
  GROUND,
  ['face', MAT],
  ['mark', MAT],
  [
    'fine',
    [
      ...[24, 38, 53, 67].map((x) => leaflet(x, 72)),
      ...[13, 28, 43, 58, 73].map((x) => leaflet(x, 78)),
      ...[20, 35, 50, 65, 79].map((x) => leaflet(x, 84)),
    ].join(''),
  ],
  ['fine', 'M26 66v-8M26 58q-3-3 0-6q3 3 0 6M61 64v-9M61 55q-3-3 0-6q3 3 0 6'],
];
const STANDS = new Map<string, Sketch>([
  [
    'clump',
    {
      drawing: clump,
      alt: {
        en: 'Several stems spreading from one tight base, with bare ground around it.',
        es: 'Varios tallos que se abren desde una sola base apretada, con suelo desnudo alrededor.',
      },
    },
  ],
  [
    'dense-stand',
    {
      drawing: dense,
      alt: {
        en: 'Stem beside stem of the same plant from edge to edge, with nothing else between them.',
        es: 'Tallo junto a tallo de la misma planta de un lado al otro, sin nada más entre ellos.',
      },
    },
  ],
  [
    'scattered',
    {
      drawing: scattered,
      alt: {
        en: 'Three stems of the plant, apart from each other, with different plants between them.',
        es: 'Tres tallos de la planta, separados entre sí, con otras plantas distintas en medio.',
      },
    },
  ],
  [
    'mat',
    {
      drawing: mat,
      alt: {
        en: 'A low, closed mat of small leaves that covers the ground.',
        es: 'Un tapete bajo y cerrado de hojas pequeñas que cubre el suelo.',
      },
    },
  ],
  [
    'single',
    {
      drawing: single,
      alt: {
        en: 'Two single plants far apart, with bare ground between them.',
        es: 'Dos plantas solas, muy separadas, con suelo desnudo en medio.',
      },
    },
  ],
]);

export const STAND = bookOf('stand', STANDS);
