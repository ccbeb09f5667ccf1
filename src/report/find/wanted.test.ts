import { describe, expect, test } from 'vitest';
import { answersOf, streambank } from '../../../tests/support/streambank.ts';
import { type Month, separationOf } from '../../key/index.ts';
import { PHOTOS, wantedPhotos } from './index.ts';

const key = streambank();
const even = (...taxa: string[]) => taxa.map((taxon) => ({ taxon, probability: 1 / taxa.length }));
const idsOf = (taxa: string[], month: Month = 9) => wantedPhotos(key, even(...taxa), month).map(({ id }) => id);

describe('the photographs asked for', () => {
  test('are those that show what tells the remaining plants apart, the most telling first', () => {
    // Taro and arrow arum differ in leaf stalk and veins; both stand in the same places.
    const [first, ...rest] = wantedPhotos(key, even('colocasia-esculenta', 'peltandra-virginica'), 2);
    expect(first?.id).toBe('leaf');
    expect(first?.settles).toContain('leaf-stalk');
    expect(rest.at(-1)?.separates).toBeLessThan(first?.separates as number);
  });

  // For common reed the Minnesota Aquatic Invasive Species Research Center asks for the whole stand, leaf sheaths, stem
  // colour and texture, a close-up of the ligule and the flower head (maisrc.umn.edu/phragmites-id, by notes of its text).
  test('of the kinds of common reed are those that an extension service asks for', () => {
    const ids = idsOf(['phragmites-australis-subsp-australis', 'phragmites-australis-subsp-americanus']);
    expect(ids).toEqual(expect.arrayContaining(['whole', 'stem', 'collar']));
    const settled = wantedPhotos(
      key,
      even('phragmites-australis-subsp-australis', 'phragmites-australis-subsp-americanus'),
      9,
    ).flatMap(({ settles }) => settles);
    expect(settled).toEqual(expect.arrayContaining(['dead-sheaths', 'stem-finish', 'ligule-length']));
  });

  test('never need digging, a broken leaf, or what is not there in the month', () => {
    const plants = key.key.taxa.map(({ id }) => id);
    for (const month of [1, 5, 9] as const)
      for (const plant of plants)
        for (const { id, settles } of wantedPhotos(key, even(plant), month)) {
          expect(PHOTOS).toContain(id);
          for (const one of settles) {
            const character = key.key.characters[key.characterIndex.get(one) as number];
            expect(character?.effort).not.toBe('dig');
            expect(['sap', 'underground']).not.toContain(character?.part);
            expect(character?.months).toContain(month);
          }
        }
    expect(idsOf(['arundo-donax', 'phragmites-australis-subsp-australis'], 1)).not.toContain('flower');
    expect(idsOf(['arundo-donax', 'phragmites-australis-subsp-australis'], 9)).toContain('flower');
  });

  test('are asked for of a settled plant too: its look-alikes are what a specialist must exclude', () => {
    const { identification } = answersOf('giant-reed').snapshot;
    const wanted = wantedPhotos(key, identification.standing, 9);
    expect(identification.verdict.kind).toBe('settled');
    expect(wanted[0]?.separates).toBeGreaterThan(0.5);
    expect(wanted.map(({ id }) => id)).toEqual(expect.arrayContaining(['whole', 'place']));
  });

  test('count a character for just the pairs that it separates', () => {
    const taxa = ['arundo-donax', 'phyllostachys-aurea'].map((id) => key.key.taxa[key.taxonIndex.get(id) as number]);
    const tells = { apart: 0.9, almost: 0.7, partly: 0.3, alike: 0, unknown: 0 };
    const [a, b] = taxa;
    // Of two plants alone, the photograph settles what all its characters together leave in no doubt.
    const pair = wantedPhotos(
      { ...key, key: { ...key.key, lookalikes: [] } },
      even('arundo-donax', 'phyllostachys-aurea'),
      9,
    );
    for (const { id, separates } of pair) {
      const shown = key.key.characters.filter(
        ({ part, asked, effort, months }) => part === id && asked && effort !== 'dig' && months.includes(9),
      );
      const doubt = shown.reduce(
        (left, character) => left * (1 - tells[separationOf(a as never, b as never, character)]),
        1,
      );
      expect(separates).toBeCloseTo(1 - doubt, 12);
    }
  });

  test('of nothing known are the whole plant and its place', () => {
    expect(wantedPhotos(key, [], 6).map(({ id }) => id)).toEqual(['whole', 'place']);
    expect(wantedPhotos(key, even('of-another-key'), 6).map(({ separates }) => separates)).toEqual([0, 0]);
  });
});
