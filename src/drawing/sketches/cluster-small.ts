// Heads, balls and rings of small flowers, drawn large. The stalk enters at (48, 96).
import type { Drawing } from '../../key/index.ts';
import { from, type Point, smooth, straight } from '../geometry.ts';
import { arc, hair, lens, petal, rosette, spot, upTo } from './flower-strokes.ts';

function head(): Drawing {
  const centre: Point = [48, 40];
  /** Papery florets that point outward in a ring. */
  const ring = (many: number, inner: number, outer: number, width: number, turn: number): string =>
    upTo(many)
      .map((k) => turn + (k * 360) / many)
      .map((degrees) => lens(from(centre, degrees, inner), from(centre, degrees, outer), width))
      .join('');
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 62],
      ]),
    ],
    ['face', ring(15, 12, 32, 10, 4)],
    ['face', ring(11, 6, 23.5, 10, 12)],
    ['face', ring(7, 2, 14.5, 9, 0)],
    [
      'fine',
      upTo(5)
        .map((k) => hair(from(centre, k * 72, 0.5), k * 72, 4))
        .join(''),
    ],
  ];
}

/** A two-lipped flower at `foot`, its mouth toward `degrees`: a notched upper lip, a lower one of three lobes. */
function twoLipped(mouth: Point, size: number, tilt: number): Drawing {
  const lobe = (turn: number, length: number, width: number): string =>
    petal(from(mouth, tilt + turn, 0.5), from(mouth, tilt + turn, size * length), size * width);
  const purple = [0.45, 0.62, 0.8].map((far, i) =>
    spot(from(mouth, tilt + 180 + (i - 1) * 7, size * far), size * 0.07),
  );
  return [
    ['face', lobe(10, 0.82, 0.5) + lobe(-10, 0.82, 0.5)],
    ['face', lobe(115, 0.9, 0.42) + lobe(-115, 0.9, 0.42)],
    ['face', lobe(180, 1, 0.62)],
    ['solid', purple.join('') + spot(mouth, size * 0.12)],
  ];
}

function lippedHead(): Drawing {
  const calyx = upTo(7).map((k) => lens([48, 62], from([48, 62], (k - 3) * 32, 19), 4));
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 62],
      ]),
    ],
    ['face', calyx.join('')],
    ['wash-green', calyx.join('')],
    ...twoLipped([48, 22], 16, 0),
    ...twoLipped([24, 36], 17, -24),
    ...twoLipped([72, 36], 17, 24),
    ...twoLipped([48, 49], 18, 3),
  ];
}

const tiny = (centre: Point, r: number, turn: number): string => rosette(centre, r, 5, turn);

function tinyUmbel(): Drawing {
  const hub: Point = [48, 44];
  const outer = upTo(12).map((k) => from(hub, k * 30 + 6, 30 + (k % 2) * 1.5));
  const inner = upTo(7).map((k) => from(hub, k * 51.4 + 14, 17 + (k % 2) * 1.5));
  return [
    [
      'line',
      straight([
        [48, 96],
        [48, 44],
      ]),
    ],
    ['fine', [...outer, ...inner].map((end) => straight([hub, end])).join('')],
    ['face', outer.map((end, k) => tiny(end, 5, k * 20)).join('')],
    ['face', inner.map((end, k) => tiny(end, 5.2, k * 33)).join('')],
  ];
}

function tinyRings(): Drawing {
  const rings = [
    [74, 22],
    [46, 19],
    [18, 16],
  ] as const;
  /** Seen a little from above: those behind stand higher. */
  const layer = (front: boolean): Drawing =>
    rings.flatMap(([y, wide]): Drawing => {
      const ends = (front ? [-1, -0.36, 0.36, 1] : [-0.6, 0.6]).map(
        (out): Point => [48 + out * wide, y + (front ? 4.5 * (1 - out * out) : -5)],
      );
      return [
        ['fine', ends.map((end) => straight([[48, y - 1], end])).join('')],
        ['face', ends.map((end, k) => tiny(end, 4.4, k * 25)).join('')],
      ];
    });
  return [
    ...layer(false),
    [
      'line',
      straight([
        [48, 96],
        [48, 8],
      ]),
    ],
    ...layer(true),
  ];
}

/** A flower of four petals in a cross. */
function cross(centre: Point, r: number, turn: number): Drawing {
  const petals = upTo(4).map((k) => petal(from(centre, turn + k * 90, 1.5), from(centre, turn + k * 90, r), r * 0.72));
  return [
    ['face', petals.join('')],
    ['wash-yellow', spot(centre, 2.4)],
    ['solid', spot(centre, 1.2)],
  ];
}

function smallCross(): Drawing {
  const pods = [
    [76, 1, 30],
    [66, -1, 29],
    [56, 1, 25],
  ] as const;
  const drawn = pods.map(([y, side, long]) => {
    const foot: Point = [48 + side * 13, y - 5];
    return {
      stalk: arc([48, y], foot, side * 2),
      pod: lens(foot, [48 + side * (13 + long * 0.75), y - 5 - long * 0.5], 4.4, side * 4),
    };
  });
  const places: readonly [Point, number, number][] = [
    [[25, 41], 12, 8],
    [[71, 41], 12, -6],
    [[32, 18], 11, -10],
    [[64, 18], 11, 12],
    [[48, 35], 12.5, 3],
  ];
  return [
    [
      'line',
      smooth([
        [48, 96],
        [47, 70],
        [48, 45],
        [48, 14],
      ]),
    ],
    ['line', drawn.map(({ stalk }) => stalk).join('')],
    ['face', drawn.map(({ pod }) => pod).join('')],
    ['line', places.map(([end]) => arc([48, Math.min(end[1] + 16, 58)], end, 0)).join('')],
    ['face', spot([48, 11], 3.2) + spot([46, 17], 2.4) + spot([51, 17], 2.4)],
    ...places.flatMap(([centre, r, turn]) => cross(centre, r, turn)),
  ];
}

/** Drawings by the form's name. */
export const SMALL_FLOWERS: Readonly<Record<string, () => Drawing>> = {
  head,
  'lipped-head': lippedHead,
  'tiny-umbel': tinyUmbel,
  'tiny-rings': tinyRings,
  'small-cross': smallCross,
};
