// Where the blade of a grass leaves its sleeve, large: the mark there, the ligule, and the sleeves of last year.
import type { Mark } from '../../key/index.ts';
import { type Point, straight } from '../geometry.ts';
import { bookOf, type Page } from './book.ts';
import { drawn, loop, soil, sweep, way } from './leaf-strokes.ts';

/** Stem and sleeve below, the blade bent away to the right. */
const collar = (): Mark[] => [
  ['face', straight(way(26, 96, 27, 2, 45, 2, 46, 96), true)],
  ['face', 'M46 46C56 36 66 22 92 14L93 37C76 40 64 52 50 70Z'],
  ['fine', sweep(56, 47, 70, 33, 90, 25)],
  ['face', 'M22 96C22 76 22 62 24 52C32 45 42 44 50 50C52 64 51 80 51 96Z'],
  ['fine', sweep(30, 94, 30, 74, 31, 58) + sweep(37, 94, 37, 74, 37, 58) + sweep(44, 94, 44, 74, 44, 60)],
];
const marks: Record<string, () => Page> = {
  wedge: () => [
    drawn(
      collar(),
      ['wash-brown', 'M47 48C53 42 58 37 62 30L73 34C66 43 60 53 50 66Z'],
      ['trace', 'M47 48C53 42 58 37 62 30L73 34C66 43 60 53 50 66Z'],
    ),
    'Where the blade bends away from the stem, a brownish wedge crosses its base.',
    'Donde la hoja se aparta del tallo, una cuña cafesosa cruza su base.',
  ],
  none: () => [
    drawn(collar()),
    'Where the blade bends away from the stem, its base is the same color as the rest.',
    'Donde la hoja se aparta del tallo, la base es del mismo color que lo demás.',
  ],
};

/** The sleeve with the stem cut off at its mouth; the blade is bent back behind it, its inner face to the eye. */
const opened = (ligule: readonly Mark[]): Mark[] => [
  ['face', 'M22 58C20 40 34 22 54 4L88 20C84 34 76 46 74 58Z'],
  ['fine', sweep(34, 54, 40, 36, 62, 10) + sweep(48, 54, 54, 38, 71, 13) + sweep(61, 54, 66, 40, 80, 18)],
  ...ligule,
  ['face', 'M22 58C24 70 24 84 24 96L72 96C72 84 72 70 74 58C66 68 30 68 22 58Z'],
  ['fine', sweep(34, 94, 33, 80, 33, 70) + sweep(48, 94, 48, 82, 48, 72) + sweep(62, 94, 63, 80, 63, 70)],
  ['line', sweep(22, 58, 34, 64.5, 48, 66, 62, 64.5, 74, 58)],
];
const mouth: Mark = ['face', loop(22, 58, 30, 52, 48, 50, 66, 52, 74, 58, 62, 64.5, 48, 66, 34, 64.5)];
const fringe = (count: number, foot: number, height: number, rise: number): string =>
  Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    const [x, bow] = [26 + 44 * share, rise * Math.sin(Math.PI * share) ** 0.5];
    const root: Point = [x, foot - bow];
    return straight([root, [x + (share - 0.5) * 8, foot - bow - height * (0.85 + 0.15 * Math.sin(i * 2.3))]]);
  }).join('');
const film = (height: number): string => {
  const top = 57 - height;
  return `M24 57C26 ${top + 4} 30 ${top} 36 ${top - 3}C40 ${top - 1} 44 ${top - 5} 49 ${top - 4}C54 ${top - 5} 58 ${top - 1} 62 ${top - 3}C68 ${top} 71 ${top + 4} 72 57C62 51 36 51 24 57Z`;
};
const ligules: Record<string, () => Page> = {
  membrane: () => [
    drawn(opened([mouth, ['face', film(14)], ['mark', film(14)]])),
    'The blade bent back from its sleeve: a thin skin stands up inside, where they meet.',
    'La hoja doblada hacia atrás de su funda: por dentro, donde se unen, se levanta una piel delgada.',
  ],
  fringed: () => [
    drawn(opened([mouth, ['face', film(7)], ['mark', film(7)], ['trace', fringe(9, 55, 14, 9)]])),
    'The blade bent back from its sleeve: a low thin skin stands up inside, with a fringe of hairs on its rim.',
    'La hoja doblada hacia atrás de su funda: por dentro se levanta una piel delgada y baja, con un fleco de pelos en el borde.',
  ],
  hairs: () => [
    drawn(opened([mouth, ['trace', fringe(9, 57, 19, 4.5)]])),
    'The blade bent back from its sleeve: a row of hairs stands inside, with no skin below them.',
    'La hoja doblada hacia atrás de su funda: por dentro hay una fila de pelos, sin piel debajo.',
  ],
  none: () => [
    drawn(opened([mouth])),
    'The blade bent back from its sleeve: nothing stands inside, where they meet.',
    'La hoja doblada hacia atrás de su funda: por dentro, donde se unen, no hay nada.',
  ],
};

const cane = (x: number, top: number, lean: number): Mark[] => {
  const at = (y: number): number => x + (lean * (90 - y)) / 90;
  const nodes = [74, 52, 30].filter((y) => y > top + 6);
  return [
    [
      'face',
      straight(
        way(at(92) - 5, 92, at(top) - 4, top + 3, at(top) + 1, top - 2, at(top) + 4, top + 2, at(92) + 5, 92),
        true,
      ),
    ],
    ['line', nodes.map((y) => sweep(at(y) - 6, y, at(y), y + 2, at(y) + 6, y)).join('')],
  ];
};
/** Three sleeves, one above the other. */
const TIGHT =
  'M39 92L39.5 68C44 72 50 71 55 66L53.5 92Z' +
  'M40 66L41 45C45 49 51 48 56 43L54.5 64C50 69 45 70 40 66Z' +
  'M42 43L43 23C47 27 51 26 56 21L55.5 41C51 46 46 47 42 43Z';
const sheaths: Record<string, () => Page> = {
  stay: () => [
    drawn(
      soil(92),
      cane(46, 6, 3),
      ['face', TIGHT],
      ['mark', TIGHT],
      [
        'line',
        sweep(55, 66, 66, 60, 74, 70, 73, 80) + sweep(40, 46, 30, 40, 22, 48, 24, 60) + sweep(56, 21, 66, 15, 73, 22),
      ],
      ['fine', sweep(46, 90, 46, 80, 46.5, 74) + sweep(47.5, 66, 47.5, 58, 48, 51) + sweep(49, 43, 49, 36, 49, 29)],
    ),
    'A dead stem still wrapped tight in its old leaf sleeves, from the ground up.',
    'Un tallo muerto todavía envuelto y apretado en sus fundas viejas, desde el suelo.',
  ],
  drop: () => [
    drawn(
      soil(92),
      cane(46, 6, 3),
      [
        'mark',
        'M60 90C66 84 76 82 86 84L89 89C80 88 70 89 63 93Z' + 'M8 88C16 83 26 83 33 87L32 92C24 89 16 90 10 93Z',
      ],
      ['fine', sweep(66, 88, 76, 85, 84, 86) + sweep(14, 88, 22, 86, 29, 88)],
    ),
    'A dead stem that stands bare and smooth; its old leaf sleeves lie on the ground.',
    'Un tallo muerto, liso y desnudo; sus fundas viejas están en el suelo.',
  ],
};

export const COLLARS = [bookOf('leaf-base-mark', marks), bookOf('ligule', ligules), bookOf('dead-sheaths', sheaths)];
