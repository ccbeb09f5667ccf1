// The vector table of botanical ranges, as the contributor guides of Flora of China and Flora of Nepal lay the notation
// down (as summarised when this project's standards were gathered); the row marked "memory" is the form of some western
// floras, from memory.
import { describe, expect, test } from 'vitest';
import { parseRange, RangeNotationError } from './index.ts';

const guides = 'contributor guides of Flora of China and Flora of Nepal';

describe('botanical notation', () => {
  test.each([
    ['(1-)2-6(-8) cm', guides, { form: 'span', min: 1, low: 2, high: 6, max: 8, unit: 'cm' }],
    ['3--5(--7) cm', guides, { form: 'span', low: 3, high: 5, max: 7, unit: 'cm' }],
    [
      '2–6 × 1–2 cm',
      guides,
      { form: 'span', low: 2, high: 6, unit: 'cm', across: { form: 'span', low: 1, high: 2, unit: 'cm' } },
    ],
    ['to 4 m', guides, { form: 'up-to', high: 4, unit: 'm' }],
    ['ca. 10 m', guides, { form: 'single', typical: 10, approximate: true, unit: 'm' }],
    ['5 or 10', guides, { form: 'alternatives', values: [usual(5), usual(10)], unit: 'count' }],
    ['5(or 10)', guides, { form: 'alternatives', values: [usual(5), rare(10)], unit: 'count' }],
    ['(3 or)4', guides, { form: 'alternatives', values: [rare(3), usual(4)], unit: 'count' }],
    ['(0.5)1–3(5) m', 'memory', { form: 'span', min: 0.5, low: 1, high: 3, max: 5, unit: 'm' }],
    ['3--5-lobed', guides, { form: 'span', low: 3, high: 5, unit: 'count', suffix: 'lobed' }],
  ])('reads %s (%s)', (text, _source, range) => {
    expect(parseRange(text)).toStrictEqual(range);
  });

  test(`refuses the descending 6–2 cm (${guides})`, () => {
    expect(() => parseRange('6–2 cm')).toThrow(RangeNotationError);
    expect(() => parseRange('6–2 cm')).toThrow('column 3: expected a value of at least 6');
  });
});

function usual(value: number) {
  return { value, how: 'usually' };
}

function rare(value: number) {
  return { value, how: 'rarely' };
}
