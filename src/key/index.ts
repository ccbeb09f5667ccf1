export type { Doubt, Sureness, VerdictKind } from '../engine/index.ts';
export * from './album/index.ts';
export { AnswersError, engineAnswers, type Inquiry, type KeyAnswer, readInquiry } from './answers.ts';
export { type Branching, type BranchingOptions, BuriedCoupletError, branchingOf } from './branching.ts';
export { bundleKey, type Digest, hashed, readBundle, readVerifiedBundle } from './bundle.ts';
export { type CheckOptions, checkKey, USUAL_CHECKS } from './check.ts';
export {
  type ComparedRow,
  type Comparison,
  ComparisonError,
  comparisonOf,
  type Difference,
  type Looking,
  type PairDifference,
} from './comparison.ts';
export { KEY_FILES, type ReadOptions } from './content.ts';
export { printCouplets } from './couplets-file.ts';
export { COURSES, type Course, type LooseCourse, type PassMark, readCourses, type TaskKind } from './courses/index.ts';
export { BOX, type Drawing, HUES, type Hue, type Mark, PENS, type Pen } from './drawing.ts';
export { readKey } from './folder.ts';
export { type Identification, identify, type RivalCheck, type Standing as TaxonStanding } from './identify.ts';
export { LIMITS, type Limits } from './json.ts';
export { lookupLanguage, matchLanguage } from './language.ts';
export { foldName, type SharedName, sharedNames } from './names.ts';
export { type PreparedKey, prepareKey, THERE } from './prepared.ts';
export {
  describeProblem,
  type ErrorCode,
  KeyContentError,
  MOST_PROBLEMS,
  type Problem,
  type ProblemCode,
  type WarningCode,
} from './problem.ts';
export * from './range/index.ts';
export { type Sentence, sentencesOf } from './sentences.ts';
export { type Separation, separationOf } from './separation.ts';
export type { Shows } from './shows.ts';
export { type Piece, termIn, termsIn } from './terms.ts';
export { languageFor, translate } from './text.ts';
export * from './types.ts';
export * from './units.ts';
export { fillable, isHandWritten, writtenCouplets } from './written.ts';
