import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';

/** Guidance, and the key itself, whose last review is longer ago than a review holds. */
export function checkReviews(
  key: Key,
  { today, reviewMonths }: { readonly today?: string; readonly reviewMonths: number },
  problems: Problems,
): void {
  if (today === undefined) return;
  const earliest = monthsBefore(today, reviewMonths);
  const expected = `a review since ${earliest} (${reviewMonths} months before ${today})`;
  if (key.reviewed < earliest) problems.warn('key.json', ['reviewed'], 'past-review', expected, key.reviewed);
  [...key.guidance.values()].forEach(({ reviewed }, i) => {
    if (reviewed < earliest)
      problems.warn('guidance.json', ['entries', i, 'reviewed'], 'past-review', expected, reviewed);
  });
}

/** The same day of an earlier month, as year-month-day; such days sort as dates do, even where a month lacks them. */
function monthsBefore(date: string, months: number): string {
  const [year = 0, month = 1] = date.split('-').map(Number);
  const count = 12 * year + month - 1 - months;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(Math.floor(count / 12)).padStart(4, '0')}-${two((count % 12) + 1)}-${date.slice(8)}`;
}
