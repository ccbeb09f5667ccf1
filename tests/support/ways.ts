// How the ways onto a page are built that are no module of a bundler: one whole file, as a module and as a classic script;
// a ready page for an iframe, and the script for the page around it.
import { readFileSync } from 'node:fs';
import type { Plugin, UserConfig } from 'vite';
import pkg from '../../package.json' with { type: 'json' };
import { slim } from './slim.ts';

const shared = { emptyOutDir: false, sourcemap: true, target: 'es2022' } as const;
const banner = `/*! Leadwort ${pkg.version}, ${pkg.license} */`;

/** Lets files of src go along as they are. */
export const along = (...files: readonly string[]): Plugin => ({
  name: 'along',
  generateBundle() {
    for (const file of files)
      this.emitFile({
        type: 'asset',
        fileName: file.slice(file.lastIndexOf('/') + 1),
        source: readFileSync(new URL(`../../${file}`, import.meta.url)),
      });
  },
});

/** `dist/whole/leadwort.js` and `dist/whole/leadwort-classic.js`: what else comes late lies inside. */
const whole: UserConfig = {
  publicDir: false,
  plugins: [slim(), along('src/mount/leadwort.css')],
  build: {
    ...shared,
    outDir: 'dist/whole',
    emptyOutDir: true,
    lib: {
      entry: 'src/whole.ts',
      formats: ['es', 'iife'],
      name: 'Leadwort',
      fileName: (format) => (format === 'es' ? 'leadwort.js' : 'leadwort-classic.js'),
    },
    rolldownOptions: { output: { minify: true, codeSplitting: false, postBanner: banner } },
  },
};

/** `dist/frame/`: the page of an iframe, a folder of its own. */
const frame: UserConfig = {
  publicDir: false,
  plugins: [slim(), along('src/frame/leadwort-frame.html', 'src/frame/leadwort-frame.css')],
  build: {
    ...shared,
    outDir: 'dist/frame',
    emptyOutDir: true,
    lib: { entry: 'src/frame/leadwort-frame.ts', formats: ['es'], fileName: () => 'leadwort-frame.js' },
    rolldownOptions: { output: { minify: true, chunkFileNames: 'leadwort-[name]-[hash].js' } },
  },
};

/** `dist/frame/leadwort-frame-host.js`: a classic script. */
const host: UserConfig = {
  publicDir: false,
  build: {
    ...shared,
    outDir: 'dist/frame',
    lib: {
      entry: 'src/frame/leadwort-frame-host.ts',
      formats: ['iife'],
      name: 'LeadwortFrames',
      fileName: () => 'leadwort-frame-host.js',
    },
    rolldownOptions: { output: { minify: true, postBanner: banner } },
  },
};

export const ways: Readonly<Record<string, UserConfig>> = { whole, frame, host };
