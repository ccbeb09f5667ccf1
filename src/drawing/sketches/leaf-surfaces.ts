// What the face of a leaf is like, and its colour: the same leaf each time, seen from above.
import type { HUES, Mark } from '../../key/index.ts';
import { curved, num, type Point, straight } from '../geometry.ts';
import { type LeafShape, leafOf } from '../leaf.ts';
import { put } from '../leaf-pose.ts';
import { veinsOf } from '../leaf-veins.ts';
import { bookOf, type Page } from './book.ts';
import { dots, drawn, leafAt, loop, OVAL, sweep, way } from './leaf-strokes.ts';

const BROAD: LeafShape = { ...OVAL, ratio: 1.25 };
const FOOT: Point = [48, 90];
const SIZE = 84;
const sheet = (veins = true): Mark[] => leafAt(BROAD, SIZE, FOOT, veins ? { veins: 'feather' } : {});

/** Short hairs on a face, leaning the way of the tip. */
const hairs = (roots: readonly Point[], length: number): string =>
  roots
    .map(([x, y]) => {
      const side = x < 48 ? -1 : 1;
      return `M${x} ${y}Q${num(x + side * length * 0.1)} ${num(y - length * 0.7)} ${num(x + side * length * 0.6)} ${num(y - length)}`;
    })
    .join('');
const ROOTS = way(
  27,
  74,
  34,
  80,
  38,
  70,
  43,
  80,
  24,
  62,
  32,
  58,
  40,
  60,
  28,
  48,
  36,
  46,
  43,
  50,
  34,
  34,
  41,
  36,
  43,
  24,
  69,
  74,
  62,
  80,
  58,
  70,
  53,
  80,
  72,
  62,
  64,
  58,
  56,
  60,
  68,
  48,
  60,
  46,
  53,
  50,
  62,
  34,
  55,
  36,
  53,
  24,
);
const RIM = way(17, 70, 15, 58, 17, 46, 22, 35, 29, 25, 36, 17, 79, 70, 81, 58, 79, 46, 74, 35, 67, 25, 60, 17);

const surfaces: Record<string, () => Page> = {
  glossy: () => [
    drawn(
      sheet(),
      ['mark', loop(24, 68, 21, 56, 26, 42, 35, 30, 38, 30, 31, 44, 28, 56, 28, 67)],
      ['mark', loop(57, 72, 56, 58, 58, 46, 61, 46, 61, 58, 61, 71)],
      ['trace', sweep(37, 24, 40, 20)],
    ),
    'A leaf with bright streaks of light on it, like polished leather.',
    'Una hoja con reflejos de luz muy claros, como cuero lustrado.',
  ],
  plain: () => [
    drawn(sheet(), ['tint', loop(54, 88, 70, 80, 78, 68, 80, 57, 77, 46, 72, 36, 73, 52, 71, 64, 64, 76)]),
    'A smooth leaf with an even, dull face: no shine, no powder, no hairs.',
    'Una hoja lisa de cara pareja y opaca: sin brillo, sin polvo, sin pelos.',
  ],
  velvety: () => {
    const beads = way(34, 64, 60, 54, 43, 40, 64, 74);
    const radius = [8, 9.5, 6, 5];
    return [
      drawn(
        sheet(),
        ['face', beads.map((at, i) => dots([at], radius[i] ?? 5)).join('')],
        ['mark', beads.map((at, i) => dots([at], radius[i] ?? 5)).join('')],
        [
          'line',
          beads
            .map(([x, y], i) =>
              sweep(
                x - 0.6 * (radius[i] ?? 5),
                y - 0.1 * (radius[i] ?? 5),
                x - 0.4 * (radius[i] ?? 5),
                y - 0.45 * (radius[i] ?? 5),
                x,
                y - 0.6 * (radius[i] ?? 5),
              ),
            )
            .join(''),
        ],
      ),
      'A leaf on which water stands in round beads, without wetting it.',
      'Una hoja sobre la que el agua forma gotas redondas, sin mojarla.',
    ];
  },
  bloom: () => [
    drawn(
      sheet(),
      ['mark', curved(put(leafOf(BROAD, SIZE).blades[0] ?? [], FOOT), true)],
      ['face', loop(30, 70, 28, 64, 40, 56, 56, 44, 66, 36, 69, 41, 60, 51, 46, 62, 35, 71)],
      ['fine', sweep(38, 64, 47, 57) + sweep(54, 52, 62, 45)],
    ),
    'A leaf with a pale powder all over it; a finger has wiped one clean streak across it.',
    'Una hoja toda cubierta de un polvo pálido; un dedo ha dejado una raya limpia.',
  ],
  hairy: () => [
    drawn(sheet(false), ['fine', hairs(ROOTS, 8)], ['trace', hairs(RIM, 7)]),
    'A leaf with many short hairs on its face and along its edge.',
    'Una hoja con muchos pelos cortos en la cara y en el borde.',
  ],
  'rough-face': () => [
    drawn(sheet(), [
      'mark',
      dots(
        ROOTS.concat(
          way(20, 56, 30, 66, 47, 66, 37, 53, 48, 42, 39, 42, 76, 56, 66, 66, 50, 74, 59, 53, 58, 41, 47, 30, 48, 15),
        ),
        0.9,
      ),
    ]),
    'A leaf strewn with tiny hard dots, like fine sandpaper.',
    'Una hoja llena de puntitos duros, como lija fina.',
  ],
};

