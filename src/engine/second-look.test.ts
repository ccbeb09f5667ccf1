import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, matrixOf, native, say, type, yesNo } from '../../tests/support/build.ts';
import { answered } from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import { secondLooks } from './second-look.ts';
import { slipCap, slipRate, slipTable } from './slips.ts';
import { type CharacterSpec, type MatrixSpec, type Sureness, USUAL_RATES } from './spec.ts';
import { posterior } from './standing.ts';

describe('the answer most worth a second look', () => {
  /** Eight plants and seven characters in which any two plants differ in four: the rows of a simplex code. */
  const parity = (t: number, c: number): 0 | 1 => {
    const bits = t & (c + 1);
    return (((bits >> 2) ^ (bits >> 1) ^ bits) & 1) as 0 | 1;
  };
  const taxa = Array.from({ length: 8 }, (_, t) => native(`t${t}`));
  const characters = Array.from({ length: 7 }, (_, c) =>
    yesNo(
      `c${c}`,
      taxa.map((__, t) => parity(t, c)),
    ),
  );
  const matrix = matrixOf(taxa, characters, { rates: USUAL_RATES, outsidePrior: 0.02 });

  test.each(taxa.flatMap((_, t) => characters.map((__, c) => [t, c] as const)))(
    'is the one that contradicts all others: plant %d, character %d read wrong',
    (t, wrong) => {
      const answers = characters.map((_, c) => say(c, c === wrong ? 1 - parity(t, c) : parity(t, c)));
      const looks = secondLooks(posterior(matrix, answers));
      expect(looks).toHaveLength(7);
      expect(looks[0]?.character).toBe(wrong);
      expect(looks[0]?.chance).toBeGreaterThan(0.5);
      expect(looks[1]?.chance).toBeLessThan(0.2);
    },
  );

  test('is none in particular when all answers bear one another out', () => {
    const answers = characters.map((_, c) => say(c, parity(3, c)));
    for (const { chance } of secondLooks(posterior(matrix, answers))) expect(chance).toBeLessThan(0.02);
  });

  test('is the wrong turn that holds a whole group of plants down', () => {
    // Four canes and four broad leaves; the group is asked first and read wrong, everything after fits one cane.
    const group = yesNo(
      'group',
      taxa.map((_, t) => (t < 4 ? 0 : 1)),
    );
    const after = Array.from({ length: 4 }, (_, i) =>
      character(
        `cane ${i}`,
        taxa.map((__, t) => (t === 0 ? [1, 0] : t < 4 ? [0.3, 0.7] : [0.2, 0.8])),
      ),
    );
    const turned = matrixOf(taxa, [group, ...after], { rates: USUAL_RATES });
    const said = [say(0, 1), ...after.map((_, i) => say(i + 1, 0))];
    const looks = [1, 2, 3, 4, 5].map((length) => secondLooks(posterior(turned, said.slice(0, length))));
    expect(looks[4]?.[0]?.character).toBe(0);
    const chances = looks.map((all) => all.find((one) => one.character === 0)?.chance as number);
    expect(chances[0]).toBeLessThan(0.2);
    expect(chances[4]).toBeGreaterThan(0.5);
    // The more answers speak for the group that was left, the surer it is.
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
  });

  test('is a typed size that fits nothing else that was said', () => {
    const heights = taxa.map((_, t) => ({ low: 20 * (t + 1), high: 30 * (t + 1) }));
    const sized = matrixOf(taxa, [...characters, character('height', heights, { bounds: [30, 60, 120] })], {
      rates: USUAL_RATES,
    });
    const fits = characters.map((_, c) => say(c, parity(1, c)));
    const [first] = secondLooks(posterior(sized, [...fits, type(7, 500)]));
    expect(first).toMatchObject({ character: 7 });
    expect(first?.chance).toBeGreaterThan(0.9);
    expect(
      secondLooks(posterior(sized, [...fits, type(7, 48)])).find((one) => one.character === 7)?.chance,
    ).toBeLessThan(0.1);
  });

  test('is more likely one given as a guess', () => {
    const chance = (sureness: Sureness) => {
      const looks = secondLooks(posterior(matrix, [say(0, 0, sureness), say(1, 0), say(3, 1)]));
      return looks.find((one) => one.character === 0)?.chance as number;
    };
    expect(chance('guess')).toBeGreaterThan(chance('think'));
    expect(chance('think')).toBeGreaterThan(chance('sure'));
  });

  test('is none before anything is said, and none that says nothing', () => {
    expect(secondLooks(posterior(matrix, []))).toEqual([]);
    expect(secondLooks(posterior(matrix, [say(2, [0, 1], 'guess')]))).toEqual([
      { character: 2, chance: expect.closeTo(0, 12) },
    ]);
  });

  test('is found by counting every way in which the answers may have come about', () => {
    fc.assert(
      fc.property(answered(['choice', 'scale']), ({ spec: given, answers, observer }) => {
        // The plant in the key, every trait known: then each way is a taxon, a rate, and a true state of each character.
        const spec: MatrixSpec = {
          ...given,
          outsidePrior: 0,
          characters: given.characters.map((one) => ({
            ...one,
            traits: one.traits.map((trait) =>
              trait?.kind === 'states' ? trait : { kind: 'states', p: one.states.map((_, s) => (s === 0 ? 1 : 0)) },
            ),
          })),
        };
        const from = posterior(compileMatrix(spec), answers, observer);
        const parts = answers.map((said) => {
          const one = spec.characters[said.character] as CharacterSpec;
          const table = slipTable(one);
          const ticked = (said as { states: readonly number[] }).states;
          return { one, ticked, table, cap: slipCap(table), sureness: said.sureness };
        });
        const astray = answers.map(() => 0);
        let total = 0;
        spec.taxa.forEach((taxon, t) => {
          for (const { times, prior } of spec.rates) {
            const ways = parts.map(({ one, ticked, table, cap, sureness }) => {
              const rate = slipRate(one.misread, cap, times * observer, sureness);
              const p = (one.traits[t] as { p: readonly number[] }).p;
              const chanceOf = (truth: number) =>
                (p[truth] as number) *
                ticked.reduce((sum, to) => sum + (to === truth ? 1 - rate : rate * (table[truth]?.[to] as number)), 0);
              const states = one.states.map((_, s) => s);
              return {
                all: states.reduce((sum, s) => sum + chanceOf(s), 0),
                astray: states.reduce((sum, s) => (ticked.includes(s) ? sum : sum + chanceOf(s)), 0),
              };
            });
            const joint = taxon.weight * prior * ways.reduce((product, way) => product * way.all, 1);
            total += joint;
            ways.forEach((way, k) => {
              astray[k] = (astray[k] as number) + (joint * way.astray) / way.all;
            });
          }
        });
        for (const { character: c, chance } of secondLooks(from)) {
          const k = answers.findIndex((one) => one.character === c);
          expect(chance).toBeCloseTo((astray[k] as number) / total, 9);
        }
      }),
    );
  });

  test('is less likely misread where the plant may only resemble one of the key', () => {
    const kin = { share: 1, differs: 0.3 };
    const one = matrixOf([native('a')], [yesNo('leaf', [0])], {
      outsidePrior: 0.5,
      kin,
      rates: [{ times: 2, prior: 1 }],
    });
    const [look] = secondLooks(posterior(one, [say(0, 1)]));
    // In the key, half the weight: it shows 0, and 1 is said by a slip, at twice the usual 0.1. Kin, the other half, show 0
    // too but with 0.3 anything, here 0 or 1 alike, and are read at the usual rate.
    const inKey = 0.5 * 0.2;
    const kinSlips = 0.5 * 0.1 * (0.7 + 0.3 * 0.5);
    const kinDiffers = 0.5 * 0.9 * 0.3 * 0.5;
    expect(look?.chance).toBeCloseTo((inKey + kinSlips) / (inKey + kinSlips + kinDiffers), 12);
  });

  test('is a chance between 0 and 1, highest first, whatever was said of whatever key', () => {
    fc.assert(
      fc.property(answered(), (given) => {
        const looks = secondLooks(posterior(compileMatrix(given.spec), given.answers, given.observer));
        expect(looks.map((one) => one.character).sort()).toEqual(given.answers.map((one) => one.character).sort());
        const chances = looks.map((one) => one.chance);
        expect(chances).toEqual([...chances].sort((a, b) => b - a));
        for (const chance of chances) {
          expect(chance).toBeGreaterThanOrEqual(0);
          expect(chance).toBeLessThanOrEqual(1 + 1e-12);
        }
      }),
    );
  });
});
