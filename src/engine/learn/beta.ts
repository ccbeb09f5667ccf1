// The beta distribution: what is known of a share after counting.

/** Coefficients of C. Lanczos (1964, SIAM J. Numer. Anal. B 1: 86-96) for g = 7 and nine terms (from memory). */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Logarithm of the gamma function of x > 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const [first = 0, ...rest] = LANCZOS;
  const sum = rest.reduce((so, c, i) => so + c / (x + i), first);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const TINY = 1e-300;
const MOST_STEPS = 10_000;

/**
 * Probability of at most `x`, 0 to 1, under Beta(a, b), a and b > 0: the regularized incomplete beta function I_x(a, b) by
 * its continued fraction, DLMF 8.17.22, with the method of Lentz (both from memory).
 */
export function betaCdf(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges fast below the mean; above it the other tail is taken.
  if (x > (a + 1) / (a + b + 2)) return 1 - betaCdf(1 - x, b, a);
  const front = Math.exp(
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b) - Math.log(a),
  );
  const kept = (value: number) => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / kept(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const term of [even, odd]) {
      d = 1 / kept(1 + term * d);
      c = kept(1 + term / c);
      change = c * d;
      fraction *= change;
    }
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return Math.min(1, front * fraction);
}

/** The value that Beta(a, b) stays below with probability `p`, 0 to 1, found by halving, to the last bits of a number. */
export function betaQuantile(p: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (betaCdf(middle, a, b) < p) low = middle;
    else high = middle;
  }
}
