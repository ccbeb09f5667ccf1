// A technician in the built practice room: looks, a network that is cut in the middle, a reload, and a final test resumed.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { practice as en } from '../src/words/practice/en.ts';
import { practice as es } from '../src/words/practice/es.ts';
import { ensureBrowser } from './support/find-browser.mjs';
import { pdfText } from './support/pdf.ts';
import { buildSite, serveSite } from './support/site.mjs';

vi.setConfig({ testTimeout: 240_000 });
let folder: string;
let site: { address: string; close: () => Promise<void> };
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-practice-'));
  site = await serveSite(buildSite(folder));
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

const room = (page: Page) => page.locator('leadwort-practice');
const button = (page: Page, name: string) => room(page).getByRole('button', { name, exact: true });

test.each([
  { path: 'practice/', words: en, width: 360 },
  { path: 'es/practice/', words: es, width: 1280 },
])(
  'the room goes on without a network, looks kept and a test resumed, in $words.language at $width px',
  async (visit) => {
    const { path, words, width } = visit;
    const context = await browser.newContext({ viewport: { width, height: 780 } });
    const asked: { method: string; url: string }[] = [];
    context.on('request', (request) => asked.push({ method: request.method(), url: request.url() }));
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => /Content Security Policy/i.test(message.text()) && faults.push(message.text()));
    await page.goto(new URL(path, site.address).href);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);

    /** One look, answered with the first option; a run of the key is left open. */
    const look = async () => {
      const options = room(page).locator('.options input');
      if ((await options.count()) === 0) return button(page, words.runNone).click();
      await options.first().check();
      return button(page, words.sure.think).click();
    };
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

    await button(page, words.round).click();
    for (let i = 0; i < 3; i++) {
      await room(page).locator('.task').waitFor();
      expect(await sideways()).toBeLessThanOrEqual(0);
      const frame = await room(page).locator('.specimen svg, .plot svg').first().boundingBox();
      expect(frame && frame.x >= 0 && frame.x + frame.width <= width).toBe(true);
      await look();
      await room(page).locator('[part=feedback]').waitFor();
      expect(await sideways()).toBeLessThanOrEqual(0);
      await button(page, words.next).click();
    }

    await context.setOffline(true);
    const cut = () =>
      page.evaluate(() =>
        fetch('./not-kept').then(
          () => 'answered',
          () => 'cut',
        ),
      );
    expect(await cut()).toBe('cut');
    await page.reload();
    await button(page, words.figures).click();
    // Each look was kept as it was made: they are told of, though the round was never ended.
    await room(page).locator('.readiness').waitFor();
    const days = room(page).locator('.rates').last().locator('tbody tr');
    await expect.poll(() => days.last().locator('td').last().textContent()).toContain('3');
    await button(page, words.back).click();

    // The record is one page to sign on either paper, in the longest course too.
    await room(page).locator('.courses input').last().check();
    await button(page, words.file).click();
    await room(page).locator('.record.long').waitFor();
    const margin = { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' };
    for (const format of ['A4', 'Letter']) {
      const file = join(folder, `record-${words.language}-${format}.pdf`);
      await page.pdf({ path: file, format, margin });
      const text = pdfText(file);
      if (text === undefined) continue;
      expect(text.split('\f').filter((one) => one.trim() !== '')).toHaveLength(1);
      for (const part of [words.record, words.signature, 'Arundo donax', 'Pistia stratiotes'])
        expect(text).toContain(part);
    }
    await button(page, words.back).click();
    await room(page).locator('.courses input').first().check();

    await button(page, words.test).click();
    await room(page).locator('.task').waitFor();
    const place = () => room(page).locator('.step').textContent();
    const first = await place();
    await look();
    await expect.poll(place).not.toBe(first);
    const second = await place();
    expect(await room(page).locator('[part=feedback]').count()).toBe(0);
    await page.reload();
    await button(page, words.resume).click();
    await expect.poll(place).toBe(second);

    expect(faults).toEqual([]);
    const host = new URL(site.address).host;
    expect(asked.length).toBeGreaterThan(0);
    expect(
      asked.filter(({ method, url }) => method !== 'GET' || (!url.startsWith('blob:') && new URL(url).host !== host)),
    ).toEqual([]);
    await context.close();
  },
);
