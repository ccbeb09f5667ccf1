// What is proposed and what is told of a real key, by id. The numbers themselves are the engine's, and tested there.
import { describe, expect, test } from 'vitest';
import { keyFiles } from '../../tests/support/key-files.ts';
import { type Edit, edited } from '../../tests/support/small-key.ts';
import { readInquiry } from './answers.ts';
import { readKey } from './folder.ts';
import { identify } from './identify.ts';
import { prepareKey } from './prepared.ts';
import type { Character } from './types.ts';

const streambank = prepareKey(readKey(keyFiles('keys/streambank')));
const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const seen = (month: number, answers: readonly object[] = []) =>
  identify(streambank, readInquiry(streambank, { month, answers }));
const known = (id: string) => streambank.key.characters.find((one) => one.id === id) as Character;

describe.each(MONTHS)('in month %d', (month) => {
  const cane = { character: 'growth-form', states: ['tall-cane'] };

  test('nothing is proposed that needs digging, is only looked up, or cannot be seen', () => {
    for (const { next } of [seen(month), seen(month, [cane])]) {
      expect(next.length).toBeGreaterThan(5);
      for (const { character, effort } of next) {
        expect(effort).not.toBe('dig');
        expect(known(character)).toMatchObject({ asked: true, effort });
        expect(known(character).months).toContain(month);
      }
    }
    expect(seen(month, [cane]).next.map(({ character }) => character)).not.toContain('growth-form');
  });

  test('nothing of the kind is told as not looked at, nor what means nothing for the plant', () => {
    for (const { taxon, unseen } of seen(month, [cane]).standing) {
      const traits = streambank.key.taxa.find(({ id }) => id === taxon)?.traits;
      expect(unseen).not.toContain('growth-form');
      for (const id of unseen) {
        expect(known(id)).toMatchObject({ asked: true });
        expect(known(id).effort).not.toBe('dig');
        expect(known(id).months).toContain(month);
        expect(traits?.get(id)?.kind).toMatch(/^(states|range)$/);
      }
    }
  });
});

test.each([
  ['underground', 'corm', 'colocasia-esculenta'],
  ['wetland-status', 'obl', 'pontederia-cordata'],
])('%s is never asked for, and may be answered all the same', (character, state, taxon) => {
  const chance = (answers: readonly object[]) =>
    seen(6, answers).standing.find((one) => one.taxon === taxon)?.probability ?? 0;
  expect(chance([{ character, states: [state] }])).toBeGreaterThan(1.2 * chance([]));
});

describe('a character that applies only to some plants', () => {
  // The leaf-base mark is asked of canes and grasses.
  const applies = (growth: object | undefined) => {
    const edits: Edit[] = [
      ['taxa.json', 'taxa[1].traits.growth-form', growth],
      ['taxa.json', 'taxa[1].traits.leaf-base-mark', undefined],
    ];
    const { matrix, characterIndex } = prepareKey(readKey(edited(...edits)));
    return matrix.applies[(characterIndex.get('leaf-base-mark') ?? -1) * matrix.outside + 1];
  };

  test('means nothing for a plant that is never one of them', () => {
    expect(applies({ usually: ['leafy-herb'], source: ['memory'] })).toBe(0);
    expect(applies({ applies: false, source: ['memory'] })).toBe(0);
  });

  test('is merely unknown of a plant that may be one, or of which that is unknown', () => {
    expect(applies({ usually: ['leafy-herb'], rarely: ['grass'], source: ['memory'] })).toBe(1);
    expect(applies(undefined)).toBe(1);
  });
});
