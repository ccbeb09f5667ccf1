// Months as twelve places round a year: winter on top, summer below, the month meant is filled.
import type { Mark } from '../../key/index.ts';
import { ellipse, from, type Point, smooth, straight } from '../geometry.ts';
import { bookOf, type Page } from './book.ts';
import { blade } from './stem-parts.ts';

const CENTRE: Point = [48, 48];

/** What the season looks like, in the middle of the year. */
const SEASONS: Readonly<Record<'winter' | 'spring' | 'summer' | 'autumn', () => Mark[]>> = {
  winter: () => [['line', 'M48 62L48 34M48 54L40 46M48 48L56 40M48 42L43 37']],
  spring: () => [
    ['line', 'M48 63L48 44'],
    ...blade([48, 56], -52, 16, 4.5, -8),
    ...blade([48, 52], 52, 16, 4.5, 8),
    ['solid', ellipse([48, 39], 4, 5.5)],
  ],
  summer: () => [
    ['line', ellipse(CENTRE, 8)],
    [
      'line',
      [0, 45, 90, 135, 180, 225, 270, 315]
        .map((lean) => straight([from(CENTRE, lean, 12), from(CENTRE, lean, 17)]))
        .join(''),
    ],
  ],
  autumn: () => [
    ...blade([40, 60], 34, 28, 8, 4),
    [
      'line',
      smooth([
        [40, 60],
        [36, 63],
        [33, 67],
      ]),
    ],
  ],
};

const NAMES = [
  ['jan', 'winter', 'January', 'enero'],
  ['feb', 'winter', 'February', 'febrero'],
  ['mar', 'spring', 'March', 'marzo'],
  ['apr', 'spring', 'April', 'abril'],
  ['may', 'spring', 'May', 'mayo'],
  ['jun', 'summer', 'June', 'junio'],
  ['jul', 'summer', 'July', 'julio'],
  ['aug', 'summer', 'August', 'agosto'],
  ['sep', 'autumn', 'September', 'septiembre'],
  ['oct', 'autumn', 'October', 'octubre'],
  ['nov', 'autumn', 'November', 'noviembre'],
  ['dec', 'winter', 'December', 'diciembre'],
] as const;

function year(month: number, season: keyof typeof SEASONS, en: string, es: string): Page {
  const place = (i: number) => from(CENTRE, i * 30, 36);
  const rest = NAMES.flatMap((_, i) => (i === month ? [] : [ellipse(place(i), 4.2)]));
  return [
    [
      ['face', rest.join('')],
      ['solid', ellipse(place(month), 8)],
      ['trace', ellipse(place(month), 8)],
      ...SEASONS[season](),
    ],
    `A ring of twelve dots with ${en} filled.`,
    `Un anillo de doce puntos con ${es} relleno.`,
  ];
}

export const floweringMonths = bookOf(
  'flowering-month',
  Object.fromEntries(NAMES.map(([id, season, en, es], i) => [id, () => year(i, season, en, es)])),
);
