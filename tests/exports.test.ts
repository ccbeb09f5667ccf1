// A find made in the built demonstration, taken out in each way that a report leaves, and read by programs of others:
// the PDF by pdftotext where it is installed, the table by csv-parse, the map by @placemarkio/check-geojson; the file by
// the page itself.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { check } from '@placemarkio/check-geojson';
import { parse } from 'csv-parse/sync';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { readFind } from '../src/report/find/index.ts';
import { COLUMNS } from '../src/report/forms/index.ts';
import { en } from '../src/words/en.ts';
import { es } from '../src/words/es.ts';
import { report as enReport } from '../src/words/report/en.ts';
import { report as esReport } from '../src/words/report/es.ts';
import giantReed from './answers/giant-reed.json' with { type: 'json' };
import { ensureBrowser } from './support/find-browser.mjs';
import { pdfText } from './support/pdf.ts';
import { buildSite, serveSite } from './support/site.mjs';
import { labelsFor, Visitor } from './support/visitor.mjs';

vi.setConfig({ testTimeout: 120_000 });
const PHOTO = fileURLToPath(new URL('fixtures/photos/with-place.jpg', import.meta.url));
/** More answers than the way to giant reed needs. */
const MOST_QUESTIONS = 30;

let folder: string;
let built: string;
let site: { address: string; close: () => Promise<void> };
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-exports-'));
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

/** The demonstration with giant reed settled and the report open. */
async function reporting(path: string, language: 'en' | 'es'): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(2026, giantReed.month - 1, 15, 12));
  await page.goto(new URL(path, site.address).href);
  await page.locator('[part=question] .card').first().waitFor();
  const bundle = JSON.parse(readFileSync(join(built, 'keys/streambank.json'), 'utf8'));
  const words = { en, es }[language].question;
  const buttons = { sure: words.sureness.sure, cannotTell: words.cannotTell, showAll: words.showAll };
  const visitor = new Visitor(page);
  for (let asked = 1; ; asked++) {
    if ((await page.locator('leadwort-verdict [part=verdict].settled').count()) > 0) break;
    const question = await visitor.question();
    if (question === undefined || asked > MOST_QUESTIONS) throw new Error(`not settled after ${asked - 1} questions`);
    const labels = labelsFor(bundle, giantReed, question, language);
    await ((await visitor.atCouplet()) ? visitor.take(labels, buttons) : visitor.answer(labels, buttons));
  }
  await page.locator('.report > summary').click();
  await page.locator('leadwort-report .form').waitFor();
  return page;
}

const form = (page: Page) => page.locator('leadwort-report');

/** What one of the buttons that hand out a file hands out. */
async function handed(page: Page, way: 'file' | 'map' | 'table'): Promise<string> {
  const button = form(page).locator(`[data-way=${way}]`);
  if (way !== 'file' && !(await button.isVisible())) await form(page).locator('.out details > summary').click();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return readFileSync((await download.path()) as string, 'utf8');
}

/** The text of the PDF that the browser makes of what "Print" puts on the page; undefined where nothing reads it here. */
async function printed(page: Page, name: string): Promise<string | undefined> {
  // The page for paper stands only until the print dialogue is left: here nobody ever leaves it.
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset.asked = '';
      throw new Error('still printing');
    };
  });
  await form(page).locator('[data-way=print]').click();
  await page.locator('html[data-asked]').waitFor();
  await page.emulateMedia({ media: 'print' });
  const path = join(folder, name);
  await page.pdf({ path, format: 'Letter' });
  await page.emulateMedia({ media: null });
  return pdfText(path)?.replace(/\s+/g, ' ');
}

