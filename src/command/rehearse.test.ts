import { cpSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';

const short = ['rehearse', 'keys/streambank', '--learners', '1', '--days', '1'];

test('rehearse tells what each course came to with each way to forget, and how the numbers are meant', async () => {
  const { code, stdout, stderr } = await runCommand([...short, '--course', 'elephant-ear']);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  expect(stdout).toMatch(/^1 learner each, 1 day, seed 1\. Tasks: until 9 in 10 fresh specimens/);
  expect(stdout.match(/^elephant-ear +(power|halving) /gm)).toHaveLength(2);
  // One learner for a day has not learnt the course: no number is made up for it.
  expect(stdout).toMatch(/elephant-ear +power +-, 1 never/);
});

test('--json prints every learner, the same for the same seed and others for another', async () => {
  const words = [...short, '--course', 'elephant-ear', '--memory', 'halving', '--json', '--seed'];
  const [one, again, other] = await Promise.all(['3', '3', '4'].map((seed) => runCommand([...words, seed])));
  expect(one?.stdout).toBe(again?.stdout);
  expect(one?.stdout).not.toBe(other?.stdout);
  const results = JSON.parse(one?.stdout ?? '');
  expect(results).toMatchObject([{ course: 'elephant-ear', memory: 'halving' }]);
  expect(results[0].ours).toHaveLength(1);
  expect(results[0].random[0].done).toBe(results[0].ours[0].done);
});

describe('what cannot be rehearsed is refused, and nothing is printed', () => {
  test.each([
    ['no learner', ['--learners', '0'], '--learners: a whole number from 1 to 1000'],
    ['half a learner', ['--learners', '1.5'], '--learners'],
    ['more learners than anybody waits for', ['--learners', '1001'], '--learners'],
    ['more days than a season has', ['--days', '121'], '--days: a whole number from 1 to 120'],
    ['a seed that is a word', ['--seed', 'oak'], '--seed'],
    ['a memory that is none', ['--memory', 'constructor'], '--memory: one of power, halving'],
    ['an option that is none', ['--weeks', '2'], '--weeks'],
    ['no folder', [], 'FOLDER'],
  ] as const)('%s', async (title, words, told) => {
    const folder = title === 'no folder' ? [] : ['keys/streambank'];
    const ran = await runCommand(['rehearse', ...folder, ...words]);
    expect(ran).toMatchObject({ code: 2, stdout: '' });
    expect(ran.stderr).toContain(told);
  });

  test('a course that the key does not have', async () => {
    const ran = await runCommand([...short, '--course', 'oaks']);
    expect(ran).toMatchObject({ code: 1, stdout: '' });
    expect(ran.stderr).toContain('keys/streambank: no course has the id oaks');
  });

  test('a folder without courses', async () => {
    const folder = join(temporaryFolder(), 'key');
    cpSync('keys/streambank', folder, { recursive: true });
    rmSync(join(folder, 'courses.json'));
    const ran = await runCommand(['rehearse', folder]);
    expect(ran).toMatchObject({ code: 1, stdout: '' });
    expect(ran.stderr).toContain('there is no courses.json');
  });
});
