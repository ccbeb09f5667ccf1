import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fiveCouplets, joinedCouplets } from '../../../tests/support/five-couplets.ts';
import { streambankWith } from '../../../tests/support/streambank.ts';
import type { Fork, Forks } from '../../session/index.ts';
import { forksOf } from '../../session/index.ts';
import { banks, bedOf, flowsOf } from './course.ts';
import { draw, HEIGHT, WIDTH } from './drawing.ts';

const prepared = streambankWith(fiveCouplets);
const forks = forksOf(prepared) as Forks;
const bed = bedOf(forks);
const taxa = prepared.key.taxa.length;
const even = new Float64Array(taxa).fill(1 / taxa);
const fork = (number: number) => forks.all.get(number) as Fork;

// What a tidy tree is: Reingold and Tilford, Tidier drawings of trees (1981), from memory.
describe('the bed', () => {
  test('spreads the ends evenly, in the order of the key', () => {
    const xs = [...bed.ends.values()].map(({ x }) => x);
    expect(xs).toHaveLength(6);
    xs.forEach((x, i) => {
      expect(x).toBeCloseTo((i + 0.5) / 6, 12);
    });
    expect(new Set([...bed.ends.values()].map(({ y }) => y))).toEqual(new Set([1]));
  });

  test('puts each fork above the middle of its ends', () => {
    expect(bed.forks.get(fork(3))?.x).toBeCloseTo((0.5 + 1.5) / 2 / 6, 12);
    expect(bed.forks.get(fork(2))?.x).toBeCloseTo((0.5 + 2.5) / 2 / 6, 12);
    expect(bed.forks.get(fork(1))?.x).toBeCloseTo(0.5, 12);
  });

  test('lies further down with every couplet, and never as low as the ends', () => {
    for (const [one, { y }] of bed.forks)
      for (const { to } of one.branches) if (to) expect(bed.forks.get(to)?.y).toBeGreaterThan(y);
    for (const { y } of bed.forks.values()) expect(y).toBeLessThan(1);
    expect(bed.forks.get(forks.first)?.y).toBe(0);
  });

  test('holds a couplet once that several leads lead to', () => {
    const joined = forksOf(streambankWith(joinedCouplets)) as Forks;
    const { forks: placed, ends } = bedOf(joined);
    expect([placed.size, ends.size]).toEqual([2, 2]);
    const flows = flowsOf(joined, even);
    const [end] = [...ends.keys()].slice(-1);
    expect(flows.get(end as never)).toBeCloseTo(1 / taxa, 12);
  });
});

describe('the water', () => {
  test('is as much below each fork as above it, whatever the standing', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: taxa, maxLength: taxa }), (p) => {
        const flows = flowsOf(forks, p);
        for (const one of forks.all.values()) {
          const by = forks.above.get(one);
          const above = by ? flows.get(by.fork.branches[by.branch] as never) : undefined;
          const below = one.branches.reduce((sum, branch) => sum + (flows.get(branch) as number), 0);
          if (above !== undefined) expect(below).toBeCloseTo(above, 9);
        }
        const all = [...forks.first.places.keys()].reduce((sum, t) => sum + (p[t] as number), 0);
        expect(forks.first.branches.reduce((sum, branch) => sum + (flows.get(branch) as number), 0)).toBeCloseTo(
          all,
          9,
        );
      }),
    );
  });

  test('of a plant that comes out in two places is split evenly over them', () => {
    const p = new Float64Array(taxa);
    p[prepared.taxonIndex.get('colocasia-esculenta') as number] = 1;
    const flows = flowsOf(forks, p);
    const ends = [...bed.ends.keys()].filter((branch) => branch.taxa.includes('colocasia-esculenta'));
    expect(ends.map((branch) => flows.get(branch))).toEqual([0.5, 0.5]);
  });
});

describe('the drawing', () => {
  const draws = (p: Float64Array, named: readonly number[] = []) =>
    draw(forks, bed, flowsOf(forks, p), [{ fork: forks.first, lead: 0, open: false, weights: [] }], fork(2), named);

  test('leaves no course out, and gives each piece the same name and form whatever flows', () => {
    const one = draws(even);
    const p = new Float64Array(taxa);
    p[0] = 1;
    const other = draws(p);
    expect(one.water).toHaveLength(1 + 10);
    expect(other.water.map(({ id }) => id)).toEqual(one.water.map(({ id }) => id));
    const form = (d: string) => d.replace(/[\d.-]+/g, '0');
    expect(new Set([...one.water, ...other.water].map(({ d }) => form(d))).size).toBe(1);
  });

  test('stays on the paper', () => {
    const { water } = draws(even);
    const numbers = water.flatMap(({ d }) =>
      [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [x, y].map(Number)),
    );
    for (const [x = -1, y = -1] of numbers) {
      expect(x).toBeGreaterThanOrEqual(-2);
      expect(x).toBeLessThanOrEqual(WIDTH + 2);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(HEIGHT);
    }
  });

  test('marks the course that was walked, and names each plant once and in a row of its own', () => {
    const { course, mouths, here } = draws(even, [0, 1, 2, 25]);
    expect(course.map(({ id }) => id)).toEqual(['spring', '1.0']);
    expect(here?.x).toBeCloseTo((bed.forks.get(fork(2))?.x as number) * WIDTH, 9);
    expect(new Set(mouths.map(({ y }) => y)).size).toBe(mouths.length);
    expect(mouths).toHaveLength(4);
  });

  test('banks leave and arrive straight down', () => {
    expect(banks({ x: 10, y: 0 }, { x: 50, y: 100 }, 4, 2)).toBe('M8 0C8 50 49 50 49 100L51 100C51 50 12 50 12 0Z');
  });
});
