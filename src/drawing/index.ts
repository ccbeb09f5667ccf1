export * from './figures.ts';
export * from './geometry.ts';
export * from './leaf.ts';
export type { Form, Sketch, SketchBook } from './sketch.ts';
