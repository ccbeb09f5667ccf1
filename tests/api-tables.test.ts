// The README's tables of elements against the sources they are made from.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { manifestNow, tablesOf, withTables } from './support/api-tables.mjs';

const readme = () => readFileSync(new URL('../README.md', import.meta.url), 'utf8');

test('the tables of elements are what the code says now: node tests/support/api-tables.mjs writes them', () => {
  expect(withTables(readme(), tablesOf(manifestNow()))).toBe(readme());
}, 60_000);

test('every attribute, event and custom property in them says what it is', () => {
  const rows = readme().match(/^\| (?:attribute|event|part|style|slot|property) \| .*$/gm) ?? [];
  expect(rows.length).toBeGreaterThan(50);
  expect(rows.filter((row) => /\|\s*\|$/.test(row))).toEqual([]);
});

test('a README without its marks is told of, and not overwritten', () => {
  expect(() => withTables('# Something else', '')).toThrow(/lacks its marks/);
});
