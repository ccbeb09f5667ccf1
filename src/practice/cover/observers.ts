// How two people's estimates of cover differ, by the plots that both judged.
import {
  type Agreement,
  agreementOf,
  countPairs,
  type Difference,
  differenceOf,
  quadratic,
} from '../../engine/agreement/index.ts';
import { COVER_CLASSES, type CoverClass, middleOf } from '../../report/find/index.ts';

export interface CoverAgreement {
  /** First less second, in percent of the ground, each class taken as its middle. Undefined for fewer than two plots. */
  readonly difference: Difference | undefined;
  /** Of the classes, where two steps apart weighs four times as much as one. Undefined for no plot. */
  readonly classes: Agreement | undefined;
}

/** `pairs`: what the one and the other said of the same plot. */
export function coverAgreement(pairs: readonly (readonly [CoverClass, CoverClass])[]): CoverAgreement {
  const counts = countPairs(
    pairs.map(([one, other]) => [String(one), String(other)] as const),
    COVER_CLASSES.map(String),
  );
  return {
    difference: differenceOf(pairs.map(([one, other]) => [middleOf(one), middleOf(other)] as const)),
    classes: agreementOf(counts, quadratic),
  };
}
