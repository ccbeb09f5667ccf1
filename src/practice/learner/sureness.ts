// Whether a person is as sure as they are right.
import { SURENESS } from '../../engine/index.ts';
import type { Sureness } from '../../key/index.ts';
import type { Attempt, Rate } from '../types.ts';
import { rateOf } from './rates.ts';

/** What chance of being right each word is taken for (ours). */
export const MEANT: Readonly<Record<Sureness, number>> = { sure: 0.95, think: 0.8, guess: 0.5 };

export interface Calibration {
  readonly bins: readonly { readonly sureness: Sureness; readonly meant: number; readonly right: Rate }[];
  /** Mean of (chance meant - outcome)^2, 0 to 1: half of Brier's own form (see calibrationOf). Undefined for none. */
  readonly brier: number | undefined;
}

export function surenessOf(attempts: readonly Attempt[]): Calibration {
  const said = attempts.filter((one): one is Attempt & { sureness: Sureness } => one.sureness !== undefined);
  const words = Object.keys(SURENESS) as Sureness[];
  const bins = words.map((sureness) => {
    const own = said.filter((one) => one.sureness === sureness);
    return { sureness, meant: MEANT[sureness], right: rateOf(own.filter(({ right }) => right).length, own.length) };
  });
  const squares = said.reduce((sum, { sureness, right }) => sum + (MEANT[sureness] - Number(right)) ** 2, 0);
  return { bins, brier: said.length === 0 ? undefined : squares / said.length };
}
