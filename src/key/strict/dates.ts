import type { LooseMonths } from '../loose.ts';
import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Month } from '../types.ts';

export const ALL_MONTHS: readonly Month[] = Object.freeze([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);

/** Months in order of the year: of "3-11", of "11-2" over the turn of the year, of "5", of a list. Text has been matched with the schema. */
export function strictMonths(months: LooseMonths | undefined): readonly Month[] {
  if (months === undefined) return ALL_MONTHS;
  if (typeof months !== 'string') return ALL_MONTHS.filter((month) => months.includes(month));
  const [from = 1, to = from] = months.split('-').map(Number);
  return ALL_MONTHS.filter((month) => (from <= to ? month >= from && month <= to : month >= from || month <= to));
}

/** Notes a day that no month has, such as 30 February. */
export function strictDate(date: string, file: string, at: Path, problems: Problems): void {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  if (day > days) problems.wrong(file, at, 'date', 'a day that the calendar has', date);
}
