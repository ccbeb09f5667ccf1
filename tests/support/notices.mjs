// Writes dist/NOTICES.txt: the licences of the packages whose code is in the built files, which must go along with it.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const read = (/** @type {string} */ file) => readFileSync(join(root, file), 'utf8');

const packages = new Set(Object.keys(JSON.parse(read('package.json')).dependencies));
// What those need in their turn. A set is walked on while it grows.
for (const name of packages)
  for (const next of Object.keys(JSON.parse(read(`node_modules/${name}/package.json`)).dependencies ?? {}))
    if (existsSync(join(root, 'node_modules', next))) packages.add(next);

const notices = [...packages].sort().map((name) => {
  const { version, license } = JSON.parse(read(`node_modules/${name}/package.json`));
  const file = readdirSync(join(root, 'node_modules', name)).find((one) => /^licen[cs]e/i.test(one));
  const text = file ? read(`node_modules/${name}/${file}`).trim() : '';
  return `${name} ${version} (${license})\n\n${text}\n`;
});
writeFileSync(join(root, 'dist/NOTICES.txt'), notices.join(`\n${'-'.repeat(72)}\n\n`));
