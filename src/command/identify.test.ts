import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';

const KEY = join(ROOT, 'keys/streambank');
const REED = 'tests/answers/giant-reed.json';
const identify = (answers: string, ...more: string[]) =>
  runCommand(['identify', 'keys/streambank', '--answers', answers, ...more]);
const identifyText = (stdin: string, ...more: string[]) =>
  runCommand(['identify', 'keys/streambank', '--answers', '-', ...more], { stdin });
const asked = (...answers: object[]) => JSON.stringify({ month: 9, answers });

// Other programs read these: names may be added, and are never changed or dropped.
test('the JSON has exactly these names', async () => {
  const { code, stdout, stderr } = await identify(REED, '--json');
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  const found = JSON.parse(stdout);
  expect(Object.keys(found)).toEqual(['key', 'standing', 'outside', 'concern', 'verdict', 'recheck', 'next']);
  expect(Object.keys(found.key)).toEqual(['id', 'version']);
  for (const one of found.standing) {
    expect(Object.keys(one)).toEqual(['taxon', 'name', 'probability', 'for', 'against', 'unseen']);
  }
  expect(Object.keys(found.verdict)).toEqual(['kind', 'taxa', 'doubts', 'rivals']);
  expect(found.verdict.rivals.length).toBeGreaterThan(0);
  for (const one of found.verdict.rivals) expect(Object.keys(one)).toEqual(['taxon', 'told', 'needs']);
  expect(found.recheck.length).toBeGreaterThan(0);
  for (const one of found.recheck) expect(Object.keys(one)).toEqual(['character', 'gain']);
  expect(found.next.length).toBeGreaterThan(0);
  for (const one of found.next) expect(Object.keys(one)).toEqual(['character', 'bits', 'effort']);
});

