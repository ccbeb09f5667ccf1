// Flower clusters, small: what tells each kind from afar. The close-up stands beside the figure.
import { add, band, from, type Point, smooth, straight } from '../geometry.ts';
import { bladeOf, ring, type Spine, spine } from './blade.ts';

export interface Head {
  readonly form: string;
  /** Units of the figure. */
  readonly length: number;
  readonly posture: string | undefined;
  /** 1 to the right, -1 to the left: where it leans. */
  readonly side: number;
  /** Of cattails: bare stem between the cob and the male flowers. */
  readonly apart: boolean;
  /** Its flowers are over. */
  readonly dry: boolean;
}

export interface Flowers {
  /** Closed shapes that take the colour. */
  readonly shapes: readonly string[];
  readonly strokes: string;
}

/**
 * Heads that stand dry long after their flowers: those of grasses, sedges, and cattails. Common knowledge, no source;
 * flowers wither, and soft spikes fall apart.
 */
export const LASTING: ReadonlySet<string> = new Set([
  'plume',
  'thin-plume',
  'narrow-spike',
  'broom',
  'brush',
  'open-spray',
  'one-sided',
  'fingers',
  'flat-oats',
  'brown-tufts',
  'cob',
]);

/** How far a head turns on its way. */
const BENDS: Readonly<Record<string, number>> = { 'open-leaning': 42, drooping: 105 };

/** Petals about a point, over the whole round or part of it; what is too small for petals is a lobed ring. */
function flower(at: Point, size: number, petals: number, slim: number, turn = 0, of = 360): string {
  const step = of === 360 ? of / petals : of / (petals - 1);
  if (size < 5 && of === 360)
    return smooth(
      Array.from({ length: petals * 2 }, (_, i) => from(at, turn + (step * i) / 2, i % 2 ? size * 0.4 : size)),
      true,
    );
  return Array.from({ length: petals }, (_, i) =>
    bladeOf({ shape: 'oval', length: size, width: size * slim }, at, turn + step * i),
  ).join('');
}

const steps = (n: number, from: number, to: number): number[] =>
  Array.from({ length: n }, (_, i) => from + ((to - from) * i) / Math.max(1, n - 1));

/** A feathery outline: half as wide as `wide`, in shares of the length. */
function feather(at: Spine, length: number, wide: number, tufts: number, full = 0.6): Flowers {
  // Tufts point upwards; those of one side stand between those of the other.
  const side = (sign: number) =>
    steps(tufts * 2 + 1, 0, 1).map((u, i) => {
      const out = Math.sin(Math.PI * u ** full) * (1 - u * 0.25);
      return at(u + (i % 2 ? 0.06 : 0), sign * length * (0.012 + wide * out * (i % 2 ? 1 : 0.7)));
    });
  const outline = `${smooth(side(1))}L${smooth(side(-1).reverse()).slice(1)}Z`;
  const barbs = steps(tufts, 0.1, 0.82).flatMap((u, i) =>
    [1, -1].map((sign) => {
      const out = sign * length * wide * Math.sin(Math.PI * u ** full) * (i % 2 ? 0.62 : 0.78);
      return smooth([at(u), at(u + 0.07, out * 0.55), at(u + 0.16, out)]);
    }),
  );
  return { shapes: [outline], strokes: smooth([at(0), at(0.5), at(0.92)]) + barbs.join('') };
}

/** Branches off an axis, each with something at its ends. */
function spray(
  at: Spine,
  length: number,
  wide: number,
  n: number,
  end: (at: Point, i: number) => string,
  drop = 0,
): Flowers {
  const shapes: string[] = [];
  let strokes = smooth(steps(5, 0, 0.97).map((u) => at(u)));
  for (const [i, u] of steps(n, 0.12, 0.86).entries())
    for (const sign of [1, -1]) {
      const reach = wide * length * (1 - u * 0.72) * (i % 2 ? 0.8 : 1);
      const tip = add(at(u + 0.16, sign * reach), [0, drop * reach]);
      strokes += smooth([at(u), add(at(u + 0.11, sign * reach * 0.55), [0, drop * reach * 0.1]), tip]);
      shapes.push(end(tip, i));
    }
  shapes.push(end(at(1), n));
  return { shapes, strokes };
}

/** Small things set round an axis, in rows across it. */
function along(
  at: Spine,
  length: number,
  rows: readonly number[],
  across: readonly number[],
  one: (at: Point, sign: number) => string,
): Flowers {
  const shapes = rows.flatMap((u) => across.map((v) => one(at(u, v * length), Math.sign(v))));
  const stalks = rows.flatMap((u) => across.map((v) => (v ? straight([at(u - 0.06), at(u, v * length)]) : '')));
  return { shapes, strokes: smooth(steps(5, 0, 1).map((u) => at(u))) + stalks.join('') };
}

