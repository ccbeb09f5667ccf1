import { expect, test } from 'vitest';
import { coordinatesOf, roundingOf } from './where.ts';

// A degree of latitude is at most 111.7 km, at the poles (from memory).
test.each([
  ['30.2096, -97.7355', 30],
  ['30.209, -97.735', 79],
  ['30.21, -97.74', 790],
  ['30.2096, -97.7', 7899],
  ['30 -97', 78_984],
  ['30° 12.57′ N 97° 44.13′ W', 30],
  ['30° 12′ N 97° 44′ W', 1317],
  ['30° 12′ 34″ N 97° 44′ 8″ W', 30],
  ['30,2096 N 97,7355 O', 30],
  ['', 30],
])('"%s" is right to within %i m at best', (text, metres) => {
  expect(roundingOf(text)).toBe(metres);
});

test('a position is written to about a metre', () => {
  expect(coordinatesOf({ lat: 30.2096, lon: -97.7355251 })).toBe('30.20960, -97.73553');
});
