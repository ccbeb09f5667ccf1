// The book of fruits and seeds.
import { bookFrom } from './flower-book.ts';
import { FRUIT_ALT } from './fruit-alt.ts';
import { DRY_FRUITS } from './fruit-dry.ts';
import { SOFT_FRUITS } from './fruit-soft.ts';

export const FRUIT = bookFrom('fruit', { ...DRY_FRUITS, ...SOFT_FRUITS }, FRUIT_ALT);
