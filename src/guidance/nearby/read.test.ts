import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { AreasError, readAreas } from './read.ts';
import { signedArea } from './rings.ts';
import type { Ring } from './types.ts';

const demo = readFileSync(new URL('../../site/areas/sallow-fork.geojson', import.meta.url), 'utf8');
const SQUARE = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
  [0, 0],
];
const properties = { programme: 'Reed Watch', contacts: [{ phone: '555-0100' }], reviewed: '2026-05-01' };
const feature = (geometry: object, changes: object = {}) => ({
  type: 'Feature',
  properties: { ...properties, ...changes },
  geometry,
});
const file = (features: readonly object[], frame: object = {}) =>
  JSON.stringify({ type: 'FeatureCollection', features, ...frame });
const area = (coordinates: unknown, changes: object = {}) => feature({ type: 'Polygon', coordinates }, changes);

function problemsOf(text: string): { path: string; code: string; expected: string; found: string }[] {
  try {
    readAreas(text);
  } catch (error) {
    if (error instanceof AreasError)
      return error.problems.map(({ path, code, expected, found }) => ({ path, code, expected, found }));
    throw error;
  }
  return [];
}

describe('a file of service areas', () => {
  test('of the demonstration is read: one area with a hole, one of two parts, one that ended', () => {
    const { areas, landmarks, near, elsewhere } = readAreas(demo);
    expect(areas.map(({ id, polygons }) => [id, polygons.map((rings) => rings.length)])).toEqual([
      ['upper-fork', [2]],
      ['lower-fork', [1, 1]],
      ['mill-pond-drive', [1]],
    ]);
    expect(areas[0]?.programme.get('es')).toBe('Programa de carrizo del Fork alto');
    expect(areas.map(({ due }) => due)).toEqual(['2027-10-15', '2027-03-01', '2027-03-10']);
    expect(landmarks).toHaveLength(3);
    expect(near).toBe(16_000);
    expect(elsewhere?.contacts[0]?.phone).toBe('555-0177');
  });

  test('of the demonstration names nobody real: reserved numbers and addresses only', () => {
    for (const [number] of demo.matchAll(/\b\d{3}-\d{4}\b(?!-)/g)) expect(number).toMatch(/^555-01\d\d$/);
    for (const [, host] of demo.matchAll(/(?:@|\/\/)([\w.-]+)/g)) expect(host).toBe('example.org');
  });

  // RFC 7946, 3.1.6: outer rings counter-clockwise, holes clockwise; readers should not refuse the others.
  test('may be wound either way, and is read as the standard winds it', () => {
    const outer = [
      [100, 0],
      [101, 0],
      [101, 1],
      [100, 1],
      [100, 0],
    ];
    const hole = [
      [100.8, 0.8],
      [100.8, 0.2],
      [100.2, 0.2],
      [100.2, 0.8],
      [100.8, 0.8],
    ];
    for (const rings of [
      [outer, hole],
      [outer.toReversed(), hole.toReversed()],
      [outer, hole.toReversed()],
    ]) {
      const [one] = readAreas(file([area(rings)])).areas;
      const [first, second] = (one?.polygons[0] ?? []) as [Ring, Ring];
      expect(signedArea(first)).toBeCloseTo(1, 9);
      expect(signedArea(second)).toBeCloseTo(-0.36, 9);
    }
    expect(signedArea(SQUARE as unknown as Ring)).toBe(1);
  });

  test('may hold heights, members that nobody here knows, numbers as ids, and a mark at its beginning', () => {
    const high = SQUARE.map((position) => [...position, 120]);
    const text = file([{ ...area([high]), id: 7, anything: 1 }], {
      name: 'x',
      crs: { properties: { name: 'urn:ogc:def:crs:OGC:1.3:CRS84' } },
    });
    const { areas } = readAreas(`\uFEFF${text}`);
    expect(areas[0]?.id).toBe('7');
    expect(areas[0]?.polygons[0]?.[0]?.[1]).toEqual([1, 0]);
  });

  test('whose review day is not said is due a year after it was reviewed', () => {
    const due = (reviewed: string) => readAreas(file([area([SQUARE], { reviewed })])).areas[0]?.due;
    expect(due('2026-05-01')).toBe('2027-05-01');
    expect(due('2028-02-29')).toBe('2029-02-28');
  });

  test('is frozen through and through', () => {
    const { areas } = readAreas(demo);
    expect(() => {
      (areas[0] as { id: string }).id = 'x';
    }).toThrow(TypeError);
    expect(Object.isFrozen(areas[0]?.polygons[0]?.[0]?.[0])).toBe(true);
  });
});

