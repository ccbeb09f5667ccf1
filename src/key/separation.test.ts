import { describe, expect, test } from 'vitest';
import { keyFiles } from '../../tests/support/key-files.ts';
import { edited } from '../../tests/support/small-key.ts';
import { readKey } from './folder.ts';
import { apartAmong, separationOf } from './separation.ts';
import type { Character, Taxon } from './types.ts';

/** The small key's first two taxa with these traits in one character. */
function separation(character: string, one: object | undefined, other: object | undefined): string {
  const trait = (given: object | undefined) => given && { source: ['memory'], ...given };
  const key = readKey(
    edited(
      ['taxa.json', `taxa[0].traits.${character}`, trait(one)],
      ['taxa.json', `taxa[1].traits.${character}`, trait(other)],
    ),
  );
  const [a, b] = key.taxa as readonly [Taxon, Taxon];
  const known = key.characters.find(({ id }) => id === character) as Character;
  expect(separationOf(b, a, known)).toBe(separationOf(a, b, known));
  return separationOf(a, b, known);
}

describe('states', () => {
  const [cane, grass, herb] = [['tall-cane'], ['grass'], ['leafy-herb']];
  test.each<[object | undefined, object | undefined, string]>([
    [{ usually: cane }, { usually: grass }, 'apart'],
    [{ usually: cane, rarely: herb }, { usually: grass }, 'apart'],
    [{ usually: cane, rarely: grass }, { usually: grass }, 'almost'],
    [{ usually: cane, sometimes: herb }, { usually: grass, rarely: herb }, 'almost'],
    [{ usually: cane }, { usually: cane }, 'alike'],
    [{ usually: cane }, { usually: [...cane, ...grass] }, 'alike'],
    [{ usually: [...cane, ...herb] }, { usually: [...cane, ...grass] }, 'partly'],
    [{ sometimes: cane }, { usually: cane }, 'alike'],
    [{ usually: cane }, { applies: false }, 'unknown'],
    [{ usually: cane }, undefined, 'unknown'],
  ])('%j and %j are %s', (one, other, expected) => {
    expect(separation('growth-form', one, other)).toBe(expected);
  });
});

describe('ranges', () => {
  test.each([
    ['1-2 m', '3-4 m', 'apart'],
    ['1-2 m', '10-15 ft', 'apart'],
    ['1-2(-3) m', '(2.5-)4-5 m', 'almost'],
    ['1-2 m', '2-4 m', 'apart'],
    ['1-2(-2.5) m', '2-4 m', 'almost'],
    ['1-4 m', '3-12 m', 'partly'],
    ['1-4 m', '1-5 m', 'alike'],
    ['100-400 cm', '1-4 m', 'alike'],
  ])('%s and %s are %s', (one, other, expected) => {
    expect(separation('height', { range: one }, { range: other })).toBe(expected);
  });
});

test('all pairs of a real key are found apart at once just where some character keeps them apart', () => {
  const { taxa, characters } = readKey(keyFiles('keys/streambank'));
  const apart = apartAmong(taxa, characters);
  let together = 0;
  taxa.forEach((one, a) => {
    taxa.forEach((other, b) => {
      const expected = characters.some((character) => separationOf(one, other, character) === 'apart');
      expect(apart(a, b), `${one.name} and ${other.name}`).toBe(expected);
      if (!expected) together++;
    });
  });
  // None is apart from itself, and a few pairs are not from each other.
  expect(together).toBeGreaterThan(taxa.length);
  expect(together).toBeLessThan(taxa.length ** 2 / 2);
});
