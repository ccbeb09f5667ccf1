// Every way onto a page, built as for a release and opened on a partner's page under a strict policy.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import pkg from '../../package.json' with { type: 'json' };
import { VERSION } from '../../src/version.ts';
import { es } from '../../src/words/es.ts';
import { integrities } from '../support/integrity.mjs';
import { open, type Partner, partner, type Seen, startBrowser } from './host.ts';

vi.setConfig({ testTimeout: 120_000 });
let host: Partner;
let browser: Browser;
beforeAll(async () => {
  host = await partner('standalone', 'whole', 'frame', 'host');
  browser = await startBrowser();
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await host?.close();
});

const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 900 };
const UNTIL = '<p class="until">Leave it as it stands, and call <a href="tel:555-0142">555-0142</a>.</p>';
const TAG = `<leadwort-key src="/keys/streambank.json" contact-phone="555-0142">${UNTIL}</leadwort-key>`;
const DIV = `<div data-leadwort data-src="/keys/streambank.json" data-contact-phone="555-0142">${UNTIL}</div>`;
const FRAME = `<iframe src="/frame/leadwort-frame.html?src=../keys/streambank.json&amp;contact-phone=555-0142"
  title="Which plant is it?" width="100%" height="900"></iframe>`;
const module = (file: string) => `<script type="module" src="${file}"></script>`;
const classic = (file: string) => `<script src="${file}" defer></script>`;

/** A page as partners have them: something above the key, something below. */
const around = (inside: string, script: string) => `<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>Streams</title><link rel="icon" href="data:,">
<link rel="stylesheet" href="/page.css"><link rel="stylesheet" href="/whole/leadwort.css">${script}</head>
<body><h1>Along the stream</h1>${inside}<h2>What we do</h2><p>We walk the bank with you.</p></body></html>`;

const ways = [
  ['the element by a small module', TAG, module('/standalone/leadwort.js')],
  ['the element by one whole module', TAG, module('/whole/leadwort.js')],
  ['the element by one classic script', TAG, classic('/whole/leadwort-classic.js')],
  ['a plain div by a small module', DIV, module('/standalone/leadwort.js')],
  ['a plain div by one whole module', DIV, module('/whole/leadwort.js')],
  ['a plain div by one classic script', DIV, classic('/whole/leadwort-classic.js')],
  ['a frame with the script that keeps its height', FRAME, classic('/frame/leadwort-frame-host.js')],
  ['a frame alone', FRAME, ''],
] as const;

/** Where the key is: the page, or the frame in it. */
const within = ({ page }: Seen) => {
  const frame = page.frames().find((one) => one.url().includes('leadwort-frame'));
  return frame ?? page;
};

/** Until question and late parts are there, pictures included. */
async function arrived(seen: Seen): Promise<void> {
  await within(seen).locator('[part=question] .card').first().waitFor();
  await within(seen).locator('leadwort-verdict [part=verdict]').waitFor({ state: 'attached' });
  await seen.page.waitForLoadState('networkidle');
}
const asks = (seen: Seen) => within(seen).locator('[part=question] [role=heading]').first().textContent();

describe.each([
  ['a phone', PHONE],
  ['a desk', DESK],
])('on %s', (_, viewport) => {
  test.each(ways)('%s asks, is answered, and moves nothing on the page', async (_name, inside, script) => {
    const seen = await open(browser, host.page(around(inside, script), "frame-src 'self'"), { viewport });
    await arrived(seen);
    expect(await seen.shift()).toBe(0);
    const moved = await within(seen).evaluate(() => (window as unknown as { shifted: number }).shifted);
    expect(moved).toBe(0);
    expect(await asks(seen)).toContain('Question 1');
    await within(seen).locator('[part=question] .card').first().click();
    await within(seen).locator('[part=question] .bar .solid').first().click();
    await expect.poll(() => asks(seen)).toContain('Question 2');
    expect([...seen.faults, ...seen.warnings]).toEqual([]);
    await seen.page.context().close();
  });
});

test.each([
  ['the element', TAG],
  ['a plain div', DIV],
])('without any script, what stands in %s is shown', async (_, inside) => {
  const seen = await open(browser, host.page(around(inside, '')), { javaScriptEnabled: false });
  expect(await seen.page.locator('.until').isVisible()).toBe(true);
  await seen.page.context().close();
});

