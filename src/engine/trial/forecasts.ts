// Forecasts kept in ten bins as they come: their number grows, what is kept does not.
import type { ForecastGroup } from './stats.ts';

export const BINS = 10;
/** Probabilities are kept to 2^-30, as whole numbers, so that sums come out the same in whatever order they are added. */
const UNIT = 2 ** 30;

/** `[n, sum, squares, hits, sum of hits]` of each bin, one after the other; sums in units of 2^-30. */
export type Forecasts = number[];
const FIELDS = 5;

export const noForecasts = (): Forecasts => new Array<number>(BINS * FIELDS).fill(0);

/** Bin i holds (i/10, (i+1)/10]; 0 goes into the first. */
export const binOf = (p: number): number => Math.max(0, Math.min(BINS - 1, Math.ceil(p * BINS) - 1));

export function addForecast(to: Forecasts, p: number, hit: boolean): void {
  const at = binOf(p) * FIELDS;
  const add = (field: number, by: number) => {
    to[at + field] = (to[at + field] as number) + by;
  };
  add(0, 1);
  add(1, Math.round(p * UNIT));
  add(2, Math.round(p * p * UNIT));
  if (!hit) return;
  add(3, 1);
  add(4, Math.round(p * UNIT));
}

/** The bins, each weighing `weight` for every forecast in it. */
export function groupsOf(of: Forecasts, weight = 1): ForecastGroup[] {
  return Array.from({ length: BINS }, (_, bin) => {
    const [n = 0, sum = 0, squares = 0, hits = 0, sumOfHits = 0] = of.slice(bin * FIELDS, (bin + 1) * FIELDS);
    return {
      n: n * weight,
      sum: (sum / UNIT) * weight,
      squares: (squares / UNIT) * weight,
      hits: hits * weight,
      sumOfHits: (sumOfHits / UNIT) * weight,
    };
  });
}

/** Bin by bin together; both have the same number of bins. */
export function together(one: readonly ForecastGroup[], other: readonly ForecastGroup[]): ForecastGroup[] {
  return one.map((a, i) => {
    const b = other[i] as ForecastGroup;
    return {
      n: a.n + b.n,
      sum: a.sum + b.sum,
      squares: a.squares + b.squares,
      hits: a.hits + b.hits,
      sumOfHits: a.sumOfHits + b.sumOfHits,
    };
  });
}
