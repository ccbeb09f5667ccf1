// The normal distribution and the two-piece log-normal that stands for a botanical range.

const SQRT2 = Math.SQRT2;
const INV_SQRT_2PI = 1 / Math.sqrt(2 * Math.PI);

/** Density of the standard normal. */
export const density = (z: number): number => INV_SQRT_2PI * Math.exp(-0.5 * z * z);

/**
 * Distribution function of the standard normal, to about 1e-15: the Maclaurin series of erf near zero, Lentz's
 * continued fraction of erfc in the tails (both: Abramowitz & Stegun, Handbook of Mathematical Functions, 7.1.5
 * and 7.1.14, from memory).
 */
export function cumulative(z: number): number {
  const x = Math.abs(z) / SQRT2;
  const upper = x < 2.5 ? (1 - erfSeries(x)) / 2 : erfcFraction(x) / 2;
  return z > 0 ? 1 - upper : upper;
}

function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-17 * sum; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

function erfcFraction(x: number): number {
  let tail = 0;
  for (let k = 60; k > 0; k--) tail = k / 2 / (x + tail);
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * (x + tail));
}

/** A log-normal whose left and right halves may spread differently; `mid`, `left`, `right` in natural logarithms. */
export interface TwoPiece {
  readonly mid: number;
  readonly left: number;
  readonly right: number;
}

/** 5 % lie below the usual range and 5 % above it (the design's reading of a range): z of 0.95. */
const Z_USUAL = 1.6448536269514722;
/** Extremes in parentheses are read as the central 99 % (ours): z of 0.995. */
const Z_EXTREME = 2.5758293035489004;

/**
 * The distribution of a size with usual range `low`..`high` (> 0) and rare extremes, as judged by an eye whose own
 * error is `eye` (standard deviation of the logarithm).
 */
export function twoPiece(range: { low: number; high: number; min?: number; max?: number }, eye: number): TwoPiece {
  const low = Math.log(range.low);
  const high = Math.log(range.high);
  const mid = (low + high) / 2;
  const usual = (high - low) / 2 / Z_USUAL;
  const left = range.min === undefined ? usual : Math.max(usual, (mid - Math.log(range.min)) / Z_EXTREME);
  const right = range.max === undefined ? usual : Math.max(usual, (Math.log(range.max) - mid) / Z_EXTREME);
  return { mid, left: Math.hypot(left, eye), right: Math.hypot(right, eye) };
}

/** Density of ln(value). */
export function twoPieceDensity(d: TwoPiece, value: number): number {
  const x = Math.log(value) - d.mid;
  return (2 / (d.left + d.right)) * density(x / (x < 0 ? d.left : d.right));
}

/** Probability of a size below `value`. */
export function twoPieceBelow(d: TwoPiece, value: number): number {
  const x = Math.log(value) - d.mid;
  const total = d.left + d.right;
  return x < 0
    ? ((2 * d.left) / total) * cumulative(x / d.left)
    : (d.left + d.right * (2 * cumulative(x / d.right) - 1)) / total;
}
