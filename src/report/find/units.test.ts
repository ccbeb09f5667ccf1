import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  AREA_UNITS,
  convertArea,
  convertLength,
  formatGround,
  GROUND_UNITS,
  groundUnitIn,
  inMetres,
  inSquareMetres,
  stripArea,
} from './index.ts';

/**
 * The factors of Unicode CLDR, common/supplemental/units.xml (commit 00990da), as written there: ft_to_m 0.3048; yard
 * ft_to_m*3; mile ft_to_m*5280; ft2_to_m2 ft_to_m*ft_to_m; acre ft2_to_m2 * 43560; hectare 10000.
 */
const FT = 0.3048;

describe('units of the ground', () => {
  test('are those of Unicode CLDR', () => {
    expect(inMetres(1, 'ft')).toBe(FT);
    expect(inMetres(1, 'yd')).toBeCloseTo(FT * 3, 12);
    expect(inMetres(1, 'mi')).toBeCloseTo(FT * 5280, 9);
    expect(inMetres(1, 'km')).toBe(1000);
    expect(inSquareMetres(1, 'ft2')).toBeCloseTo(FT * FT, 14);
    expect(inSquareMetres(1, 'acre')).toBeCloseTo(FT * FT * 43_560, 9);
    expect(inSquareMetres(1, 'ha')).toBe(10_000);
  });

  test('come back the same from any other unit', () => {
    const size = fc.double({ min: 1e-3, max: 1e7, noNaN: true });
    const close = (a: number, b: number) => {
      expect(Math.abs(a / b - 1)).toBeLessThan(1e-12);
    };
    fc.assert(
      fc.property(size, fc.constantFrom(...GROUND_UNITS), fc.constantFrom(...GROUND_UNITS), (x, a, b) =>
        close(convertLength(convertLength(x, a, b), b, a), x),
      ),
    );
    fc.assert(
      fc.property(size, fc.constantFrom(...AREA_UNITS), fc.constantFrom(...AREA_UNITS), (x, a, b) =>
        close(convertArea(convertArea(x, a, b), b, a), x),
      ),
    );
    expect(convertLength(0.1, 'ft', 'ft')).toBe(0.1);
  });

  test('a strip of 1 mile by 8.25 feet is one acre', () => {
    expect(convertArea(stripArea(1, 'mi', 8.25, 'ft'), 'm2', 'acre')).toBeCloseTo(1, 12);
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%s is no size', (value) => {
    expect(() => inMetres(value, 'm')).toThrow('is not a size');
    expect(() => convertArea(value, 'ha', 'ha')).toThrow('is not a size');
  });

  test('are shown as the reader thinks', () => {
    const us = { system: 'us', locale: 'en' } as const;
    const metric = { system: 'metric', locale: 'es' } as const;
    expect(formatGround(120, 'ft', us)).toBe('120 ft');
    expect(formatGround(120, 'ft', metric)).toBe('37 m');
    expect(formatGround(0.5, 'acre', us)).toBe('0.5 ac');
    expect(formatGround(0.5, 'acre', metric)).toBe('0,2 ha');
    expect(formatGround(300, 'm2', us)).toBe('3,200\u00a0ft²');
    expect(formatGround(1800, 'ft2', metric)).toBe('170\u00a0m²');
    expect(groundUnitIn(5, 'km', 'us')).toBe('mi');
    expect(groundUnitIn(40, 'yd', 'us')).toBe('yd');
  });
});
