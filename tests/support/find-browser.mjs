// Finds a Chromium-family browser; installs one only when asked to and none is there.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { homedir, platform } from 'node:os';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const os = platform();
const win = os === 'win32';
const mac = os === 'darwin';
const runnable = (p) => {
  try {
    accessSync(p, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};
export const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .map((dir) => join(dir, win ? `${name}.exe` : name))
    .find(runnable);

/** A candidate counts only if it starts and tells its version. */
function probe(path, source) {
  if (!path || !runnable(path)) return undefined;
  if (win) return { path, source, version: 'unknown' }; // --version opens a window there
  const r = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 15_000 });
  const version = r.status === 0 ? /\d+(?:\.\d+)+/.exec(r.stdout)?.[0] : undefined;
  return version ? { path, source, version } : undefined;
}
const first = (paths, source) => {
  for (const p of paths) {
    const hit = probe(p, source);
    if (hit) return hit;
  }
  return undefined;
};

function fromEnvironment() {
  const wanted = process.env.TEST_BROWSER;
  if (!wanted) return undefined;
  const hit = probe(wanted, 'environment');
  if (!hit) throw new Error(`TEST_BROWSER is "${wanted}", which does not start: correct it or unset it.`);
  return hit;
}
function fromSystem() {
  const named = [
    'chromium',
    'chromium-browser',
    'google-chrome-stable',
    'google-chrome',
    'microsoft-edge-stable',
    'microsoft-edge',
  ].map(onPath);
  const app = (n) => `/Applications/${n}.app/Contents/MacOS/${n}`;
  const fixed = mac
    ? ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(app)
    : win
      ? [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
          .filter(Boolean)
          .flatMap((d) => [
            join(d, 'Google/Chrome/Application/chrome.exe'),
            join(d, 'Microsoft/Edge/Application/msedge.exe'),
          ])
      : [];
  return first([...named, ...fixed], 'system');
}
async function fromPlaywright() {
  const paths = [];
  try {
    paths.push((await import('playwright')).chromium.executablePath());
  } catch {
    /* package absent */
  }
  const cache =
    process.env.PLAYWRIGHT_BROWSERS_PATH ??
    (mac
      ? join(homedir(), 'Library/Caches/ms-playwright')
      : win
        ? join(process.env.LOCALAPPDATA ?? '', 'ms-playwright')
        : join(homedir(), '.cache/ms-playwright'));
  const rev = (d) => Number(/-(\d+)$/.exec(d)?.[1] ?? 0);
  if (existsSync(cache))
    for (const d of readdirSync(cache)
      .filter((x) => /^chromium-\d+$/.test(x))
      .sort((a, b) => rev(b) - rev(a)))
      for (const tail of [
        'chrome-linux/chrome',
        'chrome-linux64/chrome',
        'chrome-win/chrome.exe',
        'chrome-win64/chrome.exe',
      ])
        paths.push(join(cache, d, tail));
  return first(paths, 'playwright');
}
export const findBrowser = async () => fromEnvironment() ?? fromSystem() ?? (await fromPlaywright());

function sh(cmd, args, timeout) {
  process.stderr.write(`> ${cmd} ${args.join(' ')}\n`);
  const r = spawnSync(cmd, args, {
    stdio: ['ignore', 2, 2],
    timeout,
    shell: win,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  return r.status === 0;
}
export async function ensureBrowser() {
  const have = await findBrowser();
  if (have) return have;
  if (sh('npx', ['--no-install', 'playwright', 'install', 'chromium'], 120_000)) {
    const hit = await fromPlaywright();
    if (hit) return hit;
  }
  if (os === 'linux' && process.getuid?.() === 0 && onPath('apt-get')) {
    const args = ['-y', '-o', 'DPkg::Lock::Timeout=120', 'install', '--no-install-recommends', 'chromium'];
    if (sh('apt-get', args, 300_000) || (sh('apt-get', ['update'], 120_000) && sh('apt-get', args, 300_000))) {
      const hit = fromSystem();
      if (hit) return hit;
    }
  }
  throw new Error('No Chromium-family browser here: install one, or point TEST_BROWSER at one.');
}
if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    const hit = process.argv.includes('--install') ? await ensureBrowser() : await findBrowser();
    if (!hit) throw new Error('no browser found');
    console.log(JSON.stringify(hit));
  } catch (e) {
    console.error(e.message);
    process.exitCode = 1;
  }
}
