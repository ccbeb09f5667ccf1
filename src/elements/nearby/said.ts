// Places, distances and days in words.
import type { Spot, Texts } from '../../guidance/nearby/index.ts';
import { matchLanguage } from '../../key/index.ts';
import type { NearbyWords } from '../../words/nearby/index.ts';

/** The international foot and mile, exact by definition (1959). */
const FOOT = 0.3048;
const MILE = 1609.344;
/** From here on in miles and kilometres. */
const FAR = 800;

/** A text in the language that serves best; the first one where none does. */
export function inLanguage(texts: Texts, language: string): string {
  const tags = [...texts.keys()];
  const tag = matchLanguage(language, tags.filter(Boolean)) ?? tags[0] ?? '';
  return texts.get(tag) ?? '';
}

const number = (value: number, unit: string, language: string): string =>
  new Intl.NumberFormat(language, {
    style: 'unit',
    unit,
    // Two digits, and no whole number cut: "3.1 mi", "120 mi".
    maximumFractionDigits: value < 9.95 ? 1 : 0,
  }).format(value < 9.95 ? value : value < 100 ? Math.round(value) : Math.round(value / 10) * 10);

/** A distance in both systems, the person's own first: "3.1 mi (5 km)", "600 ft (180 m)". */
export function inBoth(metres: number, { both, language }: NearbyWords, metric: boolean): string {
  const far = metres >= FAR;
  const us = number(far ? metres / MILE : Math.ceil(metres / FOOT), far ? 'mile' : 'foot', language);
  const si = number(far ? metres / 1000 : Math.ceil(metres), far ? 'kilometer' : 'meter', language);
  return metric ? both(si, us) : both(us, si);
}

/** "30.2500° N, 97.7500° W": four decimals are about 11 m. */
export function placeInWords({ lat, lon }: Pick<Spot, 'lat' | 'lon'>, { letters, language }: NearbyWords): string {
  const degrees = new Intl.NumberFormat(language, { minimumFractionDigits: 4, maximumFractionDigits: 4 });
  // A comma within the numbers would run into the one between them.
  const write = (size: number) => degrees.format(Math.abs(size)).replace(',', '.');
  return `${write(lat)}° ${lat < 0 ? letters.south : letters.north}, ${write(lon)}° ${lon < 0 ? letters.west : letters.east}`;
}

/** "November 25, 2026". */
export const dayInWords = (day: string, language: string): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));

/** "English and Spanish". */
export function languagesInWords(tags: readonly string[], language: string): string {
  const names = new Intl.DisplayNames([language], { type: 'language' });
  return new Intl.ListFormat(language, { type: 'conjunction' }).format(tags.map((tag) => names.of(tag) ?? tag));
}
