// Keys for made-up matrices, held to every key there is (couplets-every-key.ts) and to what must hold whatever the matrix.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { prove, Workings } from '../../src/engine/couplets/exact.ts';
import { buildKey, endsOf, type KeyCharacter, type KeyNode, type KeyProblem } from '../../src/engine/couplets/index.ts';
import { tableOf } from '../../src/engine/couplets/table.ts';
import { leastOfAll } from './couplets-every-key.ts';
import { character, problem } from './couplets-table.ts';

const parts = (states: number) =>
  fc
    .array(fc.integer({ min: 0, max: 3 }), { minLength: states, maxLength: states })
    .filter((some) => some.some((x) => x > 0))
    .map((some) => some.map((x) => x / some.reduce((a, b) => a + b, 0)));

/** One state mostly, several sometimes, and now and then a character that means nothing for the taxon. */
const trait = (states: number) =>
  fc.oneof(
    {
      weight: 7,
      arbitrary: fc.nat({ max: states - 1 }).map((s) => Array.from({ length: states }, (_, k) => +(k === s))),
    },
    { weight: 3, arbitrary: parts(states) },
    { weight: 1, arbitrary: fc.constant('absent' as const) },
  );

const anyCharacter = (taxa: number): fc.Arbitrary<KeyCharacter> =>
  fc.integer({ min: 2, max: 4 }).chain((states) =>
    fc
      .record({
        shares: fc.array(trait(states), { minLength: taxa, maxLength: taxa }),
        strays: fc.array(fc.option(fc.nat({ max: states - 1 }), { nil: undefined }), {
          minLength: taxa,
          maxLength: taxa,
        }),
        ordered: fc.boolean(),
        leads: fc.constantFrom('two' as const, 'each' as const, 'either' as const),
        cost: fc.constantFrom(1, 1.4, 2, 3.5),
        misread: fc.constantFrom(0, 0.2),
        spread: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: states * states, maxLength: states * states }),
      })
      .map(({ shares, strays, spread, ...given }) =>
        character(0, shares, states, {
          ...given,
          confused: Array.from({ length: states }, (_, from) => {
            const row = Array.from({ length: states }, (_, to) =>
              to === from ? 0 : (spread[from * states + to] as number),
            );
            return row.map((x) => x / row.reduce((a, b) => a + b, 0));
          }),
          strays: strays.map((state, t) =>
            state === undefined || shares[t] === 'absent' || (shares[t]?.[state] as number) > 0
              ? undefined
              : Array.from({ length: states }, (_, s) => (s === state ? 0.1 : 0)),
          ),
        }),
      ),
  );

const anyProblem = (most: { taxa: number; characters: number }): fc.Arbitrary<KeyProblem> =>
  fc.integer({ min: 1, max: most.taxa }).chain((taxa) =>
    fc
      .record({
        weights: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: taxa, maxLength: taxa }),
        characters: fc.array(anyCharacter(taxa), { minLength: 0, maxLength: most.characters }),
        price: fc.constantFrom(0, 4),
        naming: fc.constantFrom(0, 0.1),
        least: fc.constantFrom(0, 0.3),
      })
      .map(({ weights, characters, ...prices }) => ({
        ...problem(
          weights.map((weight) => ({ weight })),
          characters.map((one, c) => ({ ...one, character: c })),
        ),
        ...prices,
      })),
  );

const small = anyProblem({ taxa: 5, characters: 3 });
const large = anyProblem({ taxa: 14, characters: 6 });
const SOLVED = { exact: 100_000 };
const SEARCHED = { exact: 0, search: 90, bound: 30 };

