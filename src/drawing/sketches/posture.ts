// How a flower head stands on its stem, and the gap on a cattail's cob. The stem comes in at the bottom centre.
import type { Mark } from '../../key/index.ts';
import { bezier, from, type Point, smooth } from '../geometry.ts';
import { bookOf, type Page } from './book.ts';
import { blade, rod } from './stem-parts.ts';

/** A head along `axis`: side branches leave it at `lean`, longest below, their tips bent by `droop`, all by `sway`. */
function head(axis: readonly Point[], lean: number, length: number, sway: number, droop: number): Mark[] {
  const n = axis.length - 1;
  const sprays = axis.flatMap((at, i) => {
    if (i === n) return [];
    const [next, share] = [axis[i + 1] as Point, i / n];
    const along = (Math.atan2(next[0] - at[0], at[1] - next[1]) * 180) / Math.PI;
    const reach = length * (1 - share * 0.75);
    return [-1, 1].map((side) => {
      const turn = along + side * lean + sway * 0.3;
      const mid = from(at, turn, reach * 0.5);
      return smooth([at, mid, from(mid, turn + side * droop + sway * 0.7, reach * 0.55)]);
    });
  });
  return [
    ['trace', sprays.join('')],
    ['line', smooth(axis.filter((_, i) => i % 3 === 0 || i === n))],
  ];
}

function grass(stemTop: Point, headMarks: readonly Mark[], en: string, es: string): Page {
  return [
    [
      ...blade([46, 88], -34, 36, 4, -26),
      ...blade([50, 80], 36, 34, 4, 26),
      ['face', rod([[48, 94], [48, 76], stemTop], 4.5, 3)],
      ...headMarks,
    ],
    en,
    es,
  ];
}

export const clusterPostures = bookOf('cluster-posture', {
  erect: () =>
    grass(
      [48, 58],
      head(bezier([48, 60], [48, 42], [48, 24], [49, 9], 9), 15, 18, 0, 4),
      'A flower head standing straight up, its branches close together.',
      'Una espiga derecha, con las ramas apretadas.',
    ),
  spreading: () =>
    grass(
      [48, 60],
      head(bezier([48, 62], [48, 44], [48, 26], [48, 10], 6), 50, 34, 0, 26),
      'An upright flower head whose branches stand wide apart.',
      'Una espiga derecha con las ramas muy abiertas.',
    ),
  'open-leaning': () =>
    grass(
      [46, 60],
      head(bezier([46, 62], [45, 44], [52, 26], [66, 12], 7), 32, 27, 56, 6),
      'An open flower head that leans to one side, its branches swept the same way.',
      'Una espiga abierta que se inclina hacia un lado, con las ramas en la misma dirección.',
    ),
  drooping: () =>
    grass(
      [46, 48],
      [...head(bezier([46, 50], [44, 14], [76, 4], [82, 48], 9), 24, 20, 40, 10)],
      'A flower head that hangs over and nods.',
      'Una espiga que cuelga y se inclina hacia abajo.',
    ),
});

/** A cattail's head: the thin upper part, the brown cob, and what lies between them. */
function cattail(gap: number, en: string, es: string): Page {
  const cob = 'M39 46Q39 40 48 40Q57 40 57 46L57 78Q57 84 48 84Q39 84 39 78Z';
  const top = 40 - gap;
  const wand = `M44 ${top}Q43 ${top - 12} 47 6Q48 3 49 6Q53 ${top - 12} 52 ${top}Q48 ${top + 2} 44 ${top}Z`;
  return [
    [
      ...blade([42, 95], -12, 62, 4, -8),
      ...blade([55, 95], 12, 58, 4, 9),
      [
        'face',
        rod(
          [
            [48, 95],
            [48, 38],
          ],
          4.5,
          3.5,
        ),
      ],
      ['wash-brown', cob],
      ['line', cob],
      ['fine', 'M43 48L43 76M48 46L48 79M53 48L53 76'],
      ['face', wand],
      ['fine', `M46 ${top - 3}L47 12M50 ${top - 3}L49 12`],
      ...(gap > 2
        ? ([['mark', `M45 ${top + 2}L51 ${top + 2}L51.4 39.5L44.6 39.5Z`]] as const)
        : ([['trace', 'M40 41.5Q48 38.5 56 41.5']] as const)),
    ],
    en,
    es,
  ];
}

export const spikeGaps = bookOf('spike-gap', {
  touching: () =>
    cattail(
      0,
      'A cattail: its thin upper part stands right on the brown cob.',
      'Un tule: la parte delgada de arriba toca la mazorca café.',
    ),
  gap: () =>
    cattail(
      12,
      'A cattail: a bare piece of stalk shows between the thin upper part and the brown cob.',
      'Un tule: entre la parte delgada de arriba y la mazorca café se ve un pedazo de tallo pelado.',
    ),
});
