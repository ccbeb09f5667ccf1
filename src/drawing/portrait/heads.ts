// Heads that last: those of grasses, sedges and cattails.
import { add, band, type Point, smooth, straight } from '../geometry.ts';
import { bladeOf, ring, type Spine, spine } from './blade.ts';
import { type Flowers, feather, spray, steps } from './cluster-parts.ts';

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

/** What a head is drawn from: where it stands, its length, and how wide it opens. */
export interface HeadAt {
  readonly base: Point;
  readonly degrees: number;
  readonly at: Spine;
  readonly length: number;
  readonly bend: number;
  readonly open: number;
  readonly size: (share: number) => number;
  readonly apart: boolean;
  readonly dry: boolean;
}

/** Undefined for a form that is none of them. */
export function headOf(
  form: string,
  { base, degrees, at, length, bend, open, size, apart, dry }: HeadAt,
): Flowers | undefined {
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
    default:
      return undefined;
  }
}
