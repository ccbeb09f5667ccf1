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
      ['trace', 'M44 42Q58 44 57 60Q56 74 62 86'],
      ['trace', 'M40 44Q48 52 47 66Q46 76 50 84'],
      ['mark', 'M46 78Q52 74 54 82Q58 80 66 84Q72 90 62 92Q48 94 44 88Q42 82 46 78Z'],
    ],
    'Slimy sap that hangs in strings from a broken leaf stalk.',
    'Savia babosa que cuelga en hilos de un peciolo roto.',
  ],
});
