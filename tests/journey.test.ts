// The built demonstration, walked through by keyboard as a landowner would, from the first question to a verdict.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axe from 'axe-core';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { en } from '../src/words/en.ts';
import { es } from '../src/words/es.ts';
import arrowArum from './answers/arrow-arum.json' with { type: 'json' };
import giantReed from './answers/giant-reed.json' with { type: 'json' };
import { ensureBrowser } from './support/find-browser.mjs';
import { pdfText } from './support/pdf.ts';
import { buildSite, serveSite } from './support/site.mjs';
import { labelsFor, Visitor } from './support/visitor.mjs';

declare global {
  interface Window {
    readonly axe: typeof axe;
    /** What the page was seen to do wrong, gathered by `watch`. */
    readonly seen: { shift: number; readonly refused: string[] };
  }
}

const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 900 };
const WORDS = { en, es };
/** More answers than any journey needs. */
const MOST_QUESTIONS = 30;

// A walk of thirty questions, audited at each.
vi.setConfig({ testTimeout: 240_000 });

let folder: string;
let site: { address: string; close: () => Promise<void> };
let browser: Browser;
// biome-ignore lint/suspicious/noExplicitAny: read as loosely as any page could.
let bundle: any;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'leadwort-site-'));
  const built = buildSite(folder);
  bundle = JSON.parse(readFileSync(join(built, 'keys/streambank.json'), 'utf8'));
  site = await serveSite(built);
  const { path } = await ensureBrowser();
  browser = await chromium.launch({ executablePath: path, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
}, 180_000);

afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Runs in the page before anything of its own. */
function watch() {
  const seen = { shift: 0, refused: [] as string[] };
  Object.assign(window, { seen });
  document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
    seen.refused.push(`${violatedDirective} ${blockedURI}`);
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { value, hadRecentInput } = entry as PerformanceEntry & { value: number; hadRecentInput: boolean };
      if (!hadRecentInput) seen.shift += value;
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

interface Visit {
  readonly page: Page;
  /** Errors of the page and requests to anywhere but its own host. */
  readonly faults: string[];
}

/** Opens one of the site's pages in a month in which the plant shows what its description says. */
async function open(
  path: string,
  viewport: typeof PHONE,
  month: number,
  more: BrowserContextOptions = {},
  prepare?: (context: BrowserContext) => Promise<unknown>,
): Promise<Visit> {
  const context = await browser.newContext({ viewport, ...more });
  await prepare?.(context);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    if (new URL(request.url()).origin !== new URL(site.address).origin) faults.push(`asked for ${request.url()}`);
  });
  page.on('response', (response) => response.status() >= 400 && faults.push(`${response.status()} ${response.url()}`));
  await page.clock.setFixedTime(new Date(2026, month - 1, 15));
  await page.addInitScript(axe.source);
  await page.addInitScript(watch);
  await page.goto(new URL(path, site.address).href);
  return { page, faults };
}

/** What axe finds wrong with the page as it stands, the key's shadow roots included; `off` are rules to leave out. */
const violations = (page: Page, off: readonly string[] = []) =>
  page.evaluate(async (ids) => {
    const rules = Object.fromEntries(ids.map((id) => [id, { enabled: false }]));
    const { violations } = await window.axe.run(document, { resultTypes: ['violations'], rules });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
  }, off);

/** The verdict's kind, and whether there is advice: `none` until there is a verdict. */
async function standing(page: Page) {
  const kind = (await page.locator('leadwort-verdict [part=verdict]').getAttribute('class')) ?? 'none';
  // Under an open verdict the guidance leads to a comparison and to a person, and tells nobody what to do.
  const advice = page.locator('leadwort-guidance').locator('[part=dont], [part=do], [part=leave]');
  return { kind, advised: (await advice.count()) > 0 };
}

/**
 * The description of arrow arum leaves out what tells it from elephant ear; that is answered as the key itself has it.
 * Enough for a journey to its end, and no check of the key: those are in identify.test.ts.
 */
