import type { Shape } from '../shape.ts';

export const albumShape: Shape;
export const manifestShape: Shape;
export const glossaryShape: Shape;
export const coursesShape: Shape;
