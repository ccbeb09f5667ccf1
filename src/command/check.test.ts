import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { changedKey } from '../../tests/support/temporary.ts';

describe('the streambank key', () => {
  test('is a key, and the command says what it holds', async () => {
    const { code, stdout, stderr } = await runCommand(['check', 'keys/streambank']);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('55 taxa, 39 characters, ');
    expect(stdout).toMatch(
      /traits \(\d+ % from memory\), \d+ pairs of look-alikes, 2 languages, guidance for \d+ taxa, \d+ sources$/m,
    );
    expect(stdout).toMatch(/^No errors(, \d+ warnings?( and \d+ more)?)?\.$/m);
  });

  test('has its warnings told with the line of each', async () => {
    const { problems } = JSON.parse((await runCommand(['check', 'keys/streambank', '--json'])).stdout);
    const shared = problems.find(({ code }: { code: string }) => code === 'shared-name');
    const line = readFileSync(join(ROOT, 'keys/streambank', shared.file), 'utf8').split('\n')[shared.line - 1];
    // The name in quotes stands on that very line.
    expect(line).toContain(/"[^"]+"/.exec(shared.found)?.[0]);
  });

  test('has warnings once its review is past', async () => {
    const { problems } = JSON.parse(
      (await runCommand(['check', 'keys/streambank', '--json'], { today: '2030-01-01' })).stdout,
    );
    expect(problems.map(({ code }: { code: string }) => code)).toContain('past-review');
  });
});

// Other programs read these: names may be added, and are never changed or dropped.
test('the JSON has exactly these names', async () => {
  const { stdout, code } = await runCommand(['check', 'keys/streambank', '--json']);
  const result = JSON.parse(stdout);
  expect(code).toBe(0);
  expect(Object.keys(result)).toEqual(['key', 'counts', 'trial', 'problems', 'more', 'wanted']);
  expect(Object.keys(result.key)).toEqual(['id', 'version', 'title', 'reviewed']);
  expect(Object.keys(result.counts)).toEqual([
    'taxa',
    'characters',
    'states',
    'traits',
    'traitsNotApplicable',
    'traitsFromMemory',
    'pairs',
    'languages',
    'guidance',
    'sources',
  ]);
  expect(result.counts).toMatchObject({ taxa: 55, characters: 39, languages: 2 });
  const allowed = ['file', 'line', 'column', 'path', 'expected', 'found', 'code', 'severity'];
  for (const problem of result.problems) {
    expect(allowed).toEqual(expect.arrayContaining(Object.keys(problem)));
    expect(problem).toMatchObject({ file: expect.any(String), path: expect.any(String), severity: 'warning' });
  }
});

describe('errors', () => {
  test('are all told, by file, with line and place, and end with 1', async () => {
    const cwd = changedKey({
      'taxa.json': (text) => text.replace('"status": "native"', '"status": "nativ"'),
      'key.json': (text) => text.replace('"units": "us"', '"units": "feet"'),
    });
    const { code, stdout } = await runCommand(['check', 'key'], { cwd });
    expect(code).toBe(1);
    expect(stdout).toMatch(/^key\.json\n {2}error {4}line \d+, units: expected one of us, metric, found "feet"$/m);
    expect(stdout).toMatch(
      /^taxa\.json\n {2}error {4}line \d+, taxa\[\d+\]\.status: expected one of native, introduced, invasive, found "nativ"$/m,
    );
    expect(stdout).toMatch(/^2 errors: this folder cannot be used as a key yet\.$/m);
  });

  test('of the JSON itself are told with line and column, and the rest of the folder is still looked at', async () => {
    const cwd = changedKey({
      'guidance.json': () => '{\n  "entries": [,]\n}\n',
      'key.json': (text) => text.replace('"units": "us"', '"units": "feet"'),
    });
    const { code, stdout } = await runCommand(['check', 'key'], { cwd });
    expect(code).toBe(1);
    expect(stdout).toMatch(/^guidance\.json\n {2}error {4}line 2 column 15, .*found ","$/m);
    expect(stdout).toContain('found "feet"');
  });

  test('leave key and counts empty in the JSON, and every problem stands in it', async () => {
    const cwd = changedKey({ 'key.json': (text) => text.replace('"units": "us"', '"units": "feet"') });
    const { code, stdout, stderr } = await runCommand(['check', 'key', '--json'], { cwd });
    expect({ code, stderr }).toEqual({ code: 1, stderr: '' });
    const { key, counts, problems, more } = JSON.parse(stdout);
    expect({ key, counts, more }).toEqual({ key: null, counts: null, more: 0 });
    expect(problems).toEqual([
      {
        file: 'key.json',
        line: expect.any(Number),
        path: 'units',
        expected: 'one of us, metric',
        found: '"feet"',
        code: 'value',
        severity: 'error',
      },
    ]);
  });

  test('a missing file is one of them', async () => {
    const { code, stdout } = await runCommand(['check', 'tests']);
    expect(code).toBe(1);
    expect(stdout).toContain('key.json\n  error    expected this file in the key folder, found nothing\n');
  });
});

describe('a file that cannot be read as text', () => {
  test('in another encoding is told with its line', async () => {
    const cwd = changedKey({ 'key.json': () => Uint8Array.from([0x7b, 0x0a, 0x22, 0xe9, 0x22, 0x0a, 0x7d]) });
    const { code, stdout, stderr } = await runCommand(['check', 'key', '--json'], { cwd });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toBe(
      `leadwort: ${join('key', 'key.json')} line 2: expected text in UTF-8; save the file with that encoding\n`,
    );
  });

  test('of ten gigabytes is not read', async () => {
    const cwd = changedKey();
    // All hole: takes no room on the disk.
    truncateSync(join(cwd, 'key', 'taxa.json'), 10e9);
    const { code, stderr } = await runCommand(['check', 'key'], { cwd });
    expect(code).toBe(1);
    expect(stderr).toContain('taxa.json: 10000000000 bytes, and so not read; at most 5000000 are');
  });
});

test('a JSON file that no key has is named, since its name may be a slip', async () => {
  const cwd = changedKey();
  writeFileSync(join(cwd, 'key', 'couplet.json'), '{}');
  const { code, stderr } = await runCommand(['check', 'key'], { cwd });
  expect(code).toBe(0);
  expect(stderr).toBe('leadwort: key also holds couplet.json, which no key has: passed over.\n');
});
