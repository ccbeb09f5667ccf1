import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parameterIn, withParameter } from './address.ts';

// What a query means is read by URLSearchParams (WHATWG URL Standard, application/x-www-form-urlencoded), as Node has it.
const word = fc.stringMatching(/^[a-z +%&=é?#]{0,6}$/);
const query = fc.array(fc.tuple(word, word), { maxLength: 5 }).map((pairs) => {
  const text = `${new URLSearchParams(pairs)}`;
  return text ? `?${text}` : '';
});
const name = word.filter((text) => text !== '');

describe('a parameter of an address', () => {
  test('is read as URLs read it', () => {
    fc.assert(
      fc.property(query, name, (search, one) => {
        expect(parameterIn(search, one) ?? null).toBe(new URLSearchParams(search).get(one));
      }),
    );
  });

  test('is written as URLs would, and taken out again', () => {
    fc.assert(
      fc.property(query, name, word, (search, one, value) => {
        const want = new URLSearchParams(search);
        want.set(one, value);
        expect([...new URLSearchParams(withParameter(search, one, value))]).toEqual([...want]);
        want.delete(one);
        expect([...new URLSearchParams(withParameter(search, one, undefined))]).toEqual([...want]);
      }),
    );
  });

  test('leaves the others as they stand, to the last sign', () => {
    const search = '?a&b=%20x+y&plant=1&c=%zz&plant=2&=d';
    expect(withParameter(search, 'plant', '3_x')).toBe('?a&b=%20x+y&plant=3_x&c=%zz&=d');
    expect(withParameter(search, 'plant', undefined)).toBe('?a&b=%20x+y&c=%zz&=d');
    expect(withParameter('?a', 'plant', '1e+21')).toBe('?a&plant=1e%2B21');
    expect(withParameter('?plant=1', 'plant', undefined)).toBe('');
  });
});
