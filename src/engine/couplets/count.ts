// Counting keys, and the shortest ways that any key could have.

/**
 * How many different keys of two leads there are for `taxa` taxa, left and right not told apart: (2n - 3)!!, as many as
 * rooted bifurcating trees with labelled tips (Felsenstein, J. 1978, Syst. Zool. 27: 27-33).
 */
export function possibleKeys(taxa: number): bigint {
  if (!Number.isInteger(taxa) || taxa < 1) throw new RangeError(`${taxa} taxa`);
  let keys = 1n;
  for (let factor = 2n * BigInt(taxa) - 3n; factor > 1n; factor -= 2n) keys *= factor;
  return keys;
}

/** Mean length of the shortest key for `taxa` equally likely taxa, if every split were on offer. */
export function shortestMean(taxa: number): number {
  const whole = Math.floor(Math.log2(taxa));
  return whole + (2 * (taxa - 2 ** whole)) / taxa;
}

/** Mean length of the longest key: every couplet names one taxon. */
export const longestMean = (taxa: number): number => ((taxa + 2) * (taxa - 1)) / (2 * taxa);

/**
 * Sum of weight x length over the shortest code for these weights (Huffman, D.A. 1952, Proc. IRE 40: 1098-1101); divided
 * by the sum of the weights, the mean number of yes/no questions that no key can undercut. `weights` is sorted in place.
 */
export function huffman(weights: Float64Array, n = weights.length): number {
  sortSmall(weights, n);
  let total = 0;
  let leaf = 0;
  let made = 0;
  let used = 0;
  // Merged weights come out in ascending order, so the front of the array, already read, holds them.
  const next = (): number => {
    if (used < made && (leaf >= n || (weights[used] as number) <= (weights[leaf] as number))) {
      used += 1;
      return weights[used - 1] as number;
    }
    leaf += 1;
    return weights[leaf - 1] as number;
  };
  for (let k = 1; k < n; k++) {
    const sum = next() + next();
    weights[made] = sum;
    made += 1;
    total += sum;
  }
  return total;
}

/** Ascending; by insertion, since what comes here is short and all but sorted. */
function sortSmall(x: Float64Array, n: number): void {
  if (n > 200) {
    x.subarray(0, n).sort();
    return;
  }
  for (let i = 1; i < n; i++) {
    const v = x[i] as number;
    let j = i - 1;
    while (j >= 0 && (x[j] as number) > v) {
      x[j + 1] = x[j] as number;
      j -= 1;
    }
    x[j + 1] = v;
  }
}

/** x log2 x, 0 at 0. */
export const xlogx = (x: number): number => (x > 0 ? x * Math.log(x) * Math.LOG2E : 0);

/** Entropy of a split in x and 1 - x, in bits. */
export const binaryEntropy = (x: number): number => (x > 0 && x < 1 ? -xlogx(x) - xlogx(1 - x) : 0);
