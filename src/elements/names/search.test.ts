import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import { NameSearch } from './search.ts';

const search = new NameSearch(streambank().key);
const ids = (query: string) => search.find(query).taxa.map((taxon) => taxon.id);

describe('a name', () => {
  // The names, their languages and the slips are the demonstration key's own, or made from them here.
  test.each([
    ['giant reed', 'arundo-donax'],
    ['GIANT REED', 'arundo-donax'],
    ['Arundo donax', 'arundo-donax'],
    ['arrundo', 'arundo-donax'],
    ['gaint reed', 'arundo-donax'],
    ['caña común', 'arundo-donax'],
    ['cana comun', 'arundo-donax'],
    ['carizo gigante', 'arundo-donax'],
    ['carizo', 'arundo-donax'],
    ['elephant ear', 'colocasia-esculenta'],
    ['elefant ear', 'colocasia-esculenta'],
    ['elephants ears', 'colocasia-esculenta'],
    ['oreja de elefante', 'colocasia-esculenta'],
    ['oreja elefante', 'colocasia-esculenta'],
    ['collocasia', 'colocasia-esculenta'],
    ['arow arum', 'peltandra-virginica'],
    ['arrow arum', 'peltandra-virginica'],
    ['fragmites', 'phragmites-australis-subsp-americanus'],
    ['switch grass', 'panicum-virgatum'],
    ['switchgras', 'panicum-virgatum'],
    ['water hyacinth', 'pontederia-crassipes'],
    ['waterhyacinth', 'pontederia-crassipes'],
    ['lirio acuatico', 'pontederia-crassipes'],
  ])('"%s" finds %s', (typed, taxon) => {
    expect(ids(typed)).toContain(taxon);
  });

  // Some hundreds of searches: slow beside other work, hence the longer limit.
  test('of any kind in the key finds its plant as written, and the shown ones with a letter dropped', {
    timeout: 60_000,
  }, () => {
    for (const taxon of streambank().key.taxa) {
      const names = [taxon.name, ...[...taxon.common.values()].flat(), ...taxon.synonyms, ...taxon.misspellings];
      for (const name of names) {
        expect(ids(name), name).toContain(taxon.id);
      }
      const shown = [taxon.name, ...[...taxon.common.values()].flatMap(([first]) => first ?? [])];
      for (const name of shown) {
        if (name.length < 8) continue;
        const dropped = name.slice(0, 4) + name.slice(5);
        expect(ids(dropped), dropped).toContain(taxon.id);
      }
    }
  });

  test('that several plants have comes with all of them first, natives as well as invaders', () => {
    const { shared, taxa } = search.find('Giant Cane');
    expect(shared?.taxa.map((taxon) => taxon.status).sort()).toEqual(['invasive', 'native']);
    expect(taxa.slice(0, shared?.taxa.length)).toEqual(shared?.taxa);
    expect(search.find('gaint cane').shared?.name).toBe(shared?.name);
  });

  test('that is a usual misspelling of a shared one still shows every plant that has it', () => {
    const { shared, taxa } = search.find('elefant ear');
    expect(shared?.taxa.length).toBeGreaterThan(1);
    expect(taxa).toEqual(expect.arrayContaining([...(shared?.taxa ?? [])]));
    expect(taxa.map((taxon) => taxon.id)).toContain('colocasia-esculenta');
  });

  test('written as one word or two may be two plants, and both are shown', () => {
    expect(ids('cocoyam')).toEqual(expect.arrayContaining(['colocasia-esculenta', 'xanthosoma-sagittifolium']));
  });

  test('that nobody has, and nothing at all, find no plant', () => {
    expect(ids('xylophone')).toEqual([]);
    expect(ids('  ')).toEqual([]);
    expect(ids('!?')).toEqual([]);
    expect(ids('<img src=x>')).toEqual([]);
  });

  test('begun with a few letters finds names that begin so', () => {
    expect(ids('aru')).toContain('arundo-donax');
    expect(ids('aru').length).toBeLessThan(10);
  });
});
