// Makes dist/keys/<name>.json, the one file a page loads, of every key folder in keys/: `node bundle-keys.mjs`.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const keys = join(root, 'keys');
const names = existsSync(keys) ? readdirSync(keys).filter((name) => existsSync(join(keys, name, 'key.json'))) : [];
const leadwort = (...args) =>
  spawnSync(process.execPath, ['dist/command.js', ...args], { cwd: root, encoding: 'utf8' });

if (names.length === 0) console.error('keys/ holds no key folder yet: nothing to bundle.');
else if (!leadwort('--help').stdout.includes('bundle')) console.error('The command cannot bundle a key yet.');
else {
  mkdirSync(join(root, 'dist/keys'), { recursive: true });
  for (const name of names) {
    const done = leadwort('bundle', `keys/${name}`, '-o', `dist/keys/${name}.json`);
    process.stderr.write(done.stdout + done.stderr);
    if (done.status !== 0) process.exit(done.status ?? 1);
  }
}
