// Records of finds against Darwin Core (TDWG, terms of August 2026; see data/darwin-core/NOTICE.md), RFC 4180 as an outside
// reader (csv-parse) reads it, and RFC 7946.
import { readFileSync } from 'node:fs';
import { check } from '@placemarkio/check-geojson';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coarsen, type Find } from '../../src/report/find/index.ts';
import { COLUMNS, csvOf, darwinCoreCsv, darwinCoreRow, defused, geoJson } from '../../src/report/forms/index.ts';
import { aFind, findArbitrary } from '../support/finds.ts';
import { answersOf, streambank } from '../support/streambank.ts';

const data = (name: string) => readFileSync(`tests/reference/data/darwin-core/${name}`, 'utf8');
const TERMS = data('simple_dwc_horizontal.csv').trim().split(',');
const VALUES: { field: string; value: string }[] = parse(data('controlled-values.csv'), { columns: true });
const allowed = (field: string) => VALUES.filter((one) => one.field === field).map(({ value }) => value);

const { key } = streambank();
const keyOf = () => key;
const row = (find: Find) => darwinCoreRow(find, key);
const read = (finds: readonly Find[]): Record<string, string>[] =>
  parse(darwinCoreCsv(finds, keyOf), { columns: true, relax_column_count: false });
const PLANTS = ['giant-reed', 'arrow-arum', 'elephant-ear', 'native-common-reed', 'pond-algae'] as const;
const settled = (taxon: string): Find =>
  aFind({ verdict: { kind: 'settled', taxa: [taxon], probability: 0.97, concern: 0 } });
const withheld = { contact: false, exactPlace: false, photos: false };

describe('the columns', () => {
  test('are terms of Simple Darwin Core, each once, in the order of its list', () => {
    expect(TERMS).toHaveLength(new Set(TERMS).size);
    const places = COLUMNS.map((column) => TERMS.indexOf(column));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
  });

  test('with controlled values hold no others', () => {
    fc.assert(
      fc.property(findArbitrary, (find) => {
        const told = row(find);
        expect(allowed('occurrenceStatus')).toContain(told.occurrenceStatus);
        expect([...allowed('establishmentMeans'), '']).toContain(told.establishmentMeans);
      }),
    );
    expect(allowed('occurrenceStatus')).toEqual(['detected', 'notDetected']);
    const means = key.taxa.map(({ id, status }) => [status, row(settled(id)).establishmentMeans]);
    expect(new Set(means.map((pair) => pair.join(' ')))).toEqual(
      new Set(['native native', 'introduced introduced', 'invasive introduced']),
    );
    expect(row(aFind({}, 'pond-algae')).establishmentMeans).toBe('');
    expect(darwinCoreRow(aFind(), key, { status: 'older' }).occurrenceStatus).toBe('present');
  });

  test('keep the rules of single terms, whatever the find', () => {
    fc.assert(
      fc.property(findArbitrary, (find) => {
        const told = row(find);
        expect(told.occurrenceID).toBe(find.id);
        expect(told.basisOfRecord).toBe('HumanObservation');
        // Zero is no uncertainty; a place has one, and no place has none.
        const placed = [told.decimalLatitude, told.decimalLongitude, told.geodeticDatum].map((one) => one !== '');
        expect(placed).toEqual(Array(3).fill(find.place !== undefined));
        expect(told.coordinateUncertaintyInMeters === '').toBe(find.place === undefined);
        if (find.place) expect(Number(told.coordinateUncertaintyInMeters)).toBeGreaterThanOrEqual(1);
        // A quantity and what it counts go together.
        expect(told.organismQuantity === '').toBe(told.organismQuantityType === '');
        // No doubt inside the name.
        if (find.review?.name === undefined && !find.sought)
          expect(told.scientificName).not.toMatch(/\bcf\.|\baff\.|\?/);
        // One line of JSON.
        expect(told.dynamicProperties).not.toMatch(/[\r\n]/);
        // Answers are about a plant that was seen.
        const { answers = [] } = JSON.parse(told.dynamicProperties);
        expect(answers).toHaveLength(find.detected ? find.trail.length : 0);
        if (!find.consent.contact) expect(told.recordedBy).toBe('');
      }),
    );
  });
});

