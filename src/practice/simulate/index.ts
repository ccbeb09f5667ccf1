export { SimulatedLearner } from './learner.ts';
export { HalvingMemory, MEMORIES, type Memory, type MemoryModel, PowerMemory } from './memory.ts';
export { type LearnerRun, PASS, RETENTION_DAYS, type Rehearsal, type RehearsalOptions, rehearse } from './rehearse.ts';
