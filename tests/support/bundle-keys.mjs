// Makes dist/keys/<name>.json, the one file a page loads, of every key folder in keys/: `node bundle-keys.mjs`.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const keys = join(root, 'keys');
mkdirSync(join(root, 'dist/keys'), { recursive: true });
for (const name of readdirSync(keys).filter((one) => existsSync(join(keys, one, 'key.json')))) {
  const args = ['dist/command.js', 'bundle', `keys/${name}`, '-o', `dist/keys/${name}.json`];
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: ['ignore', 2, 2] });
  if (status !== 0) process.exit(status ?? 1);
}
