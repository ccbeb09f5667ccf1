// The statistics of a report: a proportion with its interval, and how well forecasts were borne out.

/** Standard normal quantile of 97.5 %: intervals of 95 %. */
const Z95 = 1.959963984540054;

/** A count out of `n`, with the 95 % interval of the share behind it. */
export interface Share {
  readonly count: number;
  readonly n: number;
  /** count / n; undefined when nothing was counted. */
  readonly share: number | undefined;
  readonly low: number;
  readonly high: number;
}

/**
 * Score interval of a proportion, E. B. Wilson (1927), J. Am. Stat. Assoc. 22: 209-212, without continuity correction
 * (method 3 of Newcombe 1998, Stat. Med. 17: 857-872). `z` is the standard normal quantile, 95 % when left out.
 */
export function wilson(count: number, n: number, z = Z95): readonly [low: number, high: number] {
  if (n === 0) return [0, 1];
  const p = count / n;
  const width = (z * z) / n;
  const centre = p + width / 2;
  const half = Math.sqrt(width * (p * (1 - p) + width / 4));
  // Written out at the ends, where rounding would otherwise leave a crumb.
  return [count === 0 ? 0 : (centre - half) / (1 + width), count === n ? 1 : (centre + half) / (1 + width)];
}

export function shareOf(count: number, n: number): Share {
  const [low, high] = wilson(count, n);
  return { count, n, share: n === 0 ? undefined : count / n, low, high };
}

/** Forecasts that belong together (the same number, or one bin) and what became of them. Weights may be any above 0. */
export interface ForecastGroup {
  /** How many, or their weight. */
  readonly n: number;
  /** Sum of the forecast probabilities, and of their squares. */
  readonly sum: number;
  readonly squares: number;
  /** How many came true, and the sum of the forecasts of those. */
  readonly hits: number;
  readonly sumOfHits: number;
}

export interface Calibration {
  /** Mean of (forecast - outcome)^2, from 0 to 1: half of Brier's own form, which adds up both classes. */
  readonly brier: number;
  readonly reliability: number;
  readonly resolution: number;
  readonly uncertainty: number;
  /** What of the score the grouping hides: brier = reliability - resolution + uncertainty + within. */
  readonly within: number;
  /** Mean distance of forecast and outcome over the groups, weighted by their sizes. */
  readonly error: number;
}

/**
 * Brier, G. W. (1950), Mon. Weather Rev. 78: 1-3; its parts: Murphy, A. H. (1973), J. Appl. Meteorol. 12: 595-600 (both
 * from memory). The expected calibration error is the mean of |share of hits - mean forecast|. Undefined for no forecast.
 */
export function calibrationOf(groups: readonly ForecastGroup[]): Calibration | undefined {
  const total = groups.reduce((sum, { n }) => sum + n, 0);
  if (!(total > 0)) return undefined;
  const base = groups.reduce((sum, { hits }) => sum + hits, 0) / total;
  const mean = (of: (group: ForecastGroup) => number) =>
    groups.reduce((sum, group) => (group.n > 0 ? sum + of(group) : sum), 0) / total;
  const brier = mean(({ squares, sumOfHits, hits }) => squares - 2 * sumOfHits + hits);
  const reliability = mean(({ n, sum, hits }) => n * (sum / n - hits / n) ** 2);
  const resolution = mean(({ n, hits }) => n * (hits / n - base) ** 2);
  const uncertainty = base * (1 - base);
  return {
    brier,
    reliability,
    resolution,
    uncertainty,
    within: brier - (reliability - resolution + uncertainty),
    error: mean(({ sum, hits }) => Math.abs(sum - hits)),
  };
}
