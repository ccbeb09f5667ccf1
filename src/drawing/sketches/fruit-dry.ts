// Dry fruits: grains, nutlets, pods, and fruits that split. Close-ups, with a fingertip or a coin for the size.
import type { Drawing } from '../../key/index.ts';
import { bezier, ellipse, from, type Point, smooth, straight } from '../geometry.ts';
import { arc, dot, hair, lens, spot, upTo } from './flower-strokes.ts';
import { coin, FINGER, FINGERTIP, onFinger } from './fruit-scale.ts';

function grain(): Drawing {
  const bunch: readonly (readonly [Point, number])[] = [
    [[28, 70], -38],
    [[42, 62], 44],
    [[30, 52], -30],
    [[46, 45], 40],
    [[41, 34], 4],
  ];
  const left = bunch.map(([foot, lean]) => lens(foot, from(foot, lean - 8, 23), 7, -2.5)).join('');
  const right = bunch.map(([foot, lean]) => lens(foot, from(foot, lean + 8, 23), 7, 2.5)).join('');
  const kernels = bunch.map(([foot, lean]) => lens(from(foot, lean, 4), from(foot, lean, 20), 6)).join('');
  return [
    ...FINGERTIP,
    [
      'line',
      `${smooth([
        [34, 96],
        [35, 76],
        [38, 56],
        [41, 34],
      ])}${arc([35, 78], [28, 70], 1)}${arc([36, 70], [42, 62], -1)}${arc([38, 58], [30, 52], 1)}${arc([39, 51], [46, 45], -1)}`,
    ],
    ['fine', bunch.map(([foot, lean]) => hair(from(foot, lean - 8, 22), lean - 4, 9)).join('')],
    ['face', left + right],
    ['wash-tan', left + right],
    ['face', kernels],
    ['wash-brown', kernels],
    ['face', lens([72, 22], [78, 48], 12)],
    ['wash-brown', lens([72, 22], [78, 48], 11)],
    ['fine', arc([74, 27], [76, 44], 1)],
    ['solid', lens([FINGER[0], FINGER[1] - onFinger(2)], [FINGER[0] + 1, FINGER[1] + onFinger(2)], onFinger(1.6))],
  ];
}

function beads(): Drawing {
  const joint = ([x, y]: Point, lean: number): { shape: string; gloss: string } => {
    const p = (dx: number, dy: number): Point => from(from([x, y], lean, -dy), lean + 90, dx);
    return {
      shape: smooth([p(-7, -8), p(0, -9.4), p(7, -8), p(9, 2), p(6, 9), p(-6, 9), p(-9, 2)], true),
      gloss: arc(p(-5, -4), p(-5, 4), 2.5),
    };
  };
  const stack = [joint([30, 82], 6), joint([33, 63.5], 10), joint([37, 45], 14), joint([42, 27], 18)];
  const fallen = joint([66, 48], 62);
  return [
    ...FINGERTIP,
    [
      'line',
      `${straight([
        [28, 96],
        [29, 88],
      ])}${smooth([
        [45, 19],
        [49, 12],
        [55, 6],
      ])}`,
    ],
    ['fine', hair([48, 14], -20, 7) + hair([51, 10], 80, 7)],
    ...[...stack, fallen].flatMap(
      ({ shape }): Drawing => [
        ['face', shape],
        ['wash-tan', shape],
      ],
    ),
    ['fine', [...stack, fallen].map(({ gloss }) => gloss).join('')],
    ['mark', ellipse([59.5, 45], 3, 5, 150)],
    ['solid', ellipse([FINGER[0], FINGER[1]], onFinger(3), onFinger(3.6), 12)],
  ];
}

