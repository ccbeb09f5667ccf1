import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { character, matrixOf, native, say, specOf, type, yesNo } from '../../tests/support/build.ts';
import { matrix, observer, size, sureness } from '../../tests/support/matrices.ts';
import { compileMatrix } from './matrix.ts';
import { classMass } from './measures.ts';
import { type MatrixSpec, USUAL_RATES } from './spec.ts';
import { posterior } from './standing.ts';

const plants = [native('a'), native('b')];
/** A range, and one of the same shape that lies wholly beyond it, with classes that part them. */
const apart = () =>
  fc
    .record({
      low: size(),
      width: fc.double({ min: 1, max: 6, noNaN: true }),
      gap: fc.double({ min: 1.05, max: 10, noNaN: true }),
      misread: fc.integer({ min: 1, max: 40 }).map((x) => x / 100),
    })
    .map(({ low, width, gap, misread }) => {
      const a = { low, high: low * width };
      const b = { low: a.high * gap, high: a.high * gap * width };
      const bounds = [a.low / 4, Math.sqrt(a.high * b.low), b.high * 4];
      return { a, b, middle: Math.sqrt(a.low * a.high), height: character('height', [a, b], { bounds, misread }) };
    });

describe('classes of size', () => {
  test('share out all plants of a taxon', () => {
    fc.assert(
      fc.property(size(), fc.double({ min: 1, max: 50, noNaN: true }), size(), (low, width, bound) => {
        const shares = classMass(character('height', [], { bounds: [bound, bound * 2, bound * 7] }), {
          kind: 'range',
          low,
          high: low * width,
        });
        expect(shares.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 12);
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('hold nine in ten between the bounds of the usual range, a little less for an eye that errs', () => {
    const height = character('height', [], { bounds: [20, 200] });
    const [below, within, above] = classMass(height, { kind: 'range', low: 20, high: 200 }) as [number, number, number];
    expect(below).toBeCloseTo(above, 12);
    expect(within).toBeLessThan(0.9);
    expect(within).toBeGreaterThan(0.88);
  });

  test('allow for an eye that is 15 % out, two times in three', () => {
    const height = character('height', [], { bounds: [100 / 1.16183424, 100 * 1.16183424] });
    const shares = classMass(height, { kind: 'range', low: 100, high: 100 });
    // One standard deviation to either side: 68.27 % of a normal distribution (from memory, any table); exp(0.15) = 1.1618.
    expect(shares[1]).toBeCloseTo(0.6827, 4);
  });
});

describe('a typed size', () => {
  test('in the middle of the range speaks for the taxon against one whose range lies elsewhere', () => {
    fc.assert(
      fc.property(apart(), sureness(), ({ middle, height }, sure) => {
        const [a, b] = posterior(matrixOf(plants, [height], { rates: USUAL_RATES }), [type(0, middle, sure)]).p;
        expect(a).toBeGreaterThan(b as number);
      }),
    );
  });

  test('and the class it lies in speak for the same taxon', () => {
    fc.assert(
      fc.property(apart(), sureness(), fc.boolean(), ({ a, b, height }, sure, first) => {
        const of = first ? a : b;
        const made = matrixOf(plants, [height], { rates: USUAL_RATES });
        const [typedA, typedB] = posterior(made, [type(0, Math.sqrt(of.low * of.high), sure)]).p as unknown as [
          number,
          number,
        ];
        const [classA, classB] = posterior(made, [say(0, first ? 1 : 2, sure)]).p as unknown as [number, number];
        expect(Math.sign(typedA - typedB)).toBe(first ? 1 : -1);
        // At its cap an answer may say nothing at all, but never the opposite.
        expect((classA - classB) * (typedA - typedB)).toBeGreaterThanOrEqual(-1e-12);
      }),
    );
  });

  test('says the same in any unit', () => {
    fc.assert(
      fc.property(apart(), size(), fc.constantFrom(2.54, 0.3048, 100), ({ a, b, height }, value, times) => {
        const scaled = character(
          'height',
          [a, b].map((range) => ({ low: range.low * times, high: range.high * times })),
          { bounds: height.bounds?.map((bound) => bound * times) ?? [], misread: height.misread },
        );
        const more: Partial<MatrixSpec> = { outsidePrior: 0.05, rates: USUAL_RATES };
        const p = posterior(matrixOf(plants, [height], more), [type(0, value)]).p;
        const q = posterior(matrixOf(plants, [scaled], more), [type(0, value * times)]).p;
        p.forEach((x, h) => {
          expect(q[h]).toBeCloseTo(x, 9);
        });
      }),
    );
  });

  test('however wild excludes nothing: another answer still counts for more', () => {
    const spec = specOf(
      [native('knee-high'), native('waist-high'), native('unknown height'), native('tree')],
      [
        character('height', [{ low: 30, high: 60 }, { low: 80, high: 120 }, undefined, { low: 300, high: 3000 }], {
          bounds: [30, 60, 150, 400],
          misread: 0.1,
        }),
      ],
      { outsidePrior: 0.02, rates: USUAL_RATES },
    );
    const made = compileMatrix(spec);
    for (const value of [1e-300, 1e-9, 0.01, 1, 45, 4500, 1e6, 1e30, 1e300]) {
      const { p } = posterior(made, [type(0, value)]);
      const taxa = Array.from(p.slice(0, made.outside));
      // No more than a dozen bits between any two plants.
      expect(Math.max(...taxa) / Math.min(...taxa)).toBeLessThan(2 ** 12);
      expect(Math.min(...taxa)).toBeGreaterThan(0);
    }
  });

  test('excludes nothing in any key: two plants are never further apart than two dozen answers can make up for', () => {
    fc.assert(
      fc.property(matrix(['measure']), size(), sureness(), observer(), (spec, value, sure, times) => {
        const { p } = posterior(compileMatrix(spec), [type(0, value, sure)], times);
        const lift = spec.taxa.map((taxon, t) => (p[t] as number) / taxon.weight);
        expect(Math.log2(Math.max(...lift) / Math.min(...lift))).toBeLessThan(30);
      }),
    );
  });

  test('ten times too big does not overrule half a dozen characters read right', () => {
    const heights = [
      { low: 30, high: 60 },
      { low: 300, high: 600 },
    ];
    const others = Array.from({ length: 6 }, (_, i) => yesNo(`c${i}`, [0, 1]));
    const made = matrixOf(plants, [character('height', heights, { bounds: [30, 60, 150, 400] }), ...others], {
      rates: USUAL_RATES,
    });
    const [a, b] = posterior(made, [type(0, 450), ...others.map((_, i) => say(i + 1, 0))]).p;
    expect(a).toBeGreaterThan(b as number);
  });

  test('tells less the less sure it is', () => {
    const made = matrixOf(plants, [
      character(
        'height',
        [
          { low: 30, high: 60 },
          { low: 300, high: 600 },
        ],
        { bounds: [100] },
      ),
    ]);
    const odds = (['sure', 'think', 'guess'] as const).map((sure) => {
      const [a, b] = posterior(made, [type(0, 45, sure)]).p as unknown as [number, number];
      return a / b;
    });
    expect(odds[0]).toBeGreaterThan(odds[1] as number);
    expect(odds[1]).toBeGreaterThan(odds[2] as number);
    expect(odds[2]).toBeGreaterThan(1);
  });

  test('says nothing about a plant that has no such size, nor about one whose size is unknown, beyond the background', () => {
    const more: Partial<MatrixSpec> = { rates: USUAL_RATES };
    const all = matrixOf(plants, [character('height', [undefined, undefined], { bounds: [10, 20] })], more);
    expect(Array.from(posterior(all, [type(0, 13)]).p)).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12), 0]);
    const none = matrixOf(plants, [character('height', ['absent', 'absent'], { bounds: [10, 20] })], more);
    expect(Array.from(posterior(none, [type(0, 13)]).p)).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12), 0]);
  });
});
