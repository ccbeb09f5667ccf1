// The built command, as a process of its own: what only a process can get wrong.
import { type SpawnOptions, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { VERSION } from '../version.ts';

let folder = '';
let command = '';

/** This process's variables without those that would change what a build or a run does. */
function environment(more: Record<string, string> = {}): NodeJS.ProcessEnv {
  const { VITEST: _, NODE_ENV: __, NO_COLOR: ___, FORCE_COLOR: ____, ...rest } = process.env;
  return { ...rest, ...more };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-command-'));
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js');
  const built = spawnSync(process.execPath, [vite, 'build', '--mode', 'command', '--outDir', folder], {
    cwd: ROOT,
    env: environment(),
    encoding: 'utf8',
  });
  expect(built.stderr + built.stdout).toContain('command.js');
  expect(built.status).toBe(0);
  command = join(folder, 'command.js');
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ask = (
  words: readonly string[],
  { input = '', env = {} }: { input?: string; env?: Record<string, string> } = {},
) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: ROOT,
    env: environment(env),
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

const IDENTIFY = ['identify', 'keys/streambank', '--answers'];
const REED = 'tests/answers/giant-reed.json';

test('one file that runs by its name, with nothing beside it', () => {
  expect(readFileSync(command, 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
  if (process.platform !== 'win32') expect(statSync(command).mode & 0o111).toBe(0o111);
  expect(ask(['--version'])).toEqual({ status: 0, stdout: `${VERSION}\n`, stderr: '' });
});

test('the streambank key has no errors, 55 taxa and 39 characters', () => {
  const { status, stdout } = ask(['check', 'keys/streambank']);
  expect(stdout).toContain('55 taxa, 39 characters, ');
  expect(stdout).toContain('No errors');
  expect(status).toBe(0);
});

test('exit codes and streams: 2 for the command line, 1 for content, and stdout clean', () => {
  expect(ask(['frob'])).toMatchObject({ status: 2, stdout: '' });
  expect(ask(['check', 'no/such', '--json'])).toMatchObject({ status: 1, stdout: '' });
  expect(ask([...IDENTIFY, '-', '--json'], { input: '{' })).toMatchObject({ status: 1, stdout: '' });
});

test('standard input and a file give the same', () => {
  const fromFile = ask([...IDENTIFY, REED, '--json']);
  expect(fromFile).toMatchObject({ status: 0, stderr: '' });
  expect(ask([...IDENTIFY, '-', '--json'], { input: readFileSync(join(ROOT, REED), 'utf8') })).toEqual(fromFile);
});

test('colour stays out of a pipe, unless it is forced', () => {
  const colour = String.fromCharCode(27);
  expect(ask([...IDENTIFY, REED]).stdout).not.toContain(colour);
  expect(ask([...IDENTIFY, REED], { env: { FORCE_COLOR: '1' } }).stdout).toContain(colour);
  expect(ask([...IDENTIFY, REED], { env: { NO_COLOR: '1' } }).stdout).not.toContain(colour);
  expect(ask([...IDENTIFY, REED, '--json'], { env: { FORCE_COLOR: '1' } }).stdout).not.toContain(colour);
});

test('a trial shared out among helpers comes out as in one process', async () => {
  const words = ['trial', 'keys/streambank', '--plants', '230', '--observer', 'botanist', '--json'];
  const { status, stdout, stderr } = ask(words);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout).toBe((await runCommand(words)).stdout);
});

describe('a process that is left alone', () => {
  const start = (words: readonly string[], options: SpawnOptions = {}) => {
    const child = spawn(process.execPath, [command, ...words], {
      cwd: ROOT,
      env: environment(),
      stdio: 'pipe',
      ...options,
    });
    let stderr = '';
    child.stderr?.on('data', (chunk) => {
      stderr += chunk;
    });
    const ended = new Promise((resolve) => {
      child.on('close', (code, signal) => resolve({ code, signal, stderr }));
    });
    return { child, ended };
  };

  test('by its reader after the first words, as by `| head`, ends without complaint', async () => {
    const { child, ended } = start([...IDENTIFY, REED, '--json']);
    // Closed before anything is printed: the first write already finds nobody.
    child.stdout?.destroy();
    expect(await ended).toEqual({ code: 0, signal: null, stderr: '' });
  });

  test('still says by its exit code that the key has errors', async () => {
    const { child, ended } = start(['check', 'tests']);
    child.stdout?.destroy();
    expect(await ended).toEqual({ code: 1, signal: null, stderr: '' });
  });

  test('by its writer, ends all the same when it needs no input', async () => {
    const { ended } = start(['--version']);
    expect(await ended).toEqual({ code: 0, signal: null, stderr: '' });
  });
});
