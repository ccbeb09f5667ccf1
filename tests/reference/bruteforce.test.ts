// Polymorphic taxa, an observer who slips, several states ticked: against a sum over every combination of true states.
import { describe, expect, test } from 'vitest';
import { compileMatrix, GainTable, type MatrixSpec, posterior } from '../../src/engine/index.ts';
import { answersOf, choice, exact, fraction, golden } from './table.ts';

interface Worked {
  readonly posterior: readonly number[] | null;
  readonly posterior_exact?: readonly string[];
  readonly expected_gain_bits?: Readonly<Record<string, number>>;
}
interface File {
  readonly taxa: string[];
  readonly prior: string[];
  readonly characters: Record<string, string[]>;
  readonly frequencies: Record<string, Record<string, string[]>>;
  readonly error: Record<string, string>;
  readonly cases: { answers: Record<string, string[]>; no_error: Worked; with_observer_error: Worked }[];
}

const file = golden<File>('bayes_bruteforce.json');
/** The five made-up taxa; the golden error is one rate of slips, a wrong state being any of the others alike. */
function model(slips: boolean): MatrixSpec {
  return exact(
    file.taxa.map((id, i) => ({ id, weight: fraction(file.prior[i] as string) })),
    Object.entries(file.characters).map(([id, states]) =>
      choice(
        id,
        states,
        file.taxa.map((taxon) => ({ kind: 'states', p: file.frequencies[taxon]?.[id]?.map(fraction) ?? [] })),
        slips ? fraction(file.error[id] as string) : 0,
      ),
    ),
  );
}

// Values: bayes_bruteforce.json, exact fractions; gains given to 13 digits.
describe.each([
  ['without slips', false, 'no_error'],
  ['with slips', true, 'with_observer_error'],
] as const)('five taxa %s', (_, slips, key) => {
  const spec = model(slips);
  const matrix = compileMatrix(spec);
  const gains = new GainTable(matrix);

  test.each(file.cases.map((one) => ({ answers: one.answers, worked: one[key] })))(
    '$answers',
    ({ answers, worked }) => {
      const { p } = posterior(matrix, answersOf(spec, answers));
      expect(worked.posterior_exact).toHaveLength(5);
      worked.posterior_exact?.forEach((value, t) => {
        expect(Math.abs((p[t] as number) - fraction(value))).toBeLessThan(1e-12);
      });
      expect(p[matrix.outside]).toBe(0);
      const expected = Object.entries(worked.expected_gain_bits ?? {});
      expect(expected).toHaveLength(4 - Object.keys(answers).length);
      for (const [name, bits] of expected) {
        const character = spec.characters.findIndex((one) => one.id === name);
        expect(Math.abs(gains.bits(character, p, 1) - bits)).toBeLessThan(1e-12);
      }
    },
  );
});
