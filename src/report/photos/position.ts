// Where and when a photograph says it was taken. Comes in a file of its own, with the library that reads it.
/// <reference path="./exifr-core.d.ts" />
import 'exifr/src/file-parsers/jpeg.mjs';
import 'exifr/src/file-parsers/heif.mjs';
import 'exifr/src/segment-parsers/tiff-exif.mjs';
import { parse } from 'exifr/src/core.mjs';

export interface Taken {
  /** Decimal degrees on WGS 84. */
  readonly lat: number;
  readonly lon: number;
  /** Radius in metres, where the camera wrote one. */
  readonly uncertainty?: number;
  /** YYYY-MM-DD by the camera's clock. */
  readonly date?: string;
}

// Tags by number, Exif 2.32 (CIPA DC-008, from memory); the numbers are read with or without the library's lists of names.
const ORIGINAL = 0x9003;
const POSITIONING_ERROR = 0x1f;

/** Undefined where the photograph holds no place, or cannot be read: then there is nothing to use. */
export async function takenAt(photo: Blob): Promise<Taken | undefined> {
  const read: unknown = await parse(await photo.arrayBuffer(), {
    exif: { pick: [ORIGINAL] },
    gps: true,
    translateKeys: false,
    reviveValues: false,
    mergeOutput: false,
  }).catch(() => undefined);
  const { gps = {}, exif = {} } = (read ?? {}) as Readonly<Record<'gps' | 'exif', Record<string | number, unknown>>>;
  const { latitude: lat, longitude: lon } = gps;
  if (!within(lat, 90) || !within(lon, 180)) return undefined;
  // Cameras without a fix write zeros; nobody looks at plants in the Gulf of Guinea.
  if (lat === 0 && lon === 0) return undefined;
  const error = gps[POSITIONING_ERROR];
  const date = dateIn(exif[ORIGINAL]);
  return {
    lat,
    lon,
    ...(typeof error === 'number' && error > 0 && Number.isFinite(error) ? { uncertainty: error } : {}),
    ...(date ? { date } : {}),
  };
}

const within = (value: unknown, most: number): value is number => typeof value === 'number' && Math.abs(value) <= most;

/** Exif writes "2026:11:20 14:05:09", and zeros or spaces for what it does not know. */
function dateIn(value: unknown): string | undefined {
  const [, year, month, day] = /^(\d{4}):(\d\d):(\d\d) /.exec(typeof value === 'string' ? value : '') ?? [];
  const date = `${year}-${month}-${day}`;
  const read = new Date(`${date}T00:00:00Z`);
  return year !== '0000' && !Number.isNaN(read.getTime()) && read.toISOString().startsWith(date) ? date : undefined;
}
