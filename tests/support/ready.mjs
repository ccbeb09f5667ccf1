// Makes a fresh clone ready: `node tests/support/ready.mjs [built file]...`: installs when needed, builds when such a file
// is missing. No dependency, since none may be installed yet.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const time = (file) => statSync(join(root, file), { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Runs npm itself (the one that called us, if any) and ends with its exit status when it fails. */
function npm(...args) {
  console.error(`> npm ${args.join(' ')}`);
  const self = process.env.npm_execpath;
  const options = { cwd: root, stdio: ['ignore', 2, 2] };
  const done = self?.endsWith('.js')
    ? spawnSync(process.execPath, [self, ...args], options)
    : spawnSync('npm', args, { ...options, shell: process.platform === 'win32' });
  if (done.status !== 0) {
    console.error(`npm ${args.join(' ')} failed${done.error ? `: ${done.error.message}` : ''}`);
    process.exit(done.status ?? 1);
  }
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node 20.19 or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
// npm writes this file last, so it is missing or old after an install that was cut off or a changed lock file.
if (time('node_modules/.package-lock.json') < time('package-lock.json'))
  npm('ci', '--include=dev', '--no-audit', '--no-fund');
if (process.argv.slice(2).some((file) => !existsSync(join(root, file)))) npm('run', 'build');
