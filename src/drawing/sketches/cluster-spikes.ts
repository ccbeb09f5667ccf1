// Flowers and seed heads that stand close along one axis, or in tufts. The stalk enters at (48, 96).
import { Random } from '../../engine/trial/index.ts';
import type { Drawing } from '../../key/index.ts';
import { band, bezier, from, num, type Point, smooth, straight } from '../geometry.ts';
import { along, arc, dot, hair, lens, petal, rosette, spot, upTo } from './flower-strokes.ts';

const STALK = straight([
  [48, 96],
  [48, 72],
]);

function cob(): Drawing {
  const random = new Random(2);
  const body =
    'M40.5 39C40.5 33 44 31.500 48 31.500C52 31.500 55.500 33 55.500 39L55.800 64C55.800 70 52 72.500 48 72.500C44 72.500 40.200 70 40.300 64Z';
  const male = band(bezier([48, 32], [48, 24], [48.5, 17], [50, 8], 6), (share) => 5.4 * (1 - share * 0.6));
  const nap = upTo(24).map((i) => hair([43 + ((i * 37) % 100) / 10, 37 + i * 1.35], 90, 0.8 + random.next()));
  return [
    ['line', STALK],
    ['face', male],
    ['wash-tan', male],
    [
      'fine',
      upTo(10)
        .map((i) => hair([i % 2 ? 50.2 : 46.2, 29 - i * 1.9], i % 2 ? 58 : -58, 2))
        .join(''),
    ],
    ['face', body],
    ['wash-brown', body],
    ['fine', nap.join('')],
  ];
}

function fingers(): Drawing {
  const tips: readonly Point[] = [
    [17, 21],
    [45, 9],
    [79, 23],
  ];
  const drawn = tips.map((tip, i) => {
    const lean = i - 1;
    const axis = bezier([48, 73], [48 + lean * 4, 60], [tip[0] - lean * 9, tip[1] + 24], tip, 12);
    const scales = upTo(12).map((k) => {
      const { point, heading } = along(axis, 0.22 + k * 0.063);
      return lens(point, from(point, heading + (k % 2 ? 27 : -27), 8.5), 3.2);
    });
    const awns = upTo(5).map((k) => {
      const { point, heading } = along(axis, 0.36 + k * 0.14);
      return hair(from(point, heading + (k % 2 ? 50 : -50), 5), heading + (k % 2 ? 42 : -42), 6);
    });
    return { axis, scales: scales.join(''), awns: awns.join('') };
  });
  const spikes = drawn.map(({ axis }) =>
    band(
      axis.filter((_, k) => k > 2 && k % 3 === 0),
      (share) => 9 * Math.min(1, 0.5 + share * 2, 0.3 + (1 - share) * 3),
    ),
  );
  return [
    ['line', STALK],
    ['wash-purple', spikes.join('')],
    ['line', drawn.map(({ axis }) => smooth(axis.filter((_, k) => k % 4 === 0))).join('')],
    ['fine', drawn.map(({ scales, awns }) => scales + awns).join('')],
  ];
}

function flatOats(): Drawing {
  const axis = bezier([48, 96], [48, 56], [42, 16], [66, 11], 20);
  const hung: readonly [number, Point, Point][] = [
    [0.46, [20, 44], [15, 70]],
    [0.55, [64, 46], [68, 72]],
    [0.62, [36, 38], [33, 62]],
    [0.72, [30, 20], [22, 42]],
    [0.8, [56, 26], [53, 50]],
    [0.92, [72, 20], [74, 44]],
    [1, [80, 15], [85, 38]],
  ];
  const stalks = hung.map(([share, top]) =>
    arc(along(axis, share).point, top, top[0] < along(axis, share).point[0] ? 6 : -6),
  );
  const flats = hung.map(([, top, end]) => lens(top, end, 12));
  const folds = hung.map(([, top, end]) => {
    const heading = (Math.atan2(end[0] - top[0], top[1] - end[1]) * 180) / Math.PI;
    const rib = upTo(4).map((k) => {
      const mid = from(top, heading, 6 + k * 4.4);
      return `${straight([from(mid, heading - 40, 5.6 - Math.abs(k - 1) * 0.9), mid, from(mid, heading + 40, 5.6 - Math.abs(k - 1) * 0.9)])}`;
    });
    return rib.join('');
  });
  return [
    ['line', smooth(axis.filter((_, i) => i % 4 === 0))],
    ['fine', stalks.join('')],
    ['face', flats.join('')],
    ['wash-yellow-green', flats.join('')],
    ['fine', folds.join('')],
  ];
}

function brownTufts(): Drawing {
  const axis = bezier([48, 96], [48, 60], [47, 30], [51, 18], 16);
  const ends: readonly [number, Point][] = [
    [0.28, [18, 56]],
    [0.34, [78, 60]],
    [0.5, [30, 40]],
    [0.56, [70, 38]],
    [0.5, [12, 36]],
    [0.62, [83, 32]],
    [0.8, [34, 19]],
    [0.86, [67, 16]],
    [1, [50, 15]],
  ];
  const twigs = ends.slice(0, 8).map(([share, end]) => {
    const { point } = along(axis, share);
    return arc(point, end, end[0] < point[0] ? 5 : -5);
  });
  const tufts = ends
    .map(([, [x, y]]) =>
      upTo(3)
        .map((k) => lens([x, y + 3], from([x, y + 3], (x - 48) * 0.7 + (k - 1) * 38, k === 1 ? 12 : 10), 5.4))
        .join(''),
    )
    .join('');
  const bracts = lens([48, 71], [15, 66], 3, -6) + lens([48, 52], [80, 47], 3, 5);
  return [
    ['line', smooth(axis.filter((_, i) => i % 4 === 0))],
    ['fine', twigs.join('')],
    ['fine', bracts],
    ['wash-brown', tufts],
    ['fine', tufts],
  ];
}

