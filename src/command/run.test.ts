import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../tests/support/run-command.ts';
import { VERSION } from '../version.ts';
import { COMMANDS } from './commands.ts';
import { run } from './run.ts';

describe('help', () => {
  test('the version stands alone', async () => {
    expect(await runCommand(['--version'])).toEqual({ code: 0, stdout: `${VERSION}\n`, stderr: '' });
  });

  test.each([[['--help']], [['-h']], [['help']]])('%s names every command and the exit codes', async (words) => {
    const { code, stdout, stderr } = await runCommand(words);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    for (const { name, summary } of COMMANDS) expect(stdout).toMatch(new RegExp(`leadwort ${name} .*${summary}`));
    expect(stdout.match(/^ {2}[0-3] {2}/gm)).toHaveLength(4);
  });

  test.each(COMMANDS.map((command) => [command.name, command] as const))(
    'help %s tells of all it takes, and so does its own --help, whatever else is missing',
    async (name, command) => {
      const { code, stdout } = await runCommand(['help', name]);
      expect(code).toBe(0);
      for (const operand of command.operands) expect(stdout).toContain(`${operand.name}  `);
      for (const [option, { help }] of Object.entries(command.options)) {
        expect(stdout).toContain(`--${option}`);
        expect(stdout).toContain(help);
      }
      expect(await runCommand([name, '--help'])).toEqual({ code: 0, stdout, stderr: '' });
    },
  );
});

describe('a wrong command line ends with 2, tells why on stderr, and prints nothing', () => {
  test.each([
    [[], 'which command?'],
    [['frob'], '"frob" is not a command.'],
    [['help', 'frob'], '"frob" is not a command.'],
    [['help', 'check', 'bundle'], '"bundle" is one word too many.'],
    [['check'], 'FOLDER is missing'],
    [['check', ''], 'an empty word stands where a path is needed.'],
    [['check', 'a', 'b'], '"b" is one word too many.'],
    [['check', 'a', '--frob'], "Unknown option '--frob'."],
    [['check', 'a', '--json=yes'], "Option '--json' does not take an argument"],
    [['bundle', 'a'], '--output FILE is missing'],
    [['bundle', 'a', '-o'], "Option '-o, --output <value>' argument missing"],
    [['bundle', 'a', '-o', ''], '--output FILE is missing'],
    [['identify', 'a'], '--answers FILE is missing'],
    [['identify', 'a', '--answers', '--json'], "Option '--answers' argument is ambiguous."],
    [['trial'], 'KEY is missing'],
  ])('%j', async (words, why) => {
    const { code, stdout, stderr } = await runCommand(words);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(/^leadwort: /);
    expect(stderr).toContain(why);
    expect(stderr).toMatch(/tells more\.\n$/);
  });
});

describe('a path that cannot be used ends with 1 and is named as it was written', () => {
  test.each([
    [['check', 'no/such'], 'no/such: there is no such file or folder'],
    [['check', 'package.json'], 'package.json: this is a file where a key folder is needed'],
    [['check', 'package.json/key'], 'package.json/key: a part of this path is a file where a folder is needed'],
    [['bundle', 'no/such', '-o', 'x.json'], 'no/such: there is no such file or folder'],
    [['identify', 'no/such', '--answers', '-'], 'no/such: there is no such file or folder'],
    [['identify', 'keys/streambank', '--answers', 'keys'], 'keys: this is a folder where a file is needed'],
    [['identify', 'keys/streambank', '--answers', 'no.json'], 'no.json: there is no such file or folder'],
  ])('%j', async (words, why) => {
    expect(await runCommand(words)).toEqual({ code: 1, stdout: '', stderr: `leadwort: ${why}\n` });
  });
});

test('a fault of the command itself ends with 3 and asks for a report', async () => {
  let stderr = '';
  const code = await run(['--version'], {
    cwd: '.',
    today: '2026-11-25',
    stdin: (async function* () {})(),
    stdout: () => {
      throw new RangeError('broken on purpose');
    },
    stderr: (text) => {
      stderr += text;
    },
    colour: { stdout: false, stderr: false },
  });
  expect(code).toBe(3);
  expect(stderr).toMatch(/^leadwort: a fault of its own; please report it\.\nRangeError: broken on purpose\n {4}at /);
});

test('no words at all make the command fail by itself', async () => {
  const word = fc.oneof(
    fc.string(),
    fc.constantFrom(
      'check',
      'bundle',
      'identify',
      'trial',
      'help',
      '--json',
      '--answers',
      '-',
      '--',
      '-o',
      '-h',
      'keys/streambank',
    ),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(word, { maxLength: 4 }), async (words) => {
      // `bundle` may write: it is left out where a target is named.
      fc.pre(!(words.includes('bundle') && words.some((one) => one.startsWith('-o') || one.startsWith('--o'))));
      const { code, stdout } = await runCommand(words);
      expect(code).toBeLessThan(3);
      if (code === 2) expect(stdout).toBe('');
    }),
    { numRuns: 60 },
  );
});
