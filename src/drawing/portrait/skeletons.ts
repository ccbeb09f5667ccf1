// How a plant is built: leaves, stems and flowers on the pad, by its growth form. Units of the figure, base given.
import type { Random } from '../../engine/trial/random.ts';
import { band, between, from, type Point, smooth, straight } from '../geometry.ts';
import { type Blade, bladeOf, isShape, padOf, ribOf, spine } from './blade.ts';
import { flowersOf, type Head } from './cluster.ts';
import type { Pad } from './pad.ts';

/** What an individual is made of, sizes already in units of the figure. */
export interface Body {
  readonly pad: Pad;
  readonly random: Random;
  /** Where it stands or floats. */
  readonly base: Point;
  /** Where its roots are: the bed under the water, or the base. */
  readonly bed: Point;
  /** How tall it is to be. */
  readonly height: number;
  /** How tall its stems are drawn, so that leaves and flowers on them come to the height. */
  readonly rise: number;
  readonly leaf: Blade;
  readonly leafHue: string | undefined;
  readonly patterned: boolean;
  readonly stemHue: string | undefined;
  readonly flowerHue: string | undefined;
  readonly thickness: number;
  /** Undefined when it does not flower now, or nothing is known of its flowers. */
  readonly head: Head | undefined;
  readonly form: (role: string) => string | undefined;
}

/** Narrower than this a leaf is drawn as a stroke. */
const STROKE = 1.3;
/** And narrower than this as a thin one. */
const FINE = 0.75;
const LEAST_STEM = 1.3;

const range = (n: number, from: number, to: number): number[] =>
  Array.from({ length: n }, (_, i) => (n < 2 ? (from + to) / 2 : from + ((to - from) * i) / (n - 1)));

/** Moves a value by up to a share of itself, either way. */
const about = ({ random }: Body, value: number, share = 0.12): number => value * (1 + (random.next() * 2 - 1) * share);

function leaf(body: Body, at: Point, degrees: number, bend = 0, by = 1, squash = 1): void {
  const { pad } = body;
  const blade: Blade = {
    shape: body.leaf.shape,
    length: body.leaf.length * by,
    width: body.leaf.width * Math.min(1, by * 1.1) * squash,
  };
  if (blade.shape === 'leafless') return;
  if (blade.width < STROKE) {
    const middle = spine(at, degrees, blade.length, bend);
    pad.put('leaf', blade.width < FINE ? 'fine' : 'line', smooth([middle(0), middle(0.35), middle(0.7), middle(1)]));
    return;
  }
  pad.shape('leaf', bladeOf(blade, at, degrees, bend), body.leafHue);
  if (body.patterned)
    pad.put(
      'leaf',
      'wash-pink',
      bladeOf({ ...blade, length: blade.length * 0.6, width: blade.width * 0.45 }, at, degrees, bend),
    );
  if (blade.width > 4) pad.put('leaf', 'fine', ribOf(blade, at, degrees, bend));
}

function stem(body: Body, points: readonly Point[], thick: number, taper = 0.6): void {
  const width = Math.max(LEAST_STEM, thick);
  if (width < 1.5) body.pad.put('stem', 'line', smooth(points));
  else
    body.pad.shape(
      'stem',
      band(points, (u) => width * (1 - (1 - taper) * u)),
      body.stemHue,
    );
}

function flowers(body: Body, at: Point, degrees = 0, by = 1): void {
  const { head, pad } = body;
  if (head === undefined) return;
  const drawn = flowersOf({ ...head, length: head.length * by, side: head.side }, at, degrees);
  if (drawn === undefined) return;
  pad.put('flower', 'fine', drawn.strokes);
  for (const shape of drawn.shapes) pad.shape('flower', shape, body.flowerHue);
  pad.show('flower-cluster', 'cluster-length', 'flower-colour');
  if (body.form('cluster-posture') !== undefined) pad.show('cluster-posture');
}

