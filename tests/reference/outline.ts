// Measures of a closed line of points, y pointing down, made without the code that draws it.
type Point = readonly [x: number, y: number];

export interface Measured {
  readonly ratio: number;
  /** Share of the length from the lowest point at which the line is widest. */
  readonly widest: number;
  /** Length below the origin, as a share of the whole. */
  readonly below: number;
  /** Width at a share of the length from the lowest point, as a share of the greatest width. */
  readonly widthAt: (share: number) => number;
  /** Angle at the topmost point, in degrees, over the last twentieth of the length. */
  readonly tipAngle: number;
}

export function measure(points: readonly Point[]): Measured {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const [width, length] = [right - left, bottom - top];
  const across = (y: number): readonly [number, number] => {
    const hits = points.flatMap((a, i) => {
      const b = points[(i + 1) % points.length] as Point;
      return a[1] > y !== b[1] > y ? [((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]] : [];
    });
    return hits.length ? [Math.min(...hits), Math.max(...hits)] : [0, 0];
  };
  const spread = (y: number): number => across(y)[1] - across(y)[0];
  const widestY = points.filter(([x]) => x > right - width * 1e-3).map(([, y]) => y);
  return {
    ratio: length / width,
    widest: (bottom - (Math.min(...widestY) + Math.max(...widestY)) / 2) / length,
    below: bottom / length,
    widthAt: (share) => spread(bottom - share * length) / width,
    tipAngle: (2 * Math.atan2(spread(top + length / 20) / 2, length / 20) * 180) / Math.PI,
  };
}

/** Whether a closed line of points crosses itself; pieces that touch or share an end do not count. */
export function crossesItself(points: readonly Point[]): boolean {
  const n = points.length;
  const side = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b, c, d] = [points[i], points[i + 1], points[j], points[(j + 1) % n]] as [Point, Point, Point, Point];
      if (side(a, b, c) * side(a, b, d) < -1e-9 && side(c, d, a) * side(c, d, b) < -1e-9) return true;
    }
  }
  return false;
}
