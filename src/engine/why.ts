// Why: answer by answer what speaks for and against a taxon, and which answer is most worth a second look.
import { likelihoodAt, rateOf } from './likelihood.ts';
import { meanTimes, type Posterior, posteriorWithout } from './standing.ts';

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
    const overall = likelihood.reduce((sum, l, h) => sum + l * Math.exp(matrix.logPrior[h] as number), 0);
    return { character: e.answer.character, likelihood, overall };
  });
  return (taxon) => {
    const weights = columns.map(({ character, likelihood, overall }) => ({
      character,
      bits: Math.log2((likelihood[taxon] as number) / overall),
    }));
    return {
      for: weights.filter((w) => w.bits >= WORTH_SAYING).sort((a, b) => b.bits - a.bits),
      against: weights.filter((w) => w.bits <= -WORTH_SAYING).sort((a, b) => a.bits - b.bits),
    };
  };
}

/** One answer and how much the standing would change without it. */
export interface SecondLook {
  readonly character: number;
  /** Bits: divergence of the standing without this answer from the standing with it. */
  readonly gain: number;
}

/**
 * Every answer by how much its removal would change the standing, most first: the divergence
 * sum over h of q(h) log2(q(h) / p(h)), with p the standing and q the standing without the answer (Kullback & Leibler, Ann. Math.
 * Statist. 22, 1951; from memory). An answer that alone holds a whole group of plants down scores high; one that the
 * others bear out scores low.
 */
export function secondLooks(from: Posterior): SecondLook[] {
  return from.evidence
    .map((e, k) => {
      const without = posteriorWithout(from, k);
      const gain = without.reduce((sum, q, h) => (q > 0 ? sum + q * Math.log2(q / (from.p[h] as number)) : sum), 0);
      return { character: e.answer.character, gain: Math.max(0, gain) };
    })
    .sort((a, b) => b.gain - a.gain || a.character - b.character);
}
