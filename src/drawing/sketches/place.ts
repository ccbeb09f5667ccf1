// Where it stands and how much sun it gets: the same bank, the same plant, only the place changes.
import type { Drawing, Mark } from '../../key/index.ts';
import type { Point } from '../geometry.ts';
import type { Sketch, SketchBook } from '../sketch.ts';
import { bookOf, tuft } from './strokes.ts';

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

export const PLACE_BOOKS: readonly SketchBook[] = [bookOf('habitat', HABITATS), bookOf('light', LIGHTS)];