/** A round leaf held level, its veins like spokes. */
function disc(body: Body, [x, y]: Point, flat: number): void {
  const { shape, width } = body.leaf;
  const wide = width * about(body, 0.95, 0.08);
  body.pad.shape('leaf', padOf([x, y], wide, shape !== 'shield', flat), body.leafHue);
  const spokes = range(5, 0.3, 2.84).map((turn) =>
    straight([
      [x, y],
      [x + Math.cos(turn) * wide * 0.38, y + Math.sin(turn) * wide * 0.38 * flat],
    ]),
  );
  body.pad.put('leaf', 'fine', spokes.join(''));
}

const leafRoles = ['leaf-shape', 'leaf-length'];

/** How high a head reaches above the end of its stalk. */
function reach({ head }: Body): number {
  if (head === undefined) return 0;
  const share =
    head.posture === 'drooping' ? 0.5 : head.posture === 'open-leaning' ? 0.9 : head.form === 'cob' ? 1.65 : 1;
  return head.length * share;
}

/** Number and bearing of stems by how the plant grows together. */
function places(body: Body, many: number): { x: number; lean: number; high: number }[] {
  const stand = body.form('stand');
  const [n, wide, lean] =
    stand === 'clump'
      ? [many, 0.12, 11]
      : stand === 'dense-stand' || stand === 'mat'
        ? [Math.max(4, many - 2), 0.34, 3]
        : stand === 'scattered'
          ? [2, 0.2, 4]
          : [1, 0, 3];
  const middle = (n - 1) / 2;
  return (
    range(n, -1, 1)
      .map((share, i) => ({
        x: wide * body.rise * 0.5 * share,
        lean: lean * share + (n === 1 ? 1.5 : 0),
        high: Math.abs(i - middle) < 0.6 ? 1 : about(body, 0.9 - 0.13 * Math.abs(share), 0.06),
      }))
      // Those behind first, the tallest last.
      .sort((a, b) => a.high - b.high)
  );
}

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
      const out = side * (broad ? 54 - u * 16 : 48 - u * 20);
      const drop = side * (broad ? 24 : 84 - u * 34);
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
          lean + share * 4,
          Math.sign(share) * (5 + 12 * Math.abs(share)),
          whole / body.leaf.length / 1,
        );
      }
    stem(body, [at(0), at(0.5), at(1)], Math.max(bare ? 2 : 0, body.thickness));
    if (bare) pad.put('stem', 'fine', straight([at(0.08, body.thickness * 0.2), at(0.9, body.thickness * 0.15)]));
    flowers(body, at(1), lean, high);
  }
  pad.show('growth-form', 'stand', 'leaf-shape');
}

/** Where the blade goes from the top of its stalk, by where its tip points. */
function pose(tip: string | undefined, degrees: number, side: number): readonly [degrees: number, bend: number] {
  if (tip === 'down') return [side * 128, side * 32];
  if (tip === 'level') return [side * 84, side * 14];
  if (tip === 'up') return [degrees * 0.8 + side * 6, side * 4];
  return [degrees + side * 26, side * 20];
}

