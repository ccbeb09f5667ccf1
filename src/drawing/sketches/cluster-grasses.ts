// Seed heads of tall grasses. The stalk enters at (48, 96); the head spans from y = 8 to about y = 72.
import { Random } from '../../engine/trial/index.ts';
import type { Drawing } from '../../key/index.ts';
import { band, bezier, from, type Point, smooth, straight } from '../geometry.ts';
import { along, arc, feathered, hair, lens, onArc, upTo } from './flower-strokes.ts';

const SIDES = [-1, 1] as const;
const STALK = straight([
  [48, 96],
  [48, 72],
]);

function plume(): Drawing {
  const random = new Random(7);
  const axis = bezier([48, 72], [48, 54], [50, 34], [56, 14], 18);
  const locks = upTo(20).map((i) => {
    const side = i % 2 ? 1 : -1;
    const share = i / 20;
    const { point, heading } = along(axis, share);
    const length = 11 + 24 * (1 - share) ** 0.7;
    const end = from(point, heading + side * (24 + 20 * (1 - share) * random.next() + 9 * Math.sin(3 * share)), length);
    return { side, foot: point, end, bow: -side * length * 0.3, width: 4 + 2.5 * (1 - share) };
  });
  const hairs = locks.map(({ foot, end, bow, side }, i) =>
    [0.65, 1]
      .map((share, k) => hair(onArc(foot, end, bow, share), side * (40 + 60 * k + ((i * 7) % 5) * 5), 4))
      .join(''),
  );
  const shapes = locks.map(({ foot, end, width, bow }) => lens(foot, end, width, bow)).join('');
  const crown = lens([56, 18], [61, 8], 4, -1);
  return [
    ['line', `${STALK}${smooth(axis.filter((_, i) => i % 6 === 0))}`],
    ['wash-tan', shapes + crown],
    ['fine', shapes + crown],
    ['fine', hairs.join('')],
  ];
}

function thinPlume(): Drawing {
  const axis = bezier([48, 72], [45, 52], [47, 30], [62, 15], 16);
  const locks = upTo(11).map((i) => {
    const share = i * 0.088;
    const side = i % 2 ? 1 : -1;
    const { point, heading } = along(axis, share);
    return { share, side, a: point, b: from(point, heading + side * (19 - 6 * share), 18 - 5 * share) };
  });
  const awns = locks.map(({ a, b, side }) => {
    const heading = (Math.atan2(b[0] - a[0], a[1] - b[1]) * 180) / Math.PI;
    return hair(onArc(a, b, 0, 0.5), heading + side * 30, 7) + hair(b, heading + side * 8, 4);
  });
  return [
    ['line', `${STALK}${smooth(axis)}`],
    ['fine', awns.join('')],
    ['wash-tan', locks.map(({ a, b }) => lens(a, b, 4)).join('')],
    ['fine', locks.map(({ a, b, side }) => lens(a, b, 3.6, -side * 1.5)).join('')],
  ];
}

function openSpray(): Drawing {
  const random = new Random(12);
  const axis = bezier([48, 72], [49, 50], [47, 30], [50, 12], 16);
  const twigs: [Point, Point, number][] = [];
  for (const i of upTo(5)) {
    for (const side of SIDES) {
      const share = i / 5 + (side > 0 ? 0.07 : 0);
      const { point } = along(axis, share);
      const length = 42 * (1 - share) ** 0.8 + 6;
      const main = [
        point,
        from(point, side * (58 - 18 * share + 5 * random.next()), length),
        -side * length * 0.24,
      ] as const;
      twigs.push([...main]);
      for (const k of upTo(length > 34 ? 3 : length > 12 ? 2 : 1)) {
        const start = onArc(...main, 0.45 + k * 0.17);
        const turn = k % 2 ? 96 : 18;
        twigs.push([start, from(start, side * (turn + 12 * random.next()), length * 0.18 + 4), -side]);
      }
    }
  }
  const grains = [...twigs.map(([, b]) => b), [50, 12] as const].map((b) =>
    lens(b, from(b, (b[0] - 48) * 2.6, 5), 3.2),
  );
  return [
    ['line', STALK],
    ['fine', smooth(axis) + twigs.map((twig) => arc(...twig)).join('')],
    ['solid', grains.join('')],
  ];
}