describe('whatever the matrix', () => {
  test('a key that is said to be exact costs as little as the best of all keys, and no bound lies above it', () => {
    fc.assert(
      fc.property(small, (of) => {
        const least = leastOfAll(of);
        const solved = buildKey(of, SOLVED);
        expect(solved.exact).toBe(true);
        expect(solved.effort).toBeCloseTo(least, 9);
        const searched = buildKey(of, SEARCHED);
        for (const key of [solved, searched]) {
          expect(key.bound).toBeLessThanOrEqual(least + 1e-9);
          expect(key.effort).toBeGreaterThanOrEqual(least - 1e-9);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('every taxon comes out in every place that it belongs, with all its weight', () => {
    fc.assert(
      fc.property(large, (of) => {
        const { root } = buildKey(of, SEARCHED);
        const arrived = new Array<number>(of.taxa.length).fill(0);
        for (const { taxa } of endsOf(root))
          for (const { taxon, weight } of taxa) arrived[taxon] = (arrived[taxon] as number) + weight;
        of.taxa.forEach(({ weight }, t) => {
          expect(arrived[t]).toBeCloseTo(weight, 9);
        });
        walk(root, (node) => {
          const at = of.characters[node.character as number] as KeyCharacter;
          for (const { states, to } of node.leads)
            for (const { taxon } of node.taxa) {
              const p = at.shares[taxon] as readonly number[] | 'absent';
              const belongs = p === 'absent' || states.some((s) => (p[s] as number) > 0);
              expect(to.taxa.some((here) => here.taxon === taxon)).toBe(belongs);
            }
        });
      }),
      { numRuns: 60 },
    );
  });

  test('the cost does not depend on the order of taxa, characters or unordered states', () => {
    fc.assert(
      fc.property(small, (of) => {
        const turned: KeyProblem = {
          ...of,
          taxa: of.taxa.toReversed(),
          characters: of.characters.toReversed().map((one) => ({
            ...one,
            shares: one.shares.toReversed().map((p) => (p === 'absent' ? p : p.toReversed())),
            strays: (one.strays ?? []).toReversed().map((p) => p?.toReversed()),
            confused: one.confused.toReversed().map((row) => row.toReversed()),
          })),
        };
        expect(buildKey(turned, SOLVED).effort).toBeCloseTo(buildKey(of, SOLVED).effort, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('the same problem gives the same key', () => {
    fc.assert(
      fc.property(large, (of) => {
        expect(buildKey(of, SEARCHED)).toEqual(buildKey(of, SEARCHED));
      }),
      { numRuns: 30 },
    );
  });

  test('a bound only rises when it is reckoned from further down, and looking to the end gives the least cost', () => {
    fc.assert(
      fc.property(small, (of) => {
        const total = of.taxa.reduce((sum, { weight }) => sum + weight, 0);
        const bounds = [0, 1, 2, 3, Number.POSITIVE_INFINITY].map((depth) => {
          const work = new Workings(tableOf(of));
          return prove(work, work.places.root(), depth, Number.POSITIVE_INFINITY) / total;
        });
        bounds.slice(1).forEach((bound, k) => {
          expect(bound).toBeGreaterThanOrEqual((bounds[k] as number) - 1e-9);
        });
        expect(bounds[4]).toBeCloseTo(buildKey(of, SOLVED).effort, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('one more character never makes the best key of crisp taxa dearer', () => {
    const crisp = anyProblem({ taxa: 6, characters: 4 }).map((of) => ({
      ...of,
      least: 0,
      characters: of.characters.map((one) => ({
        ...one,
        shares: one.shares.map((p) => {
          const first = p === 'absent' ? 0 : p.findIndex((x) => x > 0);
          return Array.from({ length: one.states }, (_, s) => +(s === first));
        }),
      })),
    }));
    fc.assert(
      fc.property(crisp, (of) => {
        const fewer = buildKey({ ...of, characters: of.characters.slice(1) }, SOLVED);
        const all = buildKey(of, SOLVED);
        // Fewer characters may leave more together, which costs nothing: only keys that tell as much are compared.
        if (JSON.stringify(fewer.together) === JSON.stringify(all.together))
          expect(all.effort).toBeLessThanOrEqual(fewer.effort + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

function walk(node: KeyNode, see: (node: KeyNode) => void): void {
  if (node.leads.length === 0) return;
  see(node);
  for (const { to } of node.leads) walk(to, see);
}
