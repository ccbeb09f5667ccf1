// Plants on the water: rings of leaves, and leaves on long stalks from the bed.
import { from, type Point, smooth, straight } from '../geometry.ts';
import { type Blade, bladeOf, isShape, padOf, spine } from './blade.ts';
import { about, type Body, disc, flowers, leaf, leafRoles, range, reach, stem } from './body.ts';

/** Of a floating cup: where each leaf points, how long and how wide it looks; from the back to the front. */
const CUP = [
  [-4, 0.95, 0.8],
  [-32, 1, 0.8],
  [30, 1, 0.8],
  [-60, 1, 0.8],
  [58, 1, 0.8],
  [-86, 0.95, 0.7],
  [84, 0.95, 0.7],
  [-20, 0.66, 0.9],
  [22, 0.66, 0.9],
  [-56, 0.62, 0.85],
  [54, 0.62, 0.85],
  [2, 0.42, 0.9],
] as const;

/** A ring of leaves afloat, its roots hanging in the water. */
export function floatingRosette(body: Body): void {
  const { pad, base, random } = body;
  const swollen = body.form('leaf-stalk-form') === 'swollen';
  const bare = body.form('leaf-stalk') === 'no-stalk';
  if (bare) {
    // A cup of leaves: those behind stand up, those in front come towards the viewer and look short.
    for (const [turn, by, wide] of CUP) {
      const degrees = turn + (random.next() - 0.5) * 8;
      leaf(body, base, degrees, Math.sign(turn) * 8, about(body, by, 0.05), wide);
      if (by > 0.9)
        for (const off of [-9, 9]) {
          const rib = spine(base, degrees + off, body.leaf.length * 0.72, Math.sign(turn) * 8);
          pad.put('leaf', 'fine', smooth([rib(0.3), rib(0.65), rib(1)]));
        }
    }
  }
  for (const share of bare ? [] : range(7, -1, 1).sort((a, b) => Math.abs(b) - Math.abs(a))) {
    const degrees = share * 72 + (random.next() - 0.5) * 8;
    const high = (body.rise * (body.head ? 0.72 : 1) - body.leaf.length * 0.85) * (1 - 0.42 * Math.abs(share));
    const stalk = Math.max(6, high);
    const top = from(base, degrees, stalk);
    stem(body, [base, from(base, degrees, stalk / 2), top], 2.2);
    // The float is the lower part of the stalk.
    const float: Blade = { shape: 'oval', length: stalk * 0.62, width: Math.max(5, stalk * 0.21) };
    if (swollen) pad.shape('leaf', bladeOf(float, base, degrees), body.leafHue);
    leaf(body, top, degrees * 0.7, share * 8, about(body, 0.95, 0.06));
  }
  if (body.head) {
    const top: Point = [base[0] + 2, base[1] - Math.max(4, body.rise - reach(body))];
    if (!bare) stem(body, [base, top], 2);
    flowers(body, bare ? [base[0], base[1] - body.leaf.length * 0.2] : top, 3);
  }
  if (swollen) pad.show('leaf-stalk-form');
  pad.show('growth-form', 'leaf-arrangement', ...leafRoles);
}

/** Leaves on long stalks from the bed: on the water, and above it where the plant is taller. */
export function pads(body: Body): void {
  const { pad, base, bed } = body;
  const { shape, width } = body.leaf;
  const round = shape === 'shield' || shape === 'round' || !isShape(shape);
  const held = (top: Point) =>
    stem(
      body,
      [bed, [bed[0] + (top[0] - bed[0]) * 0.35, (bed[1] * 2 + top[1]) / 3], [top[0], (bed[1] + top[1] * 3) / 4], top],
      1.8,
      0.85,
    );
  const slit = shape !== 'shield';
  const tall = body.height > body.leaf.length * 0.75;
  // Where nothing stands over the water the leaves lie close, and are seen a little more from above.
  const [apart, flat] = tall ? [1, 0.17] : [0.72, 0.3];
  for (const [share, near] of [
    [-0.9, 0],
    [0.86, 0],
    [-0.28, 1],
    [0.48, 1],
  ] as const) {
    const at: Point = [base[0] + share * apart * Math.max(width, 34), base[1] + near * Math.max(2, width * flat * 0.5)];
    held(at);
    const wide = width * about(body, 0.94, 0.08) * (round ? 1 : 1.15);
    pad.shape('leaf', padOf(at, wide, slit, flat), body.leafHue);
    if (!tall)
      pad.put(
        'leaf',
        'fine',
        range(5, -0.5, 3.1)
          .map((turn) =>
            straight([at, [at[0] + Math.cos(turn) * wide * 0.4, at[1] - Math.sin(turn) * wide * 0.4 * flat]]),
          )
          .join(''),
      );
  }
  for (const share of tall ? [-0.62, 0.7, -0.12] : []) {
    const up = shape === 'shield' ? width * 0.16 : round ? width * 0.5 : body.leaf.length * 0.72;
    const top: Point = [
      base[0] + share * Math.max(width * 1.1, 26),
      base[1] - Math.max(5, (body.rise - up) * (share === -0.12 ? 1 : 0.74)),
    ];
    held(top);
    if (shape === 'shield') {
      disc(body, top, 0.3);
    } else leaf(body, top, share * 30, share * 8, 0.92);
  }
  if (body.head) {
    const top: Point = [base[0] + 12, base[1] - Math.max(1, body.rise - body.head.length * 0.55)];
    held(top);
    flowers(body, top);
  }
  pad.show('growth-form', 'leaf-arrangement', 'leaf-shape');
  // Round leaves are as long as they are wide.
  if (!round) pad.show('leaf-length');
}
