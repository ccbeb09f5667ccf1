// The printed key, printed: HTML by the command, PDF by Chromium, read back.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readKey } from '../src/key/index.ts';
import { ensureBrowser } from './support/find-browser.mjs';
import { keyFiles } from './support/key-files.ts';
import { pdfText } from './support/pdf.ts';
import { runCommand } from './support/run-command.ts';

const key = readKey(keyFiles('keys/streambank'));

let folder: string;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-sheet-'));
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
  page = await browser.newPage();
}, 180_000);

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function open(style: string, language: string): Promise<void> {
  const file = join(folder, `${style}-${language}.html`);
  const words = ['sheet', 'keys/streambank', '-o', file, '--style', style, '--lang', language];
  expect(await runCommand(words)).toMatchObject({ code: 0, stderr: '' });
  await page.goto(pathToFileURL(file).href);
}

// ISO 216 A4 is 210 x 297 mm, Letter 8.5 x 11 in (both from memory); a point is 1/72 in.
describe.each([
  ['bracketed', 'en', 'A4', 595, 842],
  ['indented', 'en', 'Letter', 612, 792],
  ['bracketed', 'es', 'Letter', 612, 792],
  ['indented', 'es', 'A4', 595, 842],
] as const)('%s, %s, on %s', (style, language, format, width, height) => {
  test('prints whole: names, page numbers, nothing cut off', async () => {
    await open(style, language);
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate(() => ({
      text: document.body.textContent,
      sizes: [...document.querySelectorAll('body *')].map((one) => Number.parseFloat(getComputedStyle(one).fontSize)),
      loaded: performance.getEntriesByType('resource').length,
      scripts: document.scripts.length,
    }));
    for (const { name } of key.taxa) expect(seen.text).toContain(name);
    // 12 pt are 16 px, by definition of CSS.
    expect(Math.min(...seen.sizes)).toBeGreaterThanOrEqual(16);
    expect({ loaded: seen.loaded, scripts: seen.scripts }).toEqual({ loaded: 0, scripts: 0 });

    const file = join(folder, `${style}-${language}.pdf`);
    await page.pdf({ path: file, format });
    const bytes = readFileSync(file, 'latin1');
    const pages = bytes.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(5);
    const boxes = [...bytes.matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)];
    expect(boxes).toHaveLength(pages);
    for (const [, w, h] of boxes) {
      expect(Math.abs(Number(w) - width)).toBeLessThan(2);
      expect(Math.abs(Number(h) - height)).toBeLessThan(2);
    }
    const text = pdfText(file);
    if (text === undefined) return;
    const printed = text.split('\f').slice(0, pages);
    printed.forEach((one, i) => {
      expect(one).toContain(`${i + 1} / ${pages}`);
    });
    const flowing = text.replace(/\s+/g, ' ');
    for (const { name } of key.taxa) expect(flowing).toContain(name);
  });

  test('every number leads to a statement on the sheet', async () => {
    await open(style, language);
    const lost = await page.evaluate(() =>
      [...document.querySelectorAll('a[href^="#"]')]
        .map((link) => link.getAttribute('href')?.slice(1) ?? '')
        .filter((id) => document.getElementById(id) === null),
    );
    expect(lost).toEqual([]);
  });

  test('nothing stands over the edge or under a name', async () => {
    await open(style, language);
    await page.setViewportSize({ width: 700, height: 900 });
    await page.emulateMedia({ media: 'print' });
    const faults = await page.evaluate(() => {
      const found: string[] = [];
      for (const lead of document.querySelectorAll('.lead')) {
        const [says, to, number] = ['.says', '.to', '.number'].map((name) => lead.querySelector(name));
        const right = document.body.getBoundingClientRect().right;
        const first = says?.getClientRects()[0];
        const label = number?.getBoundingClientRect();
        if (first && label && label.right > first.left + 0.5) found.push(`number: ${lead.textContent}`);
        const goal = to?.getBoundingClientRect();
        if (goal && goal.right > right + 0.5) found.push(`edge: ${lead.textContent}`);
        for (const line of says?.getClientRects() ?? [])
          if (goal && line.right > goal.left + 0.5 && line.bottom > goal.top + 4 && line.top < goal.bottom - 4)
            found.push(`over: ${lead.textContent}`);
      }
      return found;
    });
    expect(faults).toEqual([]);
  });
});