/** Long-stalked or strap-shaped leaves from the ground, or from the top of a trunk. */
export function rosette(body: Body): void {
  const { pad, random } = body;
  const held = body.form('leaf-stalk');
  const straps =
    held === 'no-stalk' || held === 'sheath' || body.leaf.shape === 'strap' || body.leaf.shape === 'linear';
  const trunk = body.form('stem-form') === 'trunk';
  let [x, y] = body.base;
  if (trunk) {
    const top: Point = [x + 3, y - body.rise * 0.38];
    const thick = Math.max(body.thickness, body.rise * 0.07);
    pad.shape(
      'stem',
      band([body.base, [x + 1, y - body.rise * 0.2], top], (u) => thick * (1.15 - 0.25 * u)),
      body.stemHue,
    );
    for (const u of range(5, 0.1, 0.34))
      pad.put(
        'stem',
        'fine',
        smooth([
          [x - thick * 0.45, y - body.rise * u],
          [x + 1, y - body.rise * (u - 0.02)],
          [x + thick * 0.5, y - body.rise * u],
        ]),
      );
    [x, y] = top;
  }
  const rise = body.rise - (body.base[1] - y);
  const n = body.form('stand') === 'single' ? 4 : straps ? 11 : 7;
  const order = range(n, -1, 1).sort((a, b) => Math.abs(b) - Math.abs(a));
  const tip = body.form('leaf-tip');
  const poses = body.leaf.shape === 'heart' || body.leaf.shape === 'arrowhead';
  const scape = (share: number, top: number) => {
    const at = spine([x + share * 3, y], share * 10, Math.max(top - reach(body), rise * 0.18), share * 8);
    stem(body, [at(0), at(0.5), at(1)], Math.max(1.4, body.thickness * 0.8));
    flowers(body, at(1), share * 8);
  };
  const low = body.head?.form === 'hood' || body.head?.form === 'single-leaf';
  for (const [i, share] of order.entries()) {
    if (i === n - 2 && body.head) for (const one of low ? [0.5] : [-0.7, 0.55]) scape(one, low ? rise * 0.72 : rise);
    const side = Math.sign(share) || (random.next() < 0.5 ? 1 : -1);
    if (straps) {
      // What is longer than the plant is tall bends over.
      const over = 170 * (1 - Math.min(1, rise / body.leaf.length));
      leaf(body, [x + share * 5, y], share * 46, side * (20 + 50 * Math.abs(share) + over), about(body, 0.95, 0.1));
      continue;
    }
    // A blade that points up adds to the height, one that hangs does not.
    const up =
      body.leaf.shape === 'shield'
        ? 0
        : poses && tip === 'down'
          ? body.leaf.length * 0.12
          : poses && tip === 'level'
            ? body.leaf.length * 0.2
            : body.leaf.length * 0.66;
    const stalk = Math.max(rise * 0.16, (rise - up) * about(body, 1 - 0.34 * Math.abs(share), 0.05));
    const at = spine([x + share * 4, y], share * (trunk ? 46 : 30), stalk, share * 20);
    const top = at(1);
    stem(body, [at(0), at(0.5), top], Math.max(1.5, body.leaf.width * 0.05), 0.7);
    if (body.leaf.shape === 'shield') {
      disc(body, top, 0.34);
    } else if (poses)
      leaf(body, top, ...pose(tip, share * 48, side), about(body, 0.95, 0.08), tip === 'level' ? 0.72 : 0.92);
    else leaf(body, top, share * 46, side * 16, about(body, 0.95, 0.08));
  }
  if (poses && tip !== undefined) pad.show('leaf-tip');
  pad.show('growth-form', ...leafRoles);
  if (body.form('leaf-arrangement') === 'basal') pad.show('leaf-arrangement');
}

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

/** A ring of leaves afloat, its roots hanging in the water. */
export function floatingRosette(body: Body): void {
  const { pad, base, random } = body;
  const swollen = body.form('leaf-stalk-form') === 'swollen';
  const bare = body.form('leaf-stalk') === 'no-stalk';
  const n = bare ? 11 : 7;
  for (const share of range(n, -1, 1).sort((a, b) => Math.abs(b) - Math.abs(a))) {
    const degrees = share * 72 + (random.next() - 0.5) * 8;
    if (bare) {
      leaf(body, base, degrees, share * 10, about(body, 0.96, 0.08));
      continue;
    }
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
    pad.put(
      'stem',
      'line',
      smooth([
        bed,
        [bed[0] + (top[0] - bed[0]) * 0.35, (bed[1] * 2 + top[1]) / 3],
        [top[0], (bed[1] + top[1] * 3) / 4],
        top,
      ]),
    );
  const slit = shape !== 'shield';
  for (const share of [-1, 0.95, -0.3, 0.42]) {
    const at: Point = [base[0] + share * Math.max(width, 34), base[1] + (Math.abs(share) < 0.5 ? 2 : 0)];
    held(at);
    pad.shape('leaf', padOf(at, width * about(body, 0.94, 0.08) * (round ? 1 : 1.15), slit, 0.17), body.leafHue);
  }
  const tall = body.height > body.leaf.length * 0.75;
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