test.each([
  ['the element', TAG],
  ['a plain div', DIV],
])(
  'until the key is there, what stands in %s is shown where it stood, and stays when the key does not come',
  async (_, inside) => {
    const lost = inside.replace('streambank', 'no-such-key');
    const seen = await open(browser, host.page(around(lost, '')));
    const before = await seen.page.locator('.until').boundingBox();
    await seen.page.context().close();
    const after = await open(browser, host.page(around(lost, module('/standalone/leadwort.js'))));
    await after.page.getByRole('button', { name: 'Try again' }).waitFor();
    expect(await after.page.locator('.until').boundingBox()).toEqual(before);
    expect(await after.shift()).toBe(0);
    await after.page.context().close();
  },
);

describe('one file', () => {
  test.each([
    ['the module', module('/whole/leadwort.js'), '/whole/leadwort.js'],
    ['the classic script', classic('/whole/leadwort-classic.js'), '/whole/leadwort-classic.js'],
  ])('%s holds everything: no other script is fetched', async (_, script, file) => {
    const seen = await open(browser, host.page(around(TAG, script)));
    await arrived(seen);
    const defined = await seen.page.evaluate(() =>
      ['key', 'verdict', 'guidance', 'stream', 'standing', 'trail'].filter((part) =>
        customElements.get(`leadwort-${part}`),
      ),
    );
    expect(defined).toHaveLength(6);
    expect(seen.scripts).toEqual([file]);
    await seen.page.context().close();
  });

  test.each(['/whole/leadwort-classic.js', '/frame/leadwort-frame-host.js'])(
    '%s leaves no name behind',
    async (file) => {
      const names = async (script: string) => {
        const seen = await open(browser, host.page(around('', script)));
        const all = await seen.page.evaluate(() => Object.getOwnPropertyNames(window));
        await seen.page.context().close();
        return all;
      };
      const bare = new Set(await names(''));
      // Lit tells there which copies of it are on a page.
      const left = (await names(classic(file))).filter(
        (name) => !bare.has(name) && !/^(lit|reactiveElement)[A-Z]/.test(name),
      );
      expect(left).toEqual([]);
    },
  );
});

test('a page that lists its trusted types names only that of the library that draws', async () => {
  const seen = await open(browser, host.page(around(TAG, module('/standalone/leadwort.js')), 'trusted-types lit-html'));
  await arrived(seen);
  expect(seen.faults).toEqual([]);
  await seen.page.context().close();
});

test('what the package names beside its modules is built, but for what is made at the end of all builds', () => {
  const files = Object.values(pkg.exports).flatMap((target) => (typeof target === 'string' ? target : []));
  const named = files.filter((file) => file.startsWith('./dist/')).map((file) => file.slice('./dist/'.length));
  const missing = named.filter((file) => !existsSync(join(host.folder, file)));
  expect(named.length).toBeGreaterThan(missing.length);
  expect(missing.sort()).toEqual(['custom-elements.json', 'integrity.json']);
});

test.each(['whole/leadwort.js', 'whole/leadwort-classic.js', 'frame/leadwort-frame-host.js'])(
  '%s begins with its version',
  (file) => {
    expect(readFileSync(join(host.folder, file), 'utf8').split('\n')[0]).toBe(`/*! Leadwort ${VERSION}, MIT */`);
  },
);

describe('the hash of a file', () => {
  const signed = (hash: string) =>
    open(browser, host.page(around(TAG, module('/whole/leadwort.js').replace('src', `integrity="${hash}" src`))));

  test('lets a browser run it', async () => {
    const seen = await signed(integrities(host.folder)['whole/leadwort.js'] as string);
    await arrived(seen);
    expect(seen.faults).toEqual([]);
    await seen.page.context().close();
  });

  test('keeps a browser from running any other', async () => {
    const seen = await signed(integrities(host.folder)['whole/leadwort-classic.js'] as string);
    await expect.poll(() => seen.faults.join()).toContain('integrity');
    expect(await seen.page.evaluate(() => customElements.get('leadwort-key') === undefined)).toBe(true);
    await seen.page.context().close();
  });
});

