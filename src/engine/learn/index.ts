// Learning from plants whose name is known: how often characters are misread.
export { betaCdf, betaQuantile, logGamma } from './beta.ts';
export {
  type KnownReading,
  type LearnedRate,
  learnRates,
  mixupsSeen,
  type SeenMixup,
  tells,
  USUAL_WEIGHT,
} from './rates.ts';
