// The branching key: built from the matrix, numbered, and checked where it is written by hand.
export { huffman, longestMean, possibleKeys, shortestMean } from './count.ts';
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
