// Flower clusters, small: what tells each kind from afar. The close-up stands beside the figure.
import { add, band, from, type Point, smooth, straight } from '../geometry.ts';
import { bladeOf, ring, spine } from './blade.ts';
import { along, type Flowers, flower, rays, spray, steps } from './cluster-parts.ts';
import { headOf } from './heads.ts';

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

/** How far a head turns on its way. */
const BENDS: Readonly<Record<string, number>> = { 'open-leaning': 42, drooping: 105 };

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
    case 'powdery-cluster':
      return spray(
        at,
        length,
        0.26,
        5,
        (to, i) => ring(to, size(0.06), size(0.06)) + ring(add(to, [0, size(0.09)]), size(0.05) * (i % 2 ? 1 : 0.8)),
      );
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
      return headOf(form, { base, degrees, at, length, bend, open, size, apart, dry });
  }
}
