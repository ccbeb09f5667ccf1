import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoordinatesFault, readCoordinates } from './coordinates.ts';

const LAT = 30 + 15 / 60;
const LON = -(97 + 45 / 60);

describe('coordinates as people write them', () => {
  test.each<[string, string?]>([
    ['30.25, -97.75'],
    ['30.25 -97.75'],
    ['30.25,-97.75'],
    ['  30.25 ,  -97.75 '],
    ['30.25; -97.75'],
    ['30,25, -97,75'],
    ['30,25 -97,75'],
    ['30,25; -97,75'],
    ['+30.25 \u221297.75'],
    ['30.25N 97.75W'],
    ['30.25° N, 97.75° W'],
    ['N30.25 W97.75'],
    ['N 30.25, W 97.75'],
    ['97.75 W, 30.25 N'],
    ['W97.75 N30.25'],
    ["30°15'N 97°45'W"],
    ['30° 15\' 0" N, 97° 45\' 0" W'],
    ['30°15′00″N 97°45′00″W'],
    ['30º 15’ 00” N 97º 45’ 00” W'],
    ["30°15'0''N 97°45'0''W"],
    ['30 15 0 N 97 45 0 W'],
    ['30 15, -97 45'],
    ['30 15 -97 45'],
    ['30:15:00N 97:45:00W'],
    ["30° 15.000' N 97° 45.000' W"],
    ["N 30° 15' W 97° 45'"],
    ["30° 15' -97° 45'"],
    ['lat 30.25 lon -97.75'],
    ['Latitude: 30.25, Longitude: -97.75'],
    ['30.25 north, 97.75 west'],
    ['30.25\u00a0N\u200e, 97.75\u202fW'],
    ['30.25 N 97.75 O', 'es'],
    ['30°15′N 97°45′O', 'es-MX'],
    ['30,25 norte; 97,75 oeste', 'es'],
    ['O 97,75 N 30,25', 'es'],
    ['latitud 30,25 longitud -97,75', 'es'],
  ])('%j', (text, language) => {
    const read = readCoordinates(text, language);
    if ('fault' in read) throw new Error(read.fault);
    expect(read.lat).toBeCloseTo(LAT, 9);
    expect(read.lon).toBeCloseTo(LON, 9);
  });

  // The form is that of the notes to Geoscience Australia's calculator for Vincenty's formulae, there with a minus.
  test('south and east, with seconds that have decimals', () => {
    const read = readCoordinates('35° 55\' 56.12" S, 148° 56\' 25.12" E');
    if ('fault' in read) throw new Error(read.fault);
    expect(read.lat).toBeCloseTo(-35.932256, 6);
    expect(read.lon).toBeCloseTo(148.940311, 6);
  });

  test.each<[string, CoordinatesFault, string?]>([
    ['', 'empty'],
    ['   ', 'empty'],
    ['by the old mill', 'form'],
    ['30.25', 'form'],
    ['30.25, -97.75, 12', 'form'],
    ['1 2 3', 'form'],
    ['30.2.5 97.7', 'form'],
    ['30.25.5, -97.75', 'form'],
    ['1e1, 2e1', 'form'],
    ['0x10, 0x20', 'form'],
    ['Infinity, NaN', 'form'],
    ['--30, 97', 'form'],
    ['9'.repeat(200), 'form'],
    ['1 '.repeat(59), 'form'],
    ["30.5° 15' N 97° W", 'form'],
    ['30.25 N 97.75 O', 'form', 'en'],
    ['<img src=x>', 'form'],
    ['91, 10', 'swapped'],
    ['-97.75, 30.25', 'swapped'],
    ['91 N, 10 W', 'latitude'],
    ['95, 95', 'latitude'],
    ['10, 181', 'longitude'],
    ["30° 60' N, 97° 0' W", 'sixty'],
    ['30 15 60 N, 97 45 0 W', 'sixty'],
    ['30.25, -97.75 W', 'sign'],
    ['30.25 N, -97.75 W', 'sign'],
    ['30.25 N, 97.75', 'letter'],
    ['30.25 N, 97.75 S', 'letter'],
    ['N 30.25 N, 97.75 W', 'letter'],
  ])('%j is refused: %s', (text, fault, language) => {
    expect(readCoordinates(text, language)).toEqual({ fault });
  });

  const lat = fc.double({ min: -90, max: 90, noNaN: true }).map((x) => Number(x.toFixed(5)) + 0);
  const lon = fc.double({ min: -180, max: 180, noNaN: true }).map((x) => Number(x.toFixed(5)) + 0);

  test('what is written in decimals reads back the same, with a point or a comma', () => {
    fc.assert(
      fc.property(lat, lon, fc.boolean(), (y, x, comma) => {
        const text = [y, x].map((n) => n.toFixed(5).replace('.', comma ? ',' : '.')).join('; ');
        const read = readCoordinates(text);
        if ('fault' in read) throw new Error(`${text}: ${read.fault}`);
        expect(Math.abs(read.lat - y)).toBeLessThan(1e-9);
        expect(Math.abs(read.lon - x)).toBeLessThan(1e-9);
      }),
    );
  });

  test('what is written in degrees, minutes and seconds reads back within a hundredth of a second', () => {
    const dms = (size: number) => {
      const hundredths = Math.round(Math.abs(size) * 360_000);
      return `${Math.floor(hundredths / 360_000)}° ${Math.floor(hundredths / 6000) % 60}' ${((hundredths % 6000) / 100).toFixed(2)}"`;
    };
    fc.assert(
      fc.property(lat, lon, (y, x) => {
        const text = `${dms(y)} ${y < 0 ? 'S' : 'N'} ${dms(x)} ${x < 0 ? 'W' : 'E'}`;
        const read = readCoordinates(text);
        if ('fault' in read) throw new Error(`${text}: ${read.fault}`);
        expect(Math.abs(read.lat - y)).toBeLessThan(1 / 360_000);
        expect(Math.abs(read.lon - x)).toBeLessThan(1 / 360_000);
      }),
    );
  });

  test('any other text is a place on the earth or a named fault, and nothing is thrown', () => {
    const sign = fc.constantFrom(...'0123456789.,;:-+ °\'"NSEWO/');
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: sign, maxLength: 40 }), fc.string({ unit: 'grapheme' })), (text) => {
        const read = readCoordinates(text, 'es');
        if ('fault' in read) return;
        expect(Math.abs(read.lat)).toBeLessThanOrEqual(90);
        expect(Math.abs(read.lon)).toBeLessThanOrEqual(180);
      }),
      { numRuns: 2000 },
    );
  });
});
