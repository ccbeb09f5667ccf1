// Why: answer by answer what speaks for and against a taxon.
import { likelihoodAt, rateOf } from './likelihood.ts';
import { meanTimes, type Posterior } from './standing.ts';

/** One answer's weight for one taxon. */
export interface Weight {
  readonly character: number;
  /** log2 of how many times likelier the answer is for this taxon than for the key as a whole; below 0 speaks against. */
  readonly bits: number;
}

/** Answers that move a taxon by less than this say nothing worth a line (ours). */
const WORTH_SAYING = 0.5;

/** What speaks for and against each taxon, strongest first: the weight of evidence of each answer against the prior mix. */
export function reasons(from: Posterior): (taxon: number) => { for: Weight[]; against: Weight[] } {
  const { matrix } = from;
  const times = meanTimes(from);
  const columns = from.evidence.map((e) => {
    const likelihood = likelihoodAt(e, rateOf(matrix, e.answer, times));
    const overall = matrix.logPrior.reduce((sum, log, h) => sum + likelihood(h) * Math.exp(log), 0);
    return { character: e.answer.character, likelihood, overall };
  });
  return (taxon) => {
    const weights = columns.map(({ character, likelihood, overall }) => ({
      character,
      bits: Math.log2(likelihood(taxon) / overall),
    }));
    return {
      for: weights.filter((w) => w.bits >= WORTH_SAYING).sort((a, b) => b.bits - a.bits),
      against: weights.filter((w) => w.bits <= -WORTH_SAYING).sort((a, b) => a.bits - b.bits),
    };
  };
}
