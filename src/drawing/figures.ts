// What tells a size: a person, a hand, an arm, a coin, a pencil, as silhouettes to scale for the pen `scale`.
// Sizes are given in units of the drawing; MEASURES says what they stand for.
import { add, ellipse, type Point, scaled, smooth, straight, turned } from './geometry.ts';

/** Lengths and widths of what people have at hand, in centimetres. */
export const MEASURES = {
  /** Stature. United States, aged 19 to 65: median 175.5 men, 162.5 women ("Online anthropometry", City University of
   * Hong Kong, dimension 1, stature); their middle is 169. */
  person: 170,
  /** Wrist to tip of the middle finger. Common practice, no source. */
  hand: 18,
  /** Across the palm. British, aged 19 to 65: median 8.5 men, 7.5 women (same, dimension 29, hand breadth). */
  palm: 8,
  /** Elbow to fingertip. British, aged 19 to 65: median 47.5 men, 43.0 women (same, dimension 23). */
  forearm: 45,
  /** Shoulder to fingertip. Common practice, no source. The arm of the person hangs down to `ARM_TIP`. */
  arm: 75,
  /** Length of the middle finger: mean 7.07 (P. Chatzioglou and others, Anatomy & Cell Biology 57, 2024, abstract). */
  fingerLength: 7.1,
  /** Width of a finger and of a thumb. Common practice, no source. */
  finger: 1.8,
  thumb: 2.2,
  /** Diameter of a quarter dollar: 24.26 mm (United States Mint, coin specifications). */
  coin: 2.426,
  /** Width of a common pencil, "about 9/32 inch (7 mm)"; of a drinking straw: common practice, no source. */
  pencil: 0.7,
  straw: 0.5,
} as const;

/** Where the fingertips of the standing person are, as a share of the stature. */
export const ARM_TIP = 0.375;

/** Points of a figure in hundredths of its length, base at the origin, set at a place, turned, and scaled. */
const placed = (points: readonly Point[], length: number, at: Point, degrees = 0): Point[] =>
  points.map((point) => add(at, turned(scaled(point, length / 100), degrees)));

/** One side of the outline from the neck to the crotch: shirt, sleeve, hand, trousers, boot. */
const SIDE: readonly Point[] = [
  [3, -87],
  [3.5, -83.5],
  [11, -81],
  [14, -76.5],
  [16.5, -59],
  [18, -45],
  [16.8, -37.5],
  [14.2, -42],
  [12.5, -58],
  [10.3, -69],
  [9.6, -57],
  [10.6, -47],
  [9.8, -26],
  [8.8, -6],
  [11.6, -1.4],
  [11, 0],
  [2.4, 0],
  [2.2, -6],
  [1.8, -26],
];
const BODY: readonly Point[] = [...SIDE, [0, -44], ...SIDE.map(([x, y]): Point => [-x * 0.97, y]).reverse()];
/** The same for a figure a finger's breadth high on the screen: fewer corners, fewer bytes. */
const SMALL_SIDE: readonly Point[] = [
  [3, -82],
  [12, -80],
  [18, -46],
  [14, -44],
  [10, -66],
  [10, -46],
  [10, 0],
  [2, 0],
];
const SMALL: readonly Point[] = [...SMALL_SIDE, [0, -44], ...SMALL_SIDE.map(([x, y]): Point => [-x, y]).reverse()];
const HAT: readonly Point[] = [
  [-13, -92.5],
  [-6.5, -95.5],
  [-5.5, -102],
  [0, -103.5],
  [5.5, -102],
  [6.5, -95.5],
  [13, -92.5],
];

/**
 * A standing person, neither man nor woman, seen from the front; `height` units from the soles to the crown of the
 * head, soles at `at`. A hat adds a little.
 */
export function personOf(height: number, at: Point = [0, 0], hat = false): string {
  const [head] = placed([[0, -93]], height, at) as [Point];
  const points = placed(height < 36 ? SMALL : BODY, height, at);
  const outline = height < 60 ? straight(points, true) : smooth(points, true);
  const under = outline + ellipse(head, height * 0.055, height * 0.07);
  return hat ? under + straight(placed(HAT, height, at), true) : under;
}

