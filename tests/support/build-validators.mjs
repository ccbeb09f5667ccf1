// Makes src/key/generated/shapes.js (what a page needs at once) and album-shapes.js (what it needs later) from the schemas of a key: `node tests/support/build-validators.mjs`.
//
// The page needs the rules of the schemas, not their prose, and before its first question: so references are resolved,
// titles dropped, patterns compiled by the engine that loads the file, and what several places share is written once.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const folder = new URL('../../src/key/schema/', import.meta.url);
const target = new URL('../../src/key/generated/', import.meta.url);

/** Keywords that src/key/shape.ts knows, by what stands in them. Any other is refused, lest a rule be lost unseen. */
const plain = new Set(
  'type const enum required minLength maxLength minimum maximum exclusiveMinimum exclusiveMaximum minItems maxItems maxProperties dependentRequired'.split(
    ' ',
  ),
);
const one = new Set(['items', 'additionalProperties', 'propertyNames', 'if', 'then', 'else']);
const many = new Set(['oneOf', 'anyOf']);
const prose = new Set(['$schema', '$id', 'title', 'description', '$defs']);

export function readSchemas() {
  return new Map(
    readdirSync(folder)
      .sort()
      .map((name) => [name, JSON.parse(readFileSync(new URL(name, folder), 'utf8'))]),
  );
}

/** Files of each generated module: those of a key, and those of its pictures and words. */
export const MODULES = new Map([
  ['shapes', ['bundle']],
  ['album-shapes', ['album', 'manifest', 'glossary', 'courses']],
]);

/**
 * A generated module's text.
 * @param {ReadonlyMap<string, any>} [schemas]
 * @param {readonly string[]} [roots]
 */
export function shapesModule(schemas = readSchemas(), roots = MODULES.get('shapes')) {
  const written = new Map(); // place of a definition -> its constant
  const lines = [];

  const constant = (place) => {
    const known = written.get(place);
    if (known) return known;
    const [file, pointer] = place.split('#');
    let schema = schemas.get(file);
    for (const step of pointer.split('/').slice(1)) schema = schema?.[step];
    if (!schema) throw new Error(`there is no ${place}`);
    const base = `${pointer.split('/').at(-1) || file.replace('.json', '')}Shape`;
    const alike = [...written.values()].filter((other) => other.replace(/\d+$/, '') === base).length;
    const name = `${base}${alike || ''}`;
    written.set(place, name);
    const text = write(schema, file);
    lines.push(`const ${name} = ${text};`);
    return name;
  };

  const write = (schema, file) => {
    if (schema === false) return 'false';
    if (schema === true) return '{}';
    const parts = [];
    const rules = Object.keys(schema).filter((keyword) => !prose.has(keyword));
    if ('$ref' in schema) {
      const [other, pointer = ''] = schema.$ref.split('#');
      const name = constant(`${other || file}#${pointer}`);
      if (rules.length === 1) return name;
      parts.push(`...${name}`);
    }
    for (const keyword of rules) {
      const value = schema[keyword];
      if (keyword === '$ref') continue;
      if (plain.has(keyword)) parts.push(`${keyword}: ${JSON.stringify(value)}`);
      else if (keyword === 'pattern') parts.push(`pattern: ${new RegExp(value, 'u')}`);
      else if (one.has(keyword)) parts.push(`${keyword}: ${write(value, file)}`);
      else if (many.has(keyword)) parts.push(`${keyword}: [${value.map((each) => write(each, file)).join(', ')}]`);
      else if (keyword === 'properties')
        parts.push(
          `properties: { ${Object.entries(value)
            .map(([name, each]) => `${name}: ${write(each, file)}`)
            .join(', ')} }`,
        );
      else throw new Error(`${file}: src/key/shape.ts does not know the keyword "${keyword}"`);
    }
    if ('pattern' in schema || 'oneOf' in schema) {
      // A description begins as a sentence does; in a message it follows "expected".
      const means = schema.description.replace(/\.$/, '').replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase());
      parts.push(`means: ${JSON.stringify(means)}`);
    }
    return `{ ${parts.join(', ')} }`;
  };

  const names = roots.map((root) => constant(`${root}.json#`));
  return `// Made by tests/support/build-validators.mjs from src/key/schema/: do not edit.\n${lines.join('\n')}\nexport { ${names.join(', ')} };\n`;
}

const types = (roots) =>
  `import type { Shape } from '../shape.ts';\n\n${roots.map((root) => `export const ${root}Shape: Shape;\n`).join('')}`;

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  mkdirSync(target, { recursive: true });
  for (const [name, roots] of MODULES) {
    writeFileSync(new URL(`${name}.js`, target), shapesModule(readSchemas(), roots));
    writeFileSync(new URL(`${name}.d.ts`, target), types(roots));
  }
}
