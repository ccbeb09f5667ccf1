// Coordinates as people type and paste them: decimal degrees, or degrees with minutes and seconds.

export interface Coordinates {
  readonly lat: number;
  readonly lon: number;
}
export type CoordinatesFault =
  | 'empty'
  /** Not two coordinates, or not to be told apart. */
  | 'form'
  /** A latitude beyond 90, or a longitude beyond 180. */
  | 'latitude'
  | 'longitude'
  /** Minutes or seconds of 60 or more. */
  | 'sixty'
  /** A minus and a letter for one coordinate. */
  | 'sign'
  /** Letters on one coordinate only, or both of one kind. */
  | 'letter'
  /** The longitude seems to stand first. */
  | 'swapped';
export type ReadCoordinates = Coordinates | { readonly fault: CoordinatesFault };

/** Longer than any coordinates. */
const LONGEST = 120;
const WORDS: readonly [RegExp, string][] = [
  [/\b(?:north|norte)\b/gi, 'N'],
  [/\b(?:south|sur)\b/gi, 'S'],
  [/\b(?:east|este)\b/gi, 'E'],
  [/\b(?:west|oeste)\b/gi, 'W'],
  [/\b(?:latitude?|longitude?|latitud|longitud|lat|lon|lng|long)\b[.:=]?/gi, ' '],
];

/** One way to write each sign. `\u00ba` is what Spanish keyboards have for the degree. */
function plain(text: string, language: string): string {
  let written = text
    .normalize('NFC')
    .replace(/[\u2212\u2010-\u2014\uFE63\uFF0D]/g, '-')
    .replace(/[\u00b0\u00ba\u02da\u2218\u1d52]|\bdeg\b/g, '°')
    .replace(/\u2032\u2032|''|\u2033|\u201c|\u201d|\u02ba|\u3003/g, '"')
    .replace(/[\u2032\u2018\u2019\u02b9\u02bc\u00b4`]/g, "'")
    .replace(/''/g, '"')
    .replace(/[\s\p{Cf}]+/gu, ' ')
    .trim();
  for (const [word, letter] of WORDS) written = written.replace(word, letter);
  written = written.toUpperCase();
  // West is oeste there; in English an O is a mistyped zero.
  return language.toLowerCase().split('-')[0] === 'es' ? written.replace(/O/g, 'W') : written;
}

/**
 * The latitude and longitude that a text means. Without letters the latitude comes first; decimals may have a point or a
 * comma. With `es`, O is west.
 */
export function readCoordinates(text: string, language = 'en'): ReadCoordinates {
  if (text.trim() === '') return { fault: 'empty' };
  if (text.length > LONGEST) return { fault: 'form' };
  const written = plain(text, language);
  // "30,25, -97,75" has decimal commas, "30,25" is two numbers: each reading that makes sense counts.
  const readings = [written.replace(/(\d),(?=\d)/g, '$1.'), written].map((one) => pair(one));
  const sound = readings.filter((one) => !('fault' in one));
  const [first, second] = sound as Coordinates[];
  if (first && second && (first.lat !== second.lat || first.lon !== second.lon)) return { fault: 'form' };
  return first ?? readings.find((one) => 'fault' in one && one.fault !== 'form') ?? { fault: 'form' };
}

interface Half {
  readonly degrees: number;
  readonly letter: string;
}

function pair(written: string): ReadCoordinates {
  const halves = split(written)?.map(half);
  if (!halves) return { fault: 'form' };
  for (const one of halves) if ('fault' in one) return one;
  const [one, other] = halves as [Half, Half];
  if ((one.letter === '') !== (other.letter === '')) return { fault: 'letter' };
  const axis = ({ letter }: Half) => (letter === 'N' || letter === 'S' ? 'lat' : 'lon');
  if (one.letter !== '' && axis(one) === axis(other)) return { fault: 'letter' };
  const turned = one.letter !== '' && axis(one) === 'lon';
  const [lat, lon] = turned ? [other.degrees, one.degrees] : [one.degrees, other.degrees];
  if (Math.abs(lat) > 90)
    return { fault: one.letter === '' && Math.abs(lat) <= 180 && Math.abs(lon) <= 90 ? 'swapped' : 'latitude' };
  return Math.abs(lon) > 180 ? { fault: 'longitude' } : { lat, lon };
}

/** The two coordinates: at a comma or the like, before or behind a letter, before a second degree sign, or half way. */
function split(written: string): [string, string] | undefined {
  const parts = written.split(/[,;/|]/);
  if (parts.length > 2) return undefined;
  if (parts.length === 2) return parts as [string, string];
  const letters = [...written.matchAll(/[NSEW]/g)].map(({ index }) => index);
  if (letters.length > 2) return undefined;
  if (letters.length === 2) {
    const at = letters[0] === 0 ? (letters[1] as number) : (letters[0] as number) + 1;
    return [written.slice(0, at), written.slice(at)];
  }
  const numbers = [...written.matchAll(/[-+]?\s?\d+(?:\.\d+)?/g)].map(({ index }) => index);
  const signs = [...written.matchAll(/[-+]?\s?\d+(?:\.\d+)?\s?°/g)].map(({ index }) => index);
  const at = signs.length === 2 ? signs[1] : numbers.length % 2 === 0 ? numbers[numbers.length / 2] : undefined;
  return at === undefined ? undefined : [written.slice(0, at), written.slice(at)];
}

const HALF =
  /^([NSEW])?\s?([-+])?\s?(\d{1,3}(?:\.\d+)?)(?:\s?°)?(?:(?<=°|\d)(?:\s?:\s?|\s|(?<=°))(\d{1,2}(?:\.\d+)?)(?:\s?')?(?:(?:\s?:\s?|\s|(?<='))(\d{1,2}(?:\.\d+)?)(?:\s?")?)?)?\s?([NSEW])?$/;

function half(text: string): Half | { readonly fault: CoordinatesFault } {
  const found = HALF.exec(text.trim());
  if (!found) return { fault: 'form' };
  const [, before = '', sign = '', degrees = '', minutes, seconds, after = ''] = found;
  if (before !== '' && after !== '') return { fault: 'letter' };
  const letter = before || after;
  if (letter !== '' && sign !== '') return { fault: 'sign' };
  // Only the last number may have decimals.
  if ((minutes !== undefined && degrees.includes('.')) || (seconds !== undefined && minutes?.includes('.')))
    return { fault: 'form' };
  if (Number(minutes ?? 0) >= 60 || Number(seconds ?? 0) >= 60) return { fault: 'sixty' };
  const size = Number(degrees) + Number(minutes ?? 0) / 60 + Number(seconds ?? 0) / 3600;
  const negative = sign === '-' || letter === 'S' || letter === 'W';
  return { degrees: negative && size !== 0 ? -size : size, letter };
}