const arrowArumSeen = {
  ...arrowArum,
  answers: [
    ...arrowArum.answers,
    { character: 'leaf-stalk', states: ['at-edge'] },
    { character: 'leaf-veins', states: ['feather'] },
    { character: 'leaf-base', states: ['pointed-lobes'] },
    { character: 'leaf-edge', states: ['smooth'] },
    { character: 'leaf-surface', states: ['glossy'] },
    { character: 'fruit', states: ['green-berry'] },
  ],
};

const journeys = [
  { plant: 'giant reed', file: giantReed, path: '.', language: 'en', name: 'giant reed' },
  { plant: 'arrow arum', file: arrowArumSeen, path: '.', language: 'en', name: 'arrow arum' },
  { plant: 'carrizo gigante', file: giantReed, path: 'es/', language: 'es', name: 'carrizo gigante' },
] as const;

// On the phone through the couplets, as the key begins; on the desk by choosing freely.
describe.concurrent.each([
  ['a phone', PHONE, 'couplets'],
  ['a desk', DESK, 'free'],
] as const)('on %s, with Tab, Space and Enter alone', (_, viewport, way) => {
  test.each(journeys)(
    'a person comes from the first question to $plant',
    async (journey) => {
      const { file, path, language, name } = journey;
      const { page, faults } = await open(path, viewport, file.month);
      const visitor = new Visitor(page);
      const words = WORDS[language].question;
      const buttons = { sure: words.sureness.sure, cannotTell: words.cannotTell, showAll: words.showAll };
      await page.locator('[part=question] .card').first().waitFor();
      await page.locator('leadwort-verdict [part=verdict]').waitFor({ state: 'attached' });
      await page.waitForFunction(() => customElements.get('leadwort-guidance') !== undefined);
      expect(await page.evaluate(() => window.seen.shift), 'layout shift before anything was pressed').toBeLessThan(
        0.05,
      );
      expect(await violations(page)).toEqual([]);

      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter'); // past the header, by the link that is there for it
      if (way === 'free') await visitor.goBy('free');
      let kind = 'none';
      for (let asked = 1; kind !== 'settled'; asked++) {
        const question = await visitor.question();
        if (question === undefined || asked > MOST_QUESTIONS) throw new Error(`"${kind}" after ${asked - 1} questions`);
        const labels = labelsFor(bundle, file, question, language);
        const couplet = await visitor.atCouplet();
        if (way === 'free' || asked === 1) expect(couplet).toBe(way === 'couplets');
        await (couplet ? visitor.take(labels, buttons) : visitor.answer(labels, buttons));
        const at = await visitor.at();
        expect(at.kind, `focus after "${question}"`).toBe('heading');
        if ((await visitor.question()) !== undefined)
          expect(at.text).toMatch(new RegExp(`^${words.number(asked + 1)} · .+: \\S`));
        const now = await standing(page);
        kind = now.kind;
        expect(now.advised, `advice under the verdict "${kind}"`).toBe(kind === 'settled' || kind === 'leaning');
        // The same elements, only wider or in other words: there the first and the last look will do.
        if ((viewport === PHONE && language === 'en') || kind === 'settled')
          expect(await violations(page), `after "${question}"`).toEqual([]);
      }

      expect(await page.locator('leadwort-verdict [role=heading]').first().textContent()).toContain(name);
      const stop = page.locator('leadwort-verdict [part=stop]');
      const said: string[] = bundle.key.cautions.map((one: string) => bundle.text[language]?.text[one] ?? one);
      expect(await stop.isVisible()).toBe(true);
      expect((await stop.locator('p').allInnerTexts()).slice(-said.length)).toEqual(said);
      expect(
        await page.locator('leadwort-guidance [part=dont], leadwort-guidance [part=leave]').count(),
      ).toBeGreaterThan(0);

      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('header').isVisible(), 'the header on paper').toBe(false);
      expect(await stop.isVisible(), 'the caution on paper').toBe(true);
      expect(await page.evaluate(() => window.seen.refused)).toEqual([]);
      expect(faults).toEqual([]);
      await page.context().close();
    },
    60_000,
  );
});

