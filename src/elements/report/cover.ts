// Cover classes as pictures: a patch from above, with as much of it dark as the class means.
/** Cells along a side: 400 in all, of which every midpoint takes a whole number. */
export const SIDE = 20;

/** A hilly ground made of a few waves that never meet in step: where it is highest, the plant stands first. */
function heightAt(x: number, y: number): number {
  return (
    Math.sin(0.61 * x + 0.23 * y + 0.4) +
    Math.sin(0.37 * y - 0.71 * x * 0.5 + 1.9) +
    0.7 * Math.sin(1.13 * x - 0.97 * y + 2.6) +
    0.5 * Math.sin(1.57 * y + 0.83 * x + 0.7)
  );
}

const ORDER: readonly number[] = Array.from({ length: SIDE * SIDE }, (_, cell) => cell).sort(
  (a, b) => heightAt(b % SIDE, Math.floor(b / SIDE)) - heightAt(a % SIDE, Math.floor(a / SIDE)) || a - b,
);

/** The path of what is covered, in a square of `SIDE` by `SIDE`: runs of cells, row by row. `percent` is 0 to 100. */
export function coverPath(percent: number): string {
  const covered = new Set(ORDER.slice(0, Math.round((percent / 100) * SIDE * SIDE)));
  let path = '';
  for (let y = 0; y < SIDE; y++)
    for (let x = 0; x < SIDE; x++) {
      if (!covered.has(y * SIDE + x)) continue;
      const start = x;
      while (x + 1 < SIDE && covered.has(y * SIDE + x + 1)) x++;
      path += `M${start} ${y}h${x + 1 - start}v1h${start - x - 1}z`;
    }
  return path;
}
