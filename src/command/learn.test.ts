import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { aFind } from '../../tests/support/finds.ts';
import { runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';
import { writeFind } from '../report/find/index.ts';

const review = { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Invented', date: '2026-09-20' } as const;

function finds(): { folder: string; good: string; open: string; bad: string } {
  const folder = temporaryFolder();
  const [good, open, bad] = ['good.json', 'open.json', 'bad.json'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  writeFileSync(good, writeFind(aFind({ review })));
  writeFileSync(open, writeFind(aFind({ id: '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a02' })));
  writeFileSync(bad, writeFind(aFind()).replace(/"month": \d+/, '"month": 19'));
  return { folder, good, open, bad };
}

test('learn proposes rates from reviewed finds, and says which it did not count', async () => {
  const { folder, good, open } = finds();
  const before = readFileSync('keys/streambank/characters.json', 'utf8');
  const target = join(folder, 'proposal.json');
  const ran = await runCommand(['learn', 'keys/streambank', good, open, '-o', target]);
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  expect(ran.stdout).toMatch(/: 1 find counted, \d+ answers\n {2}not counted: .*open\.json: nobody reviewed it\n/);
  expect(ran.stdout).toContain('the key was not changed');
  const proposal = JSON.parse(readFileSync(target, 'utf8'));
  expect(proposal).toMatchObject({ weight: 20, finds: 1, notCounted: [{ why: 'unreviewed' }] });
  expect(proposal.characters[0].high).toBeGreaterThan(proposal.characters[0].proposed);
  expect(readFileSync('keys/streambank/characters.json', 'utf8')).toBe(before);
});

test('a file that is no find is told with its place, and the others still count', async () => {
  const { folder, good, bad } = finds();
  const { code, stdout, stderr } = await runCommand([
    'learn',
    'keys/streambank',
    bad,
    good,
    join(folder, 'none.json'),
    '--json',
  ]);
  expect(code).toBe(1);
  expect(stderr).toMatch(/bad\.json, line \d+, month: expected one of/);
  expect(stderr).toContain('none.json: there is no such file or folder');
  expect(JSON.parse(stdout)).toMatchObject({ finds: 1 });
});

test('without finds, or with a weight that is none, the command line is told', async () => {
  const { good, folder } = finds();
  expect(await runCommand(['learn', 'keys/streambank'])).toMatchObject({ code: 2, stdout: '' });
  const target = join(folder, 'p.json');
  const ran = await runCommand(['learn', 'keys/streambank', good, '--weight', '0', '-o', target]);
  expect(ran.code).toBe(2);
  expect(ran.stderr).toContain('--weight');
  expect(existsSync(target)).toBe(false);
});