describe('the name', () => {
  const of = (plant: (typeof PLANTS)[number], changes: Partial<Find> = {}) => row(aFind(changes, plant));

  test('is the plant where it is settled, unverified', () => {
    expect(of('giant-reed')).toMatchObject({
      scientificName: 'Arundo donax',
      taxonRank: 'species',
      kingdom: 'Plantae',
      family: 'Poaceae',
      genus: 'Arundo',
      specificEpithet: 'donax',
      infraspecificEpithet: '',
      identificationQualifier: '',
      taxonFormula: 'A',
      identificationType: 'features',
      identificationVerificationStatus: '0',
      isAcceptedIdentification: '',
    });
    expect(row(settled('phragmites-australis-subsp-americanus'))).toMatchObject({
      scientificName: 'Phragmites australis subsp. americanus',
      taxonRank: 'subspecies',
      specificEpithet: 'australis',
      infraspecificEpithet: 'americanus',
    });
  });

  const standing = (...of: [string, number][]) =>
    of.map(([taxon, probability]) => ({
      taxon,
      probability,
      name: key.taxa.find(({ id }) => id === taxon)?.name ?? '',
    }));
  const leaning = (taxa: string[], probability: number) => ({
    kind: 'leaning' as const,
    taxa,
    probability,
    concern: 0.5,
  });

  test('is what the likely plants have in common where it only leans, the doubt beside it', () => {
    const [american, gulf] = [
      'phragmites-australis-subsp-americanus',
      'phragmites-australis-subsp-berlandieri',
    ] as const;
    const taxa = standing([american, 0.8], [gulf, 0.17]);
    expect(row(aFind({ verdict: leaning([american], 0.8), standing: taxa }))).toMatchObject({
      scientificName: 'Phragmites australis',
      taxonRank: 'species',
      identificationQualifier: 'cf. subsp. americanus',
      taxonFormula: 'A cf.',
      verbatimIdentification: 'Phragmites australis subsp. americanus',
      infraspecificEpithet: '',
      establishmentMeans: '',
      vernacularName: '',
    });
    const grasses = standing(['arundo-donax', 0.8], [american, 0.16]);
    expect(row(aFind({ verdict: leaning(['arundo-donax'], 0.8), standing: grasses }))).toMatchObject({
      scientificName: 'Poaceae',
      taxonRank: 'family',
      genus: '',
      identificationQualifier: 'cf. Arundo donax',
    });
    const mixed = standing(['arundo-donax', 0.8], ['typha-latifolia', 0.16]);
    expect(row(aFind({ verdict: leaning(['arundo-donax'], 0.8), standing: mixed })).scientificName).toBe('Plantae');
    // So likely, and yet not settled: the genus, with the doubt.
    expect(
      row(aFind({ verdict: leaning(['arundo-donax'], 0.97), standing: standing(['arundo-donax', 0.97]) })),
    ).toMatchObject({
      scientificName: 'Arundo',
      taxonRank: 'genus',
      identificationQualifier: 'cf. donax',
    });
  });

  test('of an open verdict between two is told as one or the other; outside the key it claims no more than a plant', () => {
    const open = {
      kind: 'open' as const,
      taxa: ['ludwigia-peploides', 'ludwigia-hexapetala'],
      probability: 0.5,
      concern: 0.5,
    };
    expect(
      row(aFind({ verdict: open, standing: standing(['ludwigia-peploides', 0.5], ['ludwigia-hexapetala', 0.46]) })),
    ).toMatchObject({
      scientificName: 'Ludwigia',
      taxonRank: 'genus',
      identificationQualifier: '',
      taxonFormula: 'A or B',
      verbatimIdentification: 'Ludwigia peploides or Ludwigia hexapetala',
    });
    expect(answersOf('pond-algae').snapshot.identification.verdict.kind).toBe('outside');
    expect(of('pond-algae')).toMatchObject({ scientificName: 'Plantae', taxonRank: 'kingdom', taxonFormula: '' });
  });

  test('is the specialist’s after a review, and only that raises its status', () => {
    const review = { by: 'R. Example', date: '2026-09-20' } as const;
    const corrected = of('giant-reed', { review: { ...review, status: 'corrected', taxon: 'arundinaria-gigantea' } });
    expect(corrected).toMatchObject({
      scientificName: 'Arundinaria gigantea',
      identifiedBy: 'R. Example',
      dateIdentified: '2026-09-20',
      identificationVerificationStatus: '1',
      isAcceptedIdentification: 'true',
      identificationType: 'media',
      previousIdentifications: 'Arundo donax',
      establishmentMeans: 'native',
    });
    const other = of('giant-reed', {
      review: { ...review, status: 'corrected', taxon: 'outside', name: 'Exampla × alta' },
    });
    expect(other).toMatchObject({ genus: 'Exampla', specificEpithet: '× alta', taxonRank: 'species' });
    const waiting = of('giant-reed', { review: { ...review, status: 'photo-wanted', wanted: ['collar'] } });
    expect(waiting).toMatchObject({ identificationVerificationStatus: '0', scientificName: 'Arundo donax' });
  });

  test('of a plant that was looked for and not seen is a record with its effort', () => {
    // The name is that of the plant looked for, whatever the answers were about.
    const sought = { taxon: 'colocasia-esculenta', name: 'Colocasia esculenta' };
    expect(of('giant-reed', { detected: false, sought, effort: 'Walked 200 m of bank' })).toMatchObject({
      scientificName: 'Colocasia esculenta',
      verbatimIdentification: 'Colocasia esculenta',
      identificationQualifier: '',
      identificationRemarks: '',
      samplingEffort: 'Walked 200 m of bank',
    });
    expect(of('giant-reed', { detected: false, effort: 'Walked 200 m of bank' })).toMatchObject({
      occurrenceStatus: 'notDetected',
      samplingEffort: 'Walked 200 m of bank',
      organismQuantity: '',
      vitality: '',
      scientificName: 'Arundo donax',
    });
  });
});

