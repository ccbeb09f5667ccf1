// Pictures of the built demonstration, to look at: `npm run shots -- FOLDER` puts them in a folder outside the repository.
// With `--readme` it takes the README's picture anew instead, tests/pictures/demonstration.png.
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { ensureBrowser } from './find-browser.mjs';
import { buildSite, serveSite } from './site.mjs';
import { labelsFor, Visitor } from './visitor.mjs';

const [where] = process.argv.slice(2);
if (!where) {
  console.error('npm run shots -- FOLDER, or npm run shots -- --readme');
  process.exit(2);
}
const ROOT = new URL('../../', import.meta.url);
const giantReed = JSON.parse(readFileSync(new URL('tests/answers/giant-reed.json', ROOT), 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'leadwort-shots-'));
const built = buildSite(folder);
const bundle = JSON.parse(readFileSync(join(built, 'keys/streambank.json'), 'utf8'));
const site = await serveSite(built);
const browser = await chromium.launch({
  executablePath: (await ensureBrowser()).path,
  args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
});

const PAGES = { en: '.', es: 'es/' };

/**
 * @param {'en' | 'es'} language
 * @param {import('playwright').BrowserContextOptions} options
 */
async function open(language, options) {
  const page = await (await browser.newContext(options)).newPage();
  await page.clock.setFixedTime(new Date(2026, giantReed.month - 1, 15));
  await page.goto(new URL(PAGES[language], site.address).href);
  await page.locator('[part=question] .card').first().waitFor();
  await page.waitForLoadState('networkidle');
  return page;
}

/** Answers up to `most` questions of a giant reed by clicking, and says how many there were. */
async function walk(page, language, most) {
  const visitor = new Visitor(page);
  const at = (part) => page.locator(`[part=question] ${part}`);
  for (let n = 0; n < most; n++) {
    const question = await visitor.question();
    if (question === undefined) return n;
    const labels = labelsFor(bundle, giantReed, question, language);
    if (await visitor.atCouplet()) {
      const lead = await visitor.fitting(labels);
      if (lead !== undefined) await at('.card').nth(lead).click();
      await at(lead === undefined ? '.skip' : '.sureness .solid').click();
      continue;
    }
    const shown = await visitor.shown();
    if (labels.some((label) => !shown.includes(label))) await at('.cards + button').click();
    for (const label of labels)
      await at('.card')
        .filter({ has: page.getByText(label, { exact: true }) })
        .click();
    await at(labels.length > 0 ? '.sureness .solid' : '.skip').click();
  }
  return most;
}

/** Brings what a person would look at to the top of the screen. */
const toTop = (page, part) =>
  page
    .locator(part)
    .first()
    .evaluate((el) => el.scrollIntoView({ block: 'start', behavior: 'instant' }));

async function series(language, name, viewport, colorScheme) {
  const page = await open(language, { viewport, colorScheme });
  const shot = (step) => page.screenshot({ path: join(where, `${language}-${name}-${colorScheme}-${step}.png`) });
  await shot('1-question');
  await page.screenshot({ path: join(where, `${language}-${name}-${colorScheme}-1-page.png`), fullPage: true });
  await walk(page, language, 3);
  await shot('2-fourth');
  await page.locator('leadwort-standing button').first().click();
  await toTop(page, 'leadwort-standing');
  await shot('3-standing');
  await walk(page, language, 30);
  await page.locator('leadwort-standing button').first().click();
  await shot('4-end');
  await toTop(page, 'leadwort-verdict');
  await shot('5-verdict');
  await toTop(page, 'leadwort-guidance');
  await shot('6-guidance');
  await page.locator('leadwort-key details.names summary').click();
  await page.locator('leadwort-names input').fill('carrizo');
  await toTop(page, 'leadwort-names');
  await shot('7-names');
  await page.emulateMedia({ media: 'print' });
  await page.screenshot({ path: join(where, `${language}-${name}-${colorScheme}-8-paper.png`), fullPage: true });
  await page.context().close();
}

async function readme() {
  const page = await open('en', { viewport: { width: 1280, height: 1120 }, colorScheme: 'light' });
  await walk(page, 'en', 5);
  await page.mouse.move(0, 0);
  await page.locator('leadwort-stream svg').waitFor();
  // The water takes its time to run into a new bed.
  await page.waitForTimeout(1000);
  await page.evaluate(() => {
    window.scrollTo({ top: 0, behavior: 'instant' });
    document.activeElement?.shadowRoot?.activeElement?.blur?.();
  });
  const to = fileURLToPath(new URL('tests/pictures/', ROOT));
  mkdirSync(to, { recursive: true });
  await page.screenshot({ path: join(to, 'demonstration.png') });
}

try {
  if (where === '--readme') await readme();
  else {
    mkdirSync(where, { recursive: true });
    for (const language of /** @type {const} */ (['en', 'es']))
      for (const scheme of /** @type {const} */ (['light', 'dark'])) {
        await series(language, '360', { width: 360, height: 740 }, scheme);
        await series(language, '1280', { width: 1280, height: 900 }, scheme);
      }
  }
} finally {
  await browser.close();
  await site.close();
  rmSync(folder, { recursive: true, force: true });
}
