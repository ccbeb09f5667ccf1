export * from './figures.ts';
export * from './geometry.ts';
export * from './leaf.ts';
export * from './leaf-pose.ts';
export * from './leaf-veins.ts';
export type { Form, Sketch, SketchBook } from './sketch.ts';
