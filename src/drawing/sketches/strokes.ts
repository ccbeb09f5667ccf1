// Strokes drawn by hand, shared by several books: quadratic curves in whole units, a whole plant in a few hundred bytes.
import type { Mark } from '../../key/index.ts';
import { between, from, num, type Point } from '../geometry.ts';
import type { Sketch, SketchBook } from '../sketch.ts';

const whole = ([x, y]: Point): string => `${Math.round(x)} ${Math.round(y)}`;

/** A curved stroke from `a` to `b`, drawn towards `c`. */
const stroke = (a: Point, c: Point, b: Point): string => `M${whole(a)}Q${whole(c)} ${whole(b)}`;

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

/**
 * A leafy stem: blades in two rows up a cane of a height, rooted at a place, its top `lean` to the right; the lowest
 * blade reaches out `reach`.
 */
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

/** What a command of path data takes, among those used here: numbers for each, all in pairs but `h` and `v`. */
const TAKES: ReadonlyMap<string, number> = new Map([
  ['m', 2],
  ['l', 2],
  ['h', 1],
  ['v', 1],
  ['q', 4],
  ['a', 7],
  ['z', 0],
]);

/** Path data by hand is written relative to where the pen is; given out, it names every place (SVG 1.1, section 8.3). */
export function absolute(path: string): string {
  let [here, start]: [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  return [...path.matchAll(/([a-z])([^a-z]*)/gi)]
    .map(([, command = '', rest = '']) => {
      const kind = command.toLowerCase();
      const numbers = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
      const takes = TAKES.get(kind) ?? 0;
      if (!takes) {
        here = start;
        return 'Z';
      }
      const relative = command === kind;
      const said: string[] = [];
      for (let i = 0; i < numbers.length; i += takes) {
        const [x, y] = relative ? here : [0, 0];
        const set = numbers.slice(i, i + takes);
        if (kind === 'h') set.push(relative ? 0 : here[1]);
        if (kind === 'v') set.unshift(relative ? 0 : here[0]);
        const end = set.length - 2;
        const from = kind === 'a' ? end : 0;
        const out = set.map((n, j) => (j < from ? n : n + ((j - from) % 2 ? y : x)));
        here = [out[end] as number, out[end + 1] as number];
        if (kind === 'm') start = here;
        said.push(out.map(num).join(' '));
      }
      return `${kind === 'h' || kind === 'v' ? 'L' : kind.toUpperCase()}${said.join(' ')}`;
    })
    .join('');
}

/** A book of drawings that depend on no number. */
export function bookOf(role: string, forms: ReadonlyMap<string, Sketch>): SketchBook {
  const given = new Map(
    [...forms].map(([form, { drawing, alt }]) => [
      form,
      { drawing: drawing.map(([pen, path]): Mark => [pen, absolute(path)]), alt },
    ]),
  );
  return { role, forms: [...forms.keys()], sketch: ({ form }) => given.get(form) };
}
