export { GROUPS, type Group } from './pad.ts';
export { type Asked, type Detail, type Figure, type FigurePart, portraitOf } from './portrait.ts';
export { sharedScale } from './scale.ts';