function rays(
  base: Point,
  degrees: number,
  length: number,
  n: number,
  spread: number,
  end: (at: Point, turn: number) => string,
): Flowers {
  const ends = steps(n, -spread, spread).map((turn, i) => ({
    turn,
    to: from(base, degrees + turn, length * (i % 2 ? 0.82 : 1)),
  }));
  return {
    shapes: ends.map(({ to, turn }) => end(to, degrees + turn)),
    strokes: ends.map(({ to }) => straight([base, to])).join(''),
  };
}

/** The least size of a flower that can still be seen, in units of the figure. */
const LEAST = 2;

/** Flowers on the end of a stalk that points in a direction (0 is up). Undefined for a form that is not known here. */
export function flowersOf(
  { form, length: stated, posture, side, apart, dry }: Head,
  base: Point,
  degrees = 0,
): Flowers | undefined {
  const length = Math.max(stated, 5);
  const bend = side * (BENDS[posture ?? ''] ?? (form.endsWith('plume') ? 14 : 0));
  const open = posture === 'spreading' ? 1.45 : posture === 'erect' ? 0.85 : 1;
  const at = spine(base, degrees, length, bend);
  const size = (share: number) => Math.max(LEAST, length * share);
  switch (form) {
    case 'plume':
      return feather(at, length, 0.2 * open, 8);
    case 'thin-plume':
      return feather(at, length, 0.08 * open, 5);
    case 'narrow-spike':
      return feather(at, length, 0.04 * open, 6);
    case 'broom':
      return feather(at, length, 0.26 * open, 5, 1.7);
    case 'brush': {
      const body = band(
        steps(5, 0, 1).map((u) => at(u)),
        (u) => Math.max(3, length * 0.13 * Math.sin(Math.PI * (0.12 + u * 0.8))),
      );
      const bristles = steps(9, 0.06, 0.97).flatMap((u) =>
        [1, -1].map((sign) => straight([at(u), at(u + 0.07, sign * size(0.13))])),
      );
      return { shapes: [body], strokes: bristles.join('') };
    }
    case 'open-spray':
      return spray(at, length, 0.34 * open, 6, (to) => ring(to, size(0.03) * 0.6, size(0.045) * 0.6));
    case 'powdery-cluster':
      return spray(
        at,
        length,
        0.26,
        5,
        (to, i) => ring(to, size(0.06), size(0.06)) + ring(add(to, [0, size(0.09)]), size(0.05) * (i % 2 ? 1 : 0.8)),
      );
    case 'brown-tufts':
      return spray(
        at,
        length,
        0.34 * open,
        4,
        (to) => ring(to, size(0.05)) + ring(add(to, [size(0.06), size(0.05)]), size(0.04)),
        0.35,
      );
    case 'flat-oats':
      return spray(
        at,
        length,
        0.22 * open,
        4,
        (to) => bladeOf({ shape: 'oval', length: size(0.17) * 1.2, width: size(0.085) * 1.2 }, to, 180),
        0.5,
      );
    case 'one-sided': {
      const shapes: string[] = [];
      let strokes = smooth(steps(5, 0, 1).map((u) => at(u)));
      for (const [i, u] of steps(6, 0.08, 0.72).entries()) {
        const out = (i % 2 ? 1 : -1) * length * (0.3 - u * 0.16);
        const [root, middle, tip] = [at(u), at(u + 0.2, out * 0.7), at(u + 0.27, out)];
        strokes += smooth([root, middle, tip]);
        // Spikelets hang along its lower side.
        const low = (point: Point): Point => add(point, [0, size(0.03)]);
        shapes.push(band([low(at(u + 0.07, out * 0.28)), low(middle), low(tip)], (v) => size(0.05) * (1 - v * 0.5)));
      }
      return { shapes, strokes };
    }
    case 'fingers': {
      const shapes = [-1, 0.15, 1].map((turn) => {
        const finger = spine(base, degrees + turn * 20 * open, length, turn * 10 + bend);
        return band(
          steps(5, 0, 1).map((u) => finger(u)),
          (u) => size(0.075) * (1 - 0.5 * u),
        );
      });
      return { shapes, strokes: '' };
    }
    case 'cob': {
      const cob = band(
        steps(4, 0, 1).map((u) => at(u)),
        (u) => Math.max(5, length * 0.17) * (u === 0 || u === 1 ? 0.6 : 1),
      );
      // Above it the male flowers, which fall when it is ripe; only their bare stalk stays.
      const foot = apart ? 1.24 : 1.02;
      const male = band([at(foot), at(1.45), at(1.64)], (u) => Math.max(2.4, length * 0.09) * (1 - 0.5 * u));
      return { shapes: dry ? [cob] : [cob, male], strokes: smooth([at(1), at(1.3), at(1.65)]) };
    }
    case 'hood': {
      const half = (sign: number): Point[] =>
        [
          [0, 0.02],
          [0.14, 0.11],
          [0.3, 0.1],
          [0.5, 0.19],
          [0.78, 0.13],
          [1, 0],
        ].map(([u = 0, v = 0]) => at(u, sign * v * length * (sign > 0 ? 1 : 0.7)));
      const hood = `${smooth(half(1))}L${smooth(half(-1).reverse()).slice(1)}Z`;
      const club = band(
        [at(0.3, length * 0.02), at(0.52, length * 0.03), at(0.72, length * 0.03)],
        (u) => size(0.09) * (1 - u * 0.4),
      );
      return { shapes: [hood, club], strokes: '' };
    }
    case 'blue-spike': {
      const [low, high] = [0.16, 0.07].map((share) => Math.max(2.4, length * share)) as [number, number];
      return along(at, length, steps(5, 0.1, 1), [-0.12, 0.12, 0], (to, sign) =>
        flower(sign === 0 ? from(to, degrees, high) : to, low * 0.75, 5, 0.6, sign * 40),
      );
    }
    case 'white-tail': {
      const tail = spine(base, degrees, length, side * 130);
      const body = band(
        steps(7, 0, 1).map((u) => tail(u)),
        (u) => Math.max(2.6, length * 0.1) * (1 - u * 0.55),
      );
      return {
        shapes: [body],
        strokes: steps(8, 0.1, 0.9)
          .map((u) => straight([tail(u, -size(0.07)), tail(u, size(0.07))]))
          .join(''),
      };
    }
    case 'whorls': {
      const r = Math.min(Math.max(length * 0.11, 3), 9);
      return along(at, length, [0.3, 0.64, 1], [-0.14 - r / length, 0.14 + r / length], (to, sign) =>
        flower(to, r, 3, 0.95, sign * 20),
      );
    }
    case 'single-big': {
      const r = Math.max(length * 0.5, 5);
      const middle = from(base, degrees, r * 0.15);
      const petals = (n: number, by: number, wide: number) =>
        steps(n, -80, 80).map((turn) =>
          bladeOf({ shape: 'oval', length: r * by, width: r * wide }, middle, degrees + turn),
        );
      return { shapes: [...petals(6, 1.05, 0.42), ...petals(5, 0.9, 0.44), ...petals(2, 0.55, 0.5)], strokes: '' };
    }
    case 'single-leaf':
      return { shapes: [flower(from(base, degrees, 3), Math.max(3, stated * 0.5), 5, 0.85, degrees)], strokes: '' };
    case 'lily-umbel':
      return rays(base, degrees, length * 0.45, 4, 75, (to, turn) => flower(to, length * 0.5, 6, 0.24, turn, 360));
    case 'cup-umbel':
      return rays(
        base,
        degrees,
        length * 0.45,
        3,
        62,
        (to, turn) => flower(to, length * 0.56, 6, 0.1, turn + 15) + ring(to, length * 0.13),
      );
    case 'showy-spike':
      return along(at, length, [0.35, 0.68, 0.98], [-0.1, 0.1], (to, sign) =>
        flower(to, size(0.26), 4, 0.5, sign * 55 - 60, 150),
      );
    case 'head':
      return { shapes: [flower(from(base, degrees, size(0.4)), size(0.5), 9, 0.34)], strokes: '' };
    case 'lipped-head':
      return along(at, length, [0.4, 0.85], [-0.2, 0.2], (to, sign) =>
        flower(to, size(0.3), 3, 0.55, sign * 70 - 70, 160),
      );
    case 'tiny-umbel':
      return rays(base, degrees, length * 0.62, 9, 120, (to) => ring(to, Math.max(1.1, length * 0.09)));
    case 'tiny-rings':
      return along(at, length, [0.25, 0.6, 1], [-0.2, 0.2, 0], (to) => ring(to, Math.max(1.1, length * 0.07)));
    case 'small-cross': {
      // Flowers close together at the top, slender pods below.
      const r = Math.min(4, Math.max(1.8, length * 0.06));
      const places: readonly (readonly [number, number])[] = [
        [-1.9, -0.4],
        [1.9, -0.4],
        [-1, 1.2],
        [1.1, 1.1],
        [0, -0.2],
      ];
      const pods = steps(4, 0.15, 0.66).map((u, i) => {
        const out = i % 2 ? 1 : -1;
        return smooth([at(u), at(u + 0.03, out * length * 0.09), at(u + 0.14, out * length * 0.17)]);
      });
      return {
        shapes: places.map(([x, y], i) =>
          flower(at(1 - (r * 1.4) / length + (y * r) / length, x * r), r, 4, 0.8, i * 20),
        ),
        strokes: smooth(steps(4, 0, 0.94).map((u) => at(u))) + pods.join(''),
      };
    }
    default:
      return undefined;
  }
}
