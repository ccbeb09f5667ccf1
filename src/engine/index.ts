// The engine: pure computation on plain data, from a matrix and answers to standing, verdict, reasons and next question.
export { focusOf } from './focus.ts';
export { applyingShare, GainTable, nearestTimes, type Proposal, propose, WORTH_ASKING } from './gain.ts';
export { compileMatrix, type Matrix } from './matrix.ts';
export { type SecondLook, secondLooks } from './second-look.ts';
export { type Demand, diagnosisOf, pairsOf, type SmallestSets, smallestSets } from './sets.ts';
export {
  type Answer,
  type CharacterSpec,
  EngineError,
  type MatrixSpec,
  type PairSpec,
  type RateSpec,
  SURENESS,
  type Sureness,
  type TaxonSpec,
  type TraitSpec,
  USUAL_RATES,
} from './spec.ts';
export { extended, meanTimes, type Posterior, posterior, type ReadyAnswer, readyAnswer } from './standing.ts';
export { type Rival, rivalsOf } from './telling.ts';
export { type Doubt, rank, type Verdict, type VerdictKind, type VerdictRules, verdictOf } from './verdict.ts';
export { reasons, type Weight } from './why.ts';
