// The branching key as a sheet to be printed.
export { htmlOf } from './html.ts';
export { MOST_STATES, type Statement, Wording } from './lead.ts';
export {
  type Alike,
  type Name,
  type Sheet,
  type SheetLead,
  type SheetOptions,
  STYLES,
  type Style,
  sheetOf,
} from './sheet.ts';
export { type SheetWords, sheetWords } from './words.ts';
