// The built demonstration after one visit: the network is cut, and it goes on from where a person was.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { receiver } from '../src/site/receiver.ts';
import { filesToKeep } from '../src/site/worker/offline.mjs';
import { en } from '../src/words/en.ts';
import { es } from '../src/words/es.ts';
import giantReed from './answers/giant-reed.json' with { type: 'json' };
import { ensureBrowser } from './support/find-browser.mjs';
import { buildSite, serveSite } from './support/site.mjs';
import { labelsFor, Visitor } from './support/visitor.mjs';

vi.setConfig({ testTimeout: 240_000 });
let folder: string;
let built: string;
let site: { address: string; close: () => Promise<void> };
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-offline-'));
  built = buildSite(folder);
  site = await serveSite(built, [receiver('/finds')]);
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

const verdict = async (page: Page) =>
  (await page.locator('leadwort-verdict [part=verdict]').getAttribute('class', { timeout: 10_000 })) ?? '';
const ready = async (page: Page) => {
  await page.locator('[part=question] .card').first().waitFor();
  await page.locator('leadwort-verdict [part=verdict]').waitFor({ state: 'attached' });
  await page.waitForFunction(() => customElements.get('leadwort-guidance') !== undefined);
};

test.each([
  { path: '.', language: 'en', words: en, name: 'giant reed' },
  { path: 'es/', language: 'es', words: es, name: 'carrizo gigante' },
])('after one visit it goes on without a network, in $language, from where a person was', async (visit) => {
  const { path, language, words, name } = visit;
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const refused: string[] = [];
  page.on('console', (message) => /Content Security Policy/i.test(message.text()) && refused.push(message.text()));
  await page.clock.setFixedTime(new Date(2026, giantReed.month - 1, 15));
  await page.goto(new URL(path, site.address).href);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await ready(page);
  const bundle = JSON.parse(readFileSync(join(built, 'keys/streambank.json'), 'utf8'));
  const visitor = new Visitor(page);
  const buttons = {
    sure: words.question.sureness.sure,
    cannotTell: words.question.cannotTell,
    showAll: words.question.showAll,
  };
  const step = async () => {
    const question = await visitor.question();
    if (question === undefined) throw new Error('there is no question');
    const labels = labelsFor(bundle, giantReed, question, language);
    await ((await visitor.atCouplet()) ? visitor.take(labels, buttons) : visitor.answer(labels, buttons));
  };
  const steps = () => page.locator('leadwort-trail li').count();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await step();
  await expect.poll(steps).toBe(1);

  await context.setOffline(true);
  expect(
    await page.evaluate(() =>
      fetch('./not-kept').then(
        () => 'answered',
        () => 'cut',
      ),
    ),
  ).toBe('cut');
  await page.reload();
  await ready(page);
  await expect.poll(steps, { message: 'the answer given before' }).toBe(1);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  for (let asked = 0; !(await verdict(page)).includes('settled'); asked++) {
    if (asked > 30) throw new Error(`no verdict after ${asked} questions`);
    await step();
  }
  expect(await page.locator('leadwort-verdict [role=heading]').first().textContent()).toContain(name);
  expect(refused).toEqual([]);
  await context.close();
});

/** A small photograph, drawn by the browser itself. */
const photograph = (page: Page) =>
  page.evaluate(async () => {
    const canvas = new OffscreenCanvas(800, 600);
    const pen = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
    pen.fillStyle = '#4a7a3f';
    pen.fillRect(0, 0, 800, 600);
    pen.fillStyle = '#d8c39a';
    pen.fillRect(300, 50, 60, 500);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });

