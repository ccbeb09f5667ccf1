import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';

const run = (folder: string, ...words: string[]) =>
  runCommand(['handout', 'keys/streambank', ...words, '-o', join(folder, 'page.html')]);

test('a hand-out is one file, of the month in which it is made', async () => {
  const folder = temporaryFolder();
  const ran = await run(folder, 'justicia-americana');
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  expect(ran.stdout).toMatch(/page\.html: Justicia americana, \d+ statements, [\d.]+ kB\n$/);
  const page = readFileSync(join(folder, 'page.html'), 'utf8');
  expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
  await run(folder, 'justicia-americana', '--month', '11');
  expect(readFileSync(join(folder, 'page.html'), 'utf8')).toBe(page);
});

test('of a plant without guidance it says so', async () => {
  const { code, stderr } = await run(temporaryFolder(), 'nasturtium-officinale');
  expect(code).toBe(0);
  expect(stderr).toBe('leadwort: keys/streambank has no guidance on Nasturtium officinale: the page says to ask.\n');
});

describe('what is wrong is said, and nothing is written', () => {
  test.each([
    [['no-such'], 1, 'no plant has the id "no-such"'],
    [['Giant Reed'], 1, '"Giant Reed" is no id, but a name of arundo-donax'],
    [['arundo-donax', '--month', '13'], 2, '--month: from 1 to 12'],
    [['arundo-donax', '--month', 'may'], 2, '--month: from 1 to 12'],
    [['arundo-donax', '--lang', 'fr'], 2, '--lang: one of en, es'],
    [[], 2, 'TAXON is missing'],
  ] as const)('%j', async (words, code, told) => {
    const folder = temporaryFolder();
    const ran = await run(folder, ...words);
    expect(ran.code).toBe(code);
    expect(ran.stderr).toContain(told);
    expect(existsSync(join(folder, 'page.html'))).toBe(false);
  });
});
