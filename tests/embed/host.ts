// A partner's host for the tests: what a release holds, built afresh, and pages of any text, under a strict policy.
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { ensureBrowser } from '../support/find-browser.mjs';
import { build, node } from '../support/site.mjs';

const TYPES = new Map([
  ['.js', 'text/javascript'],
  ['.css', 'text/css'],
  ['.json', 'application/json'],
  ['.html', 'text/html; charset=utf-8'],
]);
export const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "require-trusted-types-for 'script'",
];
/** Of the page itself: no more than any page has. */
const CSS = 'body { margin: 1rem; font: 16px/1.5 serif } iframe { border: 0 }';

export interface Partner {
  readonly folder: string;
  /** Serves `html` under a path of its own, with the strict policy and what is added to it; gives the address. */
  page(html: string, ...more: readonly string[]): string;
  /** The same host by another name: to a browser another origin. */
  readonly elsewhere: string;
  close(): Promise<void>;
}

/** Builds the ways onto a page, and the key, into a folder and serves it. */
export async function partner(...modes: readonly ('standalone' | 'whole' | 'frame' | 'host')[]): Promise<Partner> {
  const folder = mkdtempSync(join(tmpdir(), 'leadwort-embed-'));
  for (const mode of modes) build(mode, join(folder, mode === 'host' ? 'frame' : mode));
  build('command', join(folder, 'command'));
  mkdirSync(join(folder, 'keys'));
  node(join(folder, 'command/command.js'), 'bundle', 'keys/streambank', '-o', join(folder, 'keys/streambank.json'));
  const pages = new Map<string, { html: string; policy: string }>();
  const server = createServer(({ url = '/' }, response) => {
    const path = new URL(url, 'http://any').pathname;
    const page = pages.get(path);
    if (page) {
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': page.policy });
      response.end(page.html);
      return;
    }
    try {
      const content = path === '/page.css' ? CSS : readFileSync(join(folder, normalize(path)));
      response.writeHead(200, { 'content-type': TYPES.get(extname(path)) ?? 'application/octet-stream' }).end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((done) => void server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    folder,
    page(html, ...more) {
      const path = `/page-${pages.size + 1}`;
      pages.set(path, { html, policy: [...POLICY, ...more].join('; ') });
      return `http://127.0.0.1:${port}${path}`;
    },
    elsewhere: `http://localhost:${port}/`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((done) => void server.close(done));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export async function startBrowser(): Promise<Browser> {
  const { path } = await ensureBrowser();
  return chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}

export interface Seen {
  readonly page: Page;
  /** What the page was refused, what it complained of, and what it asked of other hosts. */
  readonly faults: string[];
  readonly warnings: string[];
  readonly scripts: string[];
  /** Sum of all layout shifts that nobody caused. */
  shift(): Promise<number>;
}

/** Opens an address and notes whatever goes wrong there. */
export async function open(browser: Browser, address: string, more: BrowserContextOptions = {}): Promise<Seen> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...more });
  const page = await context.newPage();
  const seen = { faults: [] as string[], warnings: [] as string[], scripts: [] as string[] };
  page.on('console', (message) => {
    if (message.type() === 'error') seen.faults.push(message.text());
    if (message.type() === 'warning') seen.warnings.push(message.text());
  });
  page.on('pageerror', (error) => seen.faults.push(error.message));
  page.on('request', (request) => {
    if (new URL(request.url()).port !== new URL(address).port) seen.faults.push(`asked for ${request.url()}`);
    if (request.resourceType() === 'script') seen.scripts.push(new URL(request.url()).pathname);
  });
  page.on('response', (one) => one.status() >= 400 && seen.faults.push(`${one.status()} ${one.url()}`));
  await page.addInitScript(() => {
    Object.assign(window, { shifted: 0 });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
        if (!entry.hadRecentInput) (window as unknown as { shifted: number }).shifted += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(address);
  return { page, ...seen, shift: () => page.evaluate(() => (window as unknown as { shifted: number }).shifted) };
}
