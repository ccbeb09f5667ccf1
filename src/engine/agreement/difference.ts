// How two people's estimates of the same things differ.

export interface Difference {
  readonly n: number;
  /** Mean of the first less the second: what one says more than the other. */
  readonly mean: number;
  /** Within which 95 % of differences are expected. */
  readonly low: number;
  readonly high: number;
}

const Z95 = 1.959963984540054;

/**
 * Limits of agreement, J. M. Bland and D. G. Altman (1986), Lancet 327: 307-310 (from memory): mean difference and 1.96
 * standard deviations (n - 1) to either side. Undefined for fewer than two pairs.
 */
export function differenceOf(pairs: readonly (readonly [number, number])[]): Difference | undefined {
  const n = pairs.length;
  if (n < 2) return undefined;
  const differences = pairs.map(([a, b]) => a - b);
  const mean = differences.reduce((so, d) => so + d, 0) / n;
  const spread = Math.sqrt(differences.reduce((so, d) => so + (d - mean) ** 2, 0) / (n - 1));
  return { n, mean, low: mean - Z95 * spread, high: mean + Z95 * spread };
}
