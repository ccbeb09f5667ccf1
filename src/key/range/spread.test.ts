import { describe, expect, test } from 'vitest';
import { UnitError } from '../units.ts';
import { parseRange, spreadOf } from './index.ts';

/** The rules that fill gaps are this project's own; the numbers here are worked by hand from them. */
describe('the spread of a range', () => {
  test.each([
    ['what is stated stays', '(1-)2-6(-8) cm', { min: 1, low: 2, high: 6, max: 8 }],
    ['an approximate span stays', 'ca. 2-6 cm', { low: 2, high: 6 }],
    ['an upper limit starts at 0.4 of it', 'to 5 m', { low: 2, high: 5 }],
    ['and keeps its exception', 'to 5(-8) m', { low: 2, high: 5, max: 8 }],
    ['a lower limit reaches to 2.5 times it', 'at least 2 m', { low: 2, high: 5 }],
    ['about a value is 0.8 to 1.25 of it', 'ca. 10 m', { low: 8, high: 12.5 }],
    ['a value alone is the same', '10 m', { low: 8, high: 12.5 }],
    ['a span of no width is the same', '10-10 m', { low: 8, high: 12.5 }],
    [
      'a value does not reach past the middle to its exceptions',
      '(9-)16(-25) m',
      { min: 9, low: 12.8, high: 20, max: 25 },
    ],
    ['however close they are', '(81-)100(-121) m', { min: 81, low: 90, high: 110, max: 121 }],
    ['alternatives go from the smallest to the largest', '5 or 10', { low: 5, high: 10 }],
    ['rare alternatives are exceptions', '(2 or)5 or 10(or 12)', { min: 2, low: 5, high: 10, max: 12 }],
    ['and one usual alternative is a value alone', '10(or 20)', { low: 8, high: 12.5, max: 20 }],
    ['a zero is a twentieth of the smallest number above it', '0-10 mm', { low: 0.5, high: 10 }],
    ['also as an exception', '(0-)10-80 mm', { min: 0.5, low: 10, high: 80 }],
    ['also as the usual value', '0(-20) mm', { low: 0.8, high: 1.25, max: 20 }],
    ['also as an alternative', '0 or 2 or 10', { low: 0.1, high: 10 }],
    ['and so below a rare one', '(0 or)5', { min: 0.25, low: 4, high: 6.25 }],
  ])('%s: %s', (_rule, text, spread) => {
    expect(rounded(spreadOf(parseRange(text)))).toStrictEqual(spread);
  });

  test('is given in the unit asked for', () => {
    expect(rounded(spreadOf(parseRange('(1-)2-6(-8) cm'), 'mm'))).toStrictEqual({
      min: 10,
      low: 20,
      high: 60,
      max: 80,
    });
    expect(rounded(spreadOf(parseRange('5-10 ft'), 'm'))).toStrictEqual({ low: 1.524, high: 3.048 });
    expect(() => spreadOf(parseRange('5 or 10'), 'cm')).toThrow(UnitError);
  });

  test('of a width is asked for by itself', () => {
    const { across } = parseRange('2–6 × 1–2 cm');
    expect(across && spreadOf(across, 'mm')).toEqual({ low: 10, high: 20 });
  });

  test('is frozen and holds nothing else', () => {
    const spread = spreadOf(parseRange('ca. 10 m'));
    expect(Object.isFrozen(spread)).toBe(true);
    expect(Object.keys(spread)).toEqual(['low', 'high']);
  });
});

/** Twelve digits: the rules are simple products, whose last bit does not matter. */
function rounded(spread: object): object {
  return Object.fromEntries(Object.entries(spread).map(([name, value]) => [name, Number(value.toPrecision(12))]));
}
