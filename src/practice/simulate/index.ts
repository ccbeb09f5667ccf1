export { SimulatedLearner } from './learner.ts';
export { Memory } from './memory.ts';
export { type LearnerRun, PASS, RETENTION_DAYS, type Rehearsal, type RehearsalOptions, rehearse } from './rehearse.ts';
