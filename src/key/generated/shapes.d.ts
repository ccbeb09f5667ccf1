import type { Shape } from '../shape.ts';

/** The shape of a bundle, and so of each file in it. */
export const bundleShape: Shape;
