export * from './geometry.ts';
export type { Form, Sketch, SketchBook } from './sketch.ts';
