// Writes the service worker of a built demonstration: which files it keeps, and under which name.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const SOURCE = fileURLToPath(new URL('./worker.js', import.meta.url));

/** @param {string} folder @param {string} below */
const filesIn = (folder, below) =>
  existsSync(join(folder, below))
    ? readdirSync(join(folder, below), { recursive: true, withFileTypes: true })
        .filter((one) => one.isFile())
        .map((one) =>
          join(one.parentPath, one.name)
            .slice(folder.length + 1)
            .replaceAll('\\', '/'),
        )
    : [];

/**
 * What a visit without a connection needs: both pages with what they name, the widget's parts, and the keys. The widget's
 * parts are those of its bundler's own list, so that files of an older build stay out; photographs are kept once seen.
 * @param {string} site The folder of the built demonstration.
 * @returns {string[]} Addresses against the folder.
 */
export function filesToKeep(site) {
  const pages = ['', 'es/', 'practice/', 'es/practice/'].filter((page) => existsSync(join(site, page, 'index.html')));
  const assets = filesIn(site, 'assets');
  const named = new Set(
    assets.filter((file) => pages.some((page) => read(join(site, page, 'index.html')).includes(file))),
  );
  // What those name in their turn. A set is walked on while it grows.
  for (const file of named)
    for (const other of assets)
      if (/\.(js|css)$/.test(file) && read(join(site, file)).includes(other.slice('assets/'.length))) named.add(other);
  const chunks = join(site, 'widget/chunks.json');
  const widget = existsSync(chunks)
    ? Object.values(JSON.parse(read(chunks))).flatMap(({ file, css = [] }) =>
        [file, ...css].map((one) => `widget/${one}`),
      )
    : [];
  const data = [...filesIn(site, 'keys'), ...filesIn(site, 'areas')].filter((file) => /\.(json|geojson)$/.test(file));
  return [...pages, ...new Set([...named, ...widget, ...data])].map((file) => `./${file}`);
}

/** @param {string} file */
const read = (file) => readFileSync(file, 'utf8');

/**
 * Writes `worker.js` beside the pages; its name for the files changes whenever one of them does.
 * @param {string} site
 */
export function writeWorker(site) {
  const files = filesToKeep(site);
  const hash = createHash('sha256');
  const source = read(SOURCE);
  for (const file of files)
    hash.update(file).update(readFileSync(join(site, file.endsWith('/') ? `${file}index.html` : file)));
  const name = hash.update(source).digest('hex').slice(0, 12);
  writeFileSync(
    join(site, 'worker.js'),
    `const NAME = ${JSON.stringify(name)};\nconst FILES = ${JSON.stringify(files)};\n${source}`,
  );
}
