// The branching key as a sheet to be printed.
export { htmlOf } from './html.ts';
export { MOST_STATES, type Statement, Wording } from './lead.ts';
export { classesOf, coupletsOf, labelOf, sentence } from './rows.ts';
export {
  type Alike,
  type Name,
  type Sheet,
  type SheetLead,
  type SheetOptions,
  STYLES,
  type Style,
  sheetIn,
} from './sheet.ts';
export { sheetOf, wordsIn } from './spoken.ts';
export { MOST_STEPS, sheetRules } from './style.ts';
export { type SheetWords, sheetWords } from './words.ts';
