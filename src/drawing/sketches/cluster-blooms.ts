// Flowers large enough to be told one by one. The stalk enters at (48, 96).
import type { Drawing } from '../../key/index.ts';
import { add, ellipse, from, type Point, smooth, straight, turned } from '../geometry.ts';
import { arc, dot, hair, lens, petal, spot, upTo } from './flower-strokes.ts';

const STALK = straight([
  [48, 96],
  [48, 72],
]);

function hood(): Drawing {
  const spadix = 'M45.4 64C44 50 42.7 38 45.4 27C46.7 23 52 23 53.3 27C55.9 38 54.6 52 53.3 64Z';
  const dots = upTo(12).map((i) => dot([46.4 + (i % 3) * 2.6, 30 + i * 2.3]));
  return [
    ['line', 'M45.4 96C46.7 88 45.4 82 44 74M53.3 96C53.3 88 54.6 82 55.9 74'],
    ['mark', 'M42.7 58C26.9 44 24.2 26 58.6 8C79.7 24 74.4 44 57.2 58Z'],
    ['fine', 'M55.9 14C45.4 26 40.1 40 44 54M59.9 16C63.8 28 62.5 42 55.9 54'],
    ['face', spadix],
    ['wash-yellow', spadix],
    ['fine', dots.join('')],
    [
      'face',
      'M33.5 44C37.4 50 45.4 56 53.3 56C61.2 55 66.5 50 70.4 43C71.8 54 66.5 60 61.2 66C59.9 72 57.2 76 50.6 77C44 76 41.4 72 40.1 66C34.8 60 32.2 54 33.5 44Z',
    ],
    [
      'mark',
      'M33.5 44C37.4 50 45.4 56 53.3 56C61.2 55 66.5 50 70.4 43C71.8 54 66.5 60 61.2 66C59.9 72 57.2 76 50.6 77C44 76 41.4 72 40.1 66C34.8 60 32.2 54 33.5 44Z',
    ],
    ['fine', 'M44 58C45.4 64 45.4 70 48 74M58.6 58C57.2 64 57.2 70 54.6 74'],
  ];
}

/** A flower of three broad petals seen from the front. */
function threePetals(centre: Point, r: number, tilt: number): Drawing {
  const petals = [0, 120, 240].map((turn) =>
    petal(from(centre, tilt + turn, 1), from(centre, tilt + turn, r), r * 1.22),
  );
  return [
    ['face', petals.join('')],
    ['wash-yellow', spot(centre, r * 0.34)],
    ['line', spot(centre, r * 0.3)],
  ];
}

function whorls(): Drawing {
  const pedicels = [
    arc([48, 64], [20, 54], 5),
    arc([48, 64], [76, 54], -5),
    arc([48, 38], [27, 31], 4),
    arc([48, 38], [69, 31], -4),
  ];
  const buds = [
    [38, 15],
    [58, 15],
    [48, 10],
  ] as const;
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 14],
      ]),
    ],
    ['line', pedicels.join('') + arc([48, 20], [38, 15], 2) + arc([48, 20], [58, 15], -2)],
    ['face', buds.map((bud) => spot(bud, 3.4)).join('')],
    ...threePetals([20, 53], 12.5, 6),
    ...threePetals([76, 53], 12.5, -8),
    ...threePetals([26, 27], 10.5, -14),
    ...threePetals([70, 27], 10.5, 16),
    ...threePetals([48, 35], 9.5, 180),
    ...threePetals([48, 64], 12, 174),
  ];
}

function singleBig(): Drawing {
  const foot: Point = [48, 70];
  const back = [
    [26, 14],
    [70, 14],
    [48, 8],
  ] as const;
  const middle = [
    [8, 38],
    [88, 38],
    [14, 24],
    [82, 24],
    [37, 12],
    [59, 12],
  ] as const;
  const front = [
    [16, 54],
    [80, 54],
    [30, 42],
    [66, 42],
    [48, 44],
  ] as const;
  const shapes = [...back, ...middle].map((tip) => petal(foot, tip, 21, 0.55));
  const stamens = upTo(9).map((i) => hair([48 + (i - 4) * 3.4, 42 - Math.abs(Math.sin(i)) * 2], (i - 4) * 9, 8));
  return [
    ['line', 'M46.500 96L46.500 70M50 96L50 70'],
    ...shapes.map((shape): Drawing[number] => ['face', shape]),
    ['wash-yellow', ellipse([48, 42], 17, 9)],
    ['fine', stamens.join('')],
    ...front.map((tip): Drawing[number] => ['face', petal([48, 72], tip, 20, 0.5)]),
    ['fine', [arc([48, 68], [48, 52], 1), arc([44, 68], [34, 50], -2), arc([52, 68], [62, 50], 2)].join('')],
  ];
}

/** A flower of five petals a little turned away. */
function fivePetals(centre: Point, r: number, tilt: number): Drawing {
  const petals = upTo(5).map((k) => petal(from(centre, tilt + k * 72, 1.5), from(centre, tilt + k * 72, r), r * 0.78));
  const wash = upTo(5).map((k) => spot(from(centre, tilt + k * 72, r * 0.62), r * 0.3));
  return [
    ['face', petals.join('')],
    ['wash-yellow', wash.join('')],
    ['solid', spot(centre, r * 0.16)],
  ];
}

