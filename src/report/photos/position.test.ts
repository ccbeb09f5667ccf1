import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { takenAt } from './position.ts';

const photo = (name: string) =>
  new Blob([readFileSync(new URL(`../../../tests/fixtures/photos/${name}`, import.meta.url))]);

// The fixtures' degrees, minutes and seconds were written by another program: tests/fixtures/photos/README.md.
const LAT = 30 + 12 / 60 + 34.56 / 3600;
const LON = 97 + 44 / 60 + 7.89 / 3600;

test.each([
  ['with-place.jpg', LAT, -LON],
  ['south-east.jpg', -LAT, LON],
  ['with-place.avif', LAT, -LON],
])('the place, its uncertainty and the day are read from %s', async (name, lat, lon) => {
  const taken = await takenAt(photo(name));
  expect(taken?.lat).toBeCloseTo(lat, 9);
  expect(taken?.lon).toBeCloseTo(lon, 9);
  expect(taken).toMatchObject({ uncertainty: 12.5, date: '2026-11-20' });
});

test.each(['without-place.jpg', 'plain.png', 'plain.heic'])('%s holds no place', async (name) => {
  expect(await takenAt(photo(name))).toBeUndefined();
});

test('what is no photograph, or a broken one, holds no place and breaks nothing', async () => {
  const whole = new Uint8Array(await photo('with-place.jpg').arrayBuffer());
  await fc.assert(
    fc.asyncProperty(
      fc.oneof(
        fc.uint8Array({ maxLength: 300 }),
        fc.nat(whole.length).map((end) => whole.slice(0, end)),
        fc
          .array(fc.tuple(fc.nat(400), fc.nat(255)), { minLength: 1, maxLength: 8 })
          .map((changes) => changes.reduce((bytes, [at, value]) => bytes.with(at, value), whole)),
      ),
      async (bytes) => {
        const taken = await takenAt(new Blob([Uint8Array.from(bytes)]));
        if (taken === undefined) return;
        expect(Math.abs(taken.lat)).toBeLessThanOrEqual(90);
        expect(Math.abs(taken.lon)).toBeLessThanOrEqual(180);
        expect(taken.uncertainty ?? 1).toBeGreaterThan(0);
      },
    ),
    { numRuns: 300 },
  );
});
