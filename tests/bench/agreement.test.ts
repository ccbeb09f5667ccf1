// The engine beside numpy on one small made-up matrix. golden.json: the cells are from synthetic(12, 14), with the first
// four of its answers; `p` and `bits` are what `python3 yardstick.py answer golden.json` printed with numpy 1.24.2, from
// its own reckoning in 64 bits.
import { describe, expect, test } from 'vitest';
import { compileMatrix, GainTable, posterior } from '../../src/engine/index.ts';
import golden from './golden.json' with { type: 'json' };
import { answersOf, MISREAD, type Synthetic, specOf, synthetic, unasked } from './synthetic.ts';

const { p: THEIRS, bits: BITS, misread, ...cells } = golden;
const made: Synthetic = {
  ...cells,
  first: Int8Array.from(cells.first),
  second: Int8Array.from(cells.second),
  share: Float64Array.from(cells.share),
};

describe('on the matrix that numpy was given', () => {
  const matrix = compileMatrix(specOf(made, [{ times: 1, prior: 1 }]));
  const { p } = posterior(matrix, answersOf(made));

  test('every taxon has the probability that numpy reckons, to 1e-9', () => {
    expect(THEIRS).toHaveLength(made.taxa);
    THEIRS.forEach((theirs, t) => {
      expect(Math.abs((p[t] as number) - theirs)).toBeLessThan(1e-9);
    });
  });

  test('every character not asked is expected to tell what numpy reckons, to 1e-9', () => {
    const gains = new GainTable(matrix);
    expect(BITS).toHaveLength(made.characters - made.asked.length);
    unasked(made).forEach((c, i) => {
      expect(Math.abs(gains.bits(c, p, 1) - (BITS[i] as number))).toBeLessThan(1e-9);
    });
  });

  test('nothing of it is trivial', () => {
    expect(misread).toBe(MISREAD);
    expect(Math.max(...THEIRS)).toBeLessThan(0.999);
    expect(Math.min(...BITS)).toBeGreaterThan(0.001);
    expect(new Set(cells.first).size).toBeGreaterThan(4);
    expect(cells.second.some((s) => s >= 0)).toBe(true);
  });
});

describe('a made-up matrix', () => {
  test('is the same on every run', () => {
    const { asked, said, ...again } = synthetic(12, 14);
    expect({ ...again, asked: asked.slice(0, 4), said: said.slice(0, 4) }).toEqual(made);
  });

  test('has about 4 states a character, a tenth of its cells unknown and a tenth with two states', () => {
    const { states, first, second } = synthetic(200, 200);
    expect(states.reduce((a, b) => a + b, 0) / states.length).toBeCloseTo(4, 0);
    expect(first.filter((s) => s < 0).length / first.length).toBeCloseTo(0.1, 2);
    expect(second.filter((s) => s >= 0).length / second.length).toBeCloseTo(0.1, 2);
  });
});