function singleLeaf(): Drawing {
  const leaves = [
    petal([48, 78], [12, 86], 11, 0.7),
    petal([49, 56], [87, 63], 11, 0.7),
    petal([48, 33], [13, 34], 10, 0.7),
    petal([49, 18], [72, 10], 8, 0.7),
  ];
  return [
    [
      'line',
      smooth([
        [48, 96],
        [47, 72],
        [49, 46],
        [48, 22],
        [50, 9],
      ]),
    ],
    ['face', leaves.join('')],
    ['wash-green', leaves.join('')],
    ['fine', arc([46, 78], [18, 85], 0) + arc([51, 56], [81, 62], 0) + arc([46, 33], [19, 34], 0)],
    ['line', arc([48, 77], [25, 62], 5) + arc([49, 55], [72, 38], -5) + arc([48, 32], [36, 21], 3)],
    ...fivePetals([24, 58], 14, 10),
    ...fivePetals([73, 34], 15, -8),
    ['face', petal([38, 24], [31, 11], 7, 0.5)],
  ];
}

/** Six petals about a centre: the places of their tips and the width tell the lily from the spidery one. */
const sixTips = ([x, y]: Point, r: number, tilt: number): Point[] =>
  upTo(6).map((k) => from([x, y], tilt + k * 60, r * (k % 2 ? 0.96 : 1)));

const UMBEL = [
  { centre: [27, 34], tilt: -12, r: 23 },
  { centre: [69, 34], tilt: 12, r: 23 },
] as const;
const TUBES: Drawing = [
  ['line', STALK],
  ['line', arc([48, 72], [28, 36], 4) + arc([48, 72], [68, 36], -4) + arc([48, 72], [49, 40], 0)],
  ['face', lens([50, 42], [48, 9], 6, 1)],
  ['face', lens([47, 74], [34, 58], 5, -2) + lens([49, 74], [62, 58], 5, 2)],
];

function lilyUmbel(): Drawing {
  return [
    ...TUBES,
    ...UMBEL.flatMap(
      ({ centre, tilt, r }): Drawing => [
        [
          'face',
          sixTips(centre, r, tilt)
            .map((tip) => lens(centre, tip, 8.5, 2))
            .join(''),
        ],
        [
          'line',
          sixTips(centre, r * 0.62, tilt + 30)
            .map((tip) => arc(centre, tip, 2))
            .join(''),
        ],
        [
          'solid',
          sixTips(centre, r * 0.62, tilt + 30)
            .map((tip) => spot(tip, 1.6))
            .join(''),
        ],
      ],
    ),
  ];
}

function cupUmbel(): Drawing {
  return [
    ...TUBES,
    ...UMBEL.flatMap(({ centre, tilt, r }): Drawing => {
      const cup = spot(centre, 8);
      const stamens = sixTips(centre, 15.5, tilt + 30);
      return [
        [
          'face',
          sixTips(centre, r + 1, tilt)
            .map((tip) => lens(centre, tip, 3.4, 4))
            .join(''),
        ],
        ['face', cup],
        ['mark', cup],
        ['fine', stamens.map((tip, k) => straight([from(centre, tilt + 30 + k * 60, 8), tip])).join('')],
        ['solid', stamens.map((tip) => spot(tip, 1.4)).join('') + spot(centre, 1.6)],
      ];
    }),
  ];
}

/** A flower with its foot at (0, 0), facing up: a broad petal each side, crumpled at its edge. */
const UNEVEN: readonly (readonly number[])[] = [
  [-1, -3, -20, -12, -25, -25, -15, -28, -6, -17],
  [1, -3, 8, -18, 17, -27, 24, -15],
];

function showySpike(): Drawing {
  const flowers: readonly (readonly [Point, number, number])[] = [
    [[46, 66], -56, 0.95],
    [[51, 72], 58, 0.88],
    [[48, 46], 2, 1.08],
  ];
  const set = (xy: readonly number[], [foot, turn, size]: (typeof flowers)[number]): string =>
    smooth(
      upTo(xy.length / 2).map((k) =>
        add(foot, turned([(xy[2 * k] as number) * size, (xy[2 * k + 1] as number) * size], turn)),
      ),
      true,
    );
  const buds = lens([47, 84], [37, 76], 4.5, -1) + lens([49, 88], [59, 82], 4.5, 1);
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 46],
      ]),
    ],
    ['face', buds],
    ['wash-green', buds],
    ...flowers.flatMap((flower): Drawing => {
      const [foot, turn, size] = flower;
      const to = (degrees: number, length: number) => from(foot, turn + degrees, length * size);
      return [
        // Tall ones stand behind, and a lip rolls down in front.
        petal(to(0, 3), to(2, 35), 17, 0.4),
        ...UNEVEN.map((xy) => set(xy, flower)),
        petal(to(90, 1), to(98, 21), 9),
      ]
        .flatMap(
          (shape): Drawing => [
            ['face', shape],
            ['wash-red', shape],
          ],
        )
        .concat([['fine', [-37, 2, 40].map((degrees) => hair(to(degrees, 10), turn + degrees, 13 * size)).join('')]]);
    }),
  ];
}

/** Drawings by the form's name. */
export const BLOOMS: Readonly<Record<string, () => Drawing>> = {
  hood,
  whorls,
  'single-big': singleBig,
  'single-leaf': singleLeaf,
  'lily-umbel': lilyUmbel,
  'cup-umbel': cupUmbel,
  'showy-spike': showySpike,
};
