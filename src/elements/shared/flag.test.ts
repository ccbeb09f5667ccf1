import { expect, test } from 'vitest';
import { flag } from './flag.ts';

test.each([
  [null, false],
  ['', true],
  ['true', true],
  ['false', false],
])('an attribute that is on or off, written %j, is %s', (value, on) => {
  expect(flag(value)).toBe(on);
});
