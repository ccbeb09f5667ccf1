// Where it stands, how much sun, how it grows together: the same bank, the same plant, only the place changes.
import type { Drawing, Mark } from '../../key/index.ts';
import type { Point } from '../geometry.ts';
import type { Sketch, SketchBook } from '../sketch.ts';
import { cane, tuft } from './strokes.ts';

/** The bank in cross section, from the bed at the left to dry ground at the right. */
const PROFILE = 'M4 88q16 1 26-7q10-9 18-19q8-11 18-17q8-6 26-6';
const BANK: readonly Mark[] = [
  ['tint', `${PROFILE}v53H4z`],
  ['ground', PROFILE],
  ['water', 'M4 62h44M8 69h9M29 69h10M6 77h7M20 77h9'],
];
const PLANT = [
  [-34, 25],
  [-12, 31],
  [12, 29],
  [34, 24],
] as const;

function standing(root: Point): Mark[] {
  const roots = [-5, 0, 5].map((x) => `M${root[0]} ${root[1]}l${x} ${x ? 7 : 9}`).join('');
  return [
    ['fine', roots],
    ['mark', tuft(root, PLANT, 3)],
  ];
}

/** Floating free: leaves on the surface, roots in the water, nothing to the bed. */
const AFLOAT: readonly Mark[] = [
  ['fine', 'M21 62q-3 6-2 10M24 62q0 7 1 12M27 62q3 6 3 9'],
  ['mark', 'M24 62q-20 2-18-9q12-2 18 9q-10-16 0-24q11 8 0 24q7-12 18-9q1 11-18 9z'],
];

const at = (x: number, y: number): Drawing => [...BANK, ...standing([x, y])];
const HABITATS = new Map<string, Sketch>([
  [
    'open-water',
    {
      drawing: [...BANK, ...AFLOAT],
      alt: {
        en: 'Bank and water cut through: the plant floats on the open water, its roots hanging free.',
        es: 'Corte de la ribera y el agua: la planta flota en el agua abierta, con las raíces colgando libres.',
      },
    },
  ],
  [
    'standing-water',
    {
      drawing: at(31, 80),
      alt: {
        en: 'Bank and water cut through: the plant is rooted in the bed and rises out of the water.',
        es: 'Corte de la ribera y el agua: la planta está arraigada en el fondo y sale del agua.',
      },
    },
  ],
  [
    'waterline',
    {
      drawing: at(48, 62),
      alt: {
        en: 'Bank and water cut through: the plant stands right where the water meets the bank.',
        es: 'Corte de la ribera y el agua: la planta está justo donde el agua toca la ribera.',
      },
    },
  ],
  [
    'moist-bank',
    {
      drawing: at(64, 46),
      alt: {
        en: 'Bank and water cut through: the plant stands on the slope, a little above the water.',
        es: 'Corte de la ribera y el agua: la planta está en la pendiente, un poco por encima del agua.',
      },
    },
  ],
  [
    'dry-ground',
    {
      drawing: at(79, 40),
      alt: {
        en: 'Bank and water cut through: the plant stands on top of the bank, well away from the water.',
        es: 'Corte de la ribera y el agua: la planta está en lo alto de la ribera, lejos del agua.',
      },
    },
  ],
]);

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

const SUN: readonly Mark[] = [
  ['wash-yellow', 'M8 16a9 9 0 1 0 18 0a9 9 0 1 0-18 0z'],
  ['line', 'M8 16a9 9 0 1 0 18 0a9 9 0 1 0-18 0z'],
];
const herb = (x: number): string => tuft([x, 88], PLANT, 3);
const trunk = (x: number): Mark => ['face', `M${x} 88q5-14 3-42h9q-2 28 4 42z`];
/** The lower edge of leaves, and the leaves above it, of one tree or of many closed up. */
const ONE = 'M50 54q-8-2-5-11q-5-12 8-14q6-12 18-8q14-4 15 9q9 9 1 18q-2 10-13 8q-6 4-12 0q-6 2-12-2z';
const MANY =
  'M8 56q-6-8 0-15q0-11 12-10q6-10 16-5q8-8 17-1q11-6 16 4q13-2 15 9q9 8 4 17q-8 8-18 3q-8 5-16 0q-8 5-16 0q-8 4-15 0q-8 4-15-2z';
