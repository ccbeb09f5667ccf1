export * from './types.ts';
export * from './units.ts';
