// Colours of flowers: the same simple flower in every colour, and a plume where a plume is meant.
import type { Hue, Mark } from '../../key/index.ts';
import { bezier, ellipse, from, type Point, smooth } from '../geometry.ts';
import { bookOf, type Page } from './book.ts';
import { blade, rod } from './stem-parts.ts';

const HEART: Point = [48, 36];
/** One of six petals. */
function petal(lean: number): string {
  const [a, b] = [from(HEART, lean - 22, 17), from(HEART, lean + 22, 17)];
  return smooth(
    [from(HEART, lean, 5), a, from(HEART, lean - 10, 27), from(HEART, lean, 30), from(HEART, lean + 10, 27), b],
    true,
  );
}
const PETALS = [0, 60, 120, 180, 240, 300];

function flower(hues: readonly Hue[], en: string, es: string): Page {
  const petals = PETALS.flatMap((lean, i): Mark[] => [
    [`swatch-${hues[i % hues.length] as Hue}`, petal(lean)],
    ['line', petal(lean)],
  ]);
  return [
    [
      [
        'face',
        rod(
          [
            [48, 94],
            [47, 70],
            [48, 44],
          ],
          3.5,
          3,
        ),
      ],
      ...blade([48, 86], -52, 26, 6, -14),
      ...blade([48, 82], 54, 24, 6, 14),
      ...petals,
      ['face', ellipse(HEART, 6)],
      ['solid', [0, 72, 144, 216, 288].map((lean) => ellipse(from(HEART, lean, 3), 0.9)).join('')],
    ],
    en,
    es,
  ];
}

/** A plume of a colour, or with its upper part tinged with another. */
function plume([hue, tinge]: readonly [Hue, Hue?], en: string, es: string): Page {
  const axis = bezier([48, 70], [48, 50], [49, 30], [52, 10], 9);
  const body = 'M48 72Q33 64 29 50Q34 30 50 8Q54 6 56 12Q66 34 68 50Q62 64 49 72Z';
  // Feathery: the sprays rise along the axis, and their tips bend down past the colour.
  const sprays = axis.slice(0, -1).flatMap((at, i) =>
    [-1, 1].map((side) => {
      const reach = 25 - i * 1.8;
      const [mid, out] = [from(at, side * 30 + 3, reach * 0.6), from(at, side * 46 + 3, reach)];
      return smooth([at, mid, out, from(out, side * 110, reach * 0.22)]);
    }),
  );
  return [
    [
      [
        'face',
        rod(
          [
            [48, 94],
            [48, 64],
          ],
          4,
          3,
        ),
      ],
      ...blade([47, 92], -30, 34, 4, -24),
      ...blade([50, 88], 32, 32, 4, 24),
      [`swatch-${hue}`, body],
      ...(tinge
        ? ([
            [
              `swatch-${tinge}`,
              'M40 24Q44 14 50 8Q54 6 56 12Q64 30 66 44Q58 36 54 52Q50 38 44 46Q38 36 34 36Q36 30 40 24Z',
            ],
          ] as const)
        : []),
      ['line', smooth(axis.filter((_, i) => i % 3 === 0))],
      ['fine', sprays.join('')],
    ],
    en,
    es,
  ];
}

export const flowerColours = bookOf('flower-colour', {
  white: () => flower(['white'], 'A white flower.', 'Una flor blanca.'),
  yellow: () => flower(['yellow'], 'A yellow flower.', 'Una flor amarilla.'),
  'orange-red': () =>
    flower(
      ['orange', 'red', 'pink'],
      'A flower with orange, red and pink petals.',
      'Una flor con pétalos anaranjados, rojos y rosas.',
    ),
  'blue-purple': () =>
    flower(['blue', 'purple'], 'A flower with blue and purple petals.', 'Una flor con pétalos azules y morados.'),
  green: () => flower(['yellow-green', 'green'], 'A greenish flower.', 'Una flor verdosa.'),
  brown: () => plume(['brown'], 'A brown to straw-colored flower head.', 'Una espiga café o color paja.'),
  silver: () => plume(['silver'], 'A silvery plume.', 'Un penacho plateado.'),
  'purplish-plume': () => plume(['tan', 'purple'], 'A plume tinged with purple.', 'Un penacho con tinte morado.'),
});
