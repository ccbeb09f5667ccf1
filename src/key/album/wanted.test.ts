import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import { strictMonths } from '../strict/dates.ts';
import type { Listed, Wanted } from './loose.ts';
import { printMonths, wantedOf } from './wanted.ts';

const { key } = streambank();
const all = wantedOf(key, { pictures: [] });
const of = (taxon: string, rows: readonly Wanted[] = all) => rows.filter((row) => row.taxon === taxon);
const photo = (taxon: string, organ: Wanted['organ']): Listed => ({ file: 'a.jpg', shows: { taxon, organ }, alt: {} });

test('of every plant four to seven photographs are wanted, each of another part', () => {
  for (const { id } of key.taxa) {
    const organs = of(id).map(({ organ }) => organ);
    expect(organs.length, id).toBeGreaterThanOrEqual(4);
    expect(organs.length, id).toBeLessThanOrEqual(7);
    expect(new Set(organs).size).toBe(organs.length);
  }
  expect(new Set(all.map(({ taxon }) => taxon)).size).toBe(key.taxa.length);
});

test('the parts that tell a plant from its look-alikes come first, and say from which', () => {
  const reed = of('arundo-donax');
  expect(reed.find(({ organ }) => organ === 'collar')?.why).toMatch(/^Tells it from Phragmites australis/);
  for (const { id } of key.taxa) {
    const told = of(id).map(({ why }) => why !== undefined);
    expect(told).toEqual([...told].sort((a, b) => Number(b) - Number(a)));
  }
});

test('a collar is asked for where a plant has one, and not of an arum', () => {
  expect(of('arundo-donax').map(({ organ }) => organ)).toContain('collar');
  expect(of('peltandra-virginica').map(({ organ }) => organ)).not.toContain('collar');
});

test('flowers are wanted in the months in which the key says that the plant flowers', () => {
  const trait = key.taxa.find(({ id }) => id === 'arundo-donax')?.traits.get('flowering-month');
  const states = key.characters.find(({ id }) => id === 'flowering-month')?.states.map(({ id }) => id) ?? [];
  const months =
    trait?.kind === 'states'
      ? trait.states.filter(({ how }) => how !== 'rarely').map(({ state }) => states.indexOf(state) + 1)
      : [];
  expect(months.length).toBeGreaterThan(0);
  const season = of('arundo-donax').find(({ organ }) => organ === 'flower')?.season;
  expect(strictMonths(season)).toEqual([...months].sort((a, b) => a - b));
});

test('nobody is asked to dig or to break a plant', () => {
  for (const { organ, angle } of all) {
    if (organ === 'underground') expect(angle).toContain('Dig nothing');
    else expect(angle).not.toMatch(/\bdig\b|\bpull\b|\bcut\b/i);
  }
});

describe('what is there is no longer wanted:', () => {
  test('a photograph of a part of a plant takes its row away, and no other', () => {
    const left = wantedOf(key, { pictures: [photo('arundo-donax', 'collar')] });
    expect(all.filter((row) => !left.some((one) => one.taxon === row.taxon && one.organ === row.organ))).toEqual(
      of('arundo-donax').filter(({ organ }) => organ === 'collar'),
    );
  });

  test('a row that somebody keeps stands as it is, in place of the one that would be worked out', () => {
    const mine: Wanted = {
      taxon: 'arundo-donax',
      organ: 'leaf',
      angle: 'Mine.',
      scale: 'A coin',
      season: '5',
      keep: true,
    };
    const stale: Wanted = { ...mine, organ: 'stem', keep: false };
    const rows = of('arundo-donax', wantedOf(key, { pictures: [], wanted: [mine, stale] }));
    expect(rows.filter(({ organ }) => organ === 'leaf')).toEqual([mine]);
    expect(rows).not.toContainEqual(stale);
    expect(rows).toHaveLength(of('arundo-donax').length);
  });
});

test('months that are printed are read again as the same months', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1 }), (months) => {
      expect(strictMonths(printMonths(months))).toEqual([...months].sort((a, b) => a - b));
    }),
  );
  expect(printMonths([12, 1, 11])).toBe('11-1');
  expect(printMonths([5])).toBe('5');
  expect(printMonths([3, 5])).toEqual([3, 5]);
});
