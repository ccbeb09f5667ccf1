// How a stem branches: the same jointed stem, and the branches that it bears.
import type { Mark } from '../../key/index.ts';
import { bezier, from, type Point, straight } from '../geometry.ts';
import { bookOf } from './book.ts';
import { along, blade, rod } from './stem-parts.ts';

/** A jointed upright stem with narrow leaves, on which branches are drawn. */
function upright(joints: readonly number[], leaves: boolean): Mark[] {
  const spine = along([48, 92], [48, 6], 8);
  return [
    ['face', rod(spine, 7, 4)],
    ...joints.map(
      (y): Mark => [
        'line',
        straight([
          [44, y],
          [52, y],
        ]),
      ],
    ),
    ...(leaves
      ? joints.flatMap((y, i) => blade([i % 2 ? 51 : 45, y], i % 2 ? 42 : -42, 25, 3.6, i % 2 ? 26 : -26))
      : []),
  ];
}

/** A branch with its narrow leaves. */
function branch(foot: Point, lean: number, length: number, thick: number): Mark[] {
  const spine = bezier(
    foot,
    from(foot, lean, length * 0.4),
    from(foot, lean * 0.8, length * 0.7),
    from(foot, lean * 0.7, length),
  );
  const at = (i: number) => spine[i] as Point;
  return [
    ...blade(at(6), lean - 34, length * 0.5, 3, -10),
    ...blade(at(8), lean + 36, length * 0.5, 3, 10),
    ...blade(at(11), lean * 0.6, length * 0.4, 2.8),
    ['mark', rod(spine, thick, thick * 0.6)],
  ];
}

export const stemBranchings = bookOf('stem-branching', {
  unbranched: () => [
    [...upright([76, 60, 44, 28, 14], true)],
    'One straight stem with leaves and no branches.',
    'Un solo tallo derecho con hojas y sin ramas.',
  ],
  few: () => [
    [...upright([76, 60, 44, 28, 14], true).slice(0, -2), ...branch([51, 60], 46, 38, 4)],
    'A stem with leaves and a single side shoot.',
    'Un tallo con hojas y un solo brote lateral.',
  ],
  pairs: () => [
    [
      ...upright([72, 40], false),
      ...branch([51, 71], 50, 40, 4.5),
      ...branch([51, 70], 24, 24, 2.8),
      ...branch([45, 39], -50, 38, 4.5),
      ...branch([45, 38], -22, 23, 2.8),
    ],
    'At each joint two branches, one clearly bigger than the other.',
    'En cada nudo dos ramas, una claramente más grande que la otra.',
  ],
  fans: () => [
    [
      ...upright([76, 55, 34], false),
      ...(
        [
          [76, 1],
          [55, -1],
          [34, 1],
        ] as const
      ).flatMap(([y, side]) =>
        [10, 26, 42, 58].flatMap((lean): Mark[] => {
          const foot: Point = [48 + side * 3, y];
          const top = from(foot, lean * side, 19);
          return [['mark', rod([foot, top], 2.2, 1.6)], ...blade(top, lean * side, 15, 2.6)];
        }),
      ),
    ],
    'At each joint a fan of many small branches close to the stem.',
    'En cada nudo un abanico de muchas ramitas pegadas al tallo.',
  ],
  'bushy-top': () => {
    const limbs: readonly [Point, number, number][] = [
      [[48, 50], -44, 34],
      [[48, 46], 42, 34],
      [[48, 36], -28, 32],
      [[48, 34], 26, 31],
      [[48, 26], -8, 21],
    ];
    return [
      [
        ...upright([78, 64], true),
        ...limbs.flatMap(([foot, lean, length]): Mark[] => {
          const top = from(foot, lean, length);
          const mid = from(foot, lean, length * 0.55);
          return [
            ['mark', rod([foot, mid, top], 3, 1.6)],
            ['trace', straight([mid, from(mid, lean - 32, 11)]) + straight([mid, from(mid, lean + 30, 11)])],
            ['line', [-40, -14, 14, 40].map((turn) => straight([top, from(top, lean + turn, 8)])).join('')],
          ];
        }),
      ],
      'A stem that is bare of branches below and bushy at its top.',
      'Un tallo sin ramas abajo y muy ramificado en la punta.',
    ];
  },
});
