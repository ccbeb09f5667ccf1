// Finds as points of a map: GeoJSON (RFC 7946).
import type { Key } from '../../key/index.ts';
import { type Find, toldPlace } from '../find/index.ts';
import { COLUMNS, type Column, darwinCoreRow, NUMBERS, type RowOptions } from './darwin-core.ts';

export interface FindFeature {
  readonly type: 'Feature';
  readonly id: string;
  /** null where no place is known. */
  readonly geometry: { readonly type: 'Point'; readonly coordinates: readonly [lon: number, lat: number] } | null;
  /** The terms of Darwin Core that say something; what is told is what the table tells. */
  readonly properties: Readonly<Record<string, string | number>>;
}
export interface FindCollection {
  readonly type: 'FeatureCollection';
  readonly features: readonly FindFeature[];
}

/** In the geometry already. */
const GEOMETRY: readonly Column[] = ['decimalLatitude', 'decimalLongitude', 'geodeticDatum'];
const AS_NUMBERS: readonly Column[] = NUMBERS.filter((column) => column !== 'identificationVerificationStatus');

/** Every find as a feature, those without a place too. The exact place is told only with consent. */
export function geoJson(
  finds: readonly Find[],
  keyOf: (find: Find) => Key | undefined,
  options?: RowOptions,
): FindCollection {
  return {
    type: 'FeatureCollection',
    features: finds.map((find) => {
      const row = darwinCoreRow(find, keyOf(find), options);
      const place = toldPlace(find);
      return {
        type: 'Feature',
        id: find.id,
        geometry: place
          ? { type: 'Point', coordinates: [Number(row.decimalLongitude), Number(row.decimalLatitude)] }
          : null,
        properties: Object.fromEntries(
          COLUMNS.filter((column) => row[column] !== '' && !GEOMETRY.includes(column)).map((column) => [
            column,
            AS_NUMBERS.includes(column) ? Number(row[column]) : row[column],
          ]),
        ),
      };
    }),
  };
}
