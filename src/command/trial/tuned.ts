// What `trial --tune` suggests: for each limit on plants that are not in the key and get a name all the same.
import type { Outcome } from '../../engine/trial/index.ts';
import type { Thresholds } from '../../key/index.ts';

/** Shares; 1 is no limit at all. */
export const LEFT_OUT_LIMITS = [1, 0.2, 0.15, 0.1, 0.05] as const;

export interface Suggestion {
  readonly leftOutSettledAtMost: number;
  /** null when no thresholds that were tried keep the limits. */
  readonly thresholds: Thresholds | null;
  readonly observers: readonly (Outcome & { readonly id: string })[];
}

export interface Tuned {
  readonly suggestions: readonly Suggestion[];
}
