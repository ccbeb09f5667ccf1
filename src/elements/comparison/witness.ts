// A comparison held against what somebody else saw, and told to whoever was not there.
import type { nothing, TemplateResult } from 'lit';
import type { ComparedRow, KeyAnswer, Month } from '../../key/index.ts';

export interface Witness {
  readonly month: Month;
  readonly answers: readonly KeyAnswer[];
  /** Said of what the answers name. */
  readonly saw: string;
  /** What was answered of a feature, or that nothing was. */
  readonly answered: (row: ComparedRow) => TemplateResult | typeof nothing;
  /** What could show it. */
  readonly looking: (row: ComparedRow) => string;
}