describe.concurrent.each([
  ['English', '.', 'en'],
  ['Spanish', 'es/', 'es'],
] as const)('the %s page', (_, path, language) => {
  test('shows the first question with an answer to press on the first screen of a small phone', async () => {
    const { page } = await open(path, { width: 360, height: 640 }, 6);
    await page.locator('[part=question] .card').first().waitFor();
    const card = await page.locator('[part=question] .card').first().boundingBox();
    const bar = await page.locator('[part=question] [part=bar]').boundingBox();
    expect(card && bar && card.y + card.height).toBeLessThanOrEqual(bar?.y ?? 0);
    expect(bar && bar.y + bar.height).toBeLessThanOrEqual(640);
    await page.context().close();
  });

  test('stays within the screen with text at twice its size, and in forced colours', async () => {
    const { page } = await open(path, { width: 360, height: 740 }, 6, { forcedColors: 'active' });
    await page.locator('[part=question] .card').first().waitFor();
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    // The colours are the person's own here, and axe reads the page's (-webkit-text-fill-color is never forced).
    expect(await violations(page, ['color-contrast'])).toEqual([]);
    await page.context().close();
  });

  test('is free of faults in a dark scheme on the widest screen', async () => {
    const { page, faults } = await open(path, { width: 1600, height: 900 }, 6, { colorScheme: 'dark' });
    await page.locator('[part=question] .card').first().waitFor();
    expect(await violations(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('tells whom to call and what not to do where no script runs', async () => {
    const { page } = await open(path, PHONE, 6, { javaScriptEnabled: false });
    const key = page.locator('leadwort-key');
    expect(await key.getByRole('link', { name: '555-0142' }).getAttribute('href')).toBe('tel:555-0142');
    expect(await key.getByRole('row').count()).toBe(3);
    await page.context().close();
  });

  test('tells whom to call when the key does not come, and offers to try again', async () => {
    const { page } = await open(path, PHONE, 6, {}, (all) => all.route('**/keys/*.json', (route) => route.abort()));
    const key = page.locator('leadwort-key');
    await key.getByRole('button', { name: WORDS[language].common.retry }).waitFor();
    expect(await key.getByRole('link', { name: '555-0142' }).isVisible()).toBe(true);
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });

  test('runs under a policy that lets in nothing inline and nothing from elsewhere', async () => {
    const { page } = await open(path, DESK, 6);
    const policy = await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content');
    expect(policy).toMatch(
      /^default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self';/,
    );
    await page.evaluate(() => {
      document.body.append(Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }));
      document.body.append(Object.assign(new Image(), { src: 'https://example.org/a.png' }));
      document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.ran = true' }));
    });
    await vi.waitFor(async () => expect(await page.evaluate(() => window.seen.refused)).toHaveLength(3), 15_000);
    await page.context().close();
  });

  test('has in it what it tells others to paste', async () => {
    const { page } = await open(path, DESK, 6);
    const [script = '', ...element] = (await page.locator('footer code').textContent())?.split('\n') ?? [];
    const first = page.locator('script').first();
    expect(await first.evaluate((el) => `<script type="module" src="${el.getAttribute('src')}">`)).toBe(
      script.replace('</script>', ''),
    );
    const [real, told] = await page.evaluate((text) => {
      const pasted = new DOMParser().parseFromString(text, 'text/html');
      return [document, pasted].map((one) =>
        [...(one.querySelector('leadwort-key')?.attributes ?? [])].map(({ name, value }) => `${name}=${value}`),
      );
    }, element.join('\n'));
    expect(told?.length).toBeGreaterThan(0);
    expect(real).toEqual(told);
    await page.context().close();
  });

  test.each([
    ['bracketed', 'A4'],
    ['indented', 'Letter'],
  ] as const)('prints the whole key and whom to call, %s on %s, when its sheet is open', async (layout, format) => {
    const { page, faults } = await open(path, PHONE, 6);
    await page.getByText(WORDS[language].key.print).click();
    await page.locator(`leadwort-sheet input[value=${layout}]`).check();
    const leads = await page.locator('leadwort-sheet .lead .main').allTextContents();
    expect(leads.length).toBeGreaterThan(100);
    await page.emulateMedia({ media: 'print' });
    for (const other of ['header', '[part=question]', 'leadwort-verdict', 'leadwort-sheet [part=choice]', 'summary'])
      for (const one of await page.locator(other).all()) expect(await one.isVisible(), other).toBe(false);
    const file = join(folder, `${language}-${layout}.pdf`);
    const margin = '15mm';
    await page.pdf({ path: file, format, margin: { top: margin, bottom: margin, left: margin, right: margin } });
    expect(faults).toEqual([]);
    await page.context().close();
    const text = pdfText(file)?.replace(/\s+/g, ' ');
    if (text === undefined) return;
    expect(bundle.taxa.taxa).toHaveLength(55);
    for (const { name } of bundle.taxa.taxa) expect(text).toContain(name);
    // Broken over lines, beside numbers: by their first words.
    for (const lead of leads) expect(text).toContain(lead.split(' ').slice(0, 3).join(' '));
    expect(text).toContain('555-0142');
  });

  test('leads to the other language and back', async () => {
    const { page } = await open(path, PHONE, 6);
    const here = page.url();
    for (const other of language === 'en' ? ['Español', 'English'] : ['English', 'Español'])
      await page.locator('header').getByRole('link', { name: other }).click();
    expect(page.url()).toBe(here);
    await page.context().close();
  });
});

describe.concurrent('the page of all pictures', () => {
  const gallery = async (sheet: string, more: BrowserContextOptions = {}) => {
    const { page, faults } = await open(`gallery/#${sheet}`, DESK, 8, more);
    await page.locator('stewards-gallery nav').waitFor();
    await page.locator('stewards-gallery .drawing').first().waitFor();
    return { page, faults };
  };
  const end = async (page: Page, faults: readonly string[]) => {
    expect(await page.evaluate(() => window.seen.refused)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  };

  test.each(['light', 'dark'] as const)(
    'shows every answer of the key, %s, each with what is to be seen',
    async (colorScheme) => {
      const { page, faults } = await gallery('drawings', { colorScheme });
      const states = bundle.characters.characters.flatMap(
        (one: { states?: []; classes?: [] }) => one.states ?? one.classes,
      );
      const drawings = page.locator('.drawings [role=img]');
      await expect.poll(() => drawings.count(), { message: 'the album' }).toBe(states.length);
      const said = await drawings.evaluateAll((all) => all.map((one) => one.ariaLabel ?? ''));
      expect(said.filter((one) => one.length < 10)).toEqual([]);
      expect(await violations(page)).toEqual([]);
      await end(page, faults);
    },
  );

  test('draws every plant of the key', async () => {
    const { page, faults } = await gallery('portraits');
    const plants = page.locator('leadwort-portrait');
    expect(await plants.count()).toBe(bundle.taxa.taxa.length);
    expect(await page.locator('leadwort-portrait .scene svg').count()).toBe(bundle.taxa.taxa.length);
    await end(page, faults);
  });

  test('sets every pair of look-alikes side by side, in Spanish too', async () => {
    const { page, faults } = await gallery('pairs');
    await page.locator('.languages [lang=es]').click();
    await page
      .getByRole('heading', { name: /^Lado a lado/ })
      .first()
      .waitFor();
    expect(await page.locator('leadwort-comparison').count()).toBe(bundle.taxa.lookalikes.length);
    await end(page, faults);
  });

  test('a link to the key names the plants to be set side by side', async () => {
    const { page, faults } = await open('?compare=arundo-donax+arundinaria-gigantea', PHONE, 8);
    const heading = page.locator('leadwort-comparison').getByRole('heading', { level: 2 });
    await heading.first().waitFor();
    expect(await heading.first().textContent()).toMatch(/giant reed and/i);
    expect(await violations(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe.concurrent("the specialist's desk", () => {
  test.each([
    ['a phone', PHONE],
    ['a desk', DESK],
  ] as const)('shows the example find with its photographs on %s, free of faults', async (_, viewport) => {
    const { page, faults } = await open('desk/?find=example', viewport, 10);
    await page.locator('leadwort-review canvas, leadwort-review img').first().waitFor();
    await page.locator('leadwort-review [role=heading]').first().waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    expect(await page.evaluate(() => window.seen.refused)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
