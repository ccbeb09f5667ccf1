import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { faults, rules } from './support/import-rules.ts';

const root = fileURLToPath(new URL('../', import.meta.url));
const sources = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' })
  .map((file) => `src/${file.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.ts') && !/\.(test|bench)\.ts$/.test(file));

test('imports point one way, and the engine knows no screen, clock or chance', () => {
  expect(sources).toContain('src/index.ts');
  expect(sources.flatMap((file) => faults(file, readFileSync(root + file, 'utf8')))).toEqual([]);
});

describe('the checker', () => {
  test.each([
    ['src/engine/a.ts', `import { read } from '../key/read.ts';`, 'src/engine/a.ts:1 imports src/key/read.ts'],
    ['src/engine/a.ts', `\nimport type { Key } from '../key/types.ts';`, 'src/engine/a.ts:2 imports src/key/types.ts'],
    ['src/engine/deep/a.ts', `export * from '../../session/x.ts';`, 'src/engine/deep/a.ts:1 imports src/session/x.ts'],
    ['src/engine/a.ts', `import { html } from 'lit';`, 'src/engine/a.ts:1 imports lit'],
    ['src/engine/a.ts', `const a = await import('../elements/x.ts');`, 'src/engine/a.ts:1 imports src/elements/x.ts'],
    ['src/engine/a.ts', `type A = import('../key/x.ts').A;`, 'src/engine/a.ts:1 imports src/key/x.ts'],
    ['src/key/a.ts', `import { readFileSync } from 'node:fs';`, 'src/key/a.ts:1 imports node:fs'],
    ['src/key/a.ts', `const late = await import(name);`, 'src/key/a.ts:1 imports (not a plain string)'],
    ['src/session/a.ts', `import '../contexts/x.ts';`, 'src/session/a.ts:1 imports src/contexts/x.ts'],
    ['src/contexts/a.ts', `import '../elements/x.ts';`, 'src/contexts/a.ts:1 imports src/elements/x.ts'],
    ['src/words/a.ts', `import { type A, b } from '../key/x.ts';`, 'src/words/a.ts:1 imports src/key/x.ts'],
    ['src/elements/a/a.ts', `import '../../site/x.ts';`, 'src/elements/a/a.ts:1 imports src/site/x.ts'],
    ['src/command/a.ts', `import { LitElement } from 'lit';`, 'src/command/a.ts:1 imports lit'],
    ['src/command/a.ts', `import '../session/x.ts';`, 'src/command/a.ts:1 imports src/session/x.ts'],
    ['src/index.ts', `import './site/x.ts';`, 'src/index.ts:1 imports src/site/x.ts'],
    ['src/engine/a.ts', `const now = Date.now();`, 'src/engine/a.ts:1 mentions Date'],
    ['src/engine/a.ts', `const now = new Date();`, 'src/engine/a.ts:1 mentions Date'],
    ['src/engine/a.ts', `const now = performance.now();`, 'src/engine/a.ts:1 mentions performance'],
    ['src/engine/a.ts', `window.alert(1);`, 'src/engine/a.ts:1 mentions window'],
    ['src/engine/a.ts', `const at = { window };`, 'src/engine/a.ts:1 mentions window'],
    ['src/engine/a.ts', `document.title = '';`, 'src/engine/a.ts:1 mentions document'],
    ['src/engine/a.ts', `const x = Math.random();`, 'src/engine/a.ts:1 may draw from Math.random'],
    ['src/engine/a.ts', `const { random } = Math;`, 'src/engine/a.ts:1 may draw from Math.random'],
    ['src/nowhere/a.ts', ``, 'src/nowhere/a.ts lies in a folder without a rule: add "nowhere" to import-rules.ts'],
  ])('finds the fault in %s: %s', (file, text, fault) => {
    expect(faults(file, text)).toEqual([fault]);
  });

  test.each([
    ['src/engine/a.ts', `import { sum } from './sum.ts';\nexport const f = (x: number) => Math.log(x) + sum(x);`],
    ['src/engine/a.ts', `// no window, no Date.now()\nexport const plan = { document: 1 }.document;`],
    ['src/key/a.ts', `import { sum } from '../engine/sum.ts';`],
    ['src/words/a.ts', `import type { Key } from '../key/types.ts';\nimport { type A } from '../key/types.ts';`],
    [
      'src/elements/a/a.ts',
      `import { html } from 'lit';\nimport { property } from 'lit/decorators.js';\nimport '../b/b.ts';`,
    ],
    ['src/elements/a/a.ts', `const { default: Fuse } = await import('fuse.js');`],
    ['src/command/main.ts', `import { readFileSync } from 'node:fs';\nimport { VERSION } from '../version.ts';`],
    ['src/site/main.ts', `import '../define.ts';\nimport 'anything';`],
  ])('lets %s be: %s', (file, text) => {
    expect(faults(file, text)).toEqual([]);
  });

  test('allows no two folders to lean on each other', () => {
    const reaches = (from: string, to: string, seen = new Set<string>()): boolean =>
      (rules.get(from)?.from ?? []).some(
        (next) => next === to || (!seen.has(next) && reaches(next, to, seen.add(next))),
      );
    expect([...rules.keys()].filter((layer) => reaches(layer, layer))).toEqual([]);
  });
});
