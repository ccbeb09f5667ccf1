// Syllables counted by spelling, against a dictionary of how words are said: see data/README.md.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { englishSyllables } from '../../src/key/readability/index.ts';
import { keyFiles } from '../support/key-files.ts';

const rows = readFileSync(new URL('data/syllables-cmudict.tsv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => row.split('\t') as [string, string]);
const right = (some: typeof rows) =>
  some.filter(([word, counts]) => counts.split(' ').map(Number).includes(englishSyllables(word))).length / some.length;

const advice = new Set(
  [...(keyFiles('keys/streambank').get('guidance.json') ?? '').matchAll(/"text": "([^"]+)"/g)].flatMap(
    ([, text = '']) => text.toLowerCase().match(/[a-z]+/g) ?? [],
  ),
);

test('words of the advice have the syllables that the dictionary gives them, but for one in a hundred', () => {
  const known = rows.filter(([word]) => advice.has(word));
  expect(known.length).toBeGreaterThan(700);
  expect(right(known)).toBeGreaterThan(0.99);
});

test('so have the other words of the key, which the rules were not fitted to, but for four in a hundred', () => {
  const others = rows.filter(([word]) => !advice.has(word));
  expect(others.length).toBeGreaterThan(400);
  expect(right(others)).toBeGreaterThan(0.96);
});
