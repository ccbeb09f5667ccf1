// Months as runs: March to August, or November to February across the turn of the year.
import type { Month } from '../key/index.ts';
import type { Words } from '../words/index.ts';

/** From the first month to the last, both included; `to` may lie before `from` when the run crosses the new year. */
export interface Span {
  readonly from: Month;
  readonly to: Month;
}

const YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const satisfies readonly Month[];
const after = (month: Month): Month => ((month % 12) + 1) as Month;
const before = (month: Month): Month => (((month + 10) % 12) + 1) as Month;

/** The runs that a set of months falls into, in the order of the calendar; a run across the new year comes last. */
export function spans(months: readonly Month[]): Span[] {
  const meant = new Set(months);
  if (meant.size === 12) return [{ from: 1, to: 12 }];
  return YEAR.filter((month) => meant.has(month) && !meant.has(before(month))).map((from) => {
    let to = from as Month;
    while (meant.has(after(to))) to = after(to);
    return { from, to };
  });
}

/** "March to August", "January and March to May", "all year". */
export function monthsInWords(months: readonly Month[], { common, guidance }: Words): string {
  if (new Set(months).size === 12) return guidance.year;
  return common.list(spans(months).map(({ from, to }) => guidance.span(common.months[from], common.months[to])));
}
