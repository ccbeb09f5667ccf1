// Plants with leaves along upright stems.
import { between, from, type Point, smooth, straight } from '../geometry.ts';
import { spine } from './blade.ts';
import { about, type Body, flowers, leaf, leafRoles, places, range, reach, stem } from './body.ts';

/** Side of each leaf, and how it is turned to the viewer: `squash` 1 is seen in full. */
const FACES: Readonly<Record<string, readonly (readonly [side: number, squash: number])[]>> = {
  'two-rows': [
    [1, 1],
    [-1, 1],
  ],
  'three-rows': [
    [1, 1],
    [-1, 1],
    [0.25, 0.9],
  ],
  spiral: [
    [1, 0.9],
    [-0.6, 1],
    [0.35, 0.85],
    [-1, 0.9],
    [0.7, 1],
    [-0.3, 0.85],
  ],
};

/** Upright stems with leaves along them: canes, grasses, leafy herbs, shrubs. */
export function leafyStems(body: Body): void {
  const { pad, base } = body;
  const [growth, set, branching] = [
    body.form('growth-form'),
    body.form('leaf-arrangement'),
    body.form('stem-branching'),
  ];
  const cane = growth === 'tall-cane';
  const many = cane ? 6 : growth === 'grass' ? 7 : 5;
  for (const { x, lean, high } of places(body, body.leaf.width > 14 ? 3 : many)) {
    const length = (body.rise - reach(body)) * high;
    const at = spine([base[0] + x, base[1]], lean * 0.5, length, lean);
    const ratio = body.leaf.length / body.leaf.width;
    const nodes = Math.max(4, Math.min(cane ? 12 : 9, Math.round(length / Math.max(body.leaf.length * 0.26, 8))));
    const start = set === 'fans' ? 0.3 : cane ? 0.2 : growth === 'grass' ? 0.06 : 0.12;
    const stalk = body.form('leaf-stalk') === 'at-edge' ? body.leaf.length * 0.35 : 0;
    const hold = (u: number, side: number, squash: number, by: number) => {
      const broad = ratio < 6;
      // Leaves nearly as long as their stem rise before they bend.
      const long = body.leaf.length > length * 0.45;
      const out = side * (broad ? 54 - u * 16 : (long ? 32 : 48) - u * 20);
      const drop = side * (broad ? 24 : (long ? 68 : 84) - u * 34);
      const root = at(u);
      const end = stalk > 1 ? from(root, out * 0.8, stalk * Math.abs(side)) : root;
      if (stalk > 1) pad.put('leaf', 'fine', straight([root, end]));
      leaf(body, end, lean + out, drop, by * (0.55 + 0.45 * Math.abs(side)), squash);
    };
    const bunch = (root: Point, side: number, by: number) => {
      for (const turn of [-34, 40, -4, 18]) leaf(body, root, side * 46 + turn, side * 18, by, 0.9);
    };
    const twig = (u: number, side: number, reach: number): Point => {
      const end = from(at(u), side * 42, reach);
      pad.put('stem', 'line', smooth([at(u), from(at(u), side * 48, reach * 0.55), end]));
      return end;
    };
    for (let i = 0; i < nodes; i++) {
      const u = start + ((0.97 - start) * i) / (nodes - 1);
      const by = about(body, 0.72 + 0.4 * Math.sin(Math.PI * Math.min(0.85, u)), 0.08);
      if (set === 'fans') {
        // Branches of bamboos and river canes are as long as there is room; leaves stand in bunches along them.
        const paired = branching === 'pairs';
        for (const side of paired ? [1, -1] : [i % 2 ? 1 : -1]) {
          const far =
            Math.max(body.leaf.length * 0.6, length * (paired ? 0.17 : 0.085) * (1.15 - u * 0.6)) *
            (paired && side < 0 ? 0.65 : 1);
          const end = twig(u, side, far);
          bunch(end, side, 1.15);
          if (far > body.leaf.length)
            for (const on of [0.4, 0.7]) bunch(between(at(u), end, on), side * (on > 0.5 ? 1 : 0.6), 1.1);
        }
      } else if (set === 'opposite') {
        if (i % 2) for (const side of [0.3, -0.3]) hold(u, side, 0.7, by);
        else for (const side of [1, -1]) hold(u, side, 1, by);
      } else {
        const faces = FACES[set ?? ''] ?? (FACES['two-rows'] as (typeof FACES)[string]);
        const [side, squash] = faces[i % faces.length] as (typeof faces)[number];
        hold(u, side, squash, by);
      }
    }
    // The youngest leaf stands up at the tip.
    if (body.head === undefined || ratio < 6) leaf(body, at(0.96), lean, 12 * Math.sign(lean || 1), 0.6, 0.8);
    const twigs: Readonly<Record<string, readonly number[]>> = {
      few: [0.55],
      pairs: [0.45, 0.62, 0.78],
      fans: [0.4, 0.5, 0.6, 0.7, 0.8],
      'bushy-top': [0.66, 0.74, 0.82, 0.9],
    };
    if (set !== 'fans')
      for (const [i, u] of (twigs[branching ?? ''] ?? []).entries())
        for (const side of branching === 'pairs' || branching === 'fans' ? [1, -1] : [i % 2 ? -1 : 1]) {
          const end = twig(
            u,
            side,
            length * (branching === 'fans' ? 0.07 : branching === 'few' ? 0.26 : 0.16) * (side > 0 ? 1 : 0.75),
          );
          leaf(body, end, side * 30, side * 30, 0.6);
          if (branching === 'bushy-top') flowers(body, end, side * 18, 0.6);
        }
    stem(body, [at(0), at(0.35), at(0.7), at(1)], body.thickness);
    if (cane && body.thickness >= 1)
      for (const u of range(Math.min(10, nodes), 0.08, 0.86))
        pad.put('stem', 'fine', straight([at(u, -body.thickness * 0.75), at(u, body.thickness * 0.75)]));
    if (high === 1 || cane || growth === 'grass') flowers(body, at(1), lean * 1.5, high === 1 ? 1 : 0.85);
  }
  pad.show('growth-form', 'stem-branching', 'stand', ...leafRoles);
  if (set !== undefined && (set in FACES || set === 'opposite' || set === 'fans')) pad.show('leaf-arrangement');
}
