// The tables of the elements in README.md, made from the code: `node tests/support/api-tables.mjs` writes them between
// their marks. A test holds them to what this makes.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { create, ts } from '@custom-elements-manifest/analyzer';
import { litPlugin } from '@custom-elements-manifest/analyzer/src/features/framework-plugins/lit/lit.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const README = `${ROOT}README.md`;
const MARKS = ['<!-- made by tests/support/api-tables.mjs -->', '<!-- end of what it made -->'];

/** The manifest of the sources as they are now. The analyzer's own command would write into package.json as well. */
export function manifestNow() {
  const files = readdirSync(`${ROOT}src/elements`, { recursive: true, encoding: 'utf8' })
    .map((file) => `src/elements/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
    .sort();
  const modules = files.map((file) =>
    ts.createSourceFile(file, readFileSync(`${ROOT}${file}`, 'utf8'), ts.ScriptTarget.ES2015, true),
  );
  return create({ modules, plugins: litPlugin(), context: { dev: false, thirdPartyCEMs: [] } });
}

/** @param {string | undefined} text */
const cell = (text = '') => text.replace(/\s+/g, ' ').replaceAll('|', '\\|').trim();

/** @param {{ modules: any[] }} manifest @returns {string} One table for each element, in the order of their names. */
export function tablesOf(manifest) {
  const elements = manifest.modules
    .flatMap(({ declarations }) => declarations ?? [])
    .filter(({ tagName }) => tagName !== undefined)
    .sort((a, b) => (a.tagName < b.tagName ? -1 : 1));
  return elements.map(tableOf).join('\n\n');
}

/** @param {any} element */
function tableOf({
  tagName,
  summary,
  description,
  attributes = [],
  members = [],
  events = [],
  slots = [],
  cssParts = [],
  cssProperties = [],
}) {
  const described = (/** @type {any} */ { fieldName, description: own }) =>
    own ?? members.find((/** @type {any} */ one) => one.name === fieldName)?.description;
  const properties = members.filter(
    (/** @type {any} */ one) =>
      one.kind === 'field' &&
      one.attribute === undefined &&
      !one.static &&
      (one.privacy ?? 'public') === 'public' &&
      one.description &&
      !/@internal/.test(one.description),
  );
  const rows = [
    ...attributes.map((/** @type {any} */ one) => ['attribute', one.name, described(one)]),
    ...properties.map((/** @type {any} */ one) => ['property', one.name, one.description]),
    ...events.map((/** @type {any} */ one) => ['event', one.name, one.description]),
    ...slots.map((/** @type {any} */ one) => ['slot', one.name || '(content)', one.description]),
    ...cssParts.map((/** @type {any} */ one) => ['part', one.name, one.description]),
    ...cssProperties.map((/** @type {any} */ one) => ['style', one.name, one.description]),
  ];
  const head = `**\`<${tagName}>\`** ${cell(summary ?? description)}`;
  if (rows.length === 0) return head;
  return [
    head,
    '',
    '| | name | what it is |',
    '| --- | --- | --- |',
    ...rows.map(([kind, name, what]) => `| ${kind} | \`${name}\` | ${cell(what)} |`),
  ].join('\n');
}

/** @param {string} readme @param {string} tables */
export function withTables(readme, tables) {
  const [from, to] = MARKS.map((mark) => readme.indexOf(mark));
  if (from === -1 || to === -1 || to < from) throw new Error(`README.md lacks its marks: ${MARKS.join(' ... ')}`);
  return `${readme.slice(0, from)}${MARKS[0]}\n\n${tables}\n\n${readme.slice(to)}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const readme = readFileSync(README, 'utf8');
  writeFileSync(README, withTables(readme, tablesOf(manifestNow())));
}
