import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import pkg from '../package.json' with { type: 'json' };
import { VERSION } from '../src/index.ts';

test('the version in the code is the version of the package', () => {
  expect(VERSION).toBe(pkg.version);
});

test('the lock file names no registry, so that any mirror will do', () => {
  const lock = readFileSync(new URL('../package-lock.json', import.meta.url), 'utf8');
  expect(lock).toContain('"lockfileVersion"');
  expect(lock).not.toMatch(/"resolved":\s*"\w+:\/\//);
});

test('every dependency is pinned exactly', () => {
  const ranges = Object.entries({ ...pkg.dependencies, ...pkg.devDependencies });
  expect(ranges.filter(([, range]) => !/^(\d+\.\d+\.\d+|file:.+)$/.test(range))).toEqual([]);
});
