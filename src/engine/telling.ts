// Which look-alikes of a taxon have been put to a telling character.
import { likelihoodAt, rateOf } from './likelihood.ts';
import { meanTimes, type Posterior } from './standing.ts';

/** One look-alike of the taxon in question. */
export interface Rival {
  /** Index of the look-alike. */
  readonly taxon: number;
  /** Characters whose answer speaks at least `telling` times more for the taxon than for this look-alike. */
  readonly told: readonly number[];
  /** How many such answers the key asks for. */
  readonly needs: number;
}

/**
 * Every look-alike that the key names for `taxon`, with the answers that tell the two apart. Whether an answer tells is
 * judged by its likelihood ratio at the observer's rate of slips, so a guess tells less than a sure answer.
 */
export function rivalsOf(from: Posterior, taxon: number, telling: number): Rival[] {
  const { matrix } = from;
  const times = meanTimes(from);
  const likelihoods = from.evidence.map((e) => likelihoodAt(e, rateOf(matrix, e.answer, times)));
  return matrix.spec.pairs
    .filter(({ a, b }) => a === taxon || b === taxon)
    .map(({ a, b, needs }) => {
      const rival = a === taxon ? b : a;
      const told = from.evidence
        .filter((_, k) => {
          const likelihood = likelihoods[k] as (hypothesis: number) => number;
          return likelihood(taxon) >= telling * likelihood(rival);
        })
        .map((e) => e.answer.character);
      return { taxon: rival, told, needs };
    });
}
