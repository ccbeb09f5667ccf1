// What every plant is drawn with: its leaves, stems and flowers on the pad. Units of the figure.
import type { Random } from '../../engine/trial/random.ts';
import { band, type Point, smooth, straight } from '../geometry.ts';
import { type Blade, bladeOf, padOf, ribOf, spine } from './blade.ts';
import { flowersOf, type Head } from './cluster.ts';
import type { Pad } from './pad.ts';

/** What an individual is made of, sizes already in units of the figure. */
export interface Body {
  readonly pad: Pad;
  readonly random: Random;
  /** Where it stands or floats. */
  readonly base: Point;
  /** Where its roots are: the bed under the water, or the base. */
  readonly bed: Point;
  /** How tall it is to be. */
  readonly height: number;
  /** How tall its stems are drawn, so that leaves and flowers on them come to the height. */
  readonly rise: number;
  readonly leaf: Blade;
  readonly leafHue: string | undefined;
  readonly patterned: boolean;
  readonly stemHue: string | undefined;
  readonly flowerHue: string | undefined;
  readonly thickness: number;
  /** Undefined when it does not flower now, or nothing is known of its flowers. */
  readonly head: Head | undefined;
  readonly form: (role: string) => string | undefined;
}

/** Narrower than this a leaf is drawn as a stroke. */
const STROKE = 1.3;
/** And narrower than this as a thin one. */
const FINE = 0.75;
const LEAST_STEM = 1.3;

export const range = (n: number, from: number, to: number): number[] =>
  Array.from({ length: n }, (_, i) => (n < 2 ? (from + to) / 2 : from + ((to - from) * i) / (n - 1)));

/** Moves a value by up to a share of itself, either way. */
export const about = ({ random }: Body, value: number, share = 0.12): number =>
  value * (1 + (random.next() * 2 - 1) * share);

export function leaf(body: Body, at: Point, degrees: number, bend = 0, by = 1, squash = 1): void {
  const { pad } = body;
  const blade: Blade = {
    shape: body.leaf.shape,
    length: body.leaf.length * by,
    width: body.leaf.width * Math.min(1, by * 1.1) * squash,
  };
  if (blade.shape === 'leafless') return;
  if (blade.width < STROKE) {
    const middle = spine(at, degrees, blade.length, bend);
    pad.put('leaf', blade.width < FINE ? 'fine' : 'line', smooth([middle(0), middle(0.35), middle(0.7), middle(1)]));
    return;
  }
  pad.shape('leaf', bladeOf(blade, at, degrees, bend), body.leafHue);
  if (body.patterned)
    pad.put(
      'leaf',
      'wash-pink',
      bladeOf({ ...blade, length: blade.length * 0.6, width: blade.width * 0.45 }, at, degrees, bend),
    );
  if (blade.width > 4) pad.put('leaf', 'fine', ribOf(blade, at, degrees, bend));
}

export function stem(body: Body, points: readonly Point[], thick: number, taper = 0.6): void {
  const width = Math.max(LEAST_STEM, thick);
  if (width < 1.5) body.pad.put('stem', 'line', smooth(points));
  else
    body.pad.shape(
      'stem',
      band(points, (u) => width * (1 - (1 - taper) * u)),
      body.stemHue,
    );
}

export function flowers(body: Body, at: Point, degrees = 0, by = 1): void {
  const { head, pad } = body;
  if (head === undefined) return;
  const drawn = flowersOf({ ...head, length: head.length * by, side: head.side }, at, degrees);
  if (drawn === undefined) return;
  pad.put('flower', 'fine', drawn.strokes);
  for (const shape of drawn.shapes) pad.shape('flower', shape, body.flowerHue);
  pad.show('flower-cluster', 'cluster-length');
  if (!head.dry) pad.show('flower-colour');
  if (body.form('cluster-posture') !== undefined) pad.show('cluster-posture');
}

/** A round leaf held level, its veins like spokes. */
export function disc(body: Body, [x, y]: Point, flat: number): void {
  const { shape, width } = body.leaf;
  const wide = width * about(body, 0.95, 0.08);
  body.pad.shape('leaf', padOf([x, y], wide, shape !== 'shield', flat), body.leafHue);
  const spokes = range(5, 0.3, 2.84).map((turn) =>
    straight([
      [x, y],
      [x + Math.cos(turn) * wide * 0.38, y + Math.sin(turn) * wide * 0.38 * flat],
    ]),
  );
  body.pad.put('leaf', 'fine', spokes.join(''));
}

export const leafRoles = ['leaf-shape', 'leaf-length'];

/** How high a head reaches above the end of its stalk. */
export function reach({ head }: Body): number {
  if (head === undefined) return 0;
  const share =
    head.posture === 'drooping' ? 0.5 : head.posture === 'open-leaning' ? 0.9 : head.form === 'cob' ? 1.65 : 1;
  return head.length * share;
}

/** Number and bearing of stems by how the plant grows together. */
export function places(body: Body, many: number): { x: number; lean: number; high: number }[] {
  const stand = body.form('stand');
  const [n, wide, lean] =
    stand === 'clump'
      ? [many, 0.12, 11]
      : stand === 'dense-stand' || stand === 'mat'
        ? [Math.max(4, many - 2), 0.34, 3]
        : stand === 'scattered'
          ? [2, 0.2, 4]
          : [1, 0, 3];
  const middle = (n - 1) / 2;
  return (
    range(n, -1, 1)
      .map((share, i) => ({
        x: wide * body.rise * 0.5 * share,
        lean: lean * share + (n === 1 ? 1.5 : 0),
        high: Math.abs(i - middle) < 0.6 ? 1 : about(body, 0.9 - 0.13 * Math.abs(share), 0.06),
      }))
      // Those behind first, the tallest last.
      .sort((a, b) => a.high - b.high)
  );
}
