import { expect, test } from 'vitest';
import { edited, problemsOf, smallKey } from '../../../tests/support/small-key.ts';
import { readKey } from '../folder.ts';

const entry = 'entries[0].statements[0]';
const first = (files = smallKey()) => [...readKey(files).guidance.values()][0]?.statements[0];

test('months of a statement are read from a run or a list, and what they are for with them', () => {
  const run = edited(['guidance.json', `${entry}.months`, '11-2'], ['guidance.json', `${entry}.season`, 'avoid']);
  expect(first(run)).toMatchObject({ months: [1, 2, 11, 12], season: 'avoid' });
  const list = edited(['guidance.json', `${entry}.months`, [9]], ['guidance.json', `${entry}.season`, 'act']);
  expect(first(list)).toMatchObject({ months: [9], season: 'act' });
});

test.each([
  ['a season without months', [['guidance.json', `${entry}.season`, 'act']], 'missing-field'],
  [
    'a season of another kind',
    [
      ['guidance.json', `${entry}.months`, [9]],
      ['guidance.json', `${entry}.season`, 'spray'],
    ],
    'value',
  ],
] as const)('%s is refused where it stands', (_, edits, code) => {
  const problems = problemsOf(edited(...edits.map((edit) => [...edit] as [string, string, unknown])));
  expect(problems.map((one) => [one.file, one.code])).toEqual([['guidance.json', code]]);
  expect(problems[0]?.path).toContain(entry);
});
