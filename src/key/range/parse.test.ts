import { describe, expect, test } from 'vitest';
import { parseRange, RangeNotationError } from './index.ts';

const error = (text: string): RangeNotationError => {
  try {
    parseRange(text);
  } catch (caught) {
    if (caught instanceof RangeNotationError) return caught;
    throw caught;
  }
  throw new Error(`"${text}" was read`);
};

describe('other ways to write the same', () => {
  test.each([
    ['(1–)2–6(–8) cm', '(1-)2-6(-8) cm'],
    ['(1--)2--6(--8)cm', '(1-)2-6(-8) cm'],
    ['  ( 1 - ) 2 - 6 ( - 8 )\u00a0CM. ', '(1-)2-6(-8) cm'],
    ['(1)2\u22126(8) cm', '(1-)2-6(-8) cm'],
    ['2 to 6 cm', '2–6 cm'],
    ['2.0–6.00 cm', '2–6 cm'],
    ['2–6 cm × 1–2 cm', '2–6 × 1–2 cm'],
    ['2–6x1–2 cm', '2–6 × 1–2 cm'],
    ['2-6 X 1-2cm', '2–6 × 1–2 cm'],
    ['up to 4 m', 'to 4 m'],
    ['at most 4 m', 'to 4 m'],
    ['under 4 m', 'to 4 m'],
    ['less than 4 m', 'to 4 m'],
    ['over 3 m', 'at least 3 m'],
    ['more than 3 m', 'at least 3 m'],
    ['c. 10 m', 'ca. 10 m'],
    ['about 10 m', 'ca. 10 m'],
    ['circa 10 m', 'ca. 10 m'],
    ['± 10 m', 'ca. 10 m'],
    ['~10 m', 'ca. 10 m'],
    ['up to about 4 m', 'to ca. 4 m'],
    ['(3–)4', '(3)4'],
    ['3-5-lobed', '3--5-lobed'],
    ['5 feet', '5 ft'],
    ['1 inch', '1 in'],
    ['1 1/2-4 inches', '1.5–4 in'],
    ['1½–4 in.', '1.5–4 in'],
    ['1 ½ – 4 in', '1.5–4 in'],
    ['.5–.75 in', '1/2–3/4 in'],
    ['⅜ in', '3/8 in'],
    [`5'6"`, '5 ft 6 in'],
    ['5′ 6″', '5 ft 6 in'],
    ['66 in', '5 ft 6 in'],
    ['4 ft 0 in–5 ft 6 1/2 in(–6 ft 1 in)', '48–66.5(–73) in'],
  ])('"%s" means "%s"', (text, same) => {
    expect(parseRange(text)).toStrictEqual(parseRange(same));
  });
});

describe('forms beyond the guides', () => {
  test.each([
    ['5(-7)', { form: 'single', typical: 5, max: 7, unit: 'count' }],
    ['(4-)5(-7)-lobed', { form: 'single', min: 4, typical: 5, max: 7, unit: 'count', suffix: 'lobed' }],
    ['to 4(-6) m', { form: 'up-to', high: 4, max: 6, unit: 'm' }],
    ['at least 3 ft', { form: 'at-least', low: 3, unit: 'ft' }],
    ['ca. 2-6 cm', { form: 'span', low: 2, high: 6, unit: 'cm', approximate: true }],
    ['6-20 ft', { form: 'span', low: 6, high: 20, unit: 'ft' }],
    ['1 1/3 ft', { form: 'single', typical: 4 / 3, unit: 'ft' }],
    ['2-6(-10) in', { form: 'span', low: 2, high: 6, max: 10, unit: 'in' }],
    ['0-10 mm', { form: 'span', low: 0, high: 10, unit: 'mm' }],
    ['5-5', { form: 'span', low: 5, high: 5, unit: 'count' }],
    ['3-5-lobed-toothed', { form: 'span', low: 3, high: 5, unit: 'count', suffix: 'lobed-toothed' }],
    [
      '(2 or 3 or)4 or 5(or 6)',
      {
        form: 'alternatives',
        values: [2, 3, 4, 5, 6].map((value) => ({ value, how: value === 4 || value === 5 ? 'usually' : 'rarely' })),
        unit: 'count',
      },
    ],
    [
      '2-6 cm × ca. 5 mm',
      {
        form: 'span',
        low: 2,
        high: 6,
        unit: 'cm',
        across: { form: 'single', typical: 5, unit: 'mm', approximate: true },
      },
    ],
  ])('reads %s', (text, range) => {
    expect(parseRange(text)).toStrictEqual(range);
  });

  test('takes the unit handed in only where the text names none', () => {
    expect(parseRange('2-6', 'm').unit).toBe('m');
    expect(parseRange('2-6 cm', 'm').unit).toBe('cm');
    expect(parseRange('2-6 × 1-2', 'm').across?.unit).toBe('m');
    expect(parseRange('3-5-lobed', 'm').unit).toBe('count');
    expect(parseRange('under 5', 'm')).toStrictEqual({ form: 'up-to', high: 5, unit: 'm' });
  });

  test('gives frozen ranges, all the way down', () => {
    const range = parseRange('5 or 10 × 1–2 cm');
    expect(Object.isFrozen(range) && Object.isFrozen(range.across)).toBe(true);
    expect(range.form === 'alternatives' && Object.isFrozen(range.values) && range.values.every(Object.isFrozen)).toBe(
      true,
    );
  });
});

