import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Character, type Length, toCanonical } from '../../key/index.ts';
import { en } from '../../words/index.ts';
import { classWords, lengthWords, type System, show, unitsFor } from './sizes.ts';

// 1 ft = 0.3048 m exactly, 1 in = 25.4 mm exactly: NIST Special Publication 811, Appendix B (from memory).
describe('a length in the units of the person', () => {
  test.each([
    [0.5, 'm', 'us', '20 in'],
    [1, 'm', 'us', '3 ft'],
    [1.8, 'm', 'us', '6 ft'],
    [3.6, 'm', 'us', '12 ft'],
    [0.15, 'm', 'us', '6 in'],
    [0.5, 'm', 'metric', '50 cm'],
    [1, 'm', 'metric', '1 m'],
    [1.8, 'm', 'metric', '1.8 m'],
    [0.7, 'cm', 'metric', '7 mm'],
    [0.7, 'cm', 'us', '¼ in'],
    [2.2, 'cm', 'us', '⅞ in'],
    [5, 'mm', 'us', '3/16 in'],
    [18, 'mm', 'us', '¾ in'],
    [4.1, 'cm', 'us', '1½ in'],
    [6, 'cm', 'us', '2½ in'],
    [75, 'cm', 'us', '2½ ft'],
    [45, 'cm', 'us', '18 in'],
    [3, 'ft', 'metric', '90 cm'],
    [0.4, 'mm', 'us', '0.4 mm'],
  ] as const)('%s %s for a %s reader is %s', (value, unit, system, words) => {
    expect(lengthWords(show(value, unit, system), 'en')).toBe(words);
  });
});

test('rounding moves no length by more than a tenth, or half of what a tape shows', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.4, max: 50_000, noNaN: true }),
      fc.constantFrom<Length>('mm', 'cm', 'm', 'in', 'ft'),
      fc.constantFrom<System>('us', 'metric'),
      (mm, unit, system) => {
        const value = toCanonical(mm, 'mm', unit);
        const shown = show(value, unit, system);
        expect(Math.abs(toCanonical(shown.value, shown.unit, 'mm') - mm)).toBeLessThanOrEqual(
          Math.max(0.1001 * mm, 25.4 / 32 + 1e-9),
        );
      },
    ),
  );
});

describe('a class of size', () => {
  const height = { unit: 'm' } as Character;
  const words = (from: number, to?: number, system: System = 'us') =>
    classWords(height, { id: 'a', label: 'a', from, ...(to ? { to } : {}) }, en.question, 'en', system);

  test('says where it begins and where it ends', () => {
    expect(words(0, 0.15)).toBe('under 6 in');
    expect(words(0.5, 1)).toBe('20 in to 3 ft');
    expect(words(0.5, 1, 'metric')).toBe('50 cm to 1 m');
    expect(words(3.6)).toBe('over 12 ft');
  });

  test('of a count is a plain number', () => {
    const count = { unit: 'count' } as Character;
    expect(classWords(count, { id: 'a', label: 'a', from: 5, to: 8 }, en.question, 'en', 'us')).toBe('5 to 8');
  });
});

test('typing offers the units of the system, the one that suits first choice', () => {
  expect(unitsFor(18, 'cm', 'us')).toEqual({ units: ['in', 'ft'], best: 'in' });
  expect(unitsFor(0.5, 'm', 'metric')).toEqual({ units: ['mm', 'cm', 'm'], best: 'cm' });
});
