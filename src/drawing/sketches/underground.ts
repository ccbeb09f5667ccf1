// Below the ground. The surface lies at y = 18 and the stem comes in at the top centre: a portrait sets these under a plant.
import type { Mark } from '../../key/index.ts';
import { band, bezier, ellipse, from, num, type Point, smooth } from '../geometry.ts';
import { bookOf } from './book.ts';
import { blade, rod, soil } from './stem-parts.ts';

const GROUND = 18;
const stem = (x = 48, foot = GROUND + 6): Mark => [
  'face',
  `M${num(x - 3)} 2L${num(x - 4)} ${foot}L${num(x + 4)} ${foot}L${num(x + 3)} 2`,
];

/** Thin roots hanging from points, each with its lean and length. */
const roots = (list: readonly (readonly [x: number, y: number, lean: number, length: number])[]): Mark[] => [
  [
    'fine',
    list
      .map(([x, y, lean, length]) =>
        smooth([[x, y], from([x, y], 180 - lean * 0.6, length * 0.5), from([x, y], 180 - lean, length)]),
      )
      .join(''),
  ],
];

/** Rings around a thick creeping part, where leaves once stood. */
const rings = (spine: readonly Point[], half: (i: number) => number, every = 2): string =>
  spine
    .flatMap((at, i) => {
      if (i === 0 || i === spine.length - 1 || i % every) return [];
      const [a, b] = [spine[i - 1] as Point, spine[i + 1] as Point];
      const lean = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
      const [one, two] = [from(at, lean, half(i)), from(at, lean + 180, half(i))];
      return [smooth([one, from(at, lean + 90, 1.6), two])];
    })
    .join('');

