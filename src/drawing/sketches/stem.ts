// The stem as it is built.
import type { Mark } from '../../key/index.ts';
import { bezier, ellipse, from, type Point, smooth, straight } from '../geometry.ts';
import { bookOf } from './book.ts';
import { blade, joint, piece, ring, rod, soil } from './stem-parts.ts';

const pith = (x: number, y: number): string =>
  [
    [-9, 0],
    [-4, -2.6],
    [-3, 2.2],
    [2, -0.6],
    [4, 2.9],
    [7, -2],
    [10, 0.8],
  ]
    .map(([dx, dy]) => ellipse([x + (dx as number), y + (dy as number)], 0.9))
    .join('');

function jointed(end: readonly Mark[]): Mark[] {
  return [...piece(48, 18, 86, 17), ...joint(48, 42, 17), ...joint(48, 72, 17), ...end];
}

export const stemForms = bookOf('stem-form', {
  'hollow-jointed': () => [
    jointed([
      ['mark', ellipse([48, 18], 17, 6.1)],
      ['solid', ellipse([48, 18.4], 11, 3.7)],
    ]),
    'A piece of cane with two ringed joints; its cut end is an open tube.',
    'Un trozo de caña con dos nudos como anillos; el extremo cortado es un tubo hueco.',
  ],
  'solid-jointed': () => [
    jointed([
      ['mark', ellipse([48, 18], 17, 6.1)],
      ['solid', pith(47.5, 18)],
    ]),
    'A piece of stem with two ringed joints; its cut end is filled.',
    'Un trozo de tallo con dos nudos como anillos; el extremo cortado está relleno.',
  ],
  triangular: () => [
    [
      [
        'face',
        straight(
          [
            [27, 22],
            [27, 86],
            [53, 94],
            [70, 80],
            [70, 15],
          ],
          true,
        ),
      ],
      [
        'tint',
        straight(
          [
            [53, 31],
            [53, 94],
            [70, 80],
            [70, 15],
          ],
          true,
        ),
      ],
      [
        'line',
        straight([
          [27, 22],
          [27, 86],
          [53, 94],
          [70, 80],
          [70, 15],
        ]),
      ],
      [
        'line',
        straight([
          [53, 31],
          [53, 94],
        ]),
      ],
      [
        'face',
        straight(
          [
            [27, 22],
            [53, 31],
            [70, 15],
          ],
          true,
        ),
      ],
      [
        'mark',
        straight(
          [
            [27, 22],
            [53, 31],
            [70, 15],
          ],
          true,
        ),
      ],
      [
        'solid',
        [
          [42, 22],
          [50, 25],
          [54, 20],
          [60, 19],
        ]
          .map(([x, y]) => ellipse([x as number, y as number], 0.9))
          .join(''),
      ],
    ],
    'A piece of stem with three flat sides and three edges; its cut end is a triangle.',
    'Un trozo de tallo con tres caras planas y tres filos; el extremo cortado es un triángulo.',
  ],
  'round-pithy': () => [
    [...piece(48, 18, 88, 14), ['mark', ellipse([48, 18], 14, 5)], ['solid', pith(47.5, 18)]],
    'A round, smooth piece of stem without a joint; its cut end is filled with pith.',
    'Un trozo de tallo redondo y liso, sin nudos; el extremo cortado está relleno de médula.',
  ],
  'leafy-soft': () => {
    const spine = bezier([46, 92], [51, 70], [43, 44], [50, 18]);
    const at = (i: number) => spine[i] as Point;
    return [
      [
        soil(92),
        ...blade(at(3), -62, 30, 7, -12),
        ...blade(at(4), 58, 31, 7, 14),
        ...blade(at(6), -58, 28, 6.5, -12),
        ...blade(at(7), 56, 27, 6.5, 12),
        ['mark', rod(spine, 5, 2.5)],
        ...blade(at(9), -50, 22, 5.5, -8),
        ...blade(at(10), 46, 20, 5, 8),
        ...blade(at(12), 4, 13, 5),
      ],
      'A soft, upright stem with leaves along it.',
      'Un tallo blando y erguido, con hojas a lo largo.',
    ];
  },
  trailing: () => {
    const spine = bezier([4, 62], [30, 68], [58, 66], [82, 46], 14);
    const at = (i: number) => spine[i] as Point;
    return [
      [
        [
          'water',
          smooth([
            [4, 76],
            [20, 74],
            [34, 77],
            [50, 74],
            [66, 76],
            [92, 73],
          ]),
        ],
        ...[3, 7, 11].map(
          (i): Mark => [
            'fine',
            [-7, 0, 7]
              .map((out) => smooth([at(i), [at(i)[0] + out * 0.4, at(i)[1] + 10], [at(i)[0] + out, at(i)[1] + 21]]))
              .join(''),
          ],
        ),
        ...[3, 7, 11].flatMap((i) => [...blade(at(i), -24, 26, 9, -8), ...blade(at(i), 34, 26, 9, 8)]),
        ['mark', rod(spine, 5.5, 3.5)],
        ...blade(at(14), 56, 13, 5, 6),
        ...blade(at(13), -4, 18, 5.5, -6),
      ],
      'A soft stem lying along the water, with roots and leaves at its joints.',
      'Un tallo blando tendido sobre el agua, con raíces y hojas en los nudos.',
    ];
  },
  trunk: () => [
    [
      soil(92),
      ...[
        [-38, -14, 42],
        [-14, -7, 34],
        [16, 8, 35],
        [40, 15, 42],
      ].map(
        ([lean, x, length]): Mark => [
          'face',
          rod(
            bezier(
              [48 + (x as number), 40],
              from([48 + (x as number), 40], (lean as number) * 0.3, 14),
              from([48 + (x as number), 40], (lean as number) * 0.8, 26),
              from([48 + (x as number), 40], lean as number, length as number),
            ),
            9,
            4.5,
          ),
        ],
      ),
      ['mark', 'M29 92Q33 64 31 42Q48 30 65 42Q63 66 68 92Z'],
      ['tint', 'M56 42Q60 38 64.5 42Q62.5 66 67 91.5L58 91.5Q54 62 56 42Z'],
      ...[52, 63, 74, 84].map((y): Mark => ['fine', ring(48, y, 16.5)]),
    ],
    'A thick, fleshy trunk with the scars of old leaves, and leaf stalks at its top.',
    'Un tronco grueso y carnoso con cicatrices de hojas viejas, y peciolos en la punta.',
  ],
  'no-stem': () => {
    const stalks: readonly [Point, number, number][] = [
      [[42, 88], -26, 56],
      [[47, 88], -4, 62],
      [[51, 88], 18, 60],
      [[55, 88], 36, 38],
    ];
    return [
      [
        ...stalks.flatMap(([foot, lean, length]): Mark[] => {
          const top = from(foot, lean, length);
          return [
            [
              'mark',
              rod(
                bezier(foot, from(foot, lean * 0.3, length * 0.3), from(foot, lean * 0.7, length * 0.65), top),
                4.5,
                2.5,
              ),
            ],
            ...blade(from(top, lean, -3), lean * 1.2, 20, 11),
          ];
        }),
        soil(89),
        ['fine', 'M40 90Q38 93 36 94M48 90L48 95M56 90Q58 93 60 94'],
      ],
      'Leaf stalks rising one by one from the ground; there is no stem between them.',
      'Peciolos que salen uno por uno del suelo; no hay tallo entre ellos.',
    ];
  },
});