function oneSided(): Drawing {
  const axis = bezier([48, 72], [48, 50], [49, 38], [50, 26], 12);
  const rows = upTo(5).map((i) => {
    const side = i % 2 ? 1 : -1;
    const { point } = along(axis, i / 4);
    const tip: Point = i === 4 ? [33, 10] : from(point, side * (52 - 3 * i), 39 - 2 * i);
    return { twig: [point, tip, -side * 12] as const, side, many: i === 4 ? 3 : 5 };
  });
  const spikelets = rows.flatMap(({ twig, side, many }) =>
    upTo(many).map((k) => {
      const share = 0.26 + (0.74 * k) / (many - 1);
      const [here, back] = [onArc(...twig, share), onArc(...twig, share - 0.05)];
      const heading = (Math.atan2(here[0] - back[0], back[1] - here[1]) * 180) / Math.PI;
      const foot = from(here, heading + side * 90, 2.6);
      return lens(foot, from(foot, heading + side * 52, 5.4), 3.4);
    }),
  );
  return [
    ['line', `${STALK}${smooth(axis)}`],
    ['line', rows.map(({ twig }) => arc(...twig)).join('')],
    ['mark', spikelets.join('')],
  ];
}

function broom(): Drawing {
  const locks = upTo(15).map((i) => {
    const lean = (((i * 7) % 15) - 7) / 7;
    const foot: Point = [48 + lean * 2.6, 73 - 3 * (i % 3)];
    const end: Point = [48 + lean * 30, 11 + Math.abs(lean) ** 2.6 * 17 + 6 * (i % 3)];
    const bow = -lean * 14;
    return { lean, foot, end, bow, tuft: onArc(foot, end, bow, 0.4 + 0.06 * (i % 2)) };
  });
  const tufts = locks.map(({ tuft, end, lean }) => lens(tuft, end, 5.4, -lean * 6)).join('');
  const hairs = locks.map(({ tuft, end, lean }) =>
    [0.5, 0.75, 1]
      .map((share, k) => hair(onArc(tuft, end, -lean * 6, share), lean * 26 + (k % 2 ? 36 : -36), 4.5))
      .join(''),
  );
  return [
    ['line', STALK],
    [
      'fine',
      locks
        .filter((_, i) => i % 3 !== 1)
        .map(({ foot, tuft, bow }) => arc(foot, tuft, bow * 0.15))
        .join(''),
    ],
    ['wash-tan', tufts],
    ['fine', tufts],
    ['fine', hairs.join('')],
  ];
}

function narrowSpike(): Drawing {
  const random = new Random(5);
  const axis = bezier([48, 72], [47, 52], [48, 30], [52, 9], 20);
  const shape = feathered(axis, 9, (share) => 4.6 * Math.min(1, 0.5 + share * 4, (1.08 - share) * 3), 5, random);
  return [
    ['line', STALK],
    ['face', shape],
    ['wash-tan', shape],
    [
      'fine',
      upTo(13)
        .map((i) => {
          const { point, heading } = along(axis, 0.03 + i * 0.066);
          return arc(point, from(point, heading + (i % 2 ? 20 : -20), 7), 0);
        })
        .join(''),
    ],
  ];
}

function brush(): Drawing {
  const random = new Random(3);
  const axis = bezier([48, 72], [48, 52], [49, 32], [50, 18], 18);
  const body = band(axis, (share) => 17 * Math.min(1, 0.75 + share * 3, (1.06 - share) * 6));
  const bristles = upTo(30).map((i) => {
    const { point, heading } = along(axis, (i + 1) / 30);
    const side = i % 2 ? 1 : -1;
    return hair(from(point, heading + side * 90, 8), heading + side * (46 + 12 * random.next()), 9 + 4 * random.next());
  });
  const crown = upTo(6).map((i) => hair([44 + i * 2.4, 18], (i - 2.5) * 17, 9 - Math.abs(i - 2.5)));
  const scales = upTo(16).map((i) => hair([42 + ((i * 5) % 14), 68 - i * 3], (i * 5) % 14 > 6 ? 35 : -35, 4));
  return [
    ['line', STALK],
    ['fine', bristles.join('') + crown.join('')],
    ['face', body],
    ['wash-tan', body],
    ['fine', scales.join('')],
  ];
}

/** Drawings by the form's name. */
export const GRASS_HEADS: Readonly<Record<string, () => Drawing>> = {
  plume,
  'thin-plume': thinPlume,
  'open-spray': openSpray,
  'one-sided': oneSided,
  broom,
  'narrow-spike': narrowSpike,
  brush,
};
