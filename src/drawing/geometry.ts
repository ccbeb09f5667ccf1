// Points and the paths through them. Lengths are in the units of the drawing, angles in degrees, the y axis points down.

export type Point = readonly [x: number, y: number];

/** A number as it stands in path data: one decimal, no sign on zero. */
export const num = (value: number): string => String(Math.round(value * 10) / 10 || 0);
const pair = ([x, y]: Point): string => `${num(x)} ${num(y)}`;

export const add = ([a, b]: Point, [c, d]: Point): Point => [a + c, b + d];
export const scaled = ([x, y]: Point, by: number, byY = by): Point => [x * by, y * byY];
/** Between two points: 0 is the first, 1 the second. */
export const between = ([a, b]: Point, [c, d]: Point, share: number): Point => [
  a + (c - a) * share,
  b + (d - b) * share,
];
/** Turned clockwise on the screen, about the origin unless said otherwise. */
export function turned([x, y]: Point, degrees: number, [cx, cy]: Point = [0, 0]): Point {
  const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos];
}
/** The point at a distance from another; 0 degrees is straight up, 90 to the right. */
export const from = ([x, y]: Point, degrees: number, distance: number): Point =>
  add([x, y], turned([0, -distance], degrees));

/** A path of straight pieces. */
export const straight = (points: readonly Point[], closed = false): string =>
  `M${points.map(pair).join('L')}${closed ? 'Z' : ''}`;

/** A chain of cubic Bezier curves: a start, then two handles and an end for each piece. Corners may stand between pieces. */
export type Curve = readonly Point[];

/** A straight piece of a chain, without its start. */
export const line = (a: Point, b: Point): [Point, Point, Point] => [between(a, b, 1 / 3), between(a, b, 2 / 3), b];

/** The smooth chain through all points: a Catmull-Rom spline written as cubic Bezier curves (tangents of a sixth). */
export function spline(points: readonly Point[], closed = false): Curve {
  const n = points.length;
  const at = (i: number): Point => (closed ? points[(i + n) % n] : points[Math.min(Math.max(i, 0), n - 1)]) as Point;
  const curve: Point[] = [at(0)];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    curve.push(
      [b[0] + (c[0] - a[0]) / 6, b[1] + (c[1] - a[1]) / 6],
      [c[0] - (d[0] - b[0]) / 6, c[1] - (d[1] - b[1]) / 6],
      c,
    );
  }
  return curve;
}

/** Whether a piece of a chain is a straight line: both handles lie on it. */
const isLine = ([ax, ay]: Point, handles: readonly Point[], [bx, by]: Point): boolean =>
  handles.every(
    ([x, y]) => Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) < 0.01 * Math.hypot(bx - ax, by - ay),
  );

/** The path of a chain. */
export function curved(curve: Curve, closed = false): string {
  let path = `M${pair(curve[0] as Point)}`;
  for (let i = 1; i + 2 < curve.length; i += 3) {
    const [one, two, end] = curve.slice(i, i + 3) as [Point, Point, Point];
    path += isLine(curve[i - 1] as Point, [one, two], end)
      ? `L${pair(end)}`
      : `C${[one, two, end].map(pair).join(' ')}`;
  }
  return closed ? `${path}Z` : path;
}

/** A smooth path through all points. */
export const smooth = (points: readonly Point[], closed = false): string =>
  points.length < 3 ? straight(points, closed) : curved(spline(points, closed), closed);

/** A full ellipse about a centre, turned clockwise. */
export function ellipse([x, y]: Point, rx: number, ry = rx, degrees = 0): string {
  const [a, b] = [from([x, y], degrees + 90, rx), from([x, y], degrees - 90, rx)];
  const arc = `A${num(rx)} ${num(ry)} ${num(degrees)} 1 1 `;
  return `M${pair(a)}${arc}${pair(b)}${arc}${pair(a)}Z`;
}

/** A band along a path of points, `width` wide at each; a tapering stem or blade. */
export function band(points: readonly Point[], width: (share: number) => number): string {
  const sides = points.map((point, i): readonly [Point, Point] => {
    const [a, b] = [points[Math.max(i - 1, 0)] as Point, points[Math.min(i + 1, points.length - 1)] as Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const half = width(points.length < 2 ? 0 : i / (points.length - 1)) / 2;
    const off: Point = [(-(b[1] - a[1]) / length) * half, ((b[0] - a[0]) / length) * half];
    return [add(point, off), add(point, scaled(off, -1))];
  });
  const back = sides.map(([, other]) => other).reverse();
  const [there, home] = [smooth(sides.map(([one]) => one)), smooth(back)];
  return `${there}L${home.slice(1)}Z`;
}

/** Points of a cubic Bezier curve, `steps` + 1 of them, both ends among them. */
export function bezier(a: Point, b: Point, c: Point, d: Point, steps = 12): Point[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const [ab, bc, cd] = [between(a, b, t), between(b, c, t), between(c, d, t)];
    return between(between(ab, bc, t), between(bc, cd, t), t);
  });
}

/** Points along a chain, `steps` to a piece; corners between pieces are kept. */
export function pointsOf(curve: Curve, steps = 12): Point[] {
  const points: Point[] = [curve[0] as Point];
  for (let i = 0; i + 3 < curve.length; i += 3) {
    const [a, b, c, d] = curve.slice(i, i + 4) as [Point, Point, Point, Point];
    points.push(...bezier(a, b, c, d, steps).slice(1));
  }
  return points;
}

/** The point at a share of the length of a line of points. */
export function pointAt(points: readonly Point[], share: number): Point {
  const steps = points
    .slice(1)
    .map(([x, y], i) => Math.hypot(x - (points[i] as Point)[0], y - (points[i] as Point)[1]));
  let left = steps.reduce((sum, step) => sum + step, 0) * Math.min(Math.max(share, 0), 1);
  for (const [i, step] of steps.entries()) {
    if (left <= step) return between(points[i] as Point, points[i + 1] as Point, step ? left / step : 0);
    left -= step;
  }
  return points[points.length - 1] as Point;
}
