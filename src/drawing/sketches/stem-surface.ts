// What is seen on a piece of stem from close by: finish, colour, spots, hairs, and the joints of a woody cane.
import type { Hue, Mark } from '../../key/index.ts';
import { band, bezier, ellipse, from, num, type Point, smooth, straight } from '../geometry.ts';
import { bookOf, type Page } from './book.ts';
import { along, blade, bristles, joint, piece, ring, shade, soil } from './stem-parts.ts';

/** A piece that goes on above and below, wide enough to show its surface. */
function close(half = 20): Mark[] {
  const side = `M${48 - half} 4L${48 - half} 92M${48 + half} 4L${48 + half} 92`;
  return [
    ['face', `M${48 - half} 4L${48 - half} 92L${48 + half} 92L${48 + half} 4Z`],
    ['tint', `M${48 + half * 0.5} 4L${48 + half * 0.5} 92L${48 + half - 1} 92L${48 + half - 1} 4Z`],
    ['line', side],
  ];
}

export const stemFinishes = bookOf('stem-finish', {
  'dull-ridged': () => [
    [
      ...close(),
      [
        'trace',
        [34, 39, 44, 49, 54, 59, 64]
          .map((x) =>
            straight([
              [x, 8],
              [x + 0.6, 30],
              [x - 0.4, 60],
              [x, 88],
            ]),
          )
          .join(''),
      ],
      [
        'fine',
        [31.5, 36.5, 41.5, 46.5, 51.5, 56.5, 61.5]
          .map((x) =>
            straight([
              [x, 14],
              [x, 82],
            ]),
          )
          .join(''),
      ],
    ],
    'A stem with fine ridges all along it and no shine.',
    'Un tallo con rayas finas en relieve a lo largo, sin brillo.',
  ],
  'smooth-shiny': () => [
    [
      ...close(),
      ['mark', 'M35 10Q32.5 48 35 86Q40 90 41.5 84Q39 48 41.5 12Q40 6 35 10Z'],
      ['fine', 'M46 16Q44.5 48 46 80'],
      ['trace', 'M72 12L80 6M74 20L84 20M72 28L80 34'],
    ],
    'A smooth stem with a long bright streak of reflected light.',
    'Un tallo liso con una franja larga que brilla con la luz.',
  ],
  waxy: () => [
    [
      ...close(),
      ...joint(48, 30, 20),
      ['mark', 'M28.5 34Q48 46 67.5 34L67.5 62Q60 70 52 63Q44 74 37 64Q31 70 28.5 60Z'],
      ['solid', dots(31, 40, 65, 58, 26)],
      ['face', 'M44 47Q50 44 56 46L60 60Q53 63 46 61Z'],
    ],
    'A stem with a whitish powder below the joint; a thumb has rubbed a clean spot in it.',
    'Un tallo con un polvo blanquecino debajo del nudo; el pulgar ha limpiado un lugar.',
  ],
  hairy: () => [
    [
      ...close(),
      [
        'trace',
        bristles(
          [
            ...along([28, 8], [28, 88], 13).map((p, i): readonly [Point, number] => [p, i % 2 ? -62 : -78]),
            ...along([68, 8], [68, 88], 13).map((p, i): readonly [Point, number] => [p, i % 2 ? 62 : 78]),
          ],
          9,
        ),
      ],
      [
        'fine',
        bristles(
          [36, 44, 52, 60].flatMap((x, i) =>
            along([x, 12 + (i % 2) * 5], [x, 82 + (i % 2) * 5], 7).map((p): readonly [Point, number] => [
              p,
              (x - 48) * 2,
            ]),
          ),
          6,
        ),
      ],
    ],
    'A stem with hairs standing off from it on all sides.',
    'Un tallo con pelos que salen por todos lados.',
  ],
});

/** Even but not regular specks. */
function dots(x0: number, y0: number, x1: number, y1: number, n: number): string {
  return Array.from({ length: n }, (_, i) => {
    const [a, b] = [(i * 0.618) % 1, (i * 0.414 + 0.2) % 1];
    return ellipse([x0 + (x1 - x0) * a, y0 + (y1 - y0) * b], 0.8);
  }).join('');
}

