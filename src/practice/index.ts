export { type CoverAgreement, coverAgreement, coverOf, type Leaf, type Plot, plotOf } from './cover/index.ts';
export { type Between, betweenOf } from './crew/between.ts';
export { type CrewFigures, crewFigures, LEAST_READINGS, type Lesson, type Member } from './crew/crew.ts';
export { attemptsCsv, plantsCsv } from './crew/csv.ts';
export {
  bearsOut,
  isAlarm,
  itemsTouched,
  judge,
  OUTSIDE,
  pairItem,
  rivalIn,
  type Touched,
  UNSURE,
} from './judge/judge.ts';
export { type Deciding, decidingOf, isTold, usualState } from './judge/telling.ts';
export { type Confusion, confusionOf } from './learner/confusion.ts';
export { type LearnerFigures, learnerFigures, median } from './learner/figures.ts';
export { ENOUGH_READINGS, type OwnReading, ownReading } from './learner/own.ts';
export { type Read, rateOf, readingRates, readingsIn } from './learner/rates.ts';
export { dayOf, RECALL, type Readiness, type ReadinessRule, readinessOf } from './learner/readiness.ts';
export { type Calibration, MEANT, surenessOf } from './learner/sureness.ts';
export { isAttempt } from './record/form.ts';
export { conflictsOf, MergeError, mergeRecords, type People, peopleIn } from './record/merge.ts';
export { readingsOfRecords } from './record/readings.ts';
export { isRecord, RECORD_LIMITS, RecordError, readRecord, writeRecord } from './record/record.ts';
export { NEW, nextTask, type RoundPlan, secondsOf } from './round/round.ts';
export { planTest, type TestPlan } from './round/test.ts';
export { gradeOf, inOrder, QUICK, replay, type Scheduled } from './schedule/schedule.ts';
export { type Judged, MINUTES, openTest, Sitting, type SittingKind, type Stamp } from './sitting/sitting.ts';
export { markOf, SpecimenError, shownBy } from './specimen/specimen.ts';
export { charactersOf, itemsOf, kindsOf, type Parsed, pairsOf, parseItem } from './task/items.ts';
export { alike, nearest } from './task/near.ts';
export { seedFor, taskOf } from './task/task.ts';
export * from './types.ts';
