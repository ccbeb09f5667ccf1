// Whoever leads a crew, on the built page: the example files, a day, a file that cannot be read, tables, paper, no network use.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { type Browser, chromium } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { practice as en } from '../src/words/practice/en.ts';
import { practice as es } from '../src/words/practice/es.ts';
import { ensureBrowser } from './support/find-browser.mjs';
import { pdfText } from './support/pdf.ts';
import { buildSite, serveSite } from './support/site.mjs';

vi.setConfig({ testTimeout: 120_000 });
let folder: string;
let site: { address: string; close: () => Promise<void> };
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-crew-'));
  site = await serveSite(buildSite(folder));
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

test.each([
  { path: 'crew/', words: en, width: 360 },
  { path: 'es/crew/', words: es, width: 1280 },
])('the crew is told of by its files, in $words.language at $width px, and nothing leaves the page', async (visit) => {
  const { path, words, width } = visit;
  const context = await browser.newContext({ viewport: { width, height: 780 } });
  const asked: { method: string; url: string }[] = [];
  context.on('request', (request) => asked.push({ method: request.method(), url: request.url() }));
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => /Content Security Policy/i.test(message.text()) && faults.push(message.text()));
  await page.goto(new URL(path, site.address).href);
  const crew = page.locator('leadwort-crew');
  const button = (name: string) => crew.getByRole('button', { name, exact: true });
  await button(words.crew.examples(3)).click();
  await crew.locator('.ready-table').waitFor();
  expect(await crew.locator('.people li').count()).toBe(3);
  expect(await crew.locator('.cell.yes').count()).toBeGreaterThan(0);
  const before = asked.length;

  // A file that cannot be read, beside one that was opened before: the crew stays as it is.
  const broken = join(folder, 'broken.json');
  writeFileSync(broken, '{ "format": 1 }');
  await crew.locator('input[type=file]').setInputFiles([broken, 'src/site/crew/ruth.json']);
  await crew.getByRole('alert').getByText(words.bad('broken.json')).waitFor();
  expect(await crew.locator('.people li').count()).toBe(3);

  await crew.locator('.cell').first().click();
  await crew.locator('.why').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

  const saved = async (name: string) => {
    const [download] = await Promise.all([page.waitForEvent('download'), button(name).click()]);
    const to = join(folder, download.suggestedFilename());
    await download.saveAs(to);
    return parse(readFileSync(to, 'utf8'), { columns: true }) as Record<string, string>[];
  };
  const plants = await saved(words.crew.csvPlants);
  expect(plants.filter(({ ready }) => ready === 'true')).toHaveLength(await crew.locator('.cell.yes').count());
  const looks = await saved(words.crew.csvAttempts);
  const files = ['maribel', 'dale', 'ruth'].map((name) =>
    JSON.parse(readFileSync(`src/site/crew/${name}.json`, 'utf8')),
  );
  expect(looks).toHaveLength(files.flatMap(({ attempts }) => attempts).length);

  const file = join(folder, `crew-${words.language}.pdf`);
  await page.pdf({ path: file, format: 'Letter' });
  const text = pdfText(file);
  if (text !== undefined) {
    for (const part of [words.crew.ready, words.crew.teach, words.crew.agree, 'Maribel Q.', 'Ruth O.'])
      expect(text).toContain(part);
    expect(text).not.toContain(words.crew.csvPlants);
  }

  expect(faults).toEqual([]);
  const outside = ({ method, url }: (typeof asked)[number]) =>
    method !== 'GET' || (!url.startsWith('blob:') && new URL(url).host !== new URL(site.address).host);
  expect(asked.filter(outside)).toEqual([]);
  // What was opened here asked for nothing: neither the files' own words nor any address.
  expect(asked.slice(before).filter(({ url }) => /\.json$/.test(url) && !url.includes('/keys/'))).toEqual([]);
  await context.close();
});