const HAND: readonly Point[] = [
  [-15, 0],
  [-16, -12],
  [-22, -30],
  [-23, -50],
  [-26, -70],
  [-22.5, -75],
  [-18, -70],
  [-13, -57],
  [-13.5, -80],
  [-10, -92],
  [-5.5, -90],
  [-2.5, -60],
  [-1, -92],
  [3, -100],
  [7, -94],
  [8, -60],
  [12, -86],
  [16.5, -92],
  [20, -86],
  [20, -56],
  [22, -40],
  [29, -54],
  [35, -60],
  [38, -55],
  [33, -38],
  [26, -20],
  [17, -9],
  [15, 0],
];

/** An open left hand from the back, `length` units from the wrist to the tip of the middle finger, wrist at `at`. */
export const handOf = (length: number, at: Point = [0, 0], degrees = 0): string =>
  `${smooth(placed(HAND, length, at, degrees))}Z`;

/** A forearm with an open hand, `length` units from the elbow (at `at`) to the tip of the middle finger. */
export function forearmOf(length: number, at: Point = [0, 0], degrees = 0): string {
  const wrist = MEASURES.forearm - MEASURES.hand;
  const hand = HAND.map((point): Point => add(scaled(point, MEASURES.hand / 100), [0, -wrist]));
  const right: Point[] = [
    [4.4, 17 - wrist],
    [4.8, 24 - wrist],
    [3, -0.6],
  ];
  const left = right.map(([x, y]): Point => [-x, y]).reverse();
  const points = [...hand, ...right, [0, 0] as Point, ...left];
  return smooth(placed(points, (length * 100) / MEASURES.forearm, at, degrees), true);
}

/** `count` fingers held together, or a thumb, pointing up, cut off at the base; `width` units for all, base at `at`. */
export function fingersOf(count: 1 | 2 | 3, width: number, length: number, at: Point = [0, 0]): string {
  const one = width / count;
  return Array.from({ length: count }, (_, i) => {
    const x = at[0] + one * (i - count / 2);
    const top = at[1] - length + (count === 3 && i !== 1 ? one * 0.5 : 0);
    const points: Point[] = [
      [x + one * 0.02, at[1]],
      [x, at[1] - (at[1] - top) * 0.55],
      [x + one * 0.1, top + one * 0.35],
      [x + one * 0.5, top],
      [x + one * 0.9, top + one * 0.35],
      [x + one, at[1] - (at[1] - top) * 0.55],
      [x + one * 0.98, at[1]],
    ];
    return `${smooth(points)}Z`;
  }).join('');
}

/** A pencil pointing up, `width` units thick and `length` long, the middle of its base at `at`. */
export function pencilOf(width: number, length: number, [x, y]: Point = [0, 0]): string {
  const shoulder = y - length + width * 2.2;
  return straight(
    [
      [x - width / 2, y],
      [x - width / 2, shoulder],
      [x, y - length],
      [x + width / 2, shoulder],
      [x + width / 2, y],
    ],
    true,
  );
}

/** The nail of a finger from `fingersOf(1, …)`, for a thin stroke. */
export function nailOf(width: number, length: number, [x, y]: Point = [0, 0]): string {
  const [w, top] = [width * 0.28, y - length + width * 0.22];
  return smooth([
    [x - w, top],
    [x - w, top + width * 0.42],
    [x, top + width * 0.54],
    [x + w, top + width * 0.42],
    [x + w, top],
  ]);
}

/** A drinking straw with its top bent to the left, `width` units thick and `length` high, base at `at`. */
export const strawOf = (width: number, length: number, [x, y]: Point = [0, 0]): string =>
  straight(
    [
      [x - width / 2, y],
      [x - width / 2, y - length * 0.76],
      [x - length * 0.14 - width * 0.8, y - length + width * 0.8],
      [x - length * 0.14, y - length],
      [x + width / 2, y - length * 0.8],
      [x + width / 2, y],
    ],
    true,
  );

/** A coin seen from the front, `diameter` units across, about `at`. */
export const coinOf = (diameter: number, at: Point = [0, 0]): string => ellipse(at, diameter / 2);
