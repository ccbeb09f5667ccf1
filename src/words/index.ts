// Which words to use. English for the first question comes with the first script; all others arrive when they are needed.
import type { en } from './en.ts';

export { en } from './en.ts';
export { first } from './first.ts';
export { wordsFor } from './lookup.ts';
export { type Odds, oddsOf } from './odds.ts';
export type * from './words.ts';
export type Dictionary = typeof en;
