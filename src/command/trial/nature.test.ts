import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import { natureOf } from './nature.ts';

const prepared = streambank();
const nature = natureOf(prepared);
const c = (id: string) => prepared.characterIndex.get(id) as number;
const t = (id: string) => prepared.taxonIndex.get(id) as number;
const present = (character: string, taxon: string) =>
  Array.from({ length: 12 }, (_, m) => nature.present(c(character), t(taxon), m + 1));

describe('flowers', () => {
  // Months by the traits of the key, which name their sources.
  test('are there only in months in which the plant flowers', () => {
    const months = present('flower-cluster', 'thalia-dealbata');
    expect(months.map((chance) => chance > 0)).toEqual(
      [0, 0, 0, 0, 1, 1, 1, 1, 1, 0, 0, 0].map((flowers) => flowers === 1),
    );
  });

  // Common practice, no source: grasses, sedges and cattails are told in winter by their dry heads.
  test('of grasses stand as dry heads for months after, but then no longer tell when the plant flowers', () => {
    const heads = present('flower-cluster', 'arundo-donax');
    expect(heads[7]).toBeGreaterThan(0.5);
    expect(heads[11]).toBeGreaterThan(0.5);
    expect(heads[5]).toBe(0);
    expect(present('flowering-month', 'arundo-donax')[11]).toBe(0);
  });

  test('of plants whose months are unknown are there half the time, as the engine takes it', () => {
    expect(present('flower-cluster', 'phyllostachys-aurea')).toEqual(new Array(12).fill(0.5));
  });

  test('tell the month of the visit', () => {
    expect(nature.season).toBe(c('flowering-month'));
  });
});

test('fruit comes after the flowers', () => {
  const months = present('fruit', 'thalia-dealbata');
  expect(months[4]).toBe(0);
  expect(months[5]).toBeGreaterThan(0);
  expect(months[11]).toBeGreaterThan(0);
});

test('leaves are always there, lengths may be dwarfed, and what needs a lens is often not made out', () => {
  expect(nature.organs[c('leaf-shape')]).toBeUndefined();
  expect(nature.lengths[c('leaf-width')]).toBe(true);
  expect(nature.lengths[c('leaf-shape')]).toBe(false);
  expect(nature.tellable[c('joint-hairs')]).toBeLessThan(nature.tellable[c('leaf-shape')] as number);
});
