// What a specialist has entered, report by report, until it is written.
import type { Find } from '../../report/find/index.ts';
import type { Entered } from '../../report/review/index.ts';

const BLANK: Entered = {
  status: '',
  taxon: '',
  by: '',
  remarks: '',
  wanted: [],
};

/** What stands in the fields for `find`: what was entered, else its review. */
export function enteredFor({ id, review }: Find, entered: ReadonlyMap<string, Entered>): Entered {
  // Whoever reviews one report is likely to review the next.
  const by = [...entered.values()].at(-1)?.by ?? '';
  return entered.get(id) ?? (review ? { ...BLANK, ...review } : { ...BLANK, by });
}
