// The built demonstration after one visit: the network is cut, and it goes on from where a person was.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
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
  site = await serveSite(built);
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

const verdict = async (page: Page) =>
  (await page.locator('leadwort-verdict [part=verdict]').getAttribute('class')) ?? '';
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
