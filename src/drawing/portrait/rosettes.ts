// Plants whose leaves stand on stalks of their own, or straps, from one place.
import { band, type Point, smooth } from '../geometry.ts';
import { spine } from './blade.ts';
import { about, type Body, disc, flowers, leaf, leafRoles, range, reach, stem } from './body.ts';

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
