// Kinds of plant: what the first question shows. They travel with it, so each holds in 900 bytes.
import type { Drawing } from '../../key/index.ts';
import { personOf } from '../figures.ts';
import type { Sketch } from '../sketch.ts';
import { blade, bookOf, cane, tuft } from './strokes.ts';

const GROUND = 'M4 90q44-2 88 0';

const tallCane: Drawing = (() => {
  const [main, side] = [cane([58, 90], 64, 2, 6, 23), cane([72, 90], 56, 7, 3, 15)];
  return [
    ['scale', personOf(30, [17, 90])],
    ['ground', GROUND],
    ['line', side.stem],
    ['face', side.blades],
    ['line', 'M56 90L59 26M60 90L61 26'],
    ['fine', 'M56 78h4M56 66h4M57 54h4M58 42h3'],
    ['mark', main.blades],
    ['wash-tan', 'M60 32Q48 18 64 4Q77 16 61 32z'],
    [
      'fine',
      'M60 32Q61 16 65 4M60 28q-8-3-8-11M61 22q-7-3-6-11M62 16q-4-3-2-8M60 28q9-2 11-11M62 22q7-3 8-11M63 16q5-3 4-8',
    ],
  ];
})();

const grass: Drawing = [
  ['ground', GROUND],
  ['fine', 'M47 88Q44 46 30 16M50 88Q52 44 56 6M53 88Q62 50 80 24'],
  [
    'fine',
    'M30 16l-5 6M31 20l6-5M33 24l-7 5M34 28l7-5M36 33l-6 5M56 6l-5 7M55 11l6-3M54 17l-7 5M54 21l7-4M53 28l-6 5M80 24l0-7M77 28l7-1M74 32l0-8M71 36l8-1M68 41l-1-7',
  ],
  [
    'mark',
    tuft(
      [49, 89],
      [
        [-74, 44],
        [-50, 58],
        [-20, 54],
        [8, 58],
        [34, 56],
        [70, 45],
      ],
      4,
    ),
  ],
  ['line', 'M49 89Q38 60 20 46M51 89Q62 64 86 60M50 89Q46 66 42 50'],
];

const rushLike: Drawing = [
  ['water', 'M4 82h14M24 82h48M82 82h10M12 89h26M52 89h30'],
  ['line', 'M70 86Q71 50 70 18M79 86Q83 56 85 30'],
  [
    'solid',
    'M70 30q8-1 10 8q-7 1-10-8M70 30q-7 1-9 9q7 0 9-9M70 30q3 6 0 13q-4-7 0-13M85 42q5 2 5 10q-6-3-5-10M84 43q-6 1-8 8q7 0 8-8',
  ],
  [
    'mark',
    blade([26, 86], [23, 46], [10, 14], 4) +
      blade([31, 86], [31, 40], [28, 6], 4) +
      blade([50, 86], [51, 50], [61, 12], 4),
  ],
  ['line', 'M41 86V8'],
  ['wash-brown', 'M36 26q5-6 10 0v25q-5 5-10 0z'],
  ['line', 'M36 26q5-6 10 0v25q-5 5-10 0z'],
];

const leafyHerb: Drawing = [
  ['ground', GROUND],
  ['line', 'M46 90Q42 72 25 60M50 90Q53 70 52 46M54 90Q60 78 72 70'],
  ['mark', 'M25 60q3 10-5 15q-17-7-16-38q28 0 37 18q-10-2-16 5z'],
  ['fine', 'M25 60L7 41M19 54l-1 11M19 54l11-4M13 47v8'],
  ['mark', 'M72 70q-8-6-14 0q-1-26 34-28q2 28-10 39q-8-3-10-11z'],
  ['fine', 'M72 70L88 48M78 62l-10-2M78 62l5 10M83 55l-7-2'],
  ['face', 'M52 46q-8-10-18-4q-8-26 17-38q23 14 17 38q-10-5-16 4z'],
  ['mark', 'M52 46q-8-10-18-4q-8-26 17-38q23 14 17 38q-10-5-16 4z'],
  ['fine', 'M52 46L51 8M52 36l-13-5M52 36l12-6M52 27l-12-6M52 27l11-7M51 18l-7-4M51 18l7-5'],
];

/** A leaf of a short upright shoot. */
const shoot = (x: number, y: number, out: number): string => blade([x, y], [x + out * 0.6, y - 9], [x + out, y - 9], 5);

const creeping: Drawing = [
  ['ground', 'M4 74q44-2 88 0'],
  ['fine', [18, 44, 70].map((x) => `M${x} 72q-6 6-8 16M${x} 72v20M${x} 72q6 6 8 15`).join('')],
  ['line', [18, 44, 70].map((x) => `M${x} 70v-28`).join('')],
  [
    'face',
    [18, 44, 70].flatMap((x) => [-1, 1].flatMap((side) => [shoot(x, 60, 14 * side), shoot(x, 47, 11 * side)])).join(''),
  ],
  ['face', [18, 44, 70].map((x) => blade([x, 43], [x, 34], [x, 26], 6)).join('')],
  ['trace', 'M4 72q40-5 74 0q8-3 13-14'],
];

