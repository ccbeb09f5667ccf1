// Dates as ISO 8601 writes them. No clock is read here.

const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;
const STAMP = /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d{1,9})?)?(Z|[+-](\d\d):(\d\d))$/;

/** Whether a text is a day of the calendar, `2026-06-14`. */
export function isDay(text: string): boolean {
  const [, year, month, day] = DAY.exec(text) ?? [];
  if (day === undefined) return false;
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  const leap = (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
  return m >= 1 && m <= 12 && d >= 1 && d <= (m === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(m) ? 30 : 31);
}

/** Whether a text is a day with a time and its offset from UTC, `2026-06-14T09:40:00-05:00`. */
export function isStamp(text: string): boolean {
  const [, day, hour, minute, second = '0', , offsetHour = '0', offsetMinute = '0'] = STAMP.exec(text) ?? [];
  if (day === undefined || !isDay(day)) return false;
  return Number(hour) < 24 && [minute, second, offsetMinute].every((n) => Number(n) < 60) && Number(offsetHour) < 24;
}

const two = (n: number): string => String(n).padStart(2, '0');

/**
 * A moment where the clocks are `offset` minutes ahead of UTC, to the second: `2026-06-14T09:40:00-05:00`.
 * `ms` are milliseconds since 1970. A device tells the offset as `-date.getTimezoneOffset()`.
 */
export function stampOf(ms: number, offset: number): string {
  const local = new Date(ms + offset * 60_000).toISOString().slice(0, 19);
  const away = Math.abs(offset);
  return `${local}${offset < 0 ? '-' : '+'}${two(Math.floor(away / 60))}:${two(away % 60)}`;
}
