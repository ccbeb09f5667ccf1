// What tells the size of a fruit: a fingertip for what is small, a coin for what is large.
import type { Drawing } from '../../key/index.ts';
import { spot } from './flower-strokes.ts';

/** Width of a fingertip drawn by `fingertip`, in millimetres (about the width of an adult's forefinger; common practice, no source). */
export const FINGER_MM = 16;
const FINGER_WIDTH = 22;

/** A fingertip that rises from the lower right corner; what lies on it is drawn at `FINGER` with `onFinger` units a millimetre. */
export const FINGERTIP: Drawing = [
  ['scale', 'M68 96C68 88 67 80 69 74C71 68 75 66 80 66C85 66 89 68 90.5 74C92 80 91 88 91 96Z'],
  ['fine', 'M70.5 91Q80 95 88.5 91'],
];
export const FINGER = [80, 78] as const;
export const onFinger = (millimetres: number): number => (millimetres * FINGER_WIDTH) / FINGER_MM;

/** A coin of 24 mm (a US quarter dollar, 24.26 mm: from memory) at a scale of `unit` units a millimetre. */
export const coin = (centre: readonly [number, number], unit: number): Drawing => [
  ['scale', spot(centre, 12 * unit)],
  ['fine', spot(centre, 10 * unit)],
];
