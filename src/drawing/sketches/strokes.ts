// Short strokes that several books share. Quadratic curves in whole units: a whole plant in a few hundred bytes.
import { between, from, type Point } from '../geometry.ts';

const whole = ([x, y]: Point): string => `${Math.round(x)} ${Math.round(y)}`;

/** A curved stroke from `a` to `b`, drawn towards `c`. */
export const stroke = (a: Point, c: Point, b: Point): string => `M${whole(a)}Q${whole(c)} ${whole(b)}`;

/** A narrow leaf from `a` to its tip `b`, bent towards `c`, about `width` wide. */
export function blade(a: Point, c: Point, b: Point, width = 5): string {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [x, y] = [(-(b[1] - a[1]) / length) * width, ((b[0] - a[0]) / length) * width];
  const [one, other]: [Point, Point] = [
    [c[0] + x, c[1] + y],
    [c[0] - x, c[1] - y],
  ];
  return `M${whole(a)}Q${whole(one)} ${whole(b)}Q${whole(other)} ${whole(a)}Z`;
}

/** A leafy stem: blades in two rows up a cane of a height, rooted at a place, its top `lean` to the right; the lowest blade reaches out `reach`. */
export function cane(
  root: Point,
  height: number,
  lean = 0,
  blades = 5,
  reach = 24,
): { stem: string; blades: string; top: Point } {
  const top: Point = [root[0] + lean, root[1] - height];
  let leaves = '';
  for (let i = 0; i < blades; i++) {
    const at = between(root, top, (i + 1) / (blades + 0.4));
    const side = i % 2 ? 1 : -1;
    const long = reach * (1 - (0.3 * i) / blades);
    leaves += blade(
      at,
      [at[0] + side * long * 0.4, at[1] - long * 0.75],
      [at[0] + side * long, at[1] - long * 0.3],
      long * 0.11,
    );
  }
  return { stem: stroke(root, [root[0], root[1] - height / 2], top), blades: leaves, top };
}

/** A tuft of arching blades from one place: angles in degrees from upright, lengths in units. */
export const tuft = (root: Point, blades: readonly (readonly [degrees: number, length: number])[], width = 3): string =>
  blades
    .map(([degrees, length]) =>
      blade(root, from(root, degrees * 0.35, length * 0.62), from(root, degrees, length), width),
    )
    .join('');
