/// <reference types="vitest/config" />
import { chmodSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type UserConfig } from 'vite';
import pkg from './package.json' with { type: 'json' };
import { folders } from './src/site/folders.ts';
import { receiver } from './src/site/receiver.ts';
import { publicEntries } from './tests/support/public-entries.mjs';
import { slim } from './tests/support/slim.ts';
import { terse } from './tests/support/terse.ts';
import { along, ways } from './tests/support/ways.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const external = Object.keys(pkg.dependencies).map((name) => new RegExp(`^${name}(/|$)`));

/** For a page's own bundler: one module per source file, dependencies left as imports. */
const esm: UserConfig = {
  publicDir: false,
  plugins: [slim()],
  build: {
    outDir: 'dist/esm',
    emptyOutDir: true,
    minify: false,
    sourcemap: true,
    target: 'es2022',
    lib: { entry: publicEntries(), formats: ['es'] },
    rolldownOptions: {
      external,
      output: { preserveModules: true, preserveModulesRoot: 'src', entryFileNames: '[name].js' },
    },
  },
};

/**
 * What comes together lies in one file, where it compresses best: a file takes what it names with all that needs, but for
 * what an earlier one has. What several have in common lies apart, so that nobody fetches a report to see who helps.
 */
const together = [
  { name: 'core', test: /src[\\/]define\.ts$/ },
  {
    name: 'answers',
    test: /elements[\\/](verdict|standing|trail|guidance|term|question)[\\/]define\.ts$|key[\\/]later\.ts$/,
  },
  { name: 'carried', test: /session[\\/]restore\.ts$|shared[\\/]carried\.ts$/ },
  { name: 'kept', test: /src[\\/]store[\\/](store|drafts)\.ts$|shared[\\/]keep\.ts$|report[\\/]queue\.ts$/ },
  { name: 'common', test: /nearby[\\/]coordinates\.ts$|key[\\/]separation\.ts$|find[\\/]cover\.ts$/ },
  { name: 'nearby', test: /elements[\\/]nearby[\\/]define\.ts$/ },
  {
    name: 'find',
    test: /report[\\/]find[\\/]index\.ts$|elements[\\/]report[\\/](photos|where)\.ts$|photos[\\/]base64\.ts$|words[\\/]report[\\/]index\.ts$/,
  },
  { name: 'report', test: /elements[\\/]report[\\/](define|more|outgoing|opened)\.ts$/ },
];

/** For a script tag: one folder, its entry is the only address a page writes; what is loaded late stays a file of its own. */
const standalone: UserConfig = {
  publicDir: false,
  plugins: [slim(), terse(), along('src/mount/leadwort.css')],
  build: {
    outDir: 'dist/standalone',
    emptyOutDir: true,
    sourcemap: true,
    manifest: 'chunks.json',
    target: 'es2022',
    lib: { entry: 'src/define.ts', formats: ['es'], fileName: () => 'leadwort.js' },
    rolldownOptions: {
      // Room that a library lays out for functions which nobody here calls.
      treeshake: { manualPureFunctions: ['vec'] },
      // Late chunks may take what they share with the entry from the entry itself: fewer files, 1.3 kB less to load.
      preserveEntrySignatures: 'allow-extension',
      output: {
        minify: true,
        chunkFileNames: 'leadwort-[name]-[hash:6].js',
        codeSplitting: { groups: together },
      },
    },
  },
};

/** For people who keep a key: one file that Node runs, with everything but Node's own modules inside. */
const command: UserConfig = {
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    outDir: 'dist',
    emptyOutDir: false,
    target: 'node20',
    ssr: 'src/command/main.ts',
    rolldownOptions: {
      output: { entryFileNames: 'command.js', codeSplitting: false, banner: '#!/usr/bin/env node' },
    },
  },
  plugins: [{ name: 'executable', writeBundle: ({ dir }) => chmodSync(`${dir}/command.js`, 0o755) }],
};

/** The demonstration: every folder of src/site with an index.html is a page. */
function site(): UserConfig {
  const pages = readdirSync(here('src/site/'), { recursive: true, encoding: 'utf8' })
    .filter((file) => /(^|[\\/])index\.html$/.test(file))
    .map((file) => here(`src/site/${file}`));
  return {
    root: 'src/site',
    base: './',
    appType: 'mpa',
    publicDir: false,
    plugins: [
      receiver('/finds'),
      folders(
        {
          areas: 'src/site/areas',
          keys: 'dist/keys',
          images: 'images-placeholder',
          widget: 'dist/standalone',
          whole: 'dist/whole',
          frame: 'dist/frame',
        },
        { '/widget/leadwort.js': 'src/define.ts' },
      ),
    ],
    build: {
      outDir: here('dist/site'),
      emptyOutDir: true,
      target: 'es2022',
      modulePreload: { polyfill: false },
      assetsInlineLimit: 0,
      rolldownOptions: { input: pages },
    },
  };
}

/** Builds (the site by default, `--mode esm`, `standalone`, `command`, or one of the `ways`) and, under Vitest, the tests. */
export default defineConfig(async ({ mode }): Promise<UserConfig> => {
  if (mode === 'test') return (await import('./tests/support/vitest.ts')).vitest();
  if (mode === 'esm') return esm;
  if (mode === 'standalone') return standalone;
  if (mode === 'command') return command;
  const way = ways[mode];
  if (way) return way;
  return site();
});
