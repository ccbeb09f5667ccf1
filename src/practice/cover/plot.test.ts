// The cover of a plot against areas known in closed form, and against the class it was strewn for.
import { expect, test } from 'vitest';
import { COVER } from '../../report/find/cover.ts';
import type { CoverClass } from '../../report/find/index.ts';
import { coverOf, type Leaf, plotOf } from './plot.ts';

const leaf = (x: number, y: number, a: number, b = a, turn = 0): Leaf => ({ x, y, a, b, turn });
test('probe', () => {
  for (const c of [1, 2, 3, 4, 5, 6] as CoverClass[]) {
    let bad = 0, mx = 0, mn = 1, most = 0; const t = Date.now();
    for (let s = 1; s <= 400; s++) { const p = plotOf(s, c); const [f, to] = COVER[c]; if (!(p.cover * 100 >= f && p.cover * 100 <= to)) bad++; mx = Math.max(mx, p.cover); mn = Math.min(mn, p.cover); most = Math.max(most, p.leaves.length); }
    console.log(c, bad, mn, mx, most, (Date.now() - t) / 400);
  }
  // worst raster error for a lone ellipse anywhere inside
  let worst = 0;
  for (let i = 0; i < 2000; i++) { const r = (k: number) => ((Math.sin(i * 12.9898 + k * 78.233) * 43758.5453) % 1 + 1) % 1; const a = 0.03 + 0.07 * r(1), b = a * (0.45 + 0.55 * r(5)); const l = leaf(0.2 + 0.6 * r(2), 0.2 + 0.6 * r(3), a, b, 3 * r(4)); worst = Math.max(worst, Math.abs(coverOf([l]) - Math.PI * a * b)); }
  console.log('worst', worst);
});
