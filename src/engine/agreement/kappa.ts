// How far two people, or a person and the answer, agree beyond what chance alone would bring.

/** Counts: a row for what one says, a column for what the other says, the same labels in the same order. */
export type Counts = readonly (readonly number[])[];

/** How much two labels disagree, 0 for the same; only the proportions matter. */
export type Disagreement = (row: number, column: number) => number;

export const unweighted: Disagreement = (i, j) => (i === j ? 0 : 1);
/** For ordered labels: by steps, or by their squares. */
export const linear: Disagreement = (i, j) => Math.abs(i - j);
export const quadratic: Disagreement = (i, j) => (i - j) ** 2;

export interface Agreement {
  /** How many were counted. */
  readonly n: number;
  /** Share on the diagonal, 0 to 1. */
  readonly observed: number;
  /** Share that chance alone would bring there. */
  readonly chance: number;
  /** Undefined where chance alone would agree always: both use one label throughout. */
  readonly kappa: number | undefined;
}

/** Standard normal quantile of 97.5 %. */
const Z95 = 1.959963984540054;

/**
 * J. Cohen (1960), Educ. Psychol. Meas. 20: 37-46, and with weights J. Cohen (1968), Psychol. Bull. 70: 213-220 (from
 * memory): 1 - observed disagreement / disagreement by chance. Undefined for a table that counts nothing.
 */
export function agreementOf(counts: Counts, disagreement: Disagreement = unweighted): Agreement | undefined {
  const rows = counts.map((row) => sum(row));
  const columns = counts.map((_, j) => sum(counts.map((row) => row[j] ?? 0)));
  const n = sum(rows);
  if (n === 0) return undefined;
  let observed = 0;
  let chance = 0;
  let apart = 0;
  let apartByChance = 0;
  counts.forEach((row, i) => {
    row.forEach((count, j) => {
      const expected = ((rows[i] as number) * (columns[j] as number)) / n;
      if (i === j) {
        observed += count;
        chance += expected;
      }
      apart += disagreement(i, j) * count;
      apartByChance += disagreement(i, j) * expected;
    });
  });
  const kappa = apartByChance === 0 ? undefined : 1 - apart / apartByChance;
  return { n, observed: observed / n, chance: chance / n, kappa };
}

/**
 * Large-sample standard error of unweighted kappa, J. L. Fleiss, J. Cohen and B. S. Everitt (1969), Psychol. Bull. 72:
 * 323-327 (from memory). Undefined where kappa is.
 */
export function kappaError(counts: Counts): number | undefined {
  const agreement = agreementOf(counts);
  if (agreement?.kappa === undefined) return undefined;
  const { n, observed, chance, kappa } = agreement;
  const row = counts.map((one) => sum(one) / n);
  const column = counts.map((_, j) => sum(counts.map((one) => one[j] ?? 0)) / n);
  let on = 0;
  let off = 0;
  counts.forEach((one, i) => {
    one.forEach((count, j) => {
      const p = count / n;
      if (i === j) on += p * (1 - ((row[i] as number) + (column[i] as number)) * (1 - kappa)) ** 2;
      else off += p * ((column[i] as number) + (row[j] as number)) ** 2;
    });
  });
  const rest = (kappa - chance * (1 - kappa)) ** 2;
  const variance = (on + (1 - kappa) ** 2 * off - rest) / (n * (1 - chance) ** 2);
  return observed === 1 ? 0 : Math.sqrt(Math.max(0, variance));
}

/** 95 % interval of kappa, held to -1 to 1. */
export function kappaInterval(counts: Counts): readonly [low: number, high: number] | undefined {
  const kappa = agreementOf(counts)?.kappa;
  const error = kappaError(counts);
  if (kappa === undefined || error === undefined) return undefined;
  return [Math.max(-1, kappa - Z95 * error), Math.min(1, kappa + Z95 * error)];
}

/** The table of pairs of labels; a label that is not among `labels` is left out. */
export function countPairs(pairs: Iterable<readonly [string, string]>, labels: readonly string[]): number[][] {
  const index = new Map(labels.map((label, i) => [label, i]));
  const counts = labels.map(() => labels.map(() => 0));
  for (const [one, other] of pairs) {
    const row = counts[index.get(one) ?? -1];
    const j = index.get(other);
    if (row && j !== undefined) row[j] = (row[j] as number) + 1;
  }
  return counts;
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
