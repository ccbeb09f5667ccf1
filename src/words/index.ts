// Which words to use. English comes with the first script; other languages arrive when they are needed.
import type { en } from './en.ts';

export { en } from './en.ts';
export { wordsFor } from './lookup.ts';
export { type Odds, oddsOf } from './odds.ts';
export type * from './words.ts';
export type Dictionary = typeof en;
