import { describe, expect, test } from 'vitest';
import { smallKey } from '../../tests/support/small-key.ts';
import { readKey } from './folder.ts';
import { lookupLanguage, matchLanguage } from './language.ts';
import { languageFor, translate } from './text.ts';

describe('lookupLanguage', () => {
  // The rules of RFC 4647 lookup, section 3.4, from memory; the row with private subtags follows that section's example.
  test.each<[string, string[], string | undefined]>([
    ['es-MX', ['en', 'es'], 'es'],
    ['es-419', ['en', 'es'], 'es'],
    ['ES-mx', ['en', 'es-MX'], 'es-MX'],
    ['es', ['en', 'es-US'], undefined],
    ['zh-Hant-TW', ['en', 'zh-Hant'], 'zh-Hant'],
    ['fr', ['en', 'es'], undefined],
    ['zh-Hant-CN-x-private1-private2', ['zh-Hant-CN-x-private1', 'zh-Hant'], 'zh-Hant-CN-x-private1'],
    ['zh-Hant-CN-x-private1-private2', ['zh-Hant-CN-x', 'zh-Hant-CN'], 'zh-Hant-CN'],
    ['', ['en'], undefined],
    ['e', ['en'], undefined],
    ['*', ['en'], undefined],
  ])('%s among %j gives %s', (wanted, held, expected) => {
    expect(lookupLanguage(wanted, held)).toBe(expected);
  });
});

describe('matchLanguage', () => {
  test.each<[string, string[], string | undefined]>([
    ['es', ['en', 'es-US'], 'es-US'],
    ['es-MX', ['en', 'es-US', 'es-ES'], 'es-US'],
    ['es-MX', ['en', 'es-US', 'es'], 'es'],
    ['eng', ['en'], undefined],
    ['fr', ['en', 'es'], undefined],
  ])('%s among %j gives %s, by the first subtag at last (ours)', (wanted, held, expected) => {
    expect(matchLanguage(wanted, held)).toBe(expected);
  });
});

describe('translate', () => {
  const key = readKey(smallKey());

  test.each([
    ['es', 'Altura'],
    ['es-MX', 'Altura'],
    ['ES-419', 'Altura'],
    ['en', 'Height'],
    ['en-GB', 'Height'],
    ['fr', 'Height'],
    ['', 'Height'],
    ['__proto__', 'Height'],
  ])('gives a sentence in %s as %s', (language, expected) => {
    expect(translate(key, language, 'Height')).toBe(expected);
  });

  test('gives a sentence without a translation as it is, and so one that was never in the key', () => {
    expect(translate(key, 'es', 'Growth form')).toBe('Growth form');
    expect(translate(key, 'es', 'toString')).toBe('toString');
  });

  test("says which of the key's languages serves", () => {
    expect(['es-MX', 'en', 'fr'].map((language) => languageFor(key, language))).toEqual(['es', 'en', 'en']);
  });
});