test('a report made without a network waits, outlasts the page, and arrives once when the network is back', async () => {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    geolocation: { latitude: 30.2612, longitude: -98.8721, accuracy: 12 },
    permissions: ['geolocation'],
  });
  /** Every request of the whole journey, the worker's too, and when it was made. */
  const asked: { method: string; url: string; at: 'before' | 'after' }[] = [];
  let at: 'before' | 'after' = 'before';
  context.on('request', (request) => asked.push({ method: request.method(), url: request.url(), at }));
  const page = await context.newPage();
  const refused: string[] = [];
  page.on('console', (message) => /Content Security Policy/i.test(message.text()) && refused.push(message.text()));
  await page.goto(new URL('.', site.address).href);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await ready(page);
  const jpeg = await photograph(page);

  await context.setOffline(true);
  const visitor = new Visitor(page);
  const bundle = JSON.parse(readFileSync(join(built, 'keys/streambank.json'), 'utf8'));
  const buttons = { sure: en.question.sureness.sure, cannotTell: en.question.cannotTell, showAll: en.question.showAll };
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  for (let n = 0; !(await verdict(page)).includes('settled'); n++) {
    const question = await visitor.question();
    if (question === undefined || n > 30) throw new Error(`no verdict after ${n} questions`);
    const labels = labelsFor(bundle, giantReed, question, 'en');
    await ((await visitor.atCouplet()) ? visitor.take(labels, buttons) : visitor.answer(labels, buttons));
  }
  const report = page.locator('leadwort-report');
  const open = async () => {
    const summary = page.locator('leadwort-key summary', { hasText: en.report.open });
    if (!(await report.locator('.form').isVisible())) await summary.click();
    await report.locator('.form').waitFor();
  };
  await open();
  await report
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'cane.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from(jpeg),
    });
  await report.getByRole('button', { name: 'Use where I am now' }).click();
  await expect.poll(() => report.locator('#place').inputValue()).toContain('30.26');
  await expect.poll(() => report.locator('.photos .taken, .photos li img, .photos canvas').count()).toBeGreaterThan(0);
  expect(asked.filter(({ method }) => method !== 'GET')).toEqual([]);
  at = 'after';
  await report.getByRole('button', { name: 'Send the report' }).click();
  await report.locator('.waiting').waitFor();

  // The page is closed while it waits, and opened again without a network.
  await page.reload();
  await settled();
  expect(await inbox()).toEqual([]);
  await open();
  await expect.poll(() => report.locator('#place').inputValue()).toContain('30.26');

  await context.setOffline(false);
  await report.locator('.receipt').waitFor({ timeout: 60_000 });
  expect(await report.locator('.receipt').textContent()).toContain('SF-0001');
  // Whatever else stirs the queue, the inbox holds one report.
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await page.reload();
  await settled();
  expect((await inbox()).map(({ receipt }) => receipt)).toEqual(['SF-0001']);

  const home = new URL(site.address).origin;
  expect(asked.filter(({ url }) => !url.startsWith(home) && !/^(data|blob):/.test(url))).toEqual([]);
  const sent = asked.filter(({ method }) => method !== 'GET');
  expect(sent.length).toBeGreaterThan(0);
  expect(sent.every((one) => one.at === 'after' && one.method === 'POST' && one.url.endsWith('/finds'))).toBe(true);
  expect(refused).toEqual([]);
  await context.close();

  async function settled(): Promise<void> {
    await expect.poll(() => verdict(page)).toContain('settled');
  }
  async function inbox(): Promise<{ receipt: string; bytes: number }[]> {
    return (await (await fetch(new URL('finds', site.address))).json()).kept;
  }
});

test('what is kept is there, is what the pages need, and holds no photograph and nothing of an older build', () => {
  const files = filesToKeep(built);
  expect(files).toEqual(expect.arrayContaining(['./', './es/', './widget/leadwort.js', './keys/streambank.json']));
  expect(files.filter((file) => /images\/|\.map$|gallery/.test(file))).toEqual([]);
  const worker = readFileSync(join(built, 'worker.js'), 'utf8');
  for (const file of files) {
    expect(worker).toContain(JSON.stringify(file));
    expect(readFileSync(join(built, file.endsWith('/') ? `${file}index.html` : file)).length).toBeGreaterThan(0);
  }
});
