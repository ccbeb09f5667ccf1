import type { Shape } from '../shape.ts';

export const bundleShape: Shape;