describe('a plain div', () => {
  const opened = (inside: string) => open(browser, host.page(around(inside, module('/standalone/leadwort.js'))));

  test('hands the key its own attributes, on and off, and no other of the page', async () => {
    const seen = await opened(
      DIV.replace(
        'data-leadwort',
        'data-leadwort data-keep="false" data-lang="es" data-style="color: red" data-onclick="x()" data-id="a"',
      ),
    );
    await arrived(seen);
    expect(await asks(seen)).toContain('Pregunta 1');
    const names = await seen.page.locator('leadwort-key').evaluate((key) => key.getAttributeNames().sort());
    expect(names).toEqual(['contact-phone', 'keep', 'lang', 'src']);
    await seen.page.locator('[data-leadwort]').evaluate((div) => div.setAttribute('data-lang', 'en'));
    await expect.poll(() => asks(seen)).toContain('Question 1');
    await seen.page.locator('[data-leadwort]').evaluate((div) => div.removeAttribute('data-contact-phone'));
    await expect.poll(() => seen.page.locator('leadwort-key').getAttribute('contact-phone')).toBeNull();
    expect(seen.faults).toEqual([]);
    await seen.page.context().close();
  });

  test('that comes later is filled, and so is one that is marked later', async () => {
    const seen = await opened('<div id="late" data-src="/keys/streambank.json"></div>');
    await seen.page.waitForFunction(() => customElements.get('leadwort-key'));
    expect(seen.scripts).toHaveLength(1);
    await seen.page.evaluate(() => {
      const div = document.createElement('div');
      div.setAttribute('data-leadwort', '');
      div.setAttribute('data-src', '/keys/streambank.json');
      document.body.append(div);
    });
    await seen.page.locator('body > [data-leadwort]:last-child [part=question] .card').first().waitFor();
    await seen.page.evaluate(() => document.getElementById('late')?.setAttribute('data-leadwort', ''));
    await seen.page.locator('#late [part=question] .card').first().waitFor();
    expect(await seen.page.locator('leadwort-key').count()).toBe(2);
    await seen.page.context().close();
  });

  test('that is not on the page costs no request', async () => {
    const seen = await opened(TAG);
    await arrived(seen);
    expect(seen.scripts.filter((file) => file.includes('mount'))).toEqual([]);
    await seen.page.context().close();
  });
});

test('several keys on a page keep apart, also over a reload; what is said to be off is off', async () => {
  const key = (more: string) => `<leadwort-key src="/keys/streambank.json" ${more}></leadwort-key>`;
  const page = around(
    `${key('keep')}${key('keep="true"')}${key('keep="false"')}<div data-leadwort data-src="/keys/streambank.json" data-keep="own"></div>`,
    module('/standalone/leadwort.js'),
  );
  const seen = await open(browser, host.page(page));
  const all = seen.page.locator('leadwort-key');
  const heading = (at: number) => all.nth(at).locator('[part=question] [role=heading]').first().textContent();
  const headings = () => Promise.all([0, 1, 2, 3].map(heading));
  const ask = (numbers: readonly number[]) => numbers.map((n) => expect.stringContaining(`Question ${n} `));
  await expect.poll(headings).toEqual(ask([1, 1, 1, 1]));
  for (const at of [1, 2, 3]) {
    await all.nth(at).locator('[part=question] .card').first().click();
    await all.nth(at).locator('[part=question] .bar .solid').first().click();
  }
  await expect.poll(headings).toEqual(ask([1, 2, 2, 2]));
  const ids = await seen.page.evaluate(() => [...document.querySelectorAll('[id]')].map(({ id }) => id));
  expect(ids).toEqual([]);
  await seen.page.reload();
  await expect.poll(headings).toEqual(ask([1, 2, 1, 2]));
  await seen.page.context().close();
});

