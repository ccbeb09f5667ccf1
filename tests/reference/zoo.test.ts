// One hundred and one animals of seven types: the same posteriors and gains as two libraries.
import { describe, expect, test } from 'vitest';
import { compileMatrix, GainTable, type MatrixSpec, posterior } from '../../src/engine/index.ts';
import { answersOf, type Classed, choice, counted, exact, fraction, golden, seen, table } from './table.ts';

interface File {
  readonly attributes: string[];
  readonly states: string[][];
  readonly classes: string[];
  readonly animals: string[];
  readonly results: Record<string, { accuracy_on_training_rows: number; posterior: number[][] }>;
  readonly walks_alpha1_class_frequency: {
    specimen: string;
    steps: {
      answers: Record<string, string>;
      posterior: number[];
      entropy_bits: number;
      expected_gain_bits_of_each_open_question: Record<string, number>;
    }[];
  }[];
  readonly several_states_ticked_alpha1: { cases: { ticked: Record<string, string[]>; posterior_exact: string[] }[] };
}

const file = golden<File>('bayes_zoo.json');
const { head, rows } = table('zoo.csv');
const zoo: Classed = {
  classes: file.classes,
  characters: head.slice(1, -1),
  states: head.slice(1, -1).map((_, c) => seen(rows, c + 1)),
  rows: rows.map((row) => ({ class: row[row.length - 1] as string, cells: row.slice(1, -1) })),
};
/** Posteriors of every animal when all its characters are answered: 101 x 7. */
function everyAnimal(spec: MatrixSpec): number[][] {
  const matrix = compileMatrix(spec);
  return zoo.rows.map((row) => {
    const said = Object.fromEntries(zoo.characters.map((name, c) => [name, row.cells[c] as string]));
    return Array.from(posterior(matrix, answersOf(spec, said)).p.slice(0, matrix.outside));
  });
}

const furthest = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]) =>
  Math.max(...a.map((row, i) => Math.max(...row.map((x, j) => Math.abs(x - (b[i]?.[j] as number))))));

test('the table is the one that the values were made from', () => {
  expect(zoo.characters).toEqual(file.attributes);
  expect(zoo.states).toEqual(file.states);
  expect(rows.map((row) => row[0])).toEqual(file.animals);
});

// Values: scikit-learn 1.2.1, CategoricalNB (bayes_zoo.json).
test.each(Object.keys(file.results))('every animal stands as in CategoricalNB with %s', (name) => {
  const [, pseudocount = '', prior = ''] = /^alpha=(.+), prior=(.+)$/.exec(name) ?? [];
  const ours = everyAnimal(
    counted(zoo, Number(pseudocount), prior === 'uniform' ? zoo.classes.map(() => 1) : undefined),
  );
  const theirs = file.results[name] as { accuracy_on_training_rows: number; posterior: number[][] };
  expect(theirs.posterior).toHaveLength(101);
  expect(furthest(theirs.posterior, ours)).toBeLessThan(1e-12);
  const right = ours.filter((p, i) => zoo.classes[p.indexOf(Math.max(...p))] === zoo.rows[i]?.class);
  expect(right.length / 101).toBeCloseTo(theirs.accuracy_on_training_rows, 12);
});

// Values: R package e1071 1.7-13, naiveBayes, laplace 1 (bayes_zoo_e1071.json, 12 digits).
test('every animal stands as in a second library', () => {
  const theirs = golden<{ classes: string[]; posterior: number[][] }>('bayes_zoo_e1071.json');
  expect(theirs.classes).toEqual(zoo.classes);
  expect(theirs.posterior).toHaveLength(101);
  expect(furthest(theirs.posterior, everyAnimal(counted(zoo, 1)))).toBeLessThan(1e-11);
});

// Values: scikit-learn's posteriors and scipy's entropies after 0 to 7 answers, the other characters skipped; gains
// given to 13 digits (bayes_zoo.json).
describe('walks of several answers', () => {
  const spec = counted(zoo, 1);
  const matrix = compileMatrix(spec);
  const gains = new GainTable(matrix);

  test.each(file.walks_alpha1_class_frequency)('$specimen', ({ steps }) => {
    expect(steps).toHaveLength(8);
    for (const step of steps) {
      const { p } = posterior(matrix, answersOf(spec, step.answers));
      expect(furthest([step.posterior], [Array.from(p)])).toBeLessThan(1e-12);
      for (const [name, bits] of Object.entries(step.expected_gain_bits_of_each_open_question)) {
        const ours = gains.bits(zoo.characters.indexOf(name), p, 1);
        expect(Math.abs(ours - bits)).toBeLessThan(1e-12);
        expect(ours).toBeLessThanOrEqual(step.entropy_bits + 1e-12);
      }
    }
  });

  // Values: exact fractions, the likelihood of several ticked states being their sum (bayes_zoo.json).
  test.each(file.several_states_ticked_alpha1.cases)(
    'several states ticked: $ticked',
    ({ ticked, posterior_exact }) => {
      const { p } = posterior(matrix, answersOf(spec, ticked));
      expect(furthest([posterior_exact.map(fraction)], [Array.from(p)])).toBeLessThan(1e-12);
    },
  );
});

// Values: gain.json, scikit-learn's mutual information and entropies of the raw counts.
describe('what each question tells', () => {
  const gain = golden<Record<'zoo_type' | 'zoo_profiles', { gain: Record<string, number> }>>('gain.json');

  test('about the type of an animal', () => {
    const spec = counted(zoo, 0);
    const matrix = compileMatrix(spec);
    const gains = new GainTable(matrix);
    const ours = spec.characters.map((_, c) => gains.bits(c, posterior(matrix, []).p, 1));
    expect(furthest([zoo.characters.map((name) => gain.zoo_type.gain[name] as number)], [ours])).toBeLessThan(1e-12);
  });

  test('about which of the 59 distinct profiles an animal has', () => {
    const profiles = [...new Set(zoo.rows.map((row) => row.cells.join(' ')))].map((cells) => cells.split(' '));
    expect(profiles).toHaveLength(59);
    const spec = exact(
      profiles.map((_, i) => ({ id: `profile ${i}`, weight: 1 })),
      zoo.characters.map((id, c) => {
        const states = zoo.states[c] as string[];
        return choice(
          id,
          states,
          profiles.map((cells) => ({ kind: 'states', p: states.map((state) => (cells[c] === state ? 1 : 0)) })),
        );
      }),
    );
    const matrix = compileMatrix(spec);
    const gains = new GainTable(matrix);
    const ours = spec.characters.map((_, c) => gains.bits(c, posterior(matrix, []).p, 1));
    expect(furthest([zoo.characters.map((name) => gain.zoo_profiles.gain[name] as number)], [ours])).toBeLessThan(
      1e-12,
    );
  });
});
