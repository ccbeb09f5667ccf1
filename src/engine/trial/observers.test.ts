import { describe, expect, test } from 'vitest';
import { character, native, specOf } from '../../../tests/support/build.ts';
import { natureOf, person } from '../../../tests/support/natures.ts';
import { observersFor, type Readings, readPlant, slipTables } from './observers.ts';
import { drawPlant, NOTHING } from './plants.ts';
import { Random } from './random.ts';

const mixups = [{ a: 0, b: 1, share: 0.8 }];
const spec = specOf(
  [native('a')],
  [
    character('leaf edge', [[1, 0, 0]], { misread: 0.2, mixups }),
    character('leaf tip', [[0, 1, 0]], { misread: 0.1 }),
    character('stem', [[0, 0, 1]], { misread: 0.2 }),
    character('sap', ['absent'], { misread: 0.2 }),
  ],
);
const nature = natureOf(spec, { parts: ['leaf', 'leaf', 'stem', 'sap'] });
const tables = slipTables(spec.characters);
const N = 20_000;
const read = (by: Parameters<typeof readPlant>[3]): Readings[] =>
  Array.from({ length: N }, (_, i) =>
    readPlant(nature, tables, drawPlant(nature, 0, 6, new Random(1, i)), by, new Random(2, i)),
  );
const wrong = (all: readonly Readings[], c: number) => all.filter((one) => one.wrong[c]).length / N;

describe('readings', () => {
  test('are wrong as often as the character and the observer say, and go where its mix-ups lead', () => {
    const all = read(person());
    expect(wrong(all, 0)).toBeCloseTo(0.2, 1);
    expect(wrong(all, 1)).toBeCloseTo(0.1, 1);
    const slipped = all.filter((one) => one.wrong[0]);
    expect(slipped.filter(({ said }) => said[0] === 1).length / slipped.length).toBeCloseTo(
      tables[0]?.[0]?.[1] as number,
      1,
    );
    expect(wrong(read(person({ times: 2 })), 1)).toBeCloseTo(0.2, 1);
    expect(read(person({ times: 0 })).some((one) => one.wrong.includes(true))).toBe(false);
  });

  test('of what is not there are no readings', () => {
    for (const one of read(person({ times: 3 }))) expect([one.said[3], one.wrong[3]]).toEqual([NOTHING, false]);
  });

  test('that hang together go wrong as often, but those of one part with one another', () => {
    const all = read(person({ slips: 'together' }));
    expect(wrong(all, 0)).toBeCloseTo(0.2, 1);
    expect(wrong(all, 1)).toBeCloseTo(0.1, 1);
    // Whoever misreads the tip, which is read more surely, has misread the edge too.
    expect(all.every((one) => !one.wrong[1] || one.wrong[0])).toBe(true);
    const both = all.filter((one) => one.wrong[0] && one.wrong[2]).length / N;
    expect(both).toBeCloseTo(0.04, 1);
  });

  test('of a habit always take one state for the other', () => {
    for (const { said } of read(person({ slips: 'habit' }))) expect(said[0]).toBe(1);
  });
});

test('whoever misreads most comes first, and all the strange ones are taken for that one', () => {
  const observers = observersFor(
    new Map([
      ['botanist', 0.25],
      ['novice', 1],
    ]),
  );
  expect(observers.map(({ id }) => id)).toEqual([
    'novice',
    'botanist',
    'twice-the-slips',
    'habitual-mix-up',
    'hanging-together',
    'dwarfed-plants',
    'not-in-the-key',
    'one-wrong-answer',
  ]);
  for (const one of observers.filter(({ assumed }) => !assumed)) expect(one.told).toBe(1);
  expect(observers.filter(({ assumed }) => assumed).map(({ id }) => id)).toEqual(['novice', 'botanist']);
});
