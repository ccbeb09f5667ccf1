import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attempt, idOf, record } from '../../tests/support/attempts.ts';
import { aFind } from '../../tests/support/finds.ts';
import { runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';
import type { Attempt } from '../practice/index.ts';
import { writeRecord } from '../practice/index.ts';
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

describe('with files of learners', () => {
  const read = (n: number, said: string, day = 0): Attempt =>
    attempt(n, 'panicum-virgatum', {
      ...{ kind: 'read', item: 'character:growth-form', character: 'growth-form', options: ['tall-cane', 'grass'] },
      ...{ truth: 'grass', said, right: said === 'grass', sureness: 'sure', day },
    });
  // The same person as Ann later, the first look told differently, and fields in an order of somebody's own.
  const later = record([read(1, 'tall-cane', 1), read(3, 'grass')]);
  const texts = {
    ann: writeRecord(record([read(1, 'grass'), read(2, 'tall-cane')])),
    again: JSON.stringify(Object.fromEntries(Object.entries(later).reverse())),
    bea: writeRecord(record([read(1, 'grass')], { id: idOf(0xb) })),
    other: writeRecord(record([read(1, 'grass')], { id: idOf(0xc), key: 'another' })),
    find: writeFind(aFind({ review })),
  };

  /** The paths of the files, all in a folder of their own; `bad` is one more. */
  function files(bad = ''): Readonly<Record<keyof typeof texts | 'bad', string>> {
    const folder = temporaryFolder();
    const paths = Object.entries({ ...texts, bad }).map(([name, text]) => {
      const path = join(folder, `${name}.json`);
      writeFileSync(path, text);
      return [name, path] as const;
    });
    return Object.fromEntries(paths) as Record<keyof typeof texts | 'bad', string>;
  }
  const learnt = (files: readonly string[]) => runCommand(['learn', 'keys/streambank', ...files, '--json']);

  // By hand: the key's own 0.08 as 20 readings, and 4 of two people, of which the later told ones misread two.
  test('every look counts once, whichever file it stands in', async () => {
    const { ann, again, bea } = files();
    const { code, stdout } = await learnt([ann, again, ann, bea]);
    expect(code).toBe(0);
    const { practice, characters, finds } = JSON.parse(stdout);
    expect(finds).toBe(0);
    expect(practice).toEqual({ learners: 2, readings: 4, notCounted: [], conflicts: [idOf(1)] });
    expect(characters).toMatchObject([
      { character: 'growth-form', readings: 4, misread: 2, proposed: expect.closeTo((20 * 0.08 + 2) / 24, 9) },
    ]);
  });

  test('one of another key is told as not counted, and what two files tell differently is told', async () => {
    const { ann, again, other } = files();
    const { code, stdout, stderr } = await runCommand(['learn', 'keys/streambank', ann, other, again]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('and 3 readings of 1 learner in practice');
    expect(stdout).toContain(`not counted: ${other}: it was made with another key`);
    expect(stdout).toContain(`told differently by two files of one learner, each counted once: ${idOf(1)}`);
    const json = JSON.parse((await learnt([other])).stdout);
    expect(json.practice).toMatchObject({ learners: 0, notCounted: [{ name: other, why: 'other-key' }] });
  });

  test.each([
    [
      'a kind of task that is none',
      (text: string) => text.replace('"read"', '"guess"'),
      'line 6, attempts[0].kind: expected one of',
    ],
    [
      'no attempts',
      (text: string) => text.replace('"attempts"', '"looks"'),
      'line 5, looks: expected only format, learner',
    ],
    ['an end that is missing', (text: string) => text.slice(0, -20), 'line 7'],
  ] as const)('one with %s is told with its place, and the others still count', async (_, break_, told) => {
    const { bad, bea } = files(break_(texts.ann));
    const { code, stdout, stderr } = await learnt([bad, bea]);
    expect(code).toBe(1);
    expect(stderr).toContain(`bad.json, ${told}`);
    expect(JSON.parse(stdout).practice.learners).toBe(1);
  });

  test('the same files in any order make the same proposal', async () => {
    const { bad: _, ...paths } = files();
    const all = Object.values(paths);
    const numbers = ({ stdout }: { readonly stdout: string }) =>
      JSON.parse(stdout, (_, value) => (typeof value === 'number' ? Math.round(value * 1e12) / 1e12 : value));
    const once = numbers(await learnt(all));
    expect(once).toMatchObject({ finds: 1, practice: { learners: 2, readings: 4 } });
    await fc.assert(
      fc.asyncProperty(fc.shuffledSubarray(all, { minLength: all.length }), async (shuffled) => {
        expect(numbers(await learnt(shuffled))).toEqual(once);
      }),
      { numRuns: 8, seed: 9 },
    );
  });
});