describe('a text that is no range is refused at its column', () => {
  test.each([
    ['', 1, 'a number'],
    ['   ', 4, 'a number'],
    ['cm', 1, 'a number'],
    ['tall', 1, 'a number'],
    ['NaN cm', 1, 'a number'],
    ['Infinity', 1, 'a number'],
    ['-5 cm', 1, 'never negative'],
    ['−5 cm', 1, 'never negative'],
    ['2---3 cm', 4, 'never negative'],
    ['(-8)', 2, 'never negative'],
    ['0 cm', 1, 'above zero'],
    ['to 0', 4, 'above zero'],
    ['0-0 cm', 1, 'above zero'],
    ['2000000 m', 1, '1,000,000'],
    [`${'9'.repeat(299)}`, 1, '1,000,000'],
    ['0.0000001 m', 1, '0.000001'],
    ['1,5 cm', 2, 'decimal point'],
    ['1e5 cm', 2, 'a unit'],
    ['1.2.3 cm', 4, 'a unit'],
    ['2–6 km', 5, 'a unit'],
    ['2–6 cm long', 8, 'the end'],
    ['2–6 cm 8', 8, 'the end'],
    ['3-cm', 3, 'a number'],
    ['2-', 3, 'a number'],
    ['2–6–8 cm', 4, 'a unit'],
    ['2-6 ± 1 cm', 5, 'a unit'],
    ['(1-2-6 cm', 4, 'after an exceptional value'],
    ['(1-)', 5, 'a number'],
    ['2-6(-8 cm', 8, '")"'],
    ['2-6(-8) (-10) cm', 9, 'a unit'],
    ['(3-)2-6 cm', 5, 'above 3'],
    ['(2-)2-6 cm', 5, 'above 2'],
    ['2-6(-6) cm', 6, 'above 6'],
    ['2-6(-5) cm', 6, 'above 6'],
    ['5 or 3', 6, 'above 5'],
    ['5(or 5)', 6, 'above 5'],
    ['(3 or 4)5', 8, '"or"'],
    ['(3 or)4-5', 8, 'a unit'],
    ['5(or)', 5, 'a number'],
    ['under 5', 1, '"to" or "at least"'],
    ['over 3-lobed', 1, '"to" or "at least"'],
    ['2-6 cm × 5', 11, 'a unit'],
    ['2-6 × 1-2 × 3 cm', 11, 'a unit'],
    ['2 × 5 ft 6 in', 5, 'unit of the length'],
    ['3-5-lobed × 2', 11, 'the end'],
    ['3-5 × 2-lobed', 8, 'the end'],
    ['3-5 cm-lobed', 7, 'the end'],
    ['1/7 in', 3, 'halves'],
    ['1/0 in', 3, 'halves'],
    ['1/ in', 3, 'halves'],
    ['3/2 in', 1, 'between 0 and 1'],
    ['2/2 in', 1, 'between 0 and 1'],
    ['1 0/2 in', 3, 'between 0 and 1'],
    ['5 ft 6', 7, '"in"'],
    ['5 ft 12 in', 6, 'less than 12'],
    ['5.5 ft 6 in', 1, 'whole feet'],
    ['1001 ft 6 in', 1, 'at most 1000'],
    ['5-6 ft 6 in', 3, 'all numbers in feet and inches'],
    ['5 ft 6 in cm', 11, 'the end'],
    ['2–6 \u{1f33f}', 5, 'a number, dash'],
  ])('"%s" at column %i', (text, column, expected) => {
    expect(error(text).column).toBe(column);
    expect(error(text).expected).toContain(expected);
  });

  test('and the message says what was found, and repeats a long text only in part', () => {
    expect(error('2–6 km').message).toBe(
      '"2–6 km", column 5: expected a unit (mm, cm, m, in or ft) or the end, found "km"',
    );
    expect(error('2–6(').message).toContain('found the end');
    expect(error('7'.repeat(10_000)).message.length).toBeLessThan(200);
  });

  test('a text of more than 300 characters is not looked at', () => {
    expect(error(`2${' '.repeat(300)}`).expected).toBe('at most 300 characters');
    expect(parseRange(`2${' '.repeat(299)}`)).toStrictEqual(parseRange('2'));
  });
});
