// Plants that creep over the ground or the water.
import { from, type Point, smooth, straight } from '../geometry.ts';
import { spine } from './blade.ts';
import { about, type Body, disc, flowers, leaf, leafRoles, range, reach, stem } from './body.ts';

/** Stems along the ground or the water, with shoots standing up, or with stalked leaves from their joints. */
export function creeper(body: Body): void {
  const { pad, base, random } = body;
  const far = Math.min(70, Math.max(44, body.height * 2.4));
  const line: Point[] = range(6, -1, 1).map((share) => [
    base[0] + share * far,
    base[1] - 1 + (random.next() - 0.5) * 2,
  ]);
  stem(body, line, Math.max(1.8, body.thickness * 0.9), 0.9);
  const stalked =
    body.form('leaf-arrangement') === 'basal' || body.leaf.shape === 'shield' || body.leaf.shape === 'round';
  const spots = range(stalked ? 9 : 7, -0.94, 0.94).sort((a, b) => Math.abs(b) - Math.abs(a));
  for (const share of spots) {
    const root: Point = [base[0] + share * far, base[1] - 1];
    const lean = share * 14 + (random.next() - 0.5) * 10;
    pad.put(
      'stem',
      'fine',
      range(3, -16, 16)
        .map((turn) => straight([root, from(root, 180 + turn, 5)]))
        .join(''),
    );
    const high = body.rise * (Math.abs(share) < 0.1 ? 1 : about(body, 0.78, 0.2));
    if (stalked) {
      const flat = 0.42;
      const top = from(root, lean, high - (body.leaf.width / 2) * flat);
      pad.put('leaf', 'line', smooth([root, from(root, lean * 1.3, high * 0.5), top]));
      disc(body, top, flat);
      if (Math.round(share * 10) % 5 === 0 && body.head) {
        const stalk = spine([root[0] + 3, root[1]], lean + 4, high * 0.86 - reach(body) * 0.5);
        pad.put('flower', 'line', straight([stalk(0), stalk(1)]));
        flowers(body, stalk(1), lean);
      }
      continue;
    }
    const leafy = Math.max(high - body.leaf.length * 0.72, high * 0.35);
    const at = spine(root, lean, leafy, lean * 0.4);
    const pairs = body.form('leaf-arrangement') === 'opposite';
    const nodes = Math.max(2, Math.min(6, Math.round(leafy / Math.max(5, body.leaf.length * 0.4))));
    for (let i = 0; i < nodes; i++) {
      const u = (i + 0.6) / nodes;
      const sides = pairs ? [1, -1] : [i % 2 ? 1 : -0.8];
      for (const side of sides) leaf(body, at(u), lean + side * 58, side * 12, 0.9, i % 2 && pairs ? 0.7 : 1);
      if (body.head && i === nodes - 1 && body.head.form !== 'small-cross')
        flowers(body, from(at(u), lean + 40, body.leaf.length * 0.35), lean + 20);
    }
    if (body.head?.form === 'small-cross') flowers(body, at(1), lean, 1);
    leaf(body, at(1), lean - 14, 8, 0.85);
    if (pairs) leaf(body, at(1), lean + 18, -8, 0.8);
    stem(body, [at(0), at(0.5), at(1)], Math.max(1.5, body.thickness * 0.8));
  }
  pad.show('growth-form', ...leafRoles);
  const set = body.form('leaf-arrangement');
  if (set === 'basal' || (!stalked && (set === 'opposite' || set === 'spiral'))) pad.show('leaf-arrangement');
}