const LEAVES = 'M56 36q4-5 8-1M68 30q4-5 8-1M74 42q4-5 8-1M60 46q4-5 8-1';
const full: Drawing = [
  ...SUN,
  ['ground', 'M4 88h88'],
  ['wash-green', herb(48)],
  ['fine', herb(48)],
  ['trace', 'M14 30L16 76M20 29L32 66M24 26L58 80M27 22L76 74M28 17L82 44'],
];
const part: Drawing = [
  ...SUN,
  ['tint', 'M50 88L44 54H92V88z'],
  ['ground', 'M4 88h88'],
  trunk(64),
  ['face', ONE],
  ['wash-green', ONE],
  ['fine', LEAVES],
  ['wash-green', herb(44)],
  ['fine', herb(44)],
  ['trace', 'M14 30L16 76M20 29L30 64'],
];
const deep: Drawing = [
  ...SUN,
  ['tint', 'M4 50H92V88H4z'],
  ['ground', 'M4 88h88'],
  trunk(16),
  trunk(66),
  ['face', MANY],
  ['wash-dark-green', MANY],
  ['fine', `${LEAVES}M16 42q4-5 8-1M28 34q4-5 8-1M38 44q4-5 8-1M24 50q4-5 8-1M46 32q4-5 8-1`],
  ['wash-dark-green', herb(48)],
  ['fine', herb(48)],
];
const LIGHTS = new Map<string, Sketch>([
  [
    'full-sun',
    {
      drawing: full,
      alt: {
        en: 'Sun rays reach the plant and the ground all around it; no tree stands near.',
        es: 'Los rayos del sol llegan a la planta y al suelo de alrededor; no hay árboles cerca.',
      },
    },
  ],
  [
    'part-shade',
    {
      drawing: part,
      alt: {
        en: 'A tree beside the plant shades part of the ground; sun rays reach the rest.',
        es: 'Un árbol junto a la planta da sombra a una parte del suelo; al resto le llega el sol.',
      },
    },
  ],
  [
    'deep-shade',
    {
      drawing: deep,
      alt: {
        en: 'Trees close above the plant and all the ground lies in shade; no ray gets through.',
        es: 'Los árboles se cierran sobre la planta y todo el suelo queda a la sombra; no pasa ni un rayo.',
      },
    },
  ],
]);

/** Places in which the plant grows, and how many of six of them are wet: see the test for the published shares. */
export const WET_OF_SIX = new Map([
  ['obl', 6],
  ['facw', 5],
  ['fac', 3],
  ['facu', 1],
  ['upl', 0],
]);
const SPOTS: readonly Point[] = [
  [18, 40],
  [48, 40],
  [78, 40],
  [18, 84],
  [48, 84],
  [78, 84],
];
const sprig = ([x, y]: Point): string =>
  tuft(
    [x, y],
    [
      [-34, 22],
      [0, 28],
      [34, 22],
    ],
    3,
  );
function places(wet: number): Drawing {
  const [pools, dry] = [SPOTS.slice(0, wet), SPOTS.slice(wet)];
  const pool = ([x, y]: Point): string => `M${x - 13} ${y}q3-6 13-6q10 0 13 6q-3 6-13 6q-10 0-13-6z`;
  return [
    ...(pools.length ? [['mark', pools.map(pool).join('')] as Mark] : []),
    ...(pools.length
      ? [['water', pools.map(([x, y]) => `M${x - 8} ${y + 2}h5M${x + 3} ${y + 2}h5`).join('')] as Mark]
      : []),
    ...(dry.length ? [['ground', dry.map(([x, y]) => `M${x - 12} ${y}q12-3 24 0`).join('')] as Mark] : []),
    ...(dry.length
      ? [['fine', dry.map(([x, y]) => `M${x - 7} ${y + 4}h1M${x} ${y + 3}h1M${x + 6} ${y + 5}h1`).join('')] as Mark]
      : []),
    ['face', SPOTS.map(sprig).join('')],
    ['wash-green', SPOTS.map(sprig).join('')],
  ];
}
const status = (en: string, es: string) => ({
  en: `Six places where the plant grows; ${en}.`,
  es: `Seis lugares donde crece la planta; ${es}.`,
});
const STATUSES = new Map<string, Sketch>([
  ['obl', { drawing: places(6), alt: status('all six are wet', 'los seis son húmedos') }],
  ['facw', { drawing: places(5), alt: status('five are wet and one is dry', 'cinco son húmedos y uno seco') }],
  ['fac', { drawing: places(3), alt: status('three are wet and three are dry', 'tres son húmedos y tres secos') }],
  ['facu', { drawing: places(1), alt: status('one is wet and five are dry', 'uno es húmedo y cinco secos') }],
  ['upl', { drawing: places(0), alt: status('all six are dry', 'los seis son secos') }],
]);

const book = (role: string, forms: ReadonlyMap<string, Sketch>): SketchBook => ({
  role,
  forms: [...forms.keys()],
  sketch: ({ form }) => forms.get(form),
});
export const PLACE_BOOKS: readonly SketchBook[] = [
  book('habitat', HABITATS),
  book('stand', STANDS),
  book('light', LIGHTS),
  book('wetland-status', STATUSES),
];
