import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type System, toCanonical, type Unit } from '../units.ts';
import {
  type Bounds,
  type Extent,
  numbersOf,
  parseRange,
  printRange,
  type Range,
  RangeNotationError,
  spreadOf,
} from './index.ts';

/** Any value the notation holds: doubles of every size, plain decimals, and fractions of an inch. */
const value = fc.oneof(
  fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
  fc.integer({ min: 1, max: 100_000 }).map((n) => n / 100),
  fc.tuple(fc.integer({ min: 1, max: 500 }), fc.constantFrom(1, 2, 3, 4, 8, 16)).map(([n, lower]) => n / lower),
);
const rising = (from: fc.Arbitrary<number>, length: number) =>
  fc.uniqueArray(from, { minLength: length, maxLength: length }).map((all) => all.sort((a, b) => a - b));

/** Every form, from four rising values and a number that says which optional parts are there. */
function boundsFrom([a = 0, b = 0, c = 0, d = 0]: readonly number[], parts: number): Bounds[] {
  const min = parts & 1 ? { min: a } : {};
  const max = parts & 2 ? { max: d } : {};
  const low = parts & 1 ? b : a;
  const how = (rare: number) => (parts & rare ? 'rarely' : 'usually');
  return [
    { form: 'span', ...min, low, high: parts & 4 || low === 0 ? c : low, ...max },
    { form: 'single', ...min, typical: b, ...max },
    { form: 'up-to', high: b, ...max },
    { form: 'at-least', low: b },
    {
      form: 'alternatives',
      values: [
        { value: a, how: how(1) },
        { value: b, how: 'usually' },
        { value: c, how: how(2) },
        { value: d, how: parts & 2 || parts & 4 ? 'rarely' : 'usually' },
      ],
    },
  ];
}

const boundsOf = (from: fc.Arbitrary<number>) =>
  fc.tuple(rising(from, 4), fc.nat(7), fc.nat(4), fc.boolean()).map(([values, parts, form, zero]) => {
    const all = boundsFrom(zero ? [0, ...values.slice(1)] : values, parts);
    return all[form] ?? { form: 'at-least' as const, low: 1 };
  });
const extentOf = (from: fc.Arbitrary<number>, unit: fc.Arbitrary<Unit>): fc.Arbitrary<Extent> =>
  fc
    .tuple(boundsOf(from), unit, fc.boolean())
    .map(([bounds, one, about]) => ({ ...bounds, unit: one, ...(about ? { approximate: true as const } : {}) }));

const length = fc.constantFrom<Unit>('mm', 'cm', 'm', 'in', 'ft');
const count = fc.constant<Unit>('count');
const suffix = fc
  .stringMatching(/^(lobed|[a-z]{3,9}(-[a-zé]{1,5})?)$/)
  .filter((word) => !/^(feet|foot|inch|inches|circa|about)$/.test(word));
const rangeOf = (from: fc.Arbitrary<number>): fc.Arbitrary<Range> =>
  fc.oneof(
    extentOf(from, length),
    extentOf(from, count),
    fc.tuple(extentOf(from, count), suffix).map(([extent, word]) => ({ ...extent, suffix: word })),
    fc.tuple(extentOf(from, length), extentOf(from, length)).map(([along, across]) => ({ ...along, across })),
    fc.tuple(extentOf(from, count), extentOf(from, count)).map(([along, across]) => ({ ...along, across })),
  );

describe('any range', () => {
  test('printed and read again is the same range', () => {
    fc.assert(
      fc.property(rangeOf(value), (range) => {
        expect(parseRange(printRange(range))).toStrictEqual(range);
      }),
      { numRuns: 3000 },
    );
  });

  test('has a spread that rises from above zero and holds every usual value but zero', () => {
    const plain = fc.integer({ min: 1, max: 100_000 }).map((n) => n / 100);
    fc.assert(
      fc.property(rangeOf(plain), (range) => {
        const { min, low, high, max } = spreadOf(range);
        const all = [0, min, low, high, max].filter((one) => one !== undefined);
        expect(all.every((one, place) => Number.isFinite(one) && (place === 0 || one > (all[place - 1] ?? 0)))).toBe(
          true,
        );
        const usual = usualOf(range).filter((one) => one > 0);
        expect(usual.every((one) => low <= one && one <= high)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('shown in other units still reads, and no value moves by more than a third', () => {
    const sizes = fc.integer({ min: 1, max: 100_000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(extentOf(sizes, length), fc.constantFrom<System>('us', 'metric'), (extent, units) => {
        const shown = parseRange(printRange(extent, { units }));
        const before = millimetres(extent);
        for (const one of millimetres(shown)) {
          expect(before.some((other) => Math.abs(one - other) <= other / 3 + 1e-9)).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('any text', () => {
  /** Reads or refuses; anything else fails the test. */
  const readOrRefuse = (text: string): void => {
    try {
      const range = parseRange(text);
      expect(numbersOf(range).every((one) => Number.isFinite(one) && one >= 0)).toBe(true);
      expect(parseRange(printRange(range))).toStrictEqual(range);
    } catch (error) {
      if (!(error instanceof RangeNotationError)) throw error;
      expect(error.column).toBeGreaterThan(0);
      expect(error.column).toBeLessThanOrEqual(text.length + 1);
    }
  };
  const pieces = fc.constantFrom(
    ...[
      '(',
      ')',
      '-',
      '--',
      '–',
      '×',
      'x',
      'or',
      'to',
      'up to',
      'ca.',
      '±',
      'under',
      'at least',
      'cm',
      'm',
      'ft',
      'in',
    ],
    ...[
      "'",
      '"',
      '0',
      '1',
      '2.5',
      '6',
      '10',
      '1/2',
      '1 3/4',
      '½',
      '-lobed',
      ' ',
      '.',
      ',',
      '/',
      '000',
      '\u00a0',
      'İ',
      '😀',
    ],
  );

  test('is read or refused with a column inside it', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 400 }), readOrRefuse), { numRuns: 2000 });
  });

  test('made of pieces of the notation, too', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 20 }), (parts) => readOrRefuse(parts.join(''))),
      { numRuns: 10_000 },
    );
  });

  test.each(['(', '9', '1 ', '1/', ' ', '-', 'a-', 'or ', '5 or ', '(1-)', '1 1/2 '])(
    '"%s" 10,000 times over is refused',
    (piece) => {
      expect(() => parseRange(piece.repeat(10_000))).toThrow('at most 300 characters');
    },
  );

  test.each(['(', '9', '1 ', '1/', ' ', '-', 'a-', 'or ', '(1-)'])(
    '"%s" to the longest text that is looked at is refused',
    (piece) => {
      expect(() => parseRange(piece.repeat(Math.floor(300 / piece.length)))).toThrow(RangeNotationError);
    },
  );
});

function millimetres(extent: Extent): readonly number[] {
  return numbersOf(extent).map((one) => toCanonical(one, extent.unit, 'mm'));
}

function usualOf(extent: Extent): readonly number[] {
  if (extent.form === 'alternatives')
    return extent.values.filter(({ how }) => how === 'usually').map((one) => one.value);
  if (extent.form === 'single') return [extent.typical];
  if (extent.form === 'span') return [extent.low, extent.high];
  return [extent.form === 'up-to' ? extent.high : extent.low];
}
