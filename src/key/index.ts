export { LIMITS, type Limits } from './json.ts';
export {
  describeProblem,
  type ErrorCode,
  KeyContentError,
  MOST_PROBLEMS,
  type Problem,
  type ProblemCode,
  type WarningCode,
} from './problem.ts';
export { KEY_FILES, type ReadOptions, readBundle, readKey } from './read.ts';
export * from './types.ts';