function whiteTail(): Drawing {
  const axis = bezier([48, 73], [46, 46], [38, 12], [59, 12], 14).concat(
    bezier([59, 12], [72, 13], [77, 28], [78, 48], 10).slice(1),
  );
  const thick = (share: number): number => 13.5 * (1 - share) ** 0.9 + 2;
  /** One side of the tail: a small bulge for each flower, smaller and closer towards the tip. */
  const places = upTo(17).map((i) => 1 - (1 - i / 16.5) ** 1.15);
  const side = (sign: number) =>
    places.map((share) => {
      const { point, heading } = along(axis, share);
      return { end: from(point, heading + sign * 90, thick(share) / 2), heading: heading + sign * 62, share };
    });
  const [left, right] = [side(-1), side(1)];
  const round = [...left.slice(1), ...right.slice().reverse()];
  const bulge = ({ end: [x, y], share }: (typeof round)[number]): string => {
    const r = num(3 - 1.9 * share);
    return `A${r} ${r} 0 0 1 ${num(x)} ${num(y)}`;
  };
  const [x, y] = left[0]?.end ?? [0, 0];
  const tail = `M${num(x)} ${num(y)}${round.map(bulge).join('')}Z`;
  const stamens = [...left, ...right].map(({ end, heading, share }) => hair(end, heading, 8.5 - 5 * share));
  const flowers = upTo(22).map((i) => {
    const share = 0.02 + i * 0.036;
    const { point, heading } = along(axis, share);
    return dot(from(point, heading + (i % 2 ? 90 : -90), thick(share) * 0.2));
  });
  return [
    ['line', STALK],
    ['fine', stamens.join('')],
    ['face', tail],
    ['wash-white', tail],
    ['line', flowers.join('')],
  ];
}

function blueSpike(): Drawing {
  const rows: readonly [Point, number, number][] = [
    [[41, 22], 6, -20],
    [[55, 24], 6, 20],
    [[48, 30], 7, 0],
    [[36, 36], 8, -25],
    [[60, 38], 8, 25],
    [[48, 43], 8.5, 4],
    [[35, 51], 8.5, -30],
    [[61, 52], 8.5, 30],
    [[41, 63], 8.5, -14],
    [[56, 65], 8.5, 14],
  ];
  const buds = (
    [
      [48, 10],
      [44, 14],
      [52, 15],
      [48, 18],
    ] as const
  ).map((foot, i) => petal(from(foot, 180, 3), from(foot, (i - 1.5) * 8, 3.4), 4.6));
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 20],
      ]),
    ],
    ['face', 'M48 92C42 87 42 80 44 72C50 76 52 84 48 92Z'],
    ['face', buds.join('')],
    ['wash-blue', buds.join('')],
    ...rows.flatMap(
      ([centre, r, tilt]): Drawing => [
        ['face', rosette(centre, r, 6, tilt)],
        ['wash-blue', spot(centre, r * 0.66)],
      ],
    ),
    ['line', rows.map(([centre, r, tilt]) => dot(from(centre, tilt, r * 0.42))).join('')],
  ];
}

function powderyCluster(): Drawing {
  const places: readonly [Point, number, number][] = [
    [[48, 25], 2, 17],
    [[40, 34], -20, 18],
    [[56, 34], 20, 18],
    [[33, 46], -30, 18],
    [[63, 46], 30, 18],
    [[48, 42], -3, 18],
    [[29, 60], -34, 18],
    [[68, 60], 34, 18],
    [[40, 56], -12, 19],
    [[57, 56], 12, 19],
    [[36, 72], -26, 19],
    [[60, 72], 26, 19],
    [[48, 73], 0, 20],
  ];
  const random = new Random(9);
  const powder = places.flatMap(([foot, lean, length]) =>
    upTo(3).map((k) => dot(from(from(foot, lean, length * (0.3 + k * 0.2)), lean + 90, (random.next() - 0.5) * 6))),
  );
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 66],
      ]),
    ],
    ...places.flatMap(([foot, lean, length]): Drawing => {
      return [
        ['face', lens(foot, from(foot, lean, length + 1), 13)],
        ['wash-purple', lens(from(foot, lean, length * 0.35), from(foot, lean, length), 8)],
      ];
    }),
    ['fine', powder.join('')],
  ];
}

/** Drawings by the form's name. */
export const SPIKES: Readonly<Record<string, () => Drawing>> = {
  cob,
  fingers,
  'flat-oats': flatOats,
  'brown-tufts': brownTufts,
  'white-tail': whiteTail,
  'blue-spike': blueSpike,
  'powdery-cluster': powderyCluster,
};
