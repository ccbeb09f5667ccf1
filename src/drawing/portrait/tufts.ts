// Plants whose leaves rise from the ground beside the stems: tufts of grass, cattails and bulrushes.
import { type Point, straight } from '../geometry.ts';
import { spine } from './blade.ts';
import { about, type Body, flowers, leaf, leafRoles, places, range, reach, stem } from './body.ts';

/** Blades arching out of one tuft, the flower stalks above them. */
export function tuft(body: Body): void {
  const { pad, base, random } = body;
  const n = body.leaf.width < 2 ? 34 : 22;
  const order = range(n, -1, 1).sort((a, b) => Math.abs(b) - Math.abs(a));
  const wide = body.rise * 0.06;
  const lift = Math.min(1, (body.rise * 0.95) / body.leaf.length);
  const culms = body.head ? range(body.leaf.length > body.rise ? 3 : 6, -1, 1) : [];
  for (const share of culms) {
    const length = (body.rise - reach(body)) * (1 - 0.12 * Math.abs(share));
    const at = spine([base[0] + share * wide, base[1]], share * 7, length, share * 9);
    stem(body, [at(0), at(0.5), at(1)], body.thickness * 0.8);
    flowers(body, at(1), share * 14, 1 - 0.15 * Math.abs(share));
  }
  for (const share of order) {
    const out = share * 40 + (random.next() - 0.5) * 12;
    leaf(
      body,
      [base[0] + share * wide, base[1]],
      out * (lift < 1 ? 1.2 : 1),
      Math.sign(share || 1) * about(body, 62 + 62 * Math.abs(share), 0.3),
      about(body, 0.92, 0.14),
    );
  }
  pad.show('growth-form', 'stand', 'leaf-arrangement', ...leafRoles);
}

/** Cattails and bulrushes: erect leaves from the base, or bare stems. */
export function rushes(body: Body): void {
  const { pad, base } = body;
  const bare = body.leaf.shape === 'leafless';
  const spots = places(body, 5);
  for (const { x, lean, high } of spots) {
    const root: Point = [base[0] + x * 1.25, base[1]];
    const length = (body.rise - reach(body)) * high;
    const at = spine(root, lean * 0.4, length, lean * 0.8);
    if (!bare)
      for (const share of range(4, -1, 1)) {
        // A blade begins in its sheath, low on the stem.
        const whole = Math.max(body.leaf.length, body.rise * 0.94 * high) * about(body, 0.95, 0.06);
        leaf(
          body,
          [root[0] + share * 1.5, root[1]],
          lean * 0.5 + share * 3.5,
          Math.sign(share) * (3 + 6 * Math.abs(share)),
          whole / body.leaf.length / 1,
        );
      }
    stem(body, [at(0), at(0.5), at(1)], Math.max(bare ? 2 : 0, body.thickness));
    if (bare) pad.put('stem', 'fine', straight([at(0.08, body.thickness * 0.2), at(0.9, body.thickness * 0.15)]));
    flowers(body, at(1), lean, high);
  }
  pad.show('growth-form', 'stand', 'leaf-shape');
}
