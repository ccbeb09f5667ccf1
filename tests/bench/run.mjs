// `npm run bench`: builds every *.bench.ts and *.work.ts here as for production, runs the benches in turn, and writes what
// they report to RESULTS.md. `npm run bench -- engine` runs one of them and leaves RESULTS.md as it is.
import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { arch, cpus, platform, release, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from 'playwright';
import { build } from 'vite';
import { findBrowser } from '../support/find-browser.mjs';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const run = promisify(execFile);
const BIG = { maxBuffer: 1 << 28 };
const say = (text) => console.error(text);

/** One file with all it imports, minified: an ES module for Node, a script with one global for a page. */
async function built(file, folder) {
  const name = file.replace(/\.ts$/, '');
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'warn',
    publicDir: false,
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      minify: true,
      lib: {
        entry: join(HERE, file),
        formats: file.endsWith('.work.ts') ? ['es', 'iife'] : ['es'],
        name: 'work',
        fileName: (format) => `${name}.${format === 'es' ? 'mjs' : 'js'}`,
      },
      rolldownOptions: { external: /^node:/ },
    },
  });
}

/** A Python that has numpy: the one on the path, or the system's own. */
async function python() {
  for (const one of ['python3', '/usr/bin/python3'])
    try {
      await run(one, ['-c', 'import numpy']);
      return one;
    } catch {}
  return undefined;
}

async function tools(folder, browser) {
  const snake = await python();
  if (!snake) say('no python3 with numpy: going on without it');
  if (!browser) say('no browser: going on without it');
  return {
    folder,
    say,
    async inNode(work, name, ...args) {
      const call = `import { ${name} } from ${JSON.stringify(pathToFileURL(join(folder, `${work}.work.mjs`)).href)};
        process.stdout.write(JSON.stringify(await ${name}(...${JSON.stringify(args)})));`;
      return JSON.parse((await run(process.execPath, ['--input-type=module', '-e', call], BIG)).stdout);
    },
    inChromium:
      browser &&
      (async (work, name, ...args) => {
        const page = await browser.newPage();
        try {
          await page.addScriptTag({ path: join(folder, `${work}.work.js`) });
          return await page.evaluate(([name, args]) => globalThis.work[name](...args), [name, args]);
        } finally {
          await page.close();
        }
      }),
    inPython:
      snake && (async (script, ...args) => JSON.parse((await run(snake, [join(HERE, script), ...args], BIG)).stdout)),
  };
}

function head(browser) {
  const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  return `# What was measured

Written by \`npm run bench\`; do not edit. What else ran on the machine only adds time, so the least of the runs is given,
and ratios are of times taken in the same run. Another machine gives other milliseconds and much the same ratios.

| | |
| --- | --- |
| date | ${new Date().toISOString().slice(0, 10)} |
| Leadwort | ${version}, production build |
| machine | ${cpus()[0]?.model.trim() || arch()}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB; ${platform()} ${release()} |
| Node | ${process.versions.node} (V8 ${process.versions.v8}) |
| Chromium | ${browser ? browser.version() : 'none was there'} |
`;
}

const only = process.argv.slice(2);
const files = readdirSync(HERE);
const benches = files.filter(
  (file) => file.endsWith('.bench.ts') && (only.length === 0 || only.includes(file.split('.')[0])),
);
const found = await findBrowser();
const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
const browser = found ? await chromium.launch({ executablePath: found.path, args }) : undefined;
const folder = mkdtempSync(join(tmpdir(), 'leadwort-bench-'));
try {
  for (const file of files.filter((one) => one.endsWith('.work.ts') || benches.includes(one)))
    await built(file, folder);
  const given = await tools(folder, browser);
  let text = head(browser);
  for (const file of benches) {
    const { default: bench } = await import(pathToFileURL(join(folder, file.replace(/\.ts$/, '.mjs'))).href);
    text += `\n## ${bench.title}\n\n${await bench.report(given)}\n`;
  }
  console.log(text);
  if (only.length === 0) writeFileSync(join(HERE, 'RESULTS.md'), text);
} finally {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
}
