import { describe, expect, test } from 'vitest';
import { formatMeasure, readUnit, shownUnit, systemOf, toCanonical, type Unit, UnitError } from './units.ts';

describe('conversion', () => {
  // Unicode CLDR, supplemental/units.xml: ft_to_m = 0.3048, an inch is a twelfth of a foot, a yard three feet.
  test.each([
    [1, 'ft', 'm', 0.3048],
    [12, 'in', 'ft', 1],
    [1, 'ft', 'in', 12],
    [1, 'in', 'mm', 25.4],
    [3, 'ft', 'm', 0.9144],
  ] as const)('%d %s is exactly %s (CLDR)', (value, unit, to, same) => {
    expect(toCanonical(value, unit, to)).toBe(same);
  });

  test.each([
    [2.5, 'cm', 'mm', 25],
    [25, 'mm', 'cm', 2.5],
    [1.5, 'm', 'cm', 150],
    [7, 'count', 'count', 7],
    [0.1, 'm', 'm', 0.1],
  ] as const)('%d %s in %s is %d', (value, unit, to, same) => {
    expect(toCanonical(value, unit, to)).toBe(same);
  });

  test.each<[number, Unit, Unit, string]>([
    [3, 'count', 'cm', 'a count cannot be given in cm'],
    [3, 'ft', 'count', 'a length in ft cannot be given in count'],
    [Number.NaN, 'cm', 'cm', 'NaN is not a measured value'],
    [Number.POSITIVE_INFINITY, 'm', 'cm', 'Infinity is not a measured value'],
  ])('%d %s in %s is refused', (value, unit, to, message) => {
    expect(() => toCanonical(value, unit, to)).toThrow(UnitError);
    expect(() => toCanonical(value, unit, to)).toThrow(message);
  });
});

test('units are read in their usual spellings, and nothing else is', () => {
  expect(['mm', 'CM', 'm', 'In', 'inch', 'inches', 'ft', 'foot', 'feet'].map(readUnit)).toEqual([
    'mm',
    'cm',
    'm',
    'in',
    'in',
    'in',
    'ft',
    'ft',
    'ft',
  ]);
  expect(['km', 'count', '', 'constructor', '__proto__'].map(readUnit)).toEqual(Array(5).fill(undefined));
  expect((['mm', 'ft', 'count'] as const).map(systemOf)).toEqual(['metric', 'us', undefined]);
});

test.each([
  [10, 'm', 'us', 'ft'],
  [0.5, 'm', 'us', 'in'],
  [60, 'cm', 'us', 'in'],
  [160, 'cm', 'us', 'ft'],
  [0.7, 'm', 'us', 'ft'],
  [3, 'mm', 'us', 'in'],
  [3, 'm', 'metric', 'm'],
  [1, 'ft', 'metric', 'cm'],
  [3, 'ft', 'metric', 'm'],
  [70, 'in', 'metric', 'm'],
  [1 / 8, 'in', 'metric', 'mm'],
  [5, 'count', 'us', 'count'],
] as const)('sizes up to %d %s are shown to %s readers in %s', (largest, unit, system, shown) => {
  expect(shownUnit(largest, unit, system)).toBe(shown);
});

describe('a measured value for people', () => {
  test.each([
    [4.5, 'm', { system: 'metric', locale: 'en', about: 'about' }, 'about 4.5 m'],
    [4.5, 'm', { system: 'us', locale: 'en' }, '15 ft'],
    [4.5, 'm', { system: 'metric', locale: 'es', about: 'unos' }, 'unos 4,5 m'],
    [1.234, 'm', { system: 'metric', locale: 'en' }, '1.23 m'],
    [10, 'cm', { system: 'us', locale: 'en' }, '3.9 in'],
    [7, 'in', { system: 'metric', locale: 'en' }, '18 cm'],
    [5, 'count', { system: 'us', locale: 'en' }, '5'],
  ] as const)('%d %s as %o is %s', (value, unit, format, text) => {
    expect(formatMeasure(value, unit, format)).toBe(text);
  });
});