describe('answers', () => {
  test('come from a file or from standard input alike', async () => {
    const fromFile = await identify(REED, '--json');
    expect(await identifyText(readFileSync(join(ROOT, REED), 'utf8'), '--json')).toEqual(fromFile);
  });

  test('are told what is wrong with them, all at once, and nothing is printed', async () => {
    const { code, stdout, stderr } = await identifyText(
      asked({ character: 'leaf-shape', states: ['square'] }, { character: 'height', value: 2, unit: 'miles' }),
      '--json',
    );
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toMatch(/^leadwort: standard input, answers\[0\]\.states\[0\]: expected one of linear, strap, /);
    expect(stderr).toContain('\nstandard input, answers[1].unit: expected one of mm, cm, m, in, ft\n');
  });

  test('are told of faults of the text and of the content together, without signs that a terminal obeys', async () => {
    const { code, stderr } = await identifyText(
      '{"month": 13, "__proto__": 1, "\\u001b[31m": 1, "answers": [{"character": "sap", "skipped": true, "\\u202e": 1}]}',
    );
    expect(code).toBe(1);
    expect(stderr).toMatch(/^leadwort: standard input line 1 column 15, __proto__: expected a field name/);
    expect(stderr).toContain('\nstandard input, __proto__: expected only month, observer and answers\n');
    expect(stderr).toContain('\nstandard input, month: expected a month, 1 to 12\n');
    expect(stderr).toContain('\nstandard input, ["\uFFFD[31m"]: expected only month');
    expect(stderr).toContain('\nstandard input, answers[0]["\uFFFD"]: expected only character');
  });

  test('with faults by the thousand are not told them all', async () => {
    const { code, stderr } = await identifyText(asked(...new Array(3000).fill({ character: 'x' })));
    expect(code).toBe(1);
    expect(stderr.split('\n')).toHaveLength(202);
    expect(stderr).toContain('\nand 2800 more\n');
  });

  test('that are no JSON are told with line and column', async () => {
    const { code, stdout, stderr } = await identifyText('{\n  "month": 9,\n  "answers": [}\n', '--json');
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toMatch(/^leadwort: standard input line 3 column 15, answers\[0\]: expected /);
  });

  test('that never end are not read to the end', async () => {
    function* forever() {
      for (;;) yield new Uint8Array(65_536).fill(0x20);
    }
    const { code, stderr } = await runCommand(['identify', KEY, '--answers', '-'], { stdin: forever() });
    expect(code).toBe(1);
    expect(stderr).toBe('leadwort: standard input: more than 1000000 bytes, and so not read\n');
  });

  test('of any JSON at all give a result or a message', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.json(),
          fc.json().map((text) => `{"month":9,"answers":${text}}`),
        ),
        async (text) => {
          const { code, stdout, stderr } = await identifyText(text, '--json');
          expect([0, 1]).toContain(code);
          expect(code === 0 ? stderr : stdout).toBe('');
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a bundle', () => {
  test('gives the very same as the folder it is made of', async () => {
    const cwd = temporaryFolder();
    await runCommand(['bundle', KEY, '-o', 'key.json'], { cwd });
    const words = ['--answers', join(ROOT, REED), '--json'];
    expect(await runCommand(['identify', 'key.json', ...words], { cwd })).toEqual(
      await runCommand(['identify', KEY, ...words], { cwd }),
    );
  });

  test('that was changed after it was made is refused', async () => {
    const cwd = temporaryFolder();
    await runCommand(['bundle', KEY, '-o', 'key.json'], { cwd });
    const text = readFileSync(join(cwd, 'key.json'), 'utf8');
    writeFileSync(join(cwd, 'key.json'), text.replace('"status":"native"', '"status":"invasive"'));
    const { code, stdout, stderr } = await runCommand(['identify', 'key.json', '--answers', '-'], { cwd });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toMatch(/^leadwort: key\.json: This key cannot be used: 1 problem\.\n.*hash/);
  });
});

describe('for people', () => {
  test('a settled verdict is a sentence with its odds, and the cautions end the page', async () => {
    const { code, stdout } = await identify(REED);
    expect(code).toBe(0);
    expect(stdout).toMatch(
      /^Most likely giant reed \(Arundo donax\), an invasive plant here: (about|more than) \d+ in \d+\.$/m,
    );
    expect(stdout).toMatch(/^ +[\d.]+ % {2}giant reed +Arundo donax +invasive$/m);
    expect(stdout).toMatch(/^ +<?[\d.]+ % {2}47 other plants together$/m);
    expect(stdout).toMatch(/^ +<?[\d.]+ % {2}not in this key$/m);
    const { cautions } = JSON.parse(readFileSync(join(KEY, 'key.json'), 'utf8'));
    expect(stdout.endsWith(`\nBefore anyone acts\n${cautions.map((text: string) => `  ${text}\n`).join('')}`)).toBe(
      true,
    );
  });

  test('a plant of concern that is only leaned to comes with what would tell it from its look-alikes', async () => {
    const { stdout } = await identifyText(
      asked(
        { character: 'growth-form', states: ['tall-cane'] },
        { character: 'height', value: 15, unit: 'ft' },
        { character: 'leaf-base', states: ['ears'], sureness: 'think' },
        { character: 'sap', skipped: true },
      ),
    );
    expect(stdout).toMatch(/; September; observer: novice; 3 answers, 1 skipped$/m);
    expect(stdout).toMatch(/^Leaning to giant reed .*, but not settled\.$/m);
    expect(stdout).toMatch(/^Not yet told from [\w ]+\. \w.*\.$/m);
    expect(stdout).toMatch(/^That it is one of the plants of concern: .* in \d+\.$/m);
    expect(stdout).toContain('  for      Height: 15 ft\n');
    expect(stdout).toContain('Ears (think)\n');
    expect(stdout).toMatch(/^Look at next\n {2}.*\?/m);
  });

  test('no answer at all leaves it open', async () => {
    expect((await identifyText(asked())).stdout).toMatch(/^Open: it may be .*, or .*\. None of them leads enough\.$/m);
  });

  test('a plant outside the key is said to be outside, with the one that comes nearest', async () => {
    const { stdout } = await identify('tests/answers/pond-algae.json');
    expect(stdout).toMatch(/^Most likely a plant that is not in this key: about \d in 10\.$/m);
    expect(stdout.match(/^For and against /gm)).toHaveLength(1);
  });

  test('colour changes no word', async () => {
    const words = ['identify', 'keys/streambank', '--answers', REED];
    const { stdout } = await runCommand(words, { colour: true });
    const bare = stdout.replaceAll(new RegExp(`${String.fromCharCode(27)}\\[\\d+m`, 'g'), '');
    expect(bare).not.toBe(stdout);
    expect(bare).toBe((await runCommand(words)).stdout);
  });
});
