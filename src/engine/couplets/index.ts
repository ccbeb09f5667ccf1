// The branching key: built from the matrix, numbered, and checked where it is written by hand.
export { type Built, completed } from './completed.ts';
export { huffman, longestMean, possibleKeys, shortestMean } from './count.ts';
export type { Further } from './further.ts';
export { type NumberedCouplet, type NumberedLead, numbered } from './numbering.ts';
export {
  checked,
  type KeyCharacter,
  type KeyChoices,
  type KeyProblem,
  type Leads,
  problemOf,
  USUAL_CHOICES,
} from './problem.ts';
export { type BuiltKey, buildKey, USUAL_WORK, type Work } from './search.ts';
export { costOf, endsOf, type Here, type KeyNode } from './tree.ts';
export {
  type Arrival,
  checkWritten,
  type Fault,
  type Goal,
  type WrittenCheck,
  type WrittenCouplet,
  type WrittenLead,
} from './written.ts';
