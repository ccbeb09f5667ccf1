import { describe, expect, test } from 'vitest';
import { edited, smallKey } from '../../tests/support/small-key.ts';
import { readKey } from './folder.ts';
import { foldName, sharedNames } from './names.ts';

describe('foldName', () => {
  test.each([
    ['Giant Reed', 'giant reed'],
    ['caña común', 'cana comun'],
    ["Elephant's-ear", 'elephants ear'],
    ['elephant’s ear', 'elephants ear'],
    ['  river   cane. ', 'river cane'],
    ['Phragmites (common reed)', 'phragmites common reed'],
    ['ﬂower', 'flower'],
    ['芦苇', '芦苇'],
    ['…', ''],
  ])('%s becomes %s', (name, folded) => {
    expect(foldName(name)).toBe(folded);
    expect(foldName(folded)).toBe(folded);
  });
});

describe('sharedNames', () => {
  test('finds names that several plants have, however spelt', () => {
    const shared = sharedNames(readKey(smallKey()));
    expect([...shared].map(([folded, { name, taxa }]) => [folded, name, taxa.map(({ id }) => id)])).toEqual([
      ['giant cane', 'giant cane', ['arundo-donax', 'arundinaria-gigantea']],
      ['carrizo', 'carrizo', ['arundo-donax', 'phragmites-australis-subsp-americanus']],
    ]);
  });

  test('looks across languages, and does not count a plant twice', () => {
    const files = edited(
      ['taxa.json', 'taxa[0].common', { en: ['carrizo'], es: ['Carrizo'] }],
      ['taxa.json', 'taxa[1].common', { en: ['reed'], es: ['carrizo'] }],
      ['taxa.json', 'taxa[2].common', { en: ['river cane', 'River-Cane'] }],
    );
    expect([...sharedNames(readKey(files))].map(([folded, { taxa }]) => [folded, taxa.length])).toEqual([
      ['carrizo', 2],
    ]);
  });
});