function nutlet(): Drawing {
  const foot: Point = [33, 78];
  /** Spikelets: scales that overlap like the tiles of a roof. */
  const spikelets = (
    [
      [-36, 40],
      [38, 42],
      [0, 54],
    ] as const
  ).map(([lean, length]) => {
    const at = from(foot, lean, 8);
    const tiles = [0.26, 0.44, 0.62, 0.78].map((share) => {
      const half = 8.5 * Math.sin(Math.PI * share);
      const point = from(at, lean, length * (share + 0.08));
      const side = (turn: number) => from(from(at, lean, length * (share - 0.06)), lean + turn, half);
      return straight([side(-90), point, side(90)]);
    });
    return { stalk: straight([foot, at]), shape: lens(at, from(at, lean, length), 17), tiles: tiles.join('') };
  });
  const nut = 'M70 20C77 26 79 34 75 41C73 45 67 45 65 41C61 34 63 26 70 20Z';
  return [
    ...FINGERTIP,
    ['line', straight([[33, 96], foot]) + spikelets.map(({ stalk }) => stalk).join('')],
    ...spikelets.flatMap(
      ({ shape, tiles }): Drawing => [
        ['face', shape],
        ['wash-brown', shape],
        ['fine', tiles],
      ],
    ),
    ['face', nut],
    ['mark', nut],
    ['fine', 'M70 20L70 14M67 38C68 40 70 41 72 40'],
    ['solid', spot(FINGER, onFinger(1))],
  ];
}

function podHoles(): Drawing {
  const holes: readonly [Point, number, number][] = [
    [[30, 24], 5, 3],
    [[48, 20], 5, 2.8],
    [[66, 24], 5, 3],
    [[22, 31], 4.4, 2.6],
    [[40, 30], 5.4, 3.4],
    [[58, 30], 5.4, 3.4],
    [[75, 30], 4.4, 2.6],
    [[49, 38], 5, 3],
  ];
  const body = 'M12 30C16 46 28 62 42 70C43 74 44 76 44 80L52 80C52 76 53 74 54 70C68 62 80 46 84 30Z';
  return [
    ...coin([80, 82], 0.75),
    ['line', 'M45 96C45 90 44 84 44 78M51 96C51 90 52 84 52 78'],
    ['face', body],
    ['wash-yellow-green', body],
    ['fine', 'M24 44C30 56 37 63 44 68M38 46C41 56 44 62 46 68M58 46C55 56 53 62 51 68M72 44C66 56 59 63 53 68'],
    ['face', ellipse([48, 29], 37, 14)],
    ['mark', holes.map(([centre, rx, ry]) => ellipse(centre, rx, ry)).join('')],
    ['solid', holes.map(([[x, y], rx, ry]) => ellipse([x, y + 0.4], rx * 0.5, ry * 0.55)).join('')],
  ];
}

function burrHead(): Drawing {
  const centre: Point = [38, 40];
  const beaked = upTo(18).map((k) => hair(from(centre, k * 20, 27), k * 20 + 8, 5));
  const rows = [
    [16, 23],
    [11, 14.5],
    [5, 6],
  ] as const;
  const scales = rows.flatMap(([many, r]) =>
    upTo(many).map((k) => ellipse(from(centre, (k * 360) / many + r, r), 3.2, 4.6, (k * 360) / many + r)),
  );
  const achene = 'M70 52C64 46 62 38 66 31C70 25 77 24 82 28L89 24C87 29 86 31 85 33C86 42 80 50 70 52Z';
  return [
    ...FINGERTIP,
    [
      'line',
      straight([
        [38, 96],
        [38, 66],
      ]),
    ],
    ['fine', beaked.join('')],
    ['face', spot(centre, 27)],
    ['wash-green', spot(centre, 26)],
    ['fine', scales.join('')],
    ['face', achene],
    ['wash-tan', achene],
    ['fine', 'M70 48C67 42 67 36 71 32C75 29 79 30 81 33C81 40 77 46 70 48Z'],
    ['solid', lens([FINGER[0], FINGER[1] - 2], [FINGER[0] + 1, FINGER[1] + 2], 2.6)],
  ];
}

