import { describe, expect, test } from 'vitest';
import { PLACE_BOOKS } from './place.ts';
import { spoken } from './sizes-words.ts';
import { absolute } from './strokes.ts';
import { WET_OF_SIX, WETLAND_STATUS } from './wetland.ts';
import { GROWTH_FORM } from './whole.ts';

test('each kind of plant holds in 900 bytes, as it travels with the first question', () => {
  for (const form of GROWTH_FORM.forms) {
    expect(
      new TextEncoder().encode(JSON.stringify(GROWTH_FORM.sketch({ form })?.drawing)).length,
      form,
    ).toBeLessThanOrEqual(900);
  }
});

test('the bank and the water are the same in every habitat; only the plant moves', () => {
  const habitat = PLACE_BOOKS.find(({ role }) => role === 'habitat');
  const banks = habitat?.forms.map((form) =>
    habitat.sketch({ form })?.drawing.filter(([pen]) => ['tint', 'ground', 'water'].includes(pen)),
  );
  expect(banks?.length).toBe(5);
  for (const bank of banks ?? []) expect(bank).toEqual(banks?.[0]);
});

describe('the wetland ratings', () => {
  // Shares of occurrences in wetlands by rating: U.S. Department of Agriculture, PLANTS, "Interpreting Wetland Indicator
  // Status" (archived 2008), after the national list of 1988: OBL "almost always (estimated probability 99%)", FACW
  // 67%-99%, FAC 34%-66%, FACU 1%-33%, UPL the other way round than OBL. The limits ">99%" and "<1%" are written so at
  // forestandrange.org, "Hydrophytic plant classifications".
  test.each([
    ['obl', 0.99, 1],
    ['facw', 0.67, 0.99],
    ['fac', 0.34, 0.66],
    ['facu', 0.01, 0.33],
    ['upl', 0, 0.01],
  ] as const)('of the six places of %s the wet share lies within the published limits', (form, least, most) => {
    const wet = WET_OF_SIX.get(form) as number;
    expect(wet / 6).toBeGreaterThanOrEqual(least);
    expect(wet / 6).toBeLessThanOrEqual(most);
    // As many pools as said are in the picture, and six plants always.
    const drawing = WETLAND_STATUS.sketch({ form })?.drawing ?? [];
    const pieces = (pen: string): number =>
      drawing.filter(([one]) => one === pen).reduce((sum, [, path]) => sum + path.split('M').length - 1, 0);
    expect(pieces('mark')).toBe(wet);
    expect(pieces('ground')).toBe(6 - wet);
    expect(pieces('face')).toBe(6 * 3);
  });
});

test('relative path data become the same places, written absolutely', () => {
  expect(absolute('M10 20q1-2 3 4 1 1 2 2h5v-6l-1 .5z')).toBe('M10 20Q11 18 13 24 14 25 15 26L20 26L20 20L19 20.5Z');
  expect(absolute('M4 4h8zl2 2a3 3 0 1 0 6 0M9 9H3V1')).toBe('M4 4L12 4ZL6 6A3 3 0 1 0 12 6M9 9L3 9L3 1');
});

test('sizes are said in both systems, to two figures', () => {
  // 1 in = 2.54 cm and 1 ft = 30.48 cm, as in src/key/units.ts.
  expect(spoken(43).en).toBe('43 cm (17 in)');
  expect(spoken(324)).toEqual({ en: '3.2 m (11 ft)', es: '3.2 m (11 pies)' });
  expect(spoken(0.56).es).toBe('5.6 mm (0.22 pulgadas)');
  expect(spoken(2.54).es).toBe('2.5 cm (1 pulgada)');
});