function coloured(hue: Hue, en: string, es: string): Page {
  const half = 14;
  const body = (pen: 'swatch' | 'tint' | 'line'): Mark => {
    const path = `M${48 - half} 4L${48 - half} 92L${48 + half} 92L${48 + half} 4Z`;
    return pen === 'swatch'
      ? [`swatch-${hue}`, path]
      : [pen, pen === 'line' ? `M34 4L34 92M62 4L62 92` : shade(48, 4, 90, half)];
  };
  return [
    [
      ['face', 'M34 4L34 92L62 92L62 4Z'],
      body('swatch'),
      body('line'),
      ...joint(48, 36, half),
      ['line', ring(48, 74, half)],
      // A leaf's sleeve, left as paper, so that the stem's own colour stands beside something.
      ['face', 'M33 36Q30 20 33 6Q48 14 63 5Q66 22 63 36Q48 44 33 36Z'],
      ['fine', 'M41 11L41 38M48 12L48 40M55 11L55 38'],
      ...blade([63, 12], 58, 28, 6, 20),
    ],
    en,
    es,
  ];
}

export const stemColours = bookOf('stem-colour', {
  green: () =>
    coloured('green', 'A green stem below its leaf sleeve.', 'Un tallo verde debajo de la funda de la hoja.'),
  tan: () =>
    coloured('tan', 'A pale tan stem below its leaf sleeve.', 'Un tallo pajizo debajo de la funda de la hoja.'),
  red: () =>
    coloured(
      'red',
      'A dark red to chestnut stem below its leaf sleeve.',
      'Un tallo rojizo a castaño debajo de la funda de la hoja.',
    ),
  yellow: () =>
    coloured(
      'yellow',
      'A golden yellow stem below its leaf sleeve.',
      'Un tallo amarillo dorado debajo de la funda de la hoja.',
    ),
});

const SPOTS: readonly (readonly [number, number, number])[] = [
  [39, 14, 2.6],
  [53, 22, 3.4],
  [44, 33, 2.2],
  [58, 54, 2.8],
  [41, 58, 3.6],
  [51, 67, 2.4],
  [37, 76, 2.6],
  [56, 82, 3.2],
];

export const stemSpots = bookOf('stem-spots', {
  spots: () => [
    [
      ...close(16),
      ...joint(48, 44, 16),
      ['solid', SPOTS.map(([x, y, r]) => ellipse([x, y], r)).join('')],
      ['trace', ellipse([53, 22], 6.4) + ellipse([41, 58], 6.6)],
    ],
    'A piece of stem with small, round, clear-cut black spots.',
    'Un trozo de tallo con manchas negras pequeñas, redondas y bien marcadas.',
  ],
  none: () => [
    [...close(16), ...joint(48, 44, 16), ['fine', 'M40 12L40 36M46 58L46 86']],
    'A piece of stem without spots.',
    'Un trozo de tallo sin manchas.',
  ],
});

/** A cut across the stem, beside it. */
const across = (path: string): Mark[] => [
  ['face', path],
  ['mark', path],
];

const twig = (foot: Point, lean: number): Mark[] => [
  [
    'face',
    band(
      bezier(foot, from(foot, lean, 10), from(foot, lean * 0.8, 20), from(foot, lean * 0.7, 30), 6),
      (s) => 4.5 - 2 * s,
    ),
  ],
  ...blade(from(foot, lean * 0.75, 20), lean + 34, 16, 3),
  ...blade(from(foot, lean * 0.7, 29), lean * 0.6, 16, 3),
];