const floating: Drawing = [
  ['fine', 'M26 58q-6 18-2 32M50 46q4 24-4 44M70 66q4 14-2 24'],
  ['water', 'M4 34h22M70 34h22M4 48h4M88 50h4M4 76h12M38 78h20M84 82h8'],
  ['mark', 'M26 58l14-6q-2-10-16-10q-18 1-18 10q1 10 18 11q10 0 14-5z'],
  ['mark', 'M50 40l-14-4q2-9 17-9q17 1 17 9q-1 8-17 9q-12 0-16-3z'],
  ['mark', 'M68 66l-18-2q0-10 20-11q20 1 20 11q-1 10-20 11q-14 0-18-5z'],
  ['fine', 'M26 58l-14-6M26 58l-8 4M26 58l-2-12M68 66l18-6M68 66l10 6M68 66l-4-10M50 40l14-6M50 40l8 4'],
  ['face', 'M76 52q-12-2-12-12q8 0 10 6q-4-10 2-16q7 6 3 16q2-6 9-6q0 10-12 12z'],
  ['wash-yellow', 'M73 50q3-6 7 0z'],
];

const CROWN =
  'M46 58q-10 4-18 2q-14-2-14-14q-12-10 0-20q0-12 13-13q10-13 22-6q12-7 20 4q14 1 14 14q9 9 0 19q-2 14-16 14q-8 6-21 0z';
const woody: Drawing = [
  ['ground', GROUND],
  ['face', CROWN],
  ['wash-green', CROWN],
  ['fine', 'M22 30q4-6 10-4M42 18q5-5 11-1M66 26q6-4 10 1M20 46q5-4 10-1M70 46q5-4 10 0M44 34q5-4 9 0'],
  ['mark', 'M37 90q8-6 7-26q-4-10-18-20q16 6 20 12q2-14-2-24q8 10 7 26q5-10 17-16q-12 12-13 22q-1 20 7 26z'],
  ['fine', 'M46 86q2-10 1-22M51 86q-1-10 0-22M49 76q1-6 0-10M55 84q-2-6-2-12'],
];

const threads: Drawing = [
  ['water', 'M4 62h12M78 60h14M8 88h18M44 90h34'],
  ['mark', 'M8 72q2-7 14-6q8-6 22-3q10-5 20 0q14-1 16 5q10 3 7 9q-6 7-18 4q-10 7-24 2q-14 5-22 0q-16-2-15-11z'],
  [
    'fine',
    'M18 74q6-5 12 0t12 0M48 76q5-5 11 0t12-1M32 68q3-3 6 0q-3 3-6 0M60 69q2-3 5 0q-2 3-5 0M26 80q2-2 4 0q-2 2-4 0M74 76q2-2 4 0q-2 2-4 0',
  ],
  ['face', 'M4 22L86 5l2 5L5 27z'],
  ['trace', 'M24 19q-6 20-2 48M34 17q6 22-1 46M46 14q-7 22 0 49M58 12q6 20-1 40M70 9q-5 14 0 30'],
  ['fine', 'M28 18q-2 24 0 40M40 16q2 24 0 50M52 13q0 26 2 44M63 11q1 18-2 36M66 10q3 12 1 22'],
];

const FORMS = new Map<string, Sketch>([
  [
    'tall-cane',
    {
      drawing: tallCane,
      alt: {
        en: 'Stiff canes three times the height of a person, with leaves in two rows all the way up and a plume on top.',
        es: 'Cañas rígidas, unas tres veces más altas que una persona, con hojas en dos filas a todo lo largo y un penacho en la punta.',
      },
    },
  ],
  [
    'grass',
    {
      drawing: grass,
      alt: {
        en: 'A tuft of long, narrow, arching leaves with a few slim flowering stems above it.',
        es: 'Una mata de hojas largas, angostas y arqueadas, con unos pocos tallos delgados en flor por encima.',
      },
    },
  ],
  [
    'rush-like',
    {
      drawing: rushLike,
      alt: {
        en: 'Upright flat leaves and bare green stems standing in water, one stem with a brown sausage-shaped head.',
        es: 'Hojas planas y erguidas y tallos verdes sin hojas, parados en el agua; uno lleva una cabeza café en forma de salchicha.',
      },
    },
  ],
  [
    'leafy-herb',
    {
      drawing: leafyHerb,
      alt: {
        en: 'Three broad heart-shaped leaves, each on its own long stalk, rising from one place in the ground.',
        es: 'Tres hojas anchas en forma de corazón, cada una en su largo pecíolo, que salen de un mismo punto del suelo.',
      },
    },
  ],
  [
    'creeping',
    {
      drawing: creeping,
      alt: {
        en: 'A stem lying along the ground, rooting as it goes, with short leafy shoots.',
        es: 'Un tallo tendido sobre el suelo, que echa raíces a su paso, con brotes cortos y hojosos.',
      },
    },
  ],
  [
    'floating',
    {
      drawing: floating,
      alt: {
        en: 'Round leaves lying flat on the water, their stalks reaching down, and one flower.',
        es: 'Hojas redondas acostadas sobre el agua, con los pecíolos hacia el fondo, y una flor.',
      },
    },
  ],
  [
    'woody',
    {
      drawing: woody,
      alt: {
        en: 'A tree with a trunk covered in bark, branches, and a rounded crown.',
        es: 'Un árbol con tronco cubierto de corteza, ramas y una copa redondeada.',
      },
    },
  ],
  [
    'threads',
    {
      drawing: threads,
      alt: {
        en: 'Slimy scum on the water, and fine wet threads of it hanging from a stick held over it; no stems, no leaves.',
        es: 'Una nata babosa sobre el agua, de la que cuelgan hilos finos y mojados en un palo; sin tallos ni hojas.',
      },
    },
  ],
]);

export const GROWTH_FORM = bookOf('growth-form', FORMS);
