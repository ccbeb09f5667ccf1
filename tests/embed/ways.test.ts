// Every way onto a page, built as for a release and opened on a partner's page under a strict policy.
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
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
