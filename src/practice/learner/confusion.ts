// Which plants are taken for which, and how well that agrees with the answer.
import { type Agreement, agreementOf, countPairs, kappaInterval } from '../../engine/agreement/index.ts';
import type { Attempt } from '../types.ts';

export interface Confusion {
  /** Ids of the plants, in the order of rows and columns. */
  readonly taxa: readonly string[];
  /** Row: what it was; column: what was said. The last column: could not tell, or said what is not in the list. */
  readonly counts: readonly (readonly number[])[];
  /** Of those that were named; undefined for none. */
  readonly agreement: Agreement | undefined;
  /** 95 % interval of kappa. */
  readonly interval: readonly [number, number] | undefined;
}

/** Kinds of task that a plant's name is the answer to. */
export const NAMING: ReadonlySet<string> = new Set(['name', 'pair', 'run']);

export function confusionOf(taxa: readonly string[], attempts: readonly Attempt[]): Confusion {
  const named = attempts.filter(({ kind, specimen }) => NAMING.has(kind) && taxa.includes(specimen.taxon));
  const pairs = named.map(({ specimen, said }) => [specimen.taxon, said] as const);
  const square = countPairs(pairs, taxa);
  const counts = square.map((row, i) => {
    const all = named.filter(({ specimen }) => specimen.taxon === taxa[i]).length;
    return [...row, all - row.reduce((a, b) => a + b, 0)];
  });
  return { taxa, counts, agreement: agreementOf(square), interval: kappaInterval(square) };
}
