import { expect, test } from 'vitest';
import { keyFiles } from '../../tests/support/key-files.ts';
import { readKey } from './read.ts';

test('reads a small key', () => {
  const key = readKey(keyFiles('tests/fixtures/small-key'));
  expect(key.taxa.map(({ id }) => id)).toEqual([
    'arundo-donax',
    'phragmites-australis-subsp-americanus',
    'arundinaria-gigantea',
  ]);
});
