// Fluff, berries, fleshy fruits, and none at all.
import { Random } from '../../engine/trial/index.ts';
import type { Drawing } from '../../key/index.ts';
import { from, type Point, smooth, straight } from '../geometry.ts';
import { arc, dot, hair, lens, onArc, petal, spot, upTo } from './flower-strokes.ts';
import { coin } from './fruit-scale.ts';

function fluff(): Drawing {
  const random = new Random(8);
  const seed = ([x, y]: Point, lean: number, size: number): Drawing => [
    ['line', straight([[x, y], from([x, y], lean, size * 0.5)])],
    [
      'fine',
      upTo(11)
        .map((k) => {
          const start = from([x, y], lean, size * 0.5);
          const turn = lean + (k - 5) * 15;
          return arc(start, from(start, turn, size * (0.8 + 0.2 * random.next())), (k - 5) * 0.3);
        })
        .join(''),
    ],
    ['solid', lens(from([x, y], lean + 180, size * 0.42), from([x, y], lean, 2), size * 0.2)],
  ];
  const stem = [
    [10, 96],
    [16, 74],
    [20, 56],
    [22, 40],
  ] as const;
  const tufts = upTo(26).map((i) => {
    const foot = onArc([12, 90], [22, 40], -2, i / 25);
    return hair(foot, (i % 2 ? 1 : -1) * (38 + 22 * random.next()) + 14, 9 + 3 * random.next());
  });
  return [
    ['line', smooth(stem)],
    ['fine', tufts.join('')],
    ...seed([44, 54], 52, 25),
    ...seed([66, 80], 76, 19),
    ...seed([64, 33], 40, 22),
    ['fine', 'M28 26C35 21 42 20 49 23M26 31C30 28 34 27 38 27M36 84C42 80 46 80 50 81'],
  ];
}

function redBerry(): Drawing {
  const rows: readonly [number, number, number][] = [
    [22, 1, 0],
    [31, 2, 13],
    [42, 3, 14],
    [54, 4, 13],
    [66, 3, 14],
    [76, 2, 13],
  ];
  const berries = rows.flatMap(([y, many, gap]) =>
    upTo(many).map((k): Point => [44 + (k - (many - 1) / 2) * gap, y + (k % 2)]),
  );
  return [
    ...coin([80, 80], 1.1),
    ['line', 'M41 96L41 78M47 96L47 78'],
    ...berries.flatMap(
      (berry): Drawing => [
        ['face', spot(berry, 7.6)],
        ['wash-red', spot(berry, 7)],
      ],
    ),
    ['fine', berries.map(([x, y]) => arc([x - 4, y + 1], [x - 1, y - 4], 2)).join('')],
  ];
}

function greenBerry(): Drawing {
  const berries: readonly Point[] = [
    [36, 42],
    [52, 38],
    [64, 48],
    [42, 56],
    [56, 60],
    [34, 68],
    [48, 74],
    [62, 74],
  ];
  const sheath = 'M24 30C18 50 20 74 34 90C30 72 32 52 44 30C40 24 30 24 24 30Z';
  const flap = 'M52 22C70 26 82 42 80 62C78 72 74 80 70 84C74 66 70 46 52 34Z';
  return [
    ...coin([16, 79], 1.1),
    ['line', 'M12 6C24 8 34 14 40 24M18 4C28 6 40 10 48 20'],
    ...berries.flatMap(
      (berry, i): Drawing => [
        ['face', spot(berry, 8.6)],
        [i % 3 === 1 ? 'wash-dark-green' : 'wash-green', spot(berry, 8)],
      ],
    ),
    ['fine', berries.map(([x, y]) => arc([x - 4.5, y + 1], [x - 1, y - 4.5], 2)).join('')],
    ['face', sheath],
    ['face', flap],
    ['fine', 'M28 34C25 50 26 66 31 80M60 30C72 40 76 56 73 74'],
  ];
}

function roundedVessel(): Drawing {
  const urn = 'M22 34C10 46 12 70 24 80C32 85 46 85 54 80C66 70 68 46 56 34Z';
  const ball = spot([79, 62], 12.5);
  return [
    ['water', 'M4 90C14 87 22 93 32 90C42 87 50 93 60 90C70 87 80 93 92 90'],
    ['line', 'M35 96L36 83M43 96L42 83M79 75C78 82 86 86 82 96'],
    ['face', urn],
    ['wash-green', urn],
    ['fine', 'M29 36C20 50 22 68 31 82M36 37C32 52 33 68 37 83M43 37C47 52 46 68 42 83M50 36C59 50 57 68 48 82'],
    ['face', 'M18 30C18 22 60 22 60 30C60 38 18 38 18 30Z'],
    [
      'fine',
      upTo(9)
        .map((k) =>
          straight([
            [39 + (k - 4) * 1.2, 29],
            [39 + (k - 4) * 4.6, 29 + (k % 2 ? -3.5 : 3.5) * Math.cos((k - 4) * 0.33)],
          ]),
        )
        .join(''),
    ],
    ['face', ball],
    ['wash-green', spot([79, 62], 11.5)],
    ['face', petal([75, 52], [69, 42], 7, 0.6) + petal([83, 52], [89, 42], 7, 0.6) + petal([79, 51], [79, 38], 7, 0.6)],
    ...coin([79, 18], 1.15),
  ];
}

function none(): Drawing {
  const ends: readonly [number, Point][] = [
    [72, [22, 52]],
    [62, [73, 44]],
    [30, [45, 28]],
  ];
  const cups = ends.map(([, [x, y]]) => `M${x - 7} ${y - 5}C${x - 6} ${y + 5} ${x + 6} ${y + 5} ${x + 7} ${y - 5}`);
  /** A fruit that is not there: a ring of dots. */
  const gaps = ends.map(([, [x, y]]) =>
    upTo(11)
      .map((k) => dot(from([x, y - 9], k * 32.7 + 16, 12.5)))
      .join(''),
  );
  return [
    [
      'line',
      smooth([
        [48, 96],
        [47, 72],
        [49, 50],
        [45, 31],
      ]),
    ],
    ['line', arc([48, 78], [22, 54], 8) + arc([48, 70], [73, 46], -8)],
    ['line', cups.join('')],
    ['fine', 'M48 60C42 58 38 52 34 54M49 46C56 46 58 38 62 40'],
    ['trace', gaps.join('')],
  ];
}

/** Drawings by the form's name. */
export const SOFT_FRUITS: Readonly<Record<string, () => Drawing>> = {
  fluff,
  'red-berry': redBerry,
  'green-berry': greenBerry,
  'rounded-vessel': roundedVessel,
  none,
};
