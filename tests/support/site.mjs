// The demonstration as its visitors get it: built into a folder of the caller's, and served under a path like a partner's.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import { writeWorker } from '../../src/site/worker/offline.mjs';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const VITE = join(ROOT, 'node_modules/vite/bin/vite.js');
/** Not the root of the host: every address of the page must hold wherever a partner puts it. */
const BASE = '/partner/streams/';

/** @param {string[]} args */
export function node(...args) {
  // Under Vitest both would make the build take Lit's development version.
  const { NODE_ENV: _mode, VITEST: _vitest, ...env } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: ROOT, env, encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} failed:\n${stdout}${stderr}`);
}

/**
 * One of the builds of vite.config.ts, into `folder`; without a mode the site.
 * @param {string | undefined} mode
 * @param {string} folder
 */
export const build = (mode, folder) =>
  node(VITE, 'build', ...(mode === undefined ? [] : ['--mode', mode]), '--outDir', folder);

/**
 * Builds pages, widget and keys afresh into `folder`/site; nothing in dist is touched or needed.
 * @param {string} folder
 */
export function buildSite(folder) {
  const site = join(folder, 'site');
  build(undefined, site);
  build('standalone', join(site, 'widget'));
  build('command', join(folder, 'command'));
  mkdirSync(join(site, 'keys'), { recursive: true });
  for (const name of readdirSync(join(ROOT, 'keys')).filter((one) => existsSync(join(ROOT, 'keys', one, 'key.json'))))
    node(join(folder, 'command/command.js'), 'bundle', `keys/${name}`, '-o', join(site, 'keys', `${name}.json`));
  // The widget and the keys came after the pages.
  writeWorker(site);
  return site;
}

/**
 * Serves what buildSite made.
 * @param {string} site
 * @param {import('vite').Plugin[]} plugins
 * @returns {Promise<{ address: string, close: () => Promise<void> }>} The English page's address.
 */
export async function serveSite(site, plugins = []) {
  const server = await preview({
    configFile: false,
    logLevel: 'silent',
    root: site,
    base: BASE,
    appType: 'mpa',
    build: { outDir: site },
    plugins,
    preview: { host: '127.0.0.1', port: 0 },
  });
  const { port } = /** @type {import('node:net').AddressInfo} */ (server.httpServer.address());
  return { address: `http://127.0.0.1:${port}${BASE}`, close: () => server.close() };
}
