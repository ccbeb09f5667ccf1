// How well forecasts over several classes were borne out.

/** The chance that each class was given, 0 to 1 and together 1, and the index of the class that came true. */
export interface ClassForecast {
  readonly chances: readonly number[];
  readonly truth: number;
}

/**
 * Mean over forecasts of the sum over classes of (chance - outcome)^2, 0 to 2: the form of G. W. Brier (1950), Mon. Weather
 * Rev. 78: 1-3 (from memory). With two classes it is twice the yes/no form of `calibrationOf`. Undefined for no forecast.
 */
export function brierOf(forecasts: readonly ClassForecast[]): number | undefined {
  return mean(forecasts, ({ chances, truth }) =>
    chances.reduce((sum, chance, i) => sum + (chance - (i === truth ? 1 : 0)) ** 2, 0),
  );
}

/**
 * Mean of -ln(chance of what came true), in nats (I. J. Good 1952, J. R. Stat. Soc. B 14: 107-114, from memory). Infinite
 * when what came true was given no chance at all. Undefined for no forecast.
 */
export function logLossOf(forecasts: readonly ClassForecast[]): number | undefined {
  return mean(forecasts, ({ chances, truth }) => -Math.log(chances[truth] ?? 0));
}

const mean = (forecasts: readonly ClassForecast[], of: (forecast: ClassForecast) => number): number | undefined =>
  forecasts.length === 0 ? undefined : forecasts.reduce((sum, one) => sum + of(one), 0) / forecasts.length;
