import { describe, expect, test } from 'vitest';
import { character, native, specOf, yesNo } from '../../../tests/support/build.ts';
import { natureOf } from '../../../tests/support/natures.ts';
import { classMass } from '../measures.ts';
import type { CharacterSpec, TraitSpec } from '../spec.ts';
import { classOf, drawPlant, drawSize, NOTHING } from './plants.ts';
import { Random } from './random.ts';

const taxa = [native('a'), native('b', 3)];
const N = 20_000;
const plants = (nature: ReturnType<typeof natureOf>, taxon: number, month = 6, size = 1) =>
  Array.from({ length: N }, (_, i) => drawPlant(nature, taxon, month, new Random(5, i), size));
const shareShowing = (all: ReturnType<typeof plants>, c: number, state: number) =>
  all.filter(({ shows }) => shows[c] === state).length / all.length;

describe('a plant', () => {
  const range = { low: 20, high: 60 };
  const nature = natureOf(
    specOf(taxa, [
      character('colour', [
        [0.7, 0.3, 0],
        [0, 0, 1],
      ]),
      character('length', [range, { low: 1, high: 2 }], { bounds: [10, 30, 50] }),
      character('ligule', ['absent', [1, 0]]),
      character('sap', [undefined, [0.25, 0.75]]),
    ]),
  );
  const all = plants(nature, 0);

  test('shows states as often as its traits say', () => {
    expect(shareShowing(all, 0, 0)).toBeCloseTo(0.7, 1);
    expect(shareShowing(all, 0, 2)).toBe(0);
  });

  test('has sizes that fall into the classes as often as the engine expects', () => {
    const { spec } = nature.matrix;
    classMass(spec.characters[1] as CharacterSpec, { kind: 'range', ...range }).forEach((mass, s) => {
      expect(Math.abs(shareShowing(all, 1, s) - mass)).toBeLessThan(0.015);
    });
  });

  test('shows nothing where a character means nothing', () => {
    expect(shareShowing(all, 2, NOTHING)).toBe(1);
  });

  test('shows what other plants show where nothing is known of it', () => {
    expect(shareShowing(all, 3, 1)).toBeCloseTo(0.75, 1);
  });

  test('is half as long when dwarfed, and the same in all else', () => {
    const dwarfed = plants(nature, 0, 6, 0.5);
    expect(shareShowing(dwarfed, 1, 0)).toBeGreaterThan(shareShowing(all, 1, 0) + 0.05);
    dwarfed.forEach(({ shows }, i) => {
      expect(shows[0]).toBe(all[i]?.shows[0]);
      expect(shows[3]).toBe(all[i]?.shows[3]);
    });
  });
});

// The usual range is read as the central 90 % (ours).
test('nine sizes of ten lie in the usual range, and as many below it as above', () => {
  const random = new Random(8);
  const range: Extract<TraitSpec, { kind: 'range' }> = { kind: 'range', low: 20, high: 60 };
  const sizes = Array.from({ length: N }, () => drawSize(range, random));
  expect(sizes.filter((x) => x < 20).length / N).toBeCloseTo(0.05, 2);
  expect(sizes.filter((x) => x > 60).length / N).toBeCloseTo(0.05, 2);
});

test('a size on the bound belongs to the class above it', () => {
  const length = character('length', [undefined], { bounds: [10, 30] });
  expect([9.9, 10, 30, 1000].map((value) => classOf(length, value))).toEqual([0, 1, 2, 2]);
});

describe('parts that are missing', () => {
  const months = Array.from({ length: 12 }, (_, m) => `m${m}`);
  const nature = natureOf(
    specOf(taxa, [
      yesNo('flower', [0, 1]),
      yesNo('cluster', [0, 1]),
      character('season', [months.map(() => 1 / 12), months.map(() => 1 / 12)]),
      yesNo('lens', [0, 1]),
    ]),
    {
      organs: ['flower', 'flower', 'flower', undefined],
      present: (c, _, month) => (c < 3 ? (month === 6 ? 0.5 : 0) : 1),
      tellable: [1, 1, 1, 0.6],
      season: 2,
    },
  );

  test('are missing out of season, and together', () => {
    expect(plants(nature, 0, 1).every(({ shows }) => shows[0] === NOTHING && shows[1] === NOTHING)).toBe(true);
    const june = plants(nature, 0, 6);
    expect(june.every(({ shows }) => shows[0] === shows[1])).toBe(true);
    expect(shareShowing(june, 0, NOTHING)).toBeCloseTo(0.5, 1);
  });

  test('what is in flower is seen in the month of the visit', () => {
    const june = plants(nature, 0, 6).filter(({ shows }) => shows[0] !== NOTHING);
    expect(june.every(({ shows }) => shows[2] === 5)).toBe(true);
  });

  test('some cannot be made out', () => {
    expect(shareShowing(plants(nature, 0), 3, NOTHING)).toBeCloseTo(0.4, 1);
  });
});
