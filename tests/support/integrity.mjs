// Writes dist/integrity.json, the hashes that a script tag's `integrity` attribute takes (Subresource Integrity), and
// prints those of the files that a page names: `node integrity.mjs [dist]`.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const FOLDERS = ['standalone', 'whole', 'frame'];
/** What a page names itself; all else is fetched by these. */
const NAMED = [
  'standalone/leadwort.js',
  'whole/leadwort.js',
  'whole/leadwort-classic.js',
  'frame/leadwort-frame-host.js',
];

/**
 * SHA-384, as the specification writes it: https://www.w3.org/TR/SRI/ section 3.1.
 * @param {string | Uint8Array} content
 */
export const integrityOf = (content) => `sha384-${createHash('sha384').update(content).digest('base64')}`;

/**
 * The hash of every script and style sheet below `dist` that a page may fetch.
 * @param {string} dist
 * @returns {Record<string, string>} Path against `dist` to hash, in order of the paths.
 */
export function integrities(dist) {
  const files = FOLDERS.filter((folder) => existsSync(join(dist, folder))).flatMap((folder) =>
    readdirSync(join(dist, folder), { encoding: 'utf8' })
      .filter((name) => /\.(js|css)$/.test(name))
      .map((name) => `${folder}/${name}`),
  );
  return Object.fromEntries(files.sort().map((file) => [file, integrityOf(readFileSync(join(dist, file)))]));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const dist = resolve(process.argv[2] ?? fileURLToPath(new URL('../../dist', import.meta.url)));
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const files = integrities(dist);
  writeFileSync(join(dist, 'integrity.json'), `${JSON.stringify({ version, files }, null, 1)}\n`);
  console.log(`Leadwort ${version}`);
  for (const file of NAMED) {
    if (!Object.hasOwn(files, file)) {
      console.error(`integrity: ${file} was not built`);
      process.exitCode = 1;
    } else console.log(`${file.padEnd(30)} ${files[file]}`);
  }
}
