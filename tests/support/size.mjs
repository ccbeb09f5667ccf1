// Weighs what a page loads: `node size.mjs`. One row per budget; ends with 1 when a row is over it.
//
// "first question" is the file a page names in its script tag and everything that file imports at once.
// "fetched later" is everything else together, which comes when somebody asks for it; "later, at the plant" is as much of
// it as one person in one language can come to ask for (the heavier language counts), without what is for the desk. The
// "practice room", with its crew's page and its figures, is counted in neither: its row is what one person learning in one
// language fetches besides. Each file is compressed by itself, as a server does, by gzip at its usual level; 1 kB is 1000
// bytes. A row that is over its `budget` says so every time; over its `ceiling`, which may only come down, it fails.
import { existsSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';

/** What is opened at a desk, and the reader of a photograph's own data, which comes on the tap that asks for it. */
const DESK = ['src/elements/review/define.ts', 'src/elements/sheet/define.ts', 'src/report/photos/position.ts'];
const LANGUAGES = ['en', 'es'];

/** Whether the chunk `name` is of the practice room, the crew's page or the figures. */
export const ofPractice = (name) =>
  /^src\/(elements|words)\/(practice|crew|figures)\/|^src\/(practice\/|store\/practice)/.test(name);

const otherLanguage = (name, language) => {
  const words = /^src\/words\/(?:.+\/)?([a-z]{2})\.ts$/.exec(name);
  return words !== null && words[1] !== language;
};

/** Whether one person who learns in `language` never fetches the chunk `name`. */
export const notForLearning = (name, language) => DESK.includes(name) || otherLanguage(name, language);

/** Whether one person who reads `language` never fetches the chunk `name` at the plant. */
export const notAtThePlant = (name, language) => ofPractice(name) || notForLearning(name, language);

/**
 * The files that `entry` needs: those it imports at once, and with `late` also those it fetches when asked,
 * but for chunks that are `left`.
 * `chunks` is the list Vite writes beside a build: name of a chunk to `{ file, imports, dynamicImports }`.
 * @param {(name: string) => boolean} [left]
 */
export function filesOf(chunks, entry, late, left = () => false) {
  const seen = new Set();
  const visit = (name) => {
    if (seen.has(name) || left(name)) return;
    if (!Object.hasOwn(chunks, name)) throw new Error(`the list of chunks lacks "${name}"`);
    seen.add(name);
    const { imports = [], dynamicImports = [] } = chunks[name];
    for (const next of late ? [...imports, ...dynamicImports] : imports) visit(next);
  };
  visit(entry);
  return [...new Set([...seen].map((name) => chunks[name].file))];
}

/** One row per limit: `{ name, bytes, budget, ceiling, over }`; a limit that nothing measures is an error. */
export function compare(measured, limits) {
  return Object.entries(limits).map(([name, { budget, ceiling = budget }]) => {
    if (!Object.hasOwn(measured, name)) throw new Error(`the limits name "${name}", which is not measured`);
    return { name, bytes: measured[name], budget, ceiling, over: measured[name] > ceiling };
  });
}

/** Rows as aligned text, with a kind word either way. */
export function tell(rows) {
  const kB = (bytes) => (bytes / 1000).toFixed(1);
  const width = Math.max(...rows.map(({ name }) => name.length));
  return rows
    .map(({ name, bytes, budget, ceiling, over }) => {
      const left = kB(Math.abs(budget - bytes)).padStart(6);
      const heavy = over ? 'load something later, or lighten it' : `held below ${kB(ceiling)} kB until it is lighter`;
      const word = bytes > budget ? `${left} kB too heavy: ${heavy}` : `${left} kB to spare`;
      return `${name.padEnd(width)}  ${kB(bytes).padStart(6)} kB of ${kB(budget).padStart(6)} kB  ${word}`;
    })
    .join('\n');
}

function main() {
  const folder = new URL('../../dist/standalone/', import.meta.url);
  const list = new URL('chunks.json', folder);
  if (!existsSync(list)) throw new Error('there is no build to weigh: run `npm run build` first');
  const chunks = JSON.parse(readFileSync(list, 'utf8'));
  const weigh = (late, left) =>
    filesOf(chunks, 'src/define.ts', late, left).reduce(
      (sum, file) => sum + gzipSync(readFileSync(new URL(file, folder))).length,
      0,
    );
  const limits = JSON.parse(readFileSync(new URL('size-limits.json', import.meta.url), 'utf8'));
  const first = weigh(false);
  const atThePlant = (language) => weigh(true, (name) => notAtThePlant(name, language)) - first;
  const learning = (language) =>
    weigh(true, (name) => notForLearning(name, language)) - weigh(true, (name) => notAtThePlant(name, language));
  const measured = {
    'first question': first,
    'later, at the plant': Math.max(...LANGUAGES.map(atThePlant)),
    'fetched later': weigh(true, ofPractice) - first,
    'practice room': Math.max(...LANGUAGES.map(learning)),
  };
  const rows = compare(measured, limits);
  console.log(tell(rows));
  if (rows.some(({ over }) => over)) process.exitCode = 1;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    main();
  } catch (error) {
    console.error(`size: ${error.message}`);
    process.exitCode = 1;
  }
}
