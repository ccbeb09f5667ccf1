// Which answer is most worth a second look: the one most likely misread, as all answers together let it be judged.
import { characterOf, type Evidence, rateOf } from './likelihood.ts';
import type { Matrix } from './matrix.ts';
import type { Profiles } from './profiles.ts';
import { slipTable } from './slips.ts';
import type { Posterior } from './standing.ts';

/** One answer and the chance that it was misread. */
export interface SecondLook {
  readonly character: number;
  /** Probability, given all answers, that the plant shows none of what was ticked: 0 to 1. */
  readonly chance: number;
}

/**
 * Every answer by the chance that it was misread, highest first: the sum over hypotheses and rates of slips of
 * P(hypothesis, rate | answers) P(slipped | hypothesis, rate, answer), Bayes' rule with the slip as one more unknown.
 * An answer that stands against all others scores high, be it held against the leading plant or a wrong turn that holds a
 * whole group of plants down; one that the others bear out scores low, however much hangs on it.
 */
export function secondLooks(from: Posterior): SecondLook[] {
  const { matrix, joint, observer } = from;
  const { rates, kin } = matrix.spec;
  const H = matrix.hypotheses;
  const top = joint.reduce((x, y) => Math.max(x, y), Number.NEGATIVE_INFINITY);
  const weights = joint.map((x) => Math.exp(x - top));
  const total = weights.reduce((x, y) => x + y, 0);
  return from.evidence
    .map((e, k) => {
      const astray = slippedFromElsewhere(matrix, e);
      const term = from.terms[k] as Float64Array;
      const P = astray.length;
      const rate = [...rates.map(({ times }) => times), 1].map((times) => rateOf(matrix, e.answer, times * observer));
      // The last row are plants that resemble one of the key's, and now and then show anything instead.
      const differs = kin?.differs ?? 0;
      const anything = astray[e.of[matrix.outside] as number] as number;
      const resembling = astray.map((own) => (1 - differs) * own + differs * anything);
      const misread = weights.reduce((sum, weight, i) => {
        const r = Math.floor(i / H);
        const g = e.of[i % H] as number;
        const slip = weight * (rate[r] as number) * ((r < rates.length ? astray : resembling)[g] as number);
        return slip > 0 ? sum + slip / Math.exp(term[r * P + g] as number) : sum;
      }, 0);
      return { character: e.answer.character, chance: misread / total };
    })
    .sort((a, b) => b.chance - a.chance || a.character - b.character);
}

/** What of `slipped` comes from states that are not ticked: taking one ticked state for another is no mistake. */
function slippedFromElsewhere(matrix: Matrix, { answer, slipped }: Evidence): Float64Array {
  if ('value' in answer) return slipped;
  const ticked = [...new Set(answer.states)];
  const table = slipTable(characterOf(matrix, answer.character));
  const first = matrix.firstRow[answer.character] as number;
  const { sample } = matrix.profiles[answer.character] as Profiles;
  const stays = ticked.map((s) => ticked.reduce((sum, to) => sum + (table[s]?.[to] ?? 0), 0));
  const shows = (g: number, s: number) =>
    matrix.truth[(first + s) * matrix.hypotheses + (sample[g] as number)] as number;
  return slipped.map((all, g) =>
    ticked.reduce((rest, s, i) => Math.max(0, rest - shows(g, s) * (stays[i] as number)), all),
  );
}
