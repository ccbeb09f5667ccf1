// What flower clusters are put together from: feathers, sprays, rows, rays.
import { add, from, type Point, smooth, straight } from '../geometry.ts';
import { bladeOf, type Spine } from './blade.ts';

export interface Flowers {
  /** Closed shapes that take the colour. */
  readonly shapes: readonly string[];
  readonly strokes: string;
}

/** Petals about a point, over the whole round or part of it; what is too small for petals is a lobed ring. */
export function flower(at: Point, size: number, petals: number, slim: number, turn = 0, of = 360): string {
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

export const steps = (n: number, from: number, to: number): number[] =>
  Array.from({ length: n }, (_, i) => from + ((to - from) * i) / Math.max(1, n - 1));

/** A feathery outline: half as wide as `wide`, in shares of the length. */
export function feather(at: Spine, length: number, wide: number, tufts: number, full = 0.6): Flowers {
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
export function spray(
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
export function along(
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

export function rays(
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
