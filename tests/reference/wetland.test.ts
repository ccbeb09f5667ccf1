// The five wetland indicator ratings, as the United States list defines them: since 2012 in words (ERDC/CRREL TN-12-1);
// in 1988 by the chance of finding a plant of the species in a wetland (archived page of the PLANTS database). The words
// for OBL and FAC are from memory, those for FACW, FACU and UPL were read.
import { describe, expect, test } from 'vitest';
import { readKey } from '../../src/key/index.ts';
import { keyFiles } from '../support/key-files.ts';

const RATINGS: readonly [code: string, words: string, chance1988: readonly [number, number]][] = [
  ['OBL', 'almost always in wetlands', [0.99, 1]],
  ['FACW', 'usually in wetlands, may occur elsewhere', [0.67, 0.99]],
  ['FAC', 'in wetlands and elsewhere', [0.34, 0.66]],
  ['FACU', 'usually elsewhere, may occur in wetlands', [0.01, 0.33]],
  ['UPL', 'almost never in wetlands', [0, 0.01]],
];

const { characters, taxa } = readKey(keyFiles('keys/streambank'));
const rating = characters.find(({ id }) => id === 'wetland-status');

describe('the wetland indicator status of the streambank key', () => {
  test.each(RATINGS)('%s is "%s"', (code, words) => {
    const state = rating?.states.find(({ id }) => id === code.toLowerCase());
    expect(state?.label.toLowerCase()).toBe(words);
    expect(state?.trade).toMatch(new RegExp(`^${code}, `));
  });

  test('is a scale from the wettest to the driest, as the chances of 1988 order it', () => {
    const order = [...RATINGS].sort((a, b) => b[2][0] - a[2][0]).map(([code]) => code.toLowerCase());
    expect(rating?.kind).toBe('scale');
    expect(rating?.states.map(({ id }) => id)).toEqual(order);
  });

  // "Subspecies and varieties take the species' rating": read in the account of the list. A plant that is not on it is
  // left out here, since it is not known to be of dry ground.
  test('is the same for all kinds of one species, and is never asked for', () => {
    const bySpecies = new Map<string, Set<string>>();
    for (const { name, traits } of taxa) {
      const trait = traits.get('wetland-status');
      if (trait === undefined) continue;
      const species = name.split(' subsp. ')[0] as string;
      const states = trait.kind === 'states' ? trait.states.map(({ state }) => state).join(' ') : trait.kind;
      bySpecies.set(species, (bySpecies.get(species) ?? new Set()).add(states));
    }
    for (const [species, states] of bySpecies) expect(states.size, species).toBe(1);
    expect(bySpecies.get('Phragmites australis')).toEqual(new Set(['facw']));
    expect(rating?.asked).toBe(false);
  });
});
