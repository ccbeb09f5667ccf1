// The source files behind the package's module entries, read from the exports map so that it is written only once.
import { readFileSync } from 'node:fs';

/** Paths from the repository's root, such as `src/index.ts`. */
export function publicEntries() {
  const { exports } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  return Object.values(exports)
    .map((target) => /^\.\/dist\/esm\/(.+)\.js$/.exec(target.default ?? '')?.[1])
    .filter((name) => name !== undefined)
    .map((name) => `src/${name}.ts`);
}
