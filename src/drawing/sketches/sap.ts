// Sap where a leaf stalk is already broken.
import type { Mark } from '../../key/index.ts';
import { ellipse } from '../geometry.ts';
import { bookOf } from './book.ts';

/** A broken stalk, its end towards the one who looks. */
const STALK: readonly Mark[] = [
  ['face', 'M10 8Q30 14 46 30L36 44Q20 30 4 26Z'],
  ['tint', 'M5 23Q22 28 38 41L36 44Q20 30 4 26Z'],
  ['face', ellipse([41.5, 37], 10, 6, 128)],
  ['fine', 'M9 13Q28 20 42 33M7 19Q26 25 39 37'],
  [
    'solid',
    [
      [39, 40],
      [42, 37],
      [44, 34],
      [41, 35],
      [42, 39],
    ]
      .map(([x, y]) => ellipse([x as number, y as number], 0.9))
      .join(''),
  ],
];
const DROP = 'M54 48Q70 66 70 76Q70 90 56 90Q42 90 42 76Q42 66 54 48Z';

export const saps = bookOf('sap', {
  milky: () => [
    [
      ...STALK,
      ['face', 'M44 40Q52 44 54 52L50 54Q44 48 40 44Z'],
      ['swatch-white', DROP],
      ['trace', DROP],
      ['fine', 'M48 80Q50 85 56 86M49 74Q48 76 48 77'],
    ],
    'A thick drop of milky white sap at a broken leaf stalk.',
    'Una gota espesa de savia blanca como leche en un peciolo roto.',
  ],
  clear: () => [
    [
      ...STALK,
      ['fine', 'M44 41Q51 45 54 50'],
      ['trace', DROP],
      ['fine', 'M47 70Q45 78 50 84M62 66L66 74'],
      // What lies behind is seen through it.
      ['fine', 'M30 72L42.5 76M69.6 79L88 76M30 84L45 86M66 87L88 84'],
    ],
    'A clear drop, like water, at a broken leaf stalk; lines behind it show through.',
    'Una gota clara como el agua en un peciolo roto; se ve a través de ella.',
  ],
  slimy: () => [
    [
      ...STALK,
      ['face', 'M60 62Q76 70 92 86L84 95Q68 82 52 76Z'],
      ['tint', 'M54 73Q70 79 86 92L84 95Q68 82 52 76Z'],
      ['face', ellipse([56, 69], 8.5, 5, 120)],
      ['trace', 'M46 33Q62 48 59 64M43 36Q54 58 56 68M39 41Q34 66 53 73'],
      ['mark', 'M39 60Q44 70 44 77Q44 84 38.5 84Q33 84 33.5 77Q35 70 39 60Z'],
    ],
    'The two ends of a broken leaf stalk, pulled apart: slimy sap stretches between them in strings.',
    'Los dos pedazos de un peciolo roto, separados: entre ellos la savia babosa se estira en hilos.',
  ],
});
