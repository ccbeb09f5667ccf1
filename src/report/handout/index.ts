// A page about one plant, to give away.
export {
  type Contact,
  type Handout,
  type HandoutName,
  type HandoutOptions,
  type HandoutTopic,
  handoutOf,
} from './handout.ts';
export { type HandoutPicture, handoutFile, handoutPage } from './page.ts';
export { asNode, asText, type Piece, type Tagged } from './piece.ts';
export { handoutStyle } from './style.ts';
export { type HandoutWords, handoutWords } from './words.ts';
