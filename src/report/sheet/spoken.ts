// The sheet in a language by its tag, for whoever has all words at hand: an element is given them instead.
import { type Key, languageFor } from '../../key/index.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import { type Sheet, type SheetOptions, sheetIn } from './sheet.ts';
import { type SheetWords, sheetWords } from './words.ts';

/** Words for a BCP 47 tag; English for a language that nobody translated. */
export const wordsIn = (tag: string): SheetWords => sheetWords(/^es(-|$)/i.test(tag) ? es : en);

/** `sheetIn` with the words of the key's language that serves, and in the key's units. */
export const sheetOf = (key: Key, options: Pick<SheetOptions, 'style' | 'language'>): Sheet =>
  sheetIn(key, { ...options, words: wordsIn(languageFor(key, options.language)), units: key.units });
