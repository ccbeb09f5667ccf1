// Hand-outs, printed by Chromium: each fits one side of A4 and of Letter, in type that can be read.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { portraitOf } from '../src/drawing/portrait/index.ts';
import { readKey } from '../src/key/index.ts';
import { handoutFile, handoutOf } from '../src/report/handout/index.ts';
import { wordsFor } from '../src/words/index.ts';
import { ensureBrowser } from './support/find-browser.mjs';
import { keyFiles } from './support/key-files.ts';
import { runCommand } from './support/run-command.ts';
import { temporaryFolder } from './support/temporary.ts';

const key = readKey(keyFiles('keys/streambank'));

let browser: Browser;
let page: Page;
beforeAll(async () => {
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
  page = await browser.newPage();
}, 180_000);
afterAll(() => browser?.close());

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe.each(key.languages)('in %s', (language) => {
  test.each(['A4', 'Letter'])(
    'every plant fits one side of %s',
    async (format) => {
      const words = await wordsFor(language);
      const over: string[] = [];
      for (const taxon of key.taxa) {
        const picture = portraitOf(key, taxon, { month: 6 });
        await page.setContent(handoutFile(handoutOf(key, taxon, { language, words }), picture));
        const pages = pagesOf(await page.pdf({ format }));
        if (pages !== 1) over.push(`${taxon.id}: ${pages} pages`);
      }
      expect(over).toEqual([]);
    },
    120_000,
  );

  test('what is to be read is no smaller than 11 points; what is smaller is sources and their numbers', async () => {
    const words = await wordsFor(language);
    const taxon = key.taxa.find(({ id }) => id === 'arundo-donax');
    if (!taxon) throw new Error('the key has no giant reed');
    await page.setContent(
      handoutFile(handoutOf(key, taxon, { language, words }), portraitOf(key, taxon, { month: 6 })),
    );
    await page.emulateMedia({ media: 'print' });
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('body *')]
        // 11 pt are 14.67 px, by definition of CSS.
        .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 14.6 && !one.closest('footer, sup, svg'))
        .map((one) => `${one.tagName} ${one.textContent}`),
    );
    expect(small).toEqual([]);
  });
});

test('the command writes a page that loads nothing, runs nothing and says all that must not be missed', async () => {
  const folder = temporaryFolder();
  const file = join(folder, 'reed.html');
  const ran = await runCommand([
    ...[
      'handout',
      'keys/streambank',
      'arundo-donax',
      '-o',
      file,
      '--lang',
      'es',
      '--phone',
      '555-0142',
      '--month',
      '6',
    ],
  ]);
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  const text = readFileSync(file, 'utf8');
  expect(text).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
  await page.goto(`file://${file}`);
  const seen = await page.evaluate(() => document.body.textContent ?? '');
  const say = (sentence: string) => key.text.get('es')?.get(sentence) ?? sentence;
  const must = key.guidance
    .get('arundo-donax')
    ?.statements.filter(({ topic }) => /^(do|dont|when|safety)$/.test(topic));
  for (const { text } of must ?? []) expect(seen).toContain(say(text));
  for (const caution of key.cautions) expect(seen).toContain(say(caution));
  expect(seen).toContain('Teléfono: 555-0142');
  expect(seen).toContain('invasora');
  expect(await page.evaluate(() => performance.getEntriesByType('resource').length)).toBe(0);
});