describe('what a person does not want told', () => {
  test('is in no field, and that it is held back is said', () => {
    const told = row(aFind({ consent: withheld }));
    expect(told.informationWithheld).toContain('exact place');
    expect(told.informationWithheld).toContain('name and contact');
    expect(told.dataGeneralizations).not.toBe('');
    const { lat, lon, uncertainty } = coarsen({ lat: 30.2612, lon: -98.8721, uncertainty: 12 }, 0.01);
    expect([told.decimalLatitude, told.decimalLongitude, told.coordinateUncertaintyInMeters].map(Number)).toEqual([
      lat,
      lon,
      uncertainty,
    ]);
    const everything =
      darwinCoreCsv([aFind({ consent: withheld })], keyOf) +
      JSON.stringify(geoJson([aFind({ consent: withheld })], keyOf));
    expect(everything).not.toMatch(/30\.2612|98\.8721|Beispiel|555-0142|ana@|low crossing/);
    expect(row(aFind()).informationWithheld).toBe('');
    expect(row(aFind())).toMatchObject({
      recordedBy: 'Ana Beispiel',
      decimalLatitude: '30.2612',
      dataGeneralizations: '',
    });
  });
});

describe('the table', () => {
  test('is read back equal by an outside reader, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.array(findArbitrary, { maxLength: 4 }), (finds) => {
        const rows = read(finds);
        expect(rows).toHaveLength(finds.length);
        finds.forEach((find, i) => {
          const wanted = row(find);
          for (const column of COLUMNS) {
            const cell = rows[i]?.[column] ?? '';
            // All that a spreadsheet could calculate has an apostrophe before it, and numbers have none.
            expect([wanted[column], defused(wanted[column])]).toContain(cell);
            if (!/^-?[\d.e+-]*$/.test(cell)) expect(cell).not.toMatch(/^\s*[=+\-@]/);
          }
        });
      }),
      { numRuns: 200 },
    );
  });

  test('has its answers again in one line of JSON', () => {
    const find = aFind({ remarks: '=1+1' });
    const [told] = read([find]);
    expect(told?.occurrenceRemarks).toBe("'=1+1");
    expect(told?.decimalLongitude).toBe('-98.8721');
    expect(JSON.parse(told?.dynamicProperties ?? '').answers).toEqual(
      find.trail.map(({ label: _, words: __, ...answer }) => answer),
    );
  });

  // RFC 4180, section 2: lines end with CRLF; fields with line breaks, quotes and commas in quotes; a quote is doubled.
  test('is quoted as RFC 4180 says', () => {
    expect(csvOf([['aaa', 'b\r\nbb', 'c"c', 'd,d', '']])).toBe('aaa,"b\r\nbb","c""c","d,d",\r\n');
  });

  test.each(['=1', '+1', '-1', '@x', '  =1', '\t=1', '\r=1', '\n@x'])('%j is no formula any more', (text) => {
    expect(defused(text)).toBe(`'${text}`);
    expect(defused(`a${text}`)).toBe(`a${text}`);
  });
});

describe('the map', () => {
  test('follows RFC 7946: longitude before latitude, null for no place, an id, no reference system', () => {
    fc.assert(
      fc.property(fc.array(findArbitrary, { maxLength: 4 }), (finds) => {
        const map = JSON.parse(JSON.stringify(geoJson(finds, keyOf)));
        expect(Object.keys(map).sort()).toEqual(['features', 'type']);
        expect(map.type).toBe('FeatureCollection');
        expect(map.features).toHaveLength(finds.length);
        for (const [i, feature] of map.features.entries()) {
          expect(feature).toMatchObject({ type: 'Feature', id: finds[i]?.id });
          expect(typeof feature.properties).toBe('object');
          expect(feature.geometry === null).toBe(finds[i]?.place === undefined);
          if (feature.geometry === null) continue;
          const { type, coordinates } = feature.geometry;
          expect([type, coordinates.length]).toEqual(['Point', 2]);
          expect(Math.abs(coordinates[0])).toBeLessThanOrEqual(180);
          expect(Math.abs(coordinates[1])).toBeLessThanOrEqual(90);
        }
      }),
    );
    expect(geoJson([aFind()], keyOf).features[0]).toMatchObject({
      geometry: { type: 'Point', coordinates: [-98.8721, 30.2612] },
      properties: { scientificName: 'Arundo donax', coordinateUncertaintyInMeters: 12, occurrenceStatus: 'detected' },
    });
  });

  // An outside reader that knows the whole of RFC 7946: @placemarkio/check-geojson.
  test('is GeoJSON to an outside checker, and so are the areas of the demonstration', () => {
    fc.assert(
      fc.property(fc.array(findArbitrary, { maxLength: 4 }), (finds) => {
        expect(() => check(JSON.stringify(geoJson(finds, keyOf)))).not.toThrow();
      }),
    );
    expect(() => check(readFileSync('src/site/areas/sallow-fork.geojson', 'utf8'))).not.toThrow();
    expect(() =>
      check(
        '{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"Point","coordinates":[1]},"properties":{}}]}',
      ),
    ).toThrow();
  });
});
