// What lies below the ground, by its form. Not to scale: it is there to be told apart, and never to be dug for.
import { band, from, type Point, smooth, straight } from '../geometry.ts';
import { bladeOf, ring, spine } from './blade.ts';
import type { Pad } from './pad.ts';

const fibres = (root: Point, n: number, spread: number, length: number): string =>
  Array.from({ length: n }, (_, i) => {
    const turn = 180 + spread * (n < 2 ? 0 : (2 * i) / (n - 1) - 1);
    const at = spine(root, turn, length * (i % 2 ? 0.8 : 1), (turn - 180) * -0.3 + (i % 3 ? 14 : -12));
    return smooth([at(0), at(0.5), at(1)]);
  }).join('');

/** Underground part with its crown at a point; reaches up to 58 to the sides and 46 down. */
export function drawBelow(pad: Pad, form: string, [x, y]: Point): void {
  const thick = (points: readonly Point[], width: (u: number) => number) =>
    pad.shape('below', band(points, width), 'tan');
  const fine = (path: string) => pad.put('below', 'fine', path);
  const under = (dx: number, dy: number): Point => [x + dx, y + dy];
  switch (form) {
    case 'short-rhizome':
      fine(fibres(under(-12, 12), 4, 40, 26) + fibres(under(10, 12), 5, 40, 28));
      thick(
        [under(-25, 9), under(-12, 11), under(0, 6), under(11, 11), under(24, 8)],
        (u) => 10 + 5 * Math.cos(u * 19),
      );
      fine([-17, -6, 5, 16].map((dx) => smooth([under(dx, 4), under(dx + 2, 10), under(dx, 15)])).join(''));
      break;
    case 'long-rhizome':
      fine([-44, -22, 20, 42].map((dx) => fibres(under(dx, 17), 3, 30, 16)).join(''));
      thick([under(-56, 19), under(-28, 16), under(0, 14), under(28, 17), under(56, 15)], () => 6);
      thick([under(-42, 15), under(-42, 4)], (u) => 4 * (1.1 - u));
      thick([under(42, 13), under(43, 2)], (u) => 4 * (1.1 - u));
      fine([-34, -16, 14, 32, 50].map((dx) => straight([under(dx, 14), under(dx, 20)])).join(''));
      break;
    case 'crown':
      fine(fibres(under(0, 3), 13, 66, 40));
      thick([under(-9, 3), under(0, 5), under(9, 3)], () => 6);
      break;
    case 'corm':
      fine(fibres(under(0, 30), 6, 62, 16));
      pad.shape(
        'below',
        smooth(
          [under(-4, 2), under(-15, 14), under(-13, 27), under(0, 32), under(14, 27), under(15, 13), under(4, 2)],
          true,
        ),
        'tan',
      );
      fine([12, 18, 24].map((dy) => smooth([under(-14, dy), under(0, dy + 4), under(14, dy)])).join(''));
      break;
    case 'tuber':
      fine(fibres(under(0, 4), 5, 30, 22));
      for (const [dx, dy, r] of [
        [-38, 30, 9],
        [34, 34, 11],
        [6, 38, 7],
      ] as const) {
        pad.put('below', 'line', smooth([under(0, 4), under(dx * 0.5, dy * 0.75), under(dx, dy)]));
        pad.shape('below', ring(under(dx, dy), r, r * 0.78), 'tan');
      }
      break;
    case 'bulb':
      fine(fibres(under(0, 34), 7, 48, 14));
      pad.shape(
        'below',
        smooth(
          [
            under(0, -3),
            under(-5, 8),
            under(-14, 20),
            under(-9, 33),
            under(0, 36),
            under(9, 33),
            under(14, 20),
            under(5, 8),
          ],
          true,
        ),
        'tan',
      );
      fine([-8, 0, 8].map((dx) => smooth([under(dx * 0.3, 4), under(dx, 20), under(dx * 0.6, 34)])).join(''));
      break;
    case 'runners':
      fine(fibres(under(0, 2), 5, 40, 24) + fibres(under(-50, 0), 3, 30, 12) + fibres(under(52, 0), 3, 30, 12));
      for (const side of [-1, 1]) {
        pad.put('below', 'line', smooth([under(0, 1), under(side * 26, -7), under(side * 51, 0)]));
        for (const turn of [-28, 8, 32])
          pad.shape('below', bladeOf({ shape: 'oval', length: 11, width: 5 }, under(side * 51, 0), turn), 'green');
      }
      break;
    case 'roots-only':
      fine(fibres(under(0, 1), 5, 44, 30));
      break;
    default:
      return;
  }
  pad.show('underground');
}

/** Roots that hang in the water. */
export function drawHanging(pad: Pad, root: Point): void {
  for (let i = -3; i <= 3; i++) {
    const at = spine(root, 180 - i * 8, 30 - Math.abs(i) * 3, i * 3);
    const hairs = [0.35, 0.55, 0.75, 0.92].map((u) => straight([from(at(u), 150, 3), at(u), from(at(u), 210, 3)]));
    pad.put('below', 'fine', smooth([at(0), at(0.5), at(1)]) + hairs.join(''));
  }
}
