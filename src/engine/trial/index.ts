// The trial: simulated people before simulated plants, and how well a key serves them.
export { Book } from './book.ts';
export { type Bound, boundOf, capacityOf } from './bound.ts';
export { coupletWay, type WayCouplet, type WayLead } from './couplets.ts';
export {
  type Bin,
  type Calibrated,
  calibrated,
  type Figures,
  figuresOf,
  type PairFigures,
  type SlipFigures,
  type Spread,
} from './figures.ts';
export { addForecast, groupsOf, noForecasts, together } from './forecasts.ts';
export { free } from './free.ts';
export type { Nature } from './nature.ts';
export { type Observer, observersFor, type Readings, readPlant, slipTables } from './observers.ts';
export { drawPlant, NOTHING, type Plant } from './plants.ts';
export { Random } from './random.ts';
export { isDone, LIMIT, type Run, runPlant } from './run.ts';
export { calibrationOf, type Share, shareOf, wilson } from './stats.ts';
export { merge, noTally, type Tally } from './tally.ts';
export { type Case, type Stretch, Trial, type TrialSetup } from './trial.ts';
export { bestOf, type Candidate, type Outcome, outcomesOf, type Trials, tryThresholds } from './tune.ts';
export type { Now, Walk, Way } from './way.ts';
