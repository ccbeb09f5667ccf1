// Agreement of two who say what they see.
export { type Difference, differenceOf } from './difference.ts';
export {
  type Agreement,
  agreementOf,
  type Counts,
  countPairs,
  type Disagreement,
  kappaError,
  kappaInterval,
  linear,
  quadratic,
  unweighted,
} from './kappa.ts';
export { brierOf, type ClassForecast, logLossOf } from './scores.ts';
