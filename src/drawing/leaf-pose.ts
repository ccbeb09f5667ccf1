// Leaves put in place: turned, tilted away from the eye, bent along a line.
import { add, between, type Curve, type Point, pointsOf, scaled, turned } from './geometry.ts';

/** Set down with the origin of the blade's frame at a place, turned by degrees; `flat` below 1 tilts it away from the eye. */
export const put = (curve: Curve, at: Point, turn = 0, flat = 1): Curve =>
  curve.map((point) => add(scaled(turned(point, turn), 1, flat), at));

/** Where a distance along a line of points leads, and the direction there; beyond its ends it goes straight on. */
function station(line: readonly Point[], distance: number): { at: Point; ahead: Point } {
  let left = distance;
  for (let i = 0; i + 1 < line.length; i++) {
    const [a, b] = [line[i] as Point, line[i + 1] as Point];
    const step = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    if (left <= step || i + 2 === line.length)
      return { at: between(a, b, left / step), ahead: [(b[0] - a[0]) / step, (b[1] - a[1]) / step] };
    left -= step;
  }
  return { at: line[0] as Point, ahead: [0, -1] };
}

/** The same chain in pieces so short that each bends like what it is laid along. */
function shortened(curve: Curve, longest: number): Curve {
  const pieces: Point[] = [curve[0] as Point];
  for (let i = 0; i + 3 < curve.length; i += 3) {
    const [a, b, c, d] = curve.slice(i, i + 4) as [Point, Point, Point, Point];
    if (Math.hypot(d[0] - a[0], d[1] - a[1]) <= longest) {
      pieces.push(b, c, d);
      continue;
    }
    const [ab, bc, cd] = [between(a, b, 0.5), between(b, c, 0.5), between(c, d, 0.5)];
    const [abc, bcd] = [between(ab, bc, 0.5), between(bc, cd, 0.5)];
    const middle = between(abc, bcd, 0.5);
    pieces.push(
      ...shortened([a, ab, abc, middle], longest).slice(1),
      ...shortened([middle, bcd, cd, d], longest).slice(1),
    );
  }
  return pieces;
}

/** Bent: the middle line of the blade, from the origin up, is laid along a chain; `flat` narrows what is seen of its width. */
export function along(curve: Curve, spine: Curve, flat = 1): Curve {
  const line = pointsOf(spine);
  return shortened(curve, 14).map(([x, y]): Point => {
    const { at, ahead } = station(line, -y);
    return [at[0] - ahead[1] * x * flat, at[1] + ahead[0] * x * flat];
  });
}