function capsule(): Drawing {
  const left = 'M46 78C30 74 18 56 20 36C21 30 16 24 12 20C24 20 34 26 40 38C45 50 47 64 46 78Z';
  const right = 'M50 78C66 74 78 56 76 36C75 30 80 24 84 20C72 20 62 26 56 38C51 50 49 64 50 78Z';
  const middle = 'M48 78C38 64 36 40 48 10C60 40 58 64 48 78Z';
  const seeds: readonly Point[] = [
    [44, 40],
    [52, 44],
    [45, 51],
    [51, 57],
    [47, 33],
  ];
  const fallen: readonly Point[] = [
    [72, 86],
    [82, 90],
    [63, 91],
  ];
  return [
    ['line', 'M48 96L48 78'],
    ['face', middle],
    ['wash-tan', middle],
    ['solid', [...seeds, ...fallen].map((seed) => spot(seed, 3.4)).join('')],
    ['face', left],
    ['wash-brown', left],
    ['face', right],
    ['wash-brown', right],
    ['trace', 'M40 38C45 50 47 64 46 77M56 38C51 50 49 64 50 77'],
    ['fine', 'M20 24C30 30 38 48 42 68M76 24C66 30 58 48 54 68'],
    [
      'fine',
      upTo(6)
        .map((k) => dot([24 + k * 2.4, 42 + k * 5]) + dot([72 - k * 2.4, 42 + k * 5]))
        .join(''),
    ],
  ];
}

function bladder(): Drawing {
  const body = 'M38 78C22 74 14 58 18 42C21 30 29 22 38 18C48 22 56 30 59 42C62 58 54 74 38 78Z';
  /** A toothed ridge from the top to the bottom, bulging to `x`. */
  const ridge = (x: number): string =>
    straight(
      bezier([38, 23], [x, 32], [x, 62], [38, 74], 10).map(
        ([a, b], i): Point => [a + (i % 2 ? 2.4 : -1) * (x < 38 ? -1 : 1), b + (i % 2 ? -1 : 0)],
      ),
    );
  return [
    ...FINGERTIP,
    [
      'line',
      straight([
        [38, 96],
        [38, 78],
      ]),
    ],
    ['fine', 'M38 18C36 12 30 10 26 12M38 18C40 10 46 8 50 12M38 18L38 8'],
    ['face', body],
    ['wash-tan', body],
    ['trace', ridge(18) + ridge(58)],
    ['line', ridge(39)],
    ['fine', 'M24 40C23 48 24 54 26 60M51 36C53 44 54 52 52 60'],
    ['solid', ellipse(FINGER, onFinger(2), onFinger(2.6), 8)],
  ];
}

function splitting(): Drawing {
  const half = (side: number, shift: number, lean: number): { shape: string; ribs: string } => {
    const p = (x: number, y: number): Point => {
      const [a, b] = from([0, 0], lean, -y);
      return [36 + side * (x * 1 + shift) + a, 46 + b];
    };
    return {
      shape: smooth([p(0, -27), p(9, -24), p(16, -14), p(18, 0), p(15, 14), p(8, 23), p(0, 26), p(1, 0)], true),
      ribs: smooth([p(4, -23), p(7, 0), p(4, 22)]) + smooth([p(10, -20), p(13, 0), p(9, 19)]),
    };
  };
  const [left, right] = [half(-1, 6, 8), half(1, 8, -12)];
  return [
    ...FINGERTIP,
    ['line', 'M36 96C36 88 37 80 36 74M36 76C35 60 33 40 34 24M36 76C38 60 40 44 39 26'],
    ...[left, right].flatMap(
      ({ shape }): Drawing => [
        ['face', shape],
        ['wash-green', shape],
      ],
    ),
    ['fine', left.ribs + right.ribs],
    ['trace', 'M35 20C37 32 38 48 37 70'],
    [
      'solid',
      lens([FINGER[0] - 1.6, FINGER[1] - 2], [FINGER[0] - 1.6, FINGER[1] + 2], 3) +
        lens([FINGER[0] + 1.6, FINGER[1] - 2], [FINGER[0] + 1.6, FINGER[1] + 2], 3),
    ],
  ];
}

/** Drawings by the form's name. */
export const DRY_FRUITS: Readonly<Record<string, () => Drawing>> = {
  grain,
  beads,
  nutlet,
  'pod-holes': podHoles,
  'burr-head': burrHead,
  capsule,
  bladder,
  splitting,
};
