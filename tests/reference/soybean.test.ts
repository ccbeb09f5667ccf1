// Nineteen diseases of 683 plants, with answers missing: posteriors down to 1e-28 as in R.
import { expect, test } from 'vitest';
import { compileMatrix, GainTable, posterior } from '../../src/engine/index.ts';
import { answersOf, type Classed, counted, golden, seen, table } from './table.ts';

interface File {
  readonly classes: string[];
  readonly class_counts: number[];
  readonly missing_cells: number;
  readonly accuracy: number;
  readonly mean_surprise_bits_of_true_class: number;
  readonly posterior_rows: number[];
  readonly posterior: number[][];
}

const file = golden<File>('bayes_soybean_e1071.json');
const { head, rows } = table('soybean.csv');
const plants: Classed = {
  classes: file.classes,
  characters: head.slice(2),
  states: head.slice(2).map((_, c) => seen(rows, c + 2)),
  rows: rows.map((row) => ({ class: row[1] as string, cells: row.slice(2) })),
};

test('the table is the one that the values were made from', () => {
  expect(rows).toHaveLength(683);
  expect(plants.rows.flatMap((row) => row.cells.filter((cell) => cell === ''))).toHaveLength(file.missing_cells);
  expect(plants.classes.map((name) => plants.rows.filter((row) => row.class === name).length)).toEqual(
    file.class_counts,
  );
});

// Values: R package e1071 1.7-13, naiveBayes, laplace 1 (bayes_soybean_e1071.json, 12 digits).
test('every plant stands as in e1071, its missing answers skipped', () => {
  const spec = counted(plants, 1);
  const matrix = compileMatrix(spec);
  const ours = plants.rows.map((row) => {
    const given = plants.characters.flatMap((name, c) => (row.cells[c] === '' ? [] : [[name, row.cells[c] as string]]));
    return Array.from(posterior(matrix, answersOf(spec, Object.fromEntries(given))).p.slice(0, matrix.outside));
  });

  expect(file.posterior_rows).toHaveLength(98);
  expect(Math.min(...file.posterior.flat())).toBeLessThan(1e-28);
  file.posterior_rows.forEach((row, i) => {
    file.posterior[i]?.forEach((theirs, t) => {
      // Relative, so that the smallest counts as much as the largest.
      expect(Math.abs((ours[row - 1]?.[t] as number) / theirs - 1)).toBeLessThan(1e-10);
    });
  });

  const truth = plants.rows.map((row) => plants.classes.indexOf(row.class));
  const right = ours.filter((p, i) => p.indexOf(Math.max(...p)) === truth[i]);
  expect(right.length / 683).toBeCloseTo(file.accuracy, 12);
  const surprise = ours.reduce((sum, p, i) => sum - Math.log2(p[truth[i] as number] as number), 0) / 683;
  expect(surprise).toBeCloseTo(file.mean_surprise_bits_of_true_class, 10);
});

// Values: gain.json, scikit-learn's mutual information of the raw counts.
test('what each question tells, with rows that lack its answer left out or with missing as a state of its own', () => {
  const { soybean_class } = golden<{
    soybean_class: Record<'gain_missing_as_own_state' | 'gain_rows_with_missing_left_out', Record<string, number>>;
  }>('gain.json');
  const bits = (from: Classed) => {
    const matrix = compileMatrix(counted(from, 0));
    return new GainTable(matrix).bits(0, posterior(matrix, []).p, 1);
  };
  plants.characters.forEach((name, c) => {
    const one = { characters: [name], states: [plants.states[c] as string[]] };
    const known = plants.rows
      .filter((row) => row.cells[c] !== '')
      .map((row) => ({ ...row, cells: [row.cells[c] as string] }));
    const classes = plants.classes.filter((id) => known.some((row) => row.class === id));
    const leftOut = bits({ ...one, classes, rows: known });
    expect(Math.abs(leftOut - (soybean_class.gain_rows_with_missing_left_out[name] as number))).toBeLessThan(1e-12);
    const own = bits({
      ...one,
      classes: plants.classes,
      states: [[...(plants.states[c] as string[]), 'missing']],
      rows: plants.rows.map((row) => ({ ...row, cells: [row.cells[c] || 'missing'] })),
    });
    expect(Math.abs(own - (soybean_class.gain_missing_as_own_state[name] as number))).toBeLessThan(1e-12);
  });
});