export const undergrounds = bookOf('underground', {
  'short-rhizome': () => {
    const spine = bezier([16, 44], [34, 32], [58, 50], [80, 38], 12);
    const thick = (share: number) => 17 + 4 * Math.sin(share * 19) - 6 * Math.abs(share - 0.5);
    return [
      [
        stem(40, 38),
        ['face', 'M62 6L61 36L67 36L66 6'],
        ...roots([
          [24, 50, 16, 30],
          [32, 52, 4, 36],
          [44, 54, -6, 38],
          [56, 54, 8, 36],
          [68, 50, -10, 34],
          [76, 46, -20, 28],
        ]),
        ['face', band(spine, thick)],
        ['mark', band(spine, thick)],
        ['fine', rings(spine, (i) => thick(i / 12) / 2)],
        soil(GROUND),
      ],
      'A short, thick, knotty rootstock lying below the ground, with roots under it.',
      'Un rizoma corto, grueso y nudoso bajo el suelo, con raíces abajo.',
    ];
  },
  'long-rhizome': () => {
    const spine = bezier([4, 52], [28, 60], [62, 40], [92, 50], 16);
    const at = (i: number) => spine[i] as Point;
    return [
      [
        stem(20, 50),
        ['face', `M52 6L51 47L57 47L56 6`],
        ['face', `M82 26Q80 38 80 46L86 46Q86 36 84 26Q83 20 82 26Z`],
        ...roots(
          [3, 6, 9, 12, 14].flatMap((i): (readonly [number, number, number, number])[] => [
            [at(i)[0], at(i)[1] + 3, 10, 24],
            [at(i)[0] + 2, at(i)[1] + 3, -14, 20],
          ]),
        ),
        ['face', rod(spine, 7)],
        ['mark', rod(spine, 7)],
        ['fine', rings(spine, () => 3.5)],
        soil(GROUND),
      ],
      'A long runner creeping below the ground, with one stem after another rising from it.',
      'Un rizoma largo que corre bajo el suelo y del que sale un tallo tras otro.',
    ];
  },
  crown: () => [
    [
      ...[-20, -9, 3, 14].map(
        (lean, i): Mark => ['face', rod([from([42 + i * 4, 30], lean, 27), [42 + i * 4, 30]], 3.5, 5)],
      ),
      ['face', 'M33 26Q48 20 63 26Q66 36 58 40Q48 44 38 40Q30 36 33 26Z'],
      ['mark', 'M33 26Q48 20 63 26Q66 36 58 40Q48 44 38 40Q30 36 33 26Z'],
      [
        'fine',
        [-58, -44, -31, -19, -8, 3, 14, 26, 38, 52]
          .map((lean, i) =>
            smooth([
              [36 + i * 2.6, 39],
              from([36 + i * 2.6, 39], 180 - lean * 0.7, 20),
              from([36 + i * 2.6, 39], 180 - lean * 0.55, 38 + (i % 3) * 5),
            ]),
          )
          .join(''),
      ],
      soil(GROUND),
    ],
    'A tuft of shoots on a small crown with many thin roots.',
    'Un manojo de brotes sobre una corona pequeña con muchas raíces delgadas.',
  ],
  corm: () => {
    const body = 'M48 24Q70 25 74 46Q74 68 48 72Q22 68 22 46Q26 25 48 24Z';
    return [
      [
        ['face', 'M41 2L39 28L46 28L47 2M49 2L50 28L57 28L55 2'],
        ...roots([
          [34, 32, 54, 22],
          [30, 38, 66, 20],
          [62, 32, -54, 22],
          [66, 38, -66, 20],
          [40, 70, 8, 16],
          [56, 70, -8, 16],
        ]),
        ['face', body],
        ['mark', body],
        ['fine', 'M26 38Q48 47 70 38M23 48Q48 57 73 48M26 58Q48 67 70 58'],
        ['face', 'M76 60Q84 56 88 63Q88 70 81 71Q74 70 76 60Z'],
        soil(GROUND),
      ],
      'A thick, rounded, solid corm with rings around it, and a small corm at its side.',
      'Un cormo grueso, redondo y macizo, con anillos alrededor y un cormo pequeño a un lado.',
    ];
  },
  tuber: () => {
    const runner = (to: Point, bend: number): Mark => [
      'line',
      smooth([[48, 30], [(48 + to[0]) / 2, (30 + to[1]) / 2 + bend], to]),
    ];
    const bodies = [ellipse([20, 62], 12, 9, -24), ellipse([52, 78], 12, 10, 12), ellipse([79, 58], 11, 8.5, 30)];
    return [
      [
        stem(48, 30),
        ...roots([
          [45, 30, 26, 26],
          [51, 30, -30, 24],
          [48, 31, 6, 26],
        ]),
        runner([27, 56], 8),
        runner([51, 69], 0),
        runner([71, 53], 4),
        ...bodies.flatMap((path): Mark[] => [
          ['face', path],
          ['mark', path],
        ]),
        [
          'fine',
          'M15 60Q17 57 20 57M24 66Q26 65 27 63M46 76Q48 73 52 73M58 82Q60 80 60 77M75 54Q78 52 81 54M82 62Q84 61 85 59',
        ],
        soil(GROUND),
      ],
      'Thin runners below the ground that end in potato-like swellings.',
      'Guías delgadas bajo el suelo que terminan en bolas como papas.',
    ];
  },
  bulb: () => {
    const body = 'M44 18Q43 30 34 38Q22 50 27 64Q34 76 48 76Q62 76 69 64Q74 50 62 38Q53 30 52 18Z';
    return [
      [
        ['face', 'M42 2Q44 10 44 20L52 20Q52 10 54 2'],
        ...roots([
          [38, 74, 14, 18],
          [44, 76, 4, 18],
          [50, 76, -4, 19],
          [57, 74, -14, 17],
          [33, 70, 26, 16],
        ]),
        ['face', body],
        ['mark', body],
        ['fine', 'M47 26Q44 40 38 52Q35 64 42 74M49 26Q54 42 60 54Q62 64 56 74M48 30Q48 54 48 75'],
        soil(GROUND),
      ],
      'An onion-like bulb with layers and a tuft of roots at its base.',
      'Un bulbo como cebolla, con capas y un manojo de raíces abajo.',
    ];
  },
  runners: () => {
    const arc: Mark[] = [
      [
        'trace',
        smooth([
          [26, 22],
          [36, 9],
          [50, 7],
          [62, 12],
          [70, 22],
        ]),
      ],
      [
        'trace',
        smooth([
          [70, 22],
          [78, 13],
          [88, 12],
          [94, 16],
        ]),
      ],
    ];
    const plant = (x: number, size: number): Mark[] => [
      ...blade([x, 24], -44, size, size * 0.24, -14),
      ...blade([x, 24], 40, size, size * 0.24, 14),
      ...blade([x, 24], -4, size * 0.9, size * 0.22, 2),
    ];
    return [
      [
        ...arc,
        ...plant(24, 21),
        ...plant(70, 17),
        soil(26),
        ...roots([
          [21, 27, 20, 34],
          [24, 27, 4, 40],
          [27, 27, -16, 34],
          [67, 27, 18, 26],
          [70, 27, 0, 30],
          [73, 27, -18, 26],
        ]),
      ],
      'Runners above the ground with a young plant rooting at each end.',
      'Guías sobre el suelo, con una planta nueva que echa raíces en cada punta.',
    ];
  },
  'roots-only': () => [
    [
      stem(48, 24),
      [
        'trace',
        [
          [-2, 24, 46, 38],
          [0, 24, 24, 52],
          [0, 25, 4, 62],
          [1, 24, -18, 54],
          [2, 24, -42, 40],
        ]
          .map(([x, y, lean, length]) => {
            const foot: Point = [48 + (x as number), y as number];
            return smooth([
              foot,
              from(foot, 180 - (lean as number) * 0.6, (length as number) * 0.4),
              from(foot, 180 - (lean as number), (length as number) * 0.75),
              from(foot, 180 - (lean as number) * 0.8, length as number),
            ]);
          })
          .join(''),
      ],
      ...roots([
        [42, 40, 50, 16],
        [46, 52, -20, 18],
        [54, 40, -56, 16],
        [50, 60, 22, 16],
        [38, 46, 10, 18],
        [60, 46, -12, 18],
      ]),
      soil(GROUND),
    ],
    'Only thin roots below the ground.',
    'Solo raíces delgadas bajo el suelo.',
  ],
});