const at = 'features[0].geometry.coordinates';
describe('a fault is told with its place', () => {
  test.each<[string, string, string, string, string]>([
    [
      'swapped by range',
      file([area([SQUARE.map(([x = 0, y = 0]) => [30 + x, -97 - y])])]),
      `${at}[0][0]`,
      'bounds',
      'look swapped',
    ],
    [
      'swapped onto the Antarctic',
      file([area([SQUARE.map(([x = 0, y = 0]) => [33 + x, -84 + y])])]),
      `${at}[0][0]`,
      'bounds',
      'look swapped',
    ],
    [
      'swapped out of the box',
      file([area([SQUARE.map(([x = 0, y = 0]) => [50 + x, 10 + y])])], { bbox: [9, 49, 12, 52] }),
      `${at}[0][0]`,
      'bounds',
      'bbox',
    ],
    [
      'beyond 180',
      file([area([SQUARE.map(([x = 0, y = 0]) => [180.5 + x, y])])]),
      `${at}[0][0]`,
      'bounds',
      'within 180',
    ],
    ['not closed', file([area([SQUARE.slice(0, 4)])]), `${at}[0][3]`, 'form', 'the first position again'],
    [
      'three positions',
      file([
        area([
          [
            [0, 0],
            [1, 0],
            [0, 0],
          ],
        ]),
      ]),
      `${at}[0]`,
      'length',
      'at least 4',
    ],
    ['a single number', file([area([[[0], [1, 0], [1, 1], [0]]])]), `${at}[0][0]`, 'length', 'at least 2'],
    [
      'text for a number',
      file([
        area([
          [
            ['0', 0],
            [1, 0],
            [1, 1],
            ['0', 0],
          ],
        ]),
      ]),
      `${at}[0][0][0]`,
      'type',
      'a number',
    ],
    [
      'null for a number',
      file([
        area([
          [
            [null, 0],
            [1, 0],
            [1, 1],
            [null, 0],
          ],
        ]),
      ]),
      `${at}[0][0][0]`,
      'type',
      'a number',
    ],
    [
      'no area',
      file([
        area([
          [
            [0, 0],
            [1, 1],
            [0, 0],
            [0, 0],
          ],
        ]),
      ]),
      `${at}[0]`,
      'form',
      'encloses',
    ],
    [
      'the whole earth',
      file([
        area([
          [
            [-180, -50],
            [-60, -50],
            [60, -50],
            [180, -50],
            [180, 80],
            [60, 80],
            [-60, 80],
            [-180, 80],
            [-180, -50],
          ],
        ]),
      ]),
      `${at}[0]`,
      'bounds',
      'half the earth',
    ],
    [
      'a hole elsewhere',
      file([area([SQUARE, SQUARE.map(([x = 0, y = 0]) => [x + 5, y])])]),
      `${at}[1]`,
      'bounds',
      'within the outer ring',
    ],
    [
      'a point for an area',
      file([feature({ type: 'Point', coordinates: [0, 0] })]),
      'features[0].geometry.type',
      'value',
      'Polygon, MultiPolygon',
    ],
    [
      'no geometry',
      file([{ type: 'Feature', properties, geometry: null }]),
      'features[0].geometry',
      'type',
      'an object',
    ],
    [
      'a misspelt field',
      file([area([SQUARE], { untill: '2026-01-01' })]),
      'features[0].properties.untill',
      'unknown-field',
      'until',
    ],
    [
      '30 February',
      file([area([SQUARE], { until: '2026-02-30' })]),
      'features[0].properties.until',
      'date',
      'calendar',
    ],
    [
      'a day as people write it',
      file([area([SQUARE], { until: '5/31/2027' })]),
      'features[0].properties.until',
      'form',
      'YYYY-MM-DD',
    ],
    [
      'a review before the last',
      file([area([SQUARE], { review: '2026-01-01' })]),
      'features[0].properties.review',
      'order',
      'after',
    ],
    [
      'nobody to call',
      file([area([SQUARE], { contacts: [] })]),
      'features[0].properties.contacts',
      'length',
      'at least 1',
    ],
    [
      'a contact without a way',
      file([area([SQUARE], { contacts: [{ person: 'A' }] })]),
      'features[0].properties.contacts[0]',
      'needs',
      'a phone',
    ],
    [
      'a form that is a script',
      file([area([SQUARE], { contacts: [{ form: 'javascript:alert(1)' }] })]),
      'features[0].properties.contacts[0].form',
      'form',
      'http',
    ],
    [
      'a mail with a header in it',
      file([area([SQUARE], { contacts: [{ email: 'a@example.org?cc=b@example.org' }] })]),
      'features[0].properties.contacts[0].email',
      'form',
      'mail',
    ],
    [
      'two addresses',
      file([area([SQUARE], { contacts: [{ email: 'a@example.org,b@example.org' }] })]),
      'features[0].properties.contacts[0].email',
      'form',
      'one mail',
    ],
    [
      'a number of letters',
      file([area([SQUARE], { contacts: [{ phone: 'ask Bo' }] })]),
      'features[0].properties.contacts[0].phone',
      'form',
      'telephone',
    ],
    [
      'the same id twice',
      file([
        { ...area([SQUARE]), id: 'a' },
        { ...area([SQUARE]), id: 'a' },
      ]),
      'features[1].id',
      'duplicate-id',
      'once',
    ],
    [
      'landmarks only',
      file([{ type: 'Feature', properties: { landmark: 'Creek' }, geometry: { type: 'Point', coordinates: [0, 0] } }]),
      'features',
      'needs',
      'at least one area',
    ],
    [
      'another system',
      file([area([SQUARE])], { crs: { properties: { name: 'EPSG:3857' } } }),
      'crs',
      'value',
      'WGS 84',
    ],
    ['no collection', JSON.stringify(area([SQUARE])), 'type', 'value', 'FeatureCollection'],
    ['no features', file([]), 'features', 'length', 'at least 1'],
    ['too many features', file(Array.from({ length: 501 }, () => area([SQUARE]))), 'features', 'length', 'at most 500'],
    ['half a file', demo.slice(0, 300), '', 'json', ''],
    ['a reserved name', `{"type":"FeatureCollection","features":[],"__proto__":{}}`, '', 'reserved-field', ''],
  ])('%s', (_name, text, path, code, expected) => {
    const problems = problemsOf(text);
    expect(problems.map((one) => one.code)).toContain(code);
    const problem = problems.find((one) => one.code === code && (path === '' || one.path === path));
    expect(problem?.path, JSON.stringify(problems.slice(0, 3))).toBeDefined();
    expect(problem?.expected).toContain(expected);
  });

  test('all at once', () => {
    const text = file([
      area([SQUARE], { until: 'soon' }),
      area([SQUARE.slice(0, 4)]),
      area([SQUARE], { reviewed: '' }),
    ]);
    expect(problemsOf(text).map(({ path }) => path)).toEqual([
      'features[0].properties.until',
      'features[1].geometry.coordinates[0][3]',
      'features[2].properties.reviewed',
    ]);
  });
});