export const caneJoints = bookOf('cane-joints', {
  'round-even': () => [
    [
      ...piece(34, 10, 90, 13),
      ...[30, 54, 78].flatMap((y) => joint(34, y, 13, 'mark')),
      ...across(ellipse([76, 52], 13)),
      ['solid', ellipse([76, 52], 8)],
    ],
    'A cane with evenly spaced joints; cut across, it is a full circle.',
    'Una caña con nudos a distancias iguales; cortada de través, es un círculo completo.',
  ],
  'grooved-above': () => [
    [
      ...piece(34, 10, 90, 13),
      ...twig([46, 66], 52),
      ...joint(34, 68, 13),
      ...joint(34, 30, 13),
      ['mark', 'M38 63Q37 48 40 36Q43 34 44 38Q46 50 44.5 63Z'],
      ...across('M63.6 47A13 13 0 1 0 86 41Q79 49 75.5 38A13 13 0 0 0 63.6 47Z'),
    ],
    'A cane with a groove above the joint where a branch stands, and only there; cut across there, the circle has a notch.',
    'Una caña con un canal arriba del nudo donde sale una rama, y solo ahí; cortada de través ahí, el círculo tiene una muesca.',
  ],
  flattened: () => [
    [
      ...piece(34, 10, 90, 13),
      ['mark', 'M38 13L38 93Q44 92 46.4 89L46.4 11Q44 13 38 13Z'],
      ...joint(34, 36, 13),
      ...joint(34, 70, 13),
      ['line', 'M38 13L38 33M38 41L38 67M38 75L38 93'],
      ...across('M82 41A13 13 0 1 0 82 63Z'),
    ],
    'A cane that is flat along one whole side; cut across, the circle has a straight side.',
    'Una caña plana a lo largo de todo un lado; cortada de través, el círculo tiene un lado recto.',
  ],
  crowded: () => [
    [
      ...piece(48, 6, 84, 12).slice(0, 3),
      ...joint(48, 20, 12),
      ...[44, 54, 62, 69, 76].flatMap((y, i): Mark[] => {
        const half = 12 + i * 0.9;
        const belt = `M${num(48 - half)} ${y - 4}Q${num(48 - half - 4)} ${y} ${num(48 - half)} ${y + 4}Q48 ${y + 10} ${num(48 + half)} ${y + 4}Q${num(48 + half + 4)} ${y} ${num(48 + half)} ${y - 4}Q48 ${y + 2} ${num(48 - half)} ${y - 4}Z`;
        return [
          ['face', belt],
          ['mark', belt],
        ];
      }),
      soil(86),
      ['fine', 'M40 87Q37 91 32 93M48 88L47 94M56 87Q60 91 64 93'],
    ],
    'The foot of a cane: its lowest joints are close together and swollen.',
    'El pie de una caña: los nudos más bajos están muy juntos e hinchados.',
  ],
});

export const jointHairs = bookOf('joint-hairs', {
  hairy: () => [
    [
      ...close(17),
      ...joint(48, 48, 17),
      [
        'trace',
        bristles(
          [
            ...along([31, 43], [65, 43], 10).map((p, i): readonly [Point, number] => [
              [p[0], p[1] + 5.5 - Math.abs(i - 4.5) * 1.1],
              (i - 4.5) * 9,
            ]),
            ...along([31, 53], [65, 53], 10).map((p, i): readonly [Point, number] => [
              [p[0], p[1] + 5.5 - Math.abs(i - 4.5) * 1.1],
              180 - (i - 4.5) * 9,
            ]),
            [[29.5, 46], -74],
            [[29.5, 50], -104],
            [[66.5, 46], 74],
            [[66.5, 50], 104],
          ],
          10,
        ),
      ],
    ],
    'A joint of the stem with silky hairs standing off above and below it.',
    'Un nudo del tallo con pelos sedosos arriba y abajo.',
  ],
  bare: () => [
    [
      ...close(17),
      ...joint(48, 48, 17, 'mark'),
      [
        'fine',
        smooth([
          [40, 12],
          [39.5, 26],
          [40, 38],
        ]) +
          smooth([
            [40, 60],
            [39.5, 74],
            [40, 86],
          ]),
      ],
    ],
    'A joint of the stem without a hair.',
    'Un nudo del tallo sin pelos.',
  ],
});
