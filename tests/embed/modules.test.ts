// The modules of the package as a bundler and Node see them: what they do when imported, and what they do not.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'vite';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import pkg from '../../package.json' with { type: 'json' };
import { manifestNow } from '../support/api-tables.mjs';
import { build } from '../support/site.mjs';

vi.setConfig({ testTimeout: 120_000 });
const ROOT = fileURLToPath(new URL('../../', import.meta.url));
/** A project of somebody else's, below this one's node_modules so that what the package needs is found. */
let project: string;
const inside = (path: string) => join(project, 'node_modules/leadwort', path);
beforeAll(() => {
  mkdirSync(join(ROOT, 'node_modules/.cache'), { recursive: true });
  project = mkdtempSync(join(ROOT, 'node_modules/.cache/leadwort-project-'));
  writeFileSync(join(project, 'package.json'), '{ "type": "module" }');
  mkdirSync(inside('dist'), { recursive: true });
  cpSync(join(ROOT, 'package.json'), inside('package.json'));
  build('esm', inside('dist/esm'));
  build('whole', inside('dist/whole'));
}, 180_000);
afterAll(() => rmSync(project, { recursive: true, force: true }));

const entries = Object.entries(pkg.exports).map(([name, target]): [string, string] => [
  name.replace('.', 'leadwort'),
  typeof target === 'string' ? target : target.default,
]);
const modules = entries.filter(([, target]) => target.startsWith('./dist/esm/'));

test('every module that the package names is there', () => {
  expect(modules.length).toBeGreaterThan(15);
  expect(modules.filter(([, target]) => !existsSync(inside(target)))).toEqual([]);
});

describe('where there is no DOM', () => {
  test.each([...modules.map(([name]) => name), 'leadwort/whole'])(
    '%s can be imported, and leaves no global behind',
    (name) => {
      // Lit makes a registry there, which browsers have, and tells of its copies.
      const program = `const before = new Set(Object.getOwnPropertyNames(globalThis));
      await import(${JSON.stringify(name)});
      await new Promise((done) => setTimeout(done));
      const left = Object.getOwnPropertyNames(globalThis).filter((one) => !before.has(one) && !/^(lit|reactiveElement)[A-Z]|^customElements$/.test(one));
      console.log(JSON.stringify(left));`;
      const out = execFileSync(process.execPath, ['--input-type=module', '-e', program], {
        cwd: project,
        encoding: 'utf8',
      });
      expect(JSON.parse(out)).toEqual([]);
    },
  );
});

/** What a bundler keeps of a module that imports `from` and uses nothing of it. */
async function kept(from: string): Promise<string> {
  const entry = join(project, `${from.replaceAll('/', '-')}.js`);
  writeFileSync(entry, `import ${JSON.stringify(from)};\nexport const here = 1;\n`);
  const built = await bundle({
    root: project,
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: false, lib: { entry, formats: ['es'], fileName: 'out' } },
  });
  // The bundler writes late chunks also where nothing is left that would fetch them.
  const [{ output }] = built as unknown as [{ output: Chunk[] }];
  const all = new Map(output.map((chunk) => [chunk.fileName, chunk]));
  const reached = new Set(output.filter(({ isEntry }) => isEntry).map(({ fileName }) => fileName));
  for (const file of reached)
    for (const next of [...(all.get(file)?.imports ?? []), ...(all.get(file)?.dynamicImports ?? [])]) reached.add(next);
  return [...reached].map((file) => all.get(file)?.code ?? '').join('\n');
}
interface Chunk {
  readonly fileName: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly code?: string;
}

describe('a bundler', () => {
  test('keeps nothing of the classes when they are imported and not used', async () => {
    const code = await kept('leadwort');
    expect(code).not.toContain('customElements');
    expect(code).not.toMatch(/\bclass\b|import/);
    expect(code.length).toBeLessThan(200);
  });

  test.each(modules.map(([name]) => name).filter((name) => name !== 'leadwort'))(
    'keeps the registration of %s',
    async (name) => {
      expect(await kept(name)).toMatch(/customElements\.define\(/);
    },
  );
});

test('only modules that the list of side effects names register anything', () => {
  const registering = readdirSync(inside('dist/esm'), { recursive: true, encoding: 'utf8' }).filter(
    (file) =>
      file.endsWith('.js') && /^(customElements\.)?define\(/m.test(readFileSync(inside(`dist/esm/${file}`), 'utf8')),
  );
  expect(registering.length).toBeGreaterThan(10);
  expect(registering.filter((file) => !file.endsWith('/define.js'))).toEqual([]);
});

describe('every tag that is registered', () => {
  const folder = join(ROOT, 'src/elements');
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /(?<!\.test)\.ts$/.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8'))
    .join('\n');
  const tags = [...sources.matchAll(/^define\('(leadwort-[\w-]+)'/gm)].map(([, tag]) => tag);

  test('has its class as its type', () => {
    expect(tags.length).toBeGreaterThan(15);
    const typed = [...sources.matchAll(/^ {4}'(leadwort-[\w-]+)': Leadwort\w+;/gm)].map(([, tag]) => tag);
    expect(typed.sort()).toEqual([...tags].sort());
  });

  test('is in custom-elements.json, but for a part of another element', async () => {
    // In memory: the program that makes the file would write into package.json where it lies.
    const manifest = await manifestNow();
    const told = (manifest.modules as { declarations: { tagName?: string }[] }[])
      .flatMap(({ declarations }) => declarations)
      .flatMap(({ tagName }: { tagName?: string }) => tagName ?? []);
    expect(told.sort()).toEqual(tags.filter((tag) => tag !== 'leadwort-practice-run').sort());
  });
});
