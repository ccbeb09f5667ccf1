// A drawing as plain data: what is drawn with which pen. Colours and widths belong to the screen or the paper.

/** What a pen is for. Drawings know no colour but that of plants, so that they hold in the dark and in forced colours. */
export const PENS = [
  /** A shape filled with paper and outlined: it hides what lies behind it. */
  'face',
  /** An outline or a stroke. */
  'line',
  /** A thinner stroke: veins, hairs, folds. */
  'fine',
  /** A shape filled with ink. */
  'solid',
  /** Shade, on the side away from the light, which falls from the upper left. */
  'tint',
  /** What tells the size: a person, a hand, a coin. */
  'scale',
  'water',
  'ground',
  /** The shape that the state is about. */
  'mark',
  /** The same for a stroke. */
  'trace',
] as const;

/** Colours that plants have. */
export const HUES = [
  'green',
  'blue-green',
  'yellow-green',
  'dark-green',
  'white',
  'yellow',
  'orange',
  'red',
  'pink',
  'blue',
  'purple',
  'brown',
  'tan',
  'silver',
] as const;
export type Hue = (typeof HUES)[number];

/** `wash` is laid under lines and may be left out; `swatch` is a colour that is itself what is to be seen. */
export type Pen = (typeof PENS)[number] | `wash-${Hue}` | `swatch-${Hue}`;

/** One stroke or shape: the pen, and the path data of SVG 1.1. */
export type Mark = readonly [pen: Pen, path: string];

/** A drawing of a state lies in a square of this side, the y axis pointing down. */
export const BOX = 96;

/** In the order in which they are drawn. */
export type Drawing = readonly Mark[];
