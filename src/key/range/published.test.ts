// Measures as published floras and fact sheets give them; sources by id in the fixture.
import { describe, expect, test } from 'vitest';
import published from '../../../tests/fixtures/published-ranges.json' with { type: 'json' };
import { numbersOf, parseRange, printRange, RangeNotationError, spreadOf } from './index.ts';

const texts = Object.keys(published.ranges);

/** Set down by hand from the printed text: [min, low, high, max] with gaps, or one value; `ca` where approximate. */
const byHand: readonly (readonly [text: string, form: string, numbers: object])[] = [
  ['1-2.5 m', 'span', { low: 1, high: 2.5 }],
  ['0.15-1.2 m', 'span', { low: 0.15, high: 1.2 }],
  ['9.1-15.2 m', 'span', { low: 9.1, high: 15.2 }],
  ['25-85 cm', 'span', { low: 25, high: 85 }],
  ['21-70.5 cm', 'span', { low: 21, high: 70.5 }],
  ['0.7-6.1 cm', 'span', { low: 0.7, high: 6.1 }],
  ['4.5-28.5 cm', 'span', { low: 4.5, high: 28.5 }],
  ['0.4-1.0 mm', 'span', { low: 0.4, high: 1 }],
  ['2.5-5.0 mm', 'span', { low: 2.5, high: 5 }],
  ['5.5-11.0 mm', 'span', { low: 5.5, high: 11 }],
  ['(2-)3-10 m', 'span', { min: 2, low: 3, high: 10 }],
  ['(70-)100-210 cm', 'span', { min: 70, low: 100, high: 210 }],
  ['(0.2-)0.5-1 cm', 'span', { min: 0.2, low: 0.5, high: 1 }],
  ['(0.4-)1.2-4 cm', 'span', { min: 0.4, low: 1.2, high: 4 }],
  ['(1.5-)2-6 mm', 'span', { min: 1.5, low: 2, high: 6 }],
  ['(0-)10-80 mm', 'span', { min: 0, low: 10, high: 80 }],
  ['1-1.5(-5) m', 'span', { low: 1, high: 1.5, max: 5 }],
  ['0.36-0.68(-0.88) m', 'span', { low: 0.36, high: 0.68, max: 0.88 }],
  ['25-50(-100) cm', 'span', { low: 25, high: 50, max: 100 }],
  ['32-85(-106) cm', 'span', { low: 32, high: 85, max: 106 }],
  ['2-7(-9) cm', 'span', { low: 2, high: 7, max: 9 }],
  ['1.0-2.3(-2.9) cm', 'span', { low: 1, high: 2.3, max: 2.9 }],
  ['2.6-4.2(-4.8) mm', 'span', { low: 2.6, high: 4.2, max: 4.8 }],
  ['1-4(-7.7) mm', 'span', { low: 1, high: 4, max: 7.7 }],
  ['(0.3-)0.8-2(-4) m', 'span', { min: 0.3, low: 0.8, high: 2, max: 4 }],
  ['(1.5-)4.2-10.7(-13.5) cm', 'span', { min: 1.5, low: 4.2, high: 10.7, max: 13.5 }],
  ['(8-)10-25(-35) cm', 'span', { min: 8, low: 10, high: 25, max: 35 }],
  ['(10-)30-80(-130) mm', 'span', { min: 10, low: 30, high: 80, max: 130 }],
  ['(4-)8-11(-16) mm', 'span', { min: 4, low: 8, high: 11, max: 16 }],
  ['to 6 m', 'up-to', { high: 6 }],
  ['to 55 m', 'up-to', { high: 55 }],
  ['to 18.3 m', 'up-to', { high: 18.3 }],
  ['to 3.8 cm', 'up-to', { high: 3.8 }],
  ['to 150 mm', 'up-to', { high: 150 }],
  ['up to 1.5 m', 'up-to', { high: 1.5 }],
  ['up to 60 cm', 'up-to', { high: 60 }],
  ['under 1.3 cm', 'up-to', { high: 1.3 }],
  ['less than 10 cm', 'up-to', { high: 10 }],
  ['to about 15 m', 'up-to', { high: 15, approximate: true }],
  ['to about 30.5 cm', 'up-to', { high: 30.5, approximate: true }],
  ['up to about 1 m', 'up-to', { high: 1, approximate: true }],
  ['to about 5 mm', 'up-to', { high: 5, approximate: true }],
  ['over 3 m', 'at-least', { low: 3 }],
  ['over 30.5 m', 'at-least', { low: 30.5 }],
  ['about 20 cm', 'single', { typical: 20, approximate: true }],
  ['about 0.25 m', 'single', { typical: 0.25, approximate: true }],
  ['about 1.6 mm', 'single', { typical: 1.6, approximate: true }],
  ['0.95 cm', 'single', { typical: 0.95 }],
  ['13 mm', 'single', { typical: 13 }],
  ['20 m', 'single', { typical: 20 }],
];

describe('published measures', () => {
  test.each(byHand)('%s is a %s', (text, form, numbers) => {
    expect(texts).toContain(text);
    expect(parseRange(text)).toStrictEqual({ form, ...numbers, unit: text.slice(text.lastIndexOf(' ') + 1) });
  });

  test('all that are a range are read: each number, in order, in its unit', () => {
    expect(texts).toHaveLength(505);
    for (const text of texts) {
      const range = parseRange(text);
      expect([text, ...numbersOf(range)]).toEqual([text, ...(text.match(/\d+(\.\d+)?/g) ?? []).map(Number)]);
      expect(text.endsWith(` ${range.unit}`)).toBe(true);
    }
  });

  test('all keep their meaning when printed', () => {
    for (const text of texts) expect(parseRange(printRange(parseRange(text)))).toStrictEqual(parseRange(text));
  });

  test('all have a spread around every usual value, rising from above zero', () => {
    for (const text of texts) {
      const { min, low, high, max } = spreadOf(parseRange(text), 'mm');
      const rising = [0, min, low, high, max].filter((value) => value !== undefined);
      expect([text, ...rising]).toEqual([text, ...[...new Set(rising)].sort((a, b) => a - b)]);
    }
  });

  test.each(Object.entries(published.refused))(
    '%s says more than a range can: refused at its column',
    (text, { column }) => {
      expect(() => parseRange(text)).toThrow(RangeNotationError);
      expect(() => parseRange(text)).toThrow(`column ${column}: `);
    },
  );

  test('every measure names its source', () => {
    const known = new Set([...Object.keys(published.sources), 'memory']);
    const named = [
      ...Object.values(published.ranges),
      ...Object.values(published.refused).map(({ sources }) => sources),
    ];
    expect(named.filter((ids) => ids.length === 0 || ids.some((id) => !known.has(id)))).toEqual([]);
  });
});