describe('a frame', () => {
  const height = (seen: Seen) =>
    seen.page
      .locator('iframe')
      .first()
      .evaluate((frame) => frame.clientHeight);
  const needed = (seen: Seen) => within(seen).evaluate(() => document.body.getBoundingClientRect().height);
  const hosted = classic('/frame/leadwort-frame-host.js');

  test('of another origin grows with what it shows, and never below the height that the page gave', async () => {
    const there = FRAME.replace('src="/', `src="${host.elsewhere}`);
    const seen = await open(browser, host.page(around(there, hosted), `frame-src ${host.elsewhere}`));
    await arrived(seen);
    await expect.poll(async () => (await height(seen)) - Math.ceil(await needed(seen))).toBe(0);
    expect(await height(seen)).toBeGreaterThan(900);
    await seen.page.setViewportSize(PHONE);
    await expect.poll(async () => (await height(seen)) - Math.ceil(await needed(seen))).toBe(0);
    await within(seen).evaluate(() => document.querySelector('leadwort-key')?.replaceWith('Gone.'));
    await expect.poll(() => height(seen)).toBe(900);
    await seen.page.context().close();
  });

  test('of a page that comes before its script is ready all the same, and one that is added later', async () => {
    // The policy would not let a test add the script.
    const seen = await open(browser, host.page(around(FRAME, '')), { bypassCSP: true });
    await arrived(seen);
    expect(await height(seen)).toBe(900);
    await seen.page.addScriptTag({ url: '/frame/leadwort-frame-host.js' });
    await seen.page.evaluate(() => {
      const again = document.querySelector('iframe')?.cloneNode() as HTMLIFrameElement;
      document.body.append(again);
    });
    const heights = () => seen.page.locator('iframe').evaluateAll((all) => all.map((one) => one.clientHeight > 900));
    await expect.poll(heights).toEqual([true, true]);
    await seen.page.context().close();
  });

  test('alone is heard by the page around it: no other window can change its height', async () => {
    const seen = await open(browser, host.page(around(FRAME, hosted), "frame-src 'self'"));
    await arrived(seen);
    const before = await height(seen);
    await seen.page.evaluate(() => {
      const message = { leadwort: 1, say: 'height', height: 5000 };
      window.postMessage(message, '*');
      // A frame of somebody else, in the place of an advertisement.
      const other = document.createElement('iframe');
      document.body.append(other);
      const { contentWindow } = other;
      (contentWindow as unknown as { parent: Window }).parent.postMessage(message, '*');
    });
    await seen.page.waitForTimeout(200);
    expect(await height(seen)).toBe(before);
    await seen.page.context().close();
  });

  test('takes its options from its address, but no others, and asks no other host', async () => {
    const frame =
      '/frame/leadwort-frame.html?src=https://example.org/key.json&lang=es&title=Plantas&scheme=dark&onclick=x()&style=a';
    const seen = await open(browser, new URL(frame, host.page('')).href);
    await seen.page.getByRole('button').first().waitFor();
    expect(await seen.page.title()).toBe('Plantas');
    expect(await seen.page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe('dark');
    const names = await seen.page.locator('leadwort-key').evaluate((key) => key.getAttributeNames().sort());
    expect(names).toEqual(['src']);
    await expect.poll(() => seen.page.getByRole('button').first().textContent()).toContain(es.common.retry);
    expect(seen.faults.join()).toContain('connect-src');
    expect(seen.faults.filter((fault) => fault.startsWith('asked'))).toEqual([]);
    await seen.page.context().close();
  });

  test('whose page fixes an option does not take it from its address, which anybody can write', async () => {
    const page = readFileSync(join(host.folder, 'frame/leadwort-frame.html'), 'utf8');
    const fixed = page.replace('<leadwort-key>', '<leadwort-key contact-phone="555-0142">');
    expect(fixed).not.toBe(page);
    writeFileSync(join(host.folder, 'frame/fixed.html'), fixed);
    const seen = await open(browser, new URL('/frame/fixed.html?contact-phone=555-0199', host.page('')).href);
    await expect.poll(() => seen.page.locator('a').getAttribute('href')).toBe('tel:555-0142');
    expect(await seen.page.locator('leadwort-key').getAttribute('contact-phone')).toBe('555-0142');
    await seen.page.context().close();
  });

  test('without the address of a key says what it wants', async () => {
    const seen = await open(browser, new URL('/frame/leadwort-frame.html?contact-phone=555-0142', host.page('')).href);
    await expect.poll(() => seen.page.locator('leadwort-key').textContent()).toContain('?src=');
    expect(await seen.page.locator('a').getAttribute('href')).toBe('tel:555-0142');
    await seen.page.context().close();
  });
});
