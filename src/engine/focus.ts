// What the next question should be about: everything at first, what is still in the way of a verdict near the end.
import type { Posterior } from './standing.ts';
import type { Verdict } from './verdict.ts';

/** A taxon that holds this much is the one to be confirmed or overthrown. */
const LEADS = 0.5;
/** Weight that a look-alike not yet put to the test gets beside a leading taxon, whatever it holds (ours). */
const UNTESTED = 0.15;
/** How much heavier natives weigh while a plant of concern leads: naming a native as one is the error to avoid (ours). */
const NATIVE = 4;

/**
 * Weights of the hypotheses (length H, summing to 1) over which the next question's information is reckoned. Until a
 * taxon leads, this is the posterior itself. Once one leads, look-alikes that were not put to the test, and natives
 * beside a plant of concern, weigh more than they hold, since they are what keeps the verdict from being settled.
 */
export function focusOf(from: Posterior, verdict: Verdict): Float64Array {
  const { p, matrix } = from;
  const weights = p.slice();
  const lead = verdict.taxa[0];
  if (lead === undefined || (p[lead] as number) < LEADS) return weights;
  if (matrix.spec.taxa[lead]?.concern === true)
    matrix.spec.taxa.forEach((taxon, t) => {
      if (taxon.native) weights[t] = Math.min(p[lead] as number, NATIVE * (weights[t] as number));
    });
  const untested = verdict.rivals.filter((rival) => rival.told.length < rival.needs);
  for (const { taxon } of untested) weights[taxon] = Math.max(weights[taxon] as number, UNTESTED / untested.length);
  const total = weights.reduce((sum, w) => sum + w, 0);
  return weights.map((w) => w / total);
}
