import { cpSync, existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';

/** A copy of the small key, with or without its couplets, which are by hand. */
function small(hand: boolean): string {
  const cwd = temporaryFolder();
  cpSync(join(ROOT, 'tests/fixtures/small-key'), join(cwd, 'key'), { recursive: true });
  if (!hand) rmSync(join(cwd, 'key/couplets.json'));
  return cwd;
}
const read = (cwd: string, file = 'key/couplets.json') => readFileSync(join(cwd, file), 'utf8');

describe('couplets', () => {
  test('tells effort, bound and gap, and writes nothing unless told to', async () => {
    const cwd = small(false);
    const { code, stdout, stderr } = await runCommand(['couplets', 'key'], { cwd });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    for (const words of ['expected effort', 'no key needs less than', 'gap', 'couplets', 'end together'])
      expect(stdout).toContain(words);
    expect(existsSync(join(cwd, 'key/couplets.json'))).toBe(false);
  });

  test('--json has these names, in every run the same', async () => {
    const cwd = small(false);
    const first = await runCommand(['couplets', 'key', '--json'], { cwd });
    const result = JSON.parse(first.stdout);
    expect(Object.keys(result)).toEqual(['effort', 'bound', 'gap', 'exact', 'depth', 'couplets', 'together', 'key']);
    expect(result.key).toHaveLength(result.couplets);
    expect(await runCommand(['couplets', 'key', '--json'], { cwd })).toEqual(first);
  });

  test('-o writes what check then reads without a complaint about it', async () => {
    const cwd = small(false);
    const { code, stdout } = await runCommand(['couplets', 'key', '-o', 'key/couplets.json'], { cwd });
    expect(code).toBe(0);
    expect(stdout).toContain('key/couplets.json was written.');
    const { problems } = JSON.parse((await runCommand(['check', 'key', '--json'], { cwd })).stdout);
    expect(problems.filter(({ file }: { file: string }) => file === 'couplets.json')).toEqual([]);
    // Built ones are built anew, and come out the same.
    const before = read(cwd);
    expect((await runCommand(['couplets', 'key', '-o', 'key/couplets.json'], { cwd })).code).toBe(0);
    expect(read(cwd)).toBe(before);
  });

  test('keeps what somebody wrote, and what stands beside it in the file', async () => {
    const cwd = small(true);
    const before = JSON.parse(read(cwd));
    expect((await runCommand(['couplets', 'key', '-o', 'key/couplets.json'], { cwd })).code).toBe(0);
    expect(JSON.parse(read(cwd))).toEqual(before);
  });

  test.each([
    ['no JSON at all', 'dear diary', 'no file of couplets'],
    ['another file of a key', '{"taxa": []}', 'no file of couplets'],
    [
      'couplets by hand that the key does not have',
      '{"couplets": [{"number": 4, "leads": [{"text": "mine", "to": "a"}, {"text": "too", "to": "b"}]}]}',
      'couplet 4 there is written by hand',
    ],
  ])('never takes the place of %s', async (_, text, why) => {
    const cwd = small(false);
    writeFileSync(join(cwd, 'there.json'), text);
    const { code, stdout, stderr } = await runCommand(['couplets', 'key', '-o', 'there.json'], { cwd });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain(`there.json: `);
    expect(stderr).toContain(why);
    expect(read(cwd, 'there.json')).toBe(text);
  });

  test.each([
    [['--month', '13'], '--month: a whole number from 1 to 12.'],
    [['--month', 'May'], '--month: a whole number from 1 to 12.'],
    [['--observer', 'crow'], '--observer: one of novice'],
  ])('%j ends with 2', async (words, why) => {
    const { code, stderr } = await runCommand(['couplets', 'key', ...words], { cwd: small(false) });
    expect(code).toBe(2);
    expect(stderr).toContain(why);
  });
});

describe('sheet', () => {
  test.each(['bracketed', 'indented'])('%s, made of a folder', async (style) => {
    const cwd = small(true);
    const { code, stdout } = await runCommand(['sheet', 'key', '-o', 'key.html', '--style', style], { cwd });
    expect(code).toBe(0);
    expect(stdout).toMatch(new RegExp(`^key\\.html: 2 couplets, ${style}, [\\d.]+ kB\\n$`));
    expect(read(cwd, 'key.html')).toMatch(/^<!doctype html>/);
  });

  test('made of a bundle is the same', async () => {
    const cwd = small(true);
    await runCommand(['bundle', 'key', '-o', 'key.json'], { cwd });
    await runCommand(['sheet', 'key', '-o', 'a.html'], { cwd });
    await runCommand(['sheet', 'key.json', '-o', 'b.html'], { cwd });
    expect(read(cwd, 'b.html')).toBe(read(cwd, 'a.html'));
  });

  test('of a key without couplets is refused, and says what to do', async () => {
    const cwd = small(false);
    const { code, stderr } = await runCommand(['sheet', 'key', '-o', 'key.html'], { cwd });
    expect(code).toBe(1);
    expect(stderr).toContain('leadwort couplets builds them');
    expect(existsSync(join(cwd, 'key.html'))).toBe(false);
  });

  test.each([
    [['--style', 'round'], '--style: one of bracketed, indented.'],
    [['--lang', 'fr'], '--lang: one of en'],
  ])('%j ends with 2', async (words, why) => {
    const { code, stderr } = await runCommand(['sheet', 'key', '-o', 'x.html', ...words], { cwd: small(true) });
    expect(code).toBe(2);
    expect(stderr).toContain(why);
  });
});