/** The leaf in a colour, its veins over it. */
function coloured(hue: (typeof HUES)[number]): Mark[] {
  const leaf = leafOf(BROAD, SIZE);
  const outline = curved(put(leaf.blades[0] ?? [], FOOT), true);
  return [
    [`swatch-${hue}`, outline],
    ['line', outline + straight([FOOT, [48, 7]])],
    [
      'fine',
      veinsOf(leaf, 'feather')
        .map((vein) => curved(put(vein, FOOT)))
        .join(''),
    ],
  ];
}
const colours: Record<string, () => Page> = {
  green: () => [
    drawn(coloured('green')),
    'A leaf in plain middle green.',
    'Una hoja de verde común, ni claro ni oscuro.',
  ],
  'blue-green': () => [
    drawn(coloured('blue-green')),
    'A leaf in a cool, bluish or grayish green.',
    'Una hoja de verde frío, azulado o grisáceo.',
  ],
  'yellow-green': () => [
    drawn(coloured('yellow-green')),
    'A leaf in a light, yellowish green.',
    'Una hoja de verde claro, amarillento.',
  ],
  'dark-green': () => [
    drawn(coloured('dark-green')),
    'A leaf in deep dark green.',
    'Una hoja de verde oscuro y profundo.',
  ],
  patterned: () => [
    drawn(
      coloured('green').slice(0, 1),
      ['swatch-red', loop(46, 86, 40, 66, 42, 44, 48, 18, 54, 44, 56, 66, 50, 86)],
      [
        'swatch-pink',
        loop(24, 66, 21, 58, 28, 52, 35, 57, 33, 66) +
          loop(61, 40, 66, 34, 70, 42, 65, 48) +
          loop(60, 72, 66, 66, 71, 71, 65, 77),
      ],
      [
        'swatch-white',
        loop(30, 40, 35, 32, 40, 38, 35, 45) + loop(64, 58, 71, 53, 75, 60, 69, 65) + loop(31, 78, 37, 73, 38, 81),
      ],
      coloured('green').slice(1),
    ),
    'A green leaf with a red middle and with pink and white spots.',
    'Una hoja verde con el centro rojo y con manchas rosas y blancas.',
  ],
};

export const LEAF_FACES = [bookOf('leaf-surface', surfaces), bookOf('leaf-colour', colours)];