describe.each([
  { path: '.', language: 'en', words: en, own: enReport, name: 'giant reed' },
  { path: 'es/', language: 'es', words: es, own: esReport, name: 'carrizo gigante' },
] as const)('a find made in the page, in $language', ({ path, language, own, name }) => {
  test('says the same on paper, in a table, on a map and in a file that opens again', async () => {
    const page = await reporting(path, language);
    await form(page).locator('.photos > .picker input').setInputFiles(PHOTO);
    await form(page).locator('.have, .taken canvas[data-drawn]').first().waitFor();
    await form(page).locator('#place').fill('30.2096, -97.7355');
    await form(page).locator('#way').fill('Gate by the invented mill');
    await form(page).locator('.more > summary').click();
    await form(page).locator('#bankLength').fill('120');
    await form(page).locator('#name').fill('Ana Beispiel');
    await form(page).locator('#phone').fill('555-0142');
    await form(page).locator('#mayContact').check();
    await form(page).locator('#remarks').fill('=1+1 "cañas", one\nand two');

    const file = await handed(page, 'file');
    const find = readFind(file);
    expect(find).toMatchObject({
      language,
      verdict: { kind: 'settled', taxa: ['arundo-donax'] },
      date: '2026-10-15',
      place: { lat: 30.2096, lon: -97.7355, words: 'Gate by the invented mill' },
      remarks: '=1+1 "cañas", one\nand two',
    });

    const rows: Record<string, string>[] = parse(await handed(page, 'table'), { columns: true });
    expect(rows).toHaveLength(1);
    const [row = {}] = rows;
    expect(Object.keys(row)).toEqual([...COLUMNS]);
    expect(row).toMatchObject({
      occurrenceID: find.id,
      scientificName: 'Arundo donax',
      eventDate: '2026-10-15',
      decimalLatitude: '30.2096',
      decimalLongitude: '-97.7355',
      occurrenceStatus: 'detected',
      recordedBy: 'Ana Beispiel',
      // A spreadsheet takes it for text.
      occurrenceRemarks: '\'=1+1 "cañas", one\nand two',
    });
    for (const { label, words } of find.trail) expect(row.identificationRemarks).toContain(`${label}: ${words}`);

    const map = check(await handed(page, 'map'));
    expect(map).toMatchObject({
      type: 'FeatureCollection',
      features: [
        {
          id: find.id,
          geometry: { type: 'Point', coordinates: [-97.7355, 30.2096] },
          properties: { scientificName: 'Arundo donax', occurrenceStatus: 'detected', eventDate: '2026-10-15' },
        },
      ],
    });

    await form(page).getByRole('button', { name: own.out.fresh }).click();
    await expect.poll(() => form(page).locator('#place').inputValue()).toBe('');
    const opened = { name: 'find.json', mimeType: 'application/json', buffer: Buffer.from(file) };
    await form(page).locator('.files input').setInputFiles(opened);
    await expect.poll(() => form(page).locator('#place').inputValue()).toBe('30.20960, -97.73550');
    expect(await form(page).locator('#remarks').inputValue()).toBe(find.remarks);
    expect(await form(page).locator('.photos canvas').count()).toBe(1);
    expect(readFind(await handed(page, 'file'))).toEqual({ ...find, changed: expect.any(String) });

    const text = await printed(page, `${language}.pdf`);
    await page.context().close();
    if (text === undefined) return;
    for (const fact of [
      'Arundo donax',
      name,
      '30.20960, -97.73550',
      '2026-10-15',
      'Gate by the invented mill',
      'Ana Beispiel',
      '555-0142',
      '"cañas"',
      find.id,
      `streambank ${find.key.version}`,
    ])
      expect(text).toContain(fact);
    // Broken over lines in their cells: by their first words.
    for (const { label } of find.trail) expect(text).toContain(label.split(' ').slice(0, 2).join(' '));
    for (const { name: latin } of find.standing) expect(text).toContain(latin.split(' ')[0]);
  });

  test('that none was seen says so in each of them, with what was searched', async () => {
    const page = await reporting(path, language);
    await form(page).locator('#none').check();
    await form(page).locator('#effort').fill('Walked 200 m of the left bank, 40 min');
    await form(page).locator('#place').fill('30.2096, -97.7355');
    await expect.poll(() => form(page).locator('.lacking').textContent()).toBe('');

    const file = await handed(page, 'file');
    expect(readFind(file)).toMatchObject({ detected: false, sought: { taxon: 'arundo-donax' } });
    const told = {
      occurrenceStatus: 'notDetected',
      samplingEffort: 'Walked 200 m of the left bank, 40 min',
      scientificName: 'Arundo donax',
      eventDate: '2026-10-15',
    };
    const [row] = parse(await handed(page, 'table'), { columns: true });
    expect(row).toMatchObject({ ...told, identificationRemarks: '' });
    const map = check(await handed(page, 'map'));
    expect(map).toMatchObject({ features: [{ properties: told }] });

    const text = await printed(page, `${language}-none.pdf`);
    await page.context().close();
    if (text === undefined) return;
    for (const fact of ['Arundo donax', '30.20960, -97.73550', '2026-10-15', 'Walked 200 m of the left bank, 40 min'])
      expect(text).toContain(fact);
  });
});
