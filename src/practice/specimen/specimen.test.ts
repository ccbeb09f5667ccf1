// What a specimen is said to show, held against the portrait that is drawn of it.
import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import { portraitOf } from '../../drawing/portrait/index.ts';
import { type Month, spreadOf } from '../../key/index.ts';
import { markOf, SpecimenError, shownBy } from './specimen.ts';

const { key } = streambank();
const MONTHS = Array.from({ length: 12 }, (_, i) => (i + 1) as Month);
const SEEDS = Array.from({ length: 20 }, (_, i) => i + 1);
const characterOf = (id: string) => {
  const found = key.characters.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};

describe.each(key.taxa.map((taxon) => [taxon.id, taxon] as const))('%s', (id, taxon) => {
  test('shows what its portrait shows', () => {
    for (const seed of SEEDS) {
      // Every month comes, and some twice.
      const month = MONTHS[seed % 12] as Month;
      const figure = portraitOf(key, taxon, { month, seed, varied: true });
      const shows = shownBy(key, { taxon: id, month, seed });
      const told = new Map([...figure.said, ...figure.details].map((one) => [one.character.id, one.state]));
      for (const [character, state] of shows) {
        const place = `${character}, month ${month}, seed ${seed}`;
        // Nothing is asked for that is neither in the figure nor told beside it.
        expect(told.has(character) || figure.shown.includes(character), place).toBe(true);
        if (told.has(character)) expect(told.get(character), place).toBe(state);
      }
      const { height } = figure;
      const shown = shows.get('height');
      expect(shown === undefined, 'height').toBe(height === undefined);
      const size = characterOf('height').states.find((one) => one.id === shown);
      if (size && height !== undefined) {
        expect(height).toBeGreaterThanOrEqual(size.from ?? 0);
        expect(height).toBeLessThan(size.to ?? Number.POSITIVE_INFINITY);
      }
    }
  });

  test('shows flowers when they are drawn, and never when they are not', () => {
    for (const month of MONTHS) {
      const seed = 3;
      const figure = portraitOf(key, taxon, { month, seed, varied: true });
      const shows = shownBy(key, { taxon: id, month, seed });
      const drawn = figure.parts.some(({ group }) => group === 'flower');
      // Where nobody knows when it flowers, the figure is of no month.
      if (figure.flowering === undefined) continue;
      if (shows.has('flower-cluster')) expect(figure.flowering || figure.inSeed, `month ${month}`).toBe(true);
      if (shows.has('flower-colour')) expect(figure.flowering, `month ${month}`).toBe(true);
      if (shows.has('flower-cluster') && figure.parts.length > 0) expect(drawn, `month ${month}`).toBe(true);
    }
  });

  test('shows only what the key knows of it and can be seen in the month without digging', () => {
    for (const month of MONTHS)
      for (const seed of SEEDS)
        for (const [character, state] of shownBy(key, {
          taxon: id,
          month,
          seed,
        })) {
          const place = `${character}, month ${month}, seed ${seed}`;
          const { asked, effort, months, applies, unit, states } = characterOf(character);
          expect(asked && effort !== 'dig' && months.includes(month), place).toBe(true);
          const trait = taxon.traits.get(character);
          if (trait?.kind === 'states')
            expect(
              trait.states.map((one) => one.state),
              place,
            ).toContain(state);
          else if (trait?.kind === 'range') {
            const { low, high, min = low, max = high } = spreadOf(trait.range, unit);
            const size = states.find((one) => one.id === state);
            expect(size?.from ?? 0, place).toBeLessThanOrEqual(max);
            expect(size?.to ?? Number.POSITIVE_INFINITY, place).toBeGreaterThanOrEqual(min);
          } else expect.fail(`${place}: nothing is known`);
          const other = applies && shownBy(key, { taxon: id, month, seed }).get(applies.character);
          if (other !== undefined) expect(applies?.states, place).toContain(other);
        }
  });
});

test('the same plant, month and seed show the same; another seed of a plant that varies does not', () => {
  const specimen = { taxon: 'arundo-donax', month: 8, seed: 5 } as const;
  expect(shownBy(key, specimen)).toEqual(shownBy(key, specimen));
  const marks = new Set(SEEDS.map((seed) => markOf(shownBy(key, { ...specimen, seed }))));
  expect(marks.size).toBeGreaterThan(5);
});

test('individuals show the states of a plant about as often as the key says', () => {
  // Over many seeds the shares of what is drawn come to those of the matrix that the standing is reckoned from.
  const { matrix, taxonIndex } = streambank();
  const n = 1000;
  for (const taxon of ['arundo-donax', 'colocasia-esculenta', 'peltandra-virginica']) {
    const all = Array.from({ length: n }, (_, i) => shownBy(key, { taxon, month: 8, seed: i + 1 }));
    for (const id of ['leaf-shape', 'habitat', 'stand', 'leaf-colour']) {
      const c = key.characters.findIndex((one) => one.id === id);
      const t = taxonIndex.get(taxon) as number;
      if (matrix.spec.characters[c]?.traits[t]?.kind !== 'states') continue;
      characterOf(id).states.forEach((state, s) => {
        const share = matrix.truth[((matrix.firstRow[c] as number) + s) * matrix.hypotheses + t] as number;
        const seen = all.filter((one) => one.get(id) === state.id).length / n;
        // Five standard errors, and what the matrix keeps back for states that nobody has described.
        expect(Math.abs(seen - share), `${taxon} ${id} ${state.id}`).toBeLessThan(5 * Math.sqrt(0.25 / n) + 0.02);
      });
    }
  }
});

test('a plant that the key does not have is refused by name', () => {
  expect(() => shownBy(key, { taxon: 'no-such-plant', month: 5, seed: 1 })).toThrow(SpecimenError);
  expect(() => shownBy(key, { taxon: 'no-such-plant', month: 5, seed: 1 })).toThrow('no-such-plant');
});
