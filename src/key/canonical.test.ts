import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from './canonical.ts';

// RFC 8785, sections 3.2.2 and 3.2.4: the example with numbers, text and literals, and its bytes. Read in the test data
// of an implementation (docs.rs, canon-json 0.2.1, testdata), not in the RFC itself.
test('gives the bytes of the example in RFC 8785', () => {
  const input = String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`;
  const bytes = `7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 75 65 2c 66 61 6c 73 65 5d 2c 22 6e
    75 6d 62 65 72 73 22 3a 5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31 65 2b 33 30
    2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37 5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24
    5c 75 30 30 30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`;
  const hex = Buffer.from(canonicalJson(JSON.parse(input))).toString('hex');
  expect(hex).toBe(bytes.replaceAll(/\s/g, ''));
});

test('sorts fields by UTF-16 units, not by code points', () => {
  // U+1F600 is written with units from D83D on, which come before U+FB33.
  expect(canonicalJson({ '\uFB33': 1, '\u{1F600}': 2, '\u20AC': 3, 1: 4, '': 5 })).toBe(
    '{"":5,"1":4,"\u20AC":3,"\u{1F600}":2,"\uFB33":1}',
  );
});

test('means the same, whatever the order of fields', () => {
  const shuffled = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(shuffled);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([name, field]) => [name, shuffled(field)]),
    );
  };
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const text = canonicalJson(value);
      expect(canonicalJson(shuffled(value))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});
