// A key as a field of a page's own form, built as for a release: what arrives, and what is there when a person comes back.
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { open, type Partner, partner, startBrowser } from './host.ts';

vi.setConfig({ testTimeout: 60_000 });
let host: Partner;
let browser: Browser;
beforeAll(async () => {
  host = await partner('standalone');
  browser = await startBrowser();
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await host?.close();
});

const page = (form: string, key = '') => `<!doctype html><html lang="en"><head><meta charset="utf-8">
<title>Ask us</title><link rel="icon" href="data:,"><script type="module" src="/standalone/leadwort.js"></script></head>
<body><h1>Ask us</h1><form ${form}><label>About <input name="about" value="the bend"></label>
<leadwort-key name="plant" src="/keys/streambank.json" ${key}></leadwort-key><button id="send">Send</button></form></body></html>`;

const heading = (at: Page) => at.locator('[part=question] [role=heading]').first();
const send = (at: Page) => at.locator('#send').click();
/** Ticks the first answer, and is sure of it. */
async function answer(at: Page): Promise<void> {
  const before = await heading(at).textContent();
  await at.locator('[part=question] .card').first().click();
  await at.locator('[part=question] .bar .solid').first().click();
  await expect.poll(() => heading(at).textContent()).not.toBe(before);
}

describe('a form with a key', () => {
  test.each(['get', 'post'])('sends what was answered by %s', async (method) => {
    const seen = await open(browser, host.page(page(`method="${method}" action="/page-1"`)));
    await heading(seen.page).waitFor();
    await answer(seen.page);
    const arriving = seen.page.waitForRequest((request) => request.isNavigationRequest());
    await send(seen.page);
    const request = await arriving;
    expect(request.method()).toBe(method.toUpperCase());
    const fields = new URLSearchParams(method === 'get' ? new URL(request.url()).search : (request.postData() ?? ''));
    expect([...fields.keys()]).toEqual(['about', 'plant']);
    const value = JSON.parse(fields.get('plant') ?? '');
    expect(Object.keys(value)).toEqual(['key', 'version', 'verdict', 'taxa', 'probability', 'trail']);
    expect(value.key).toBe('streambank');
    expect(value.trail).toHaveLength(1);
    for (const step of value.trail) expect(step.words).not.toBe('');
    expect(seen.faults).toEqual([]);
    await seen.page.context().close();
  });

  test('has its answers again when a person comes back to it', async () => {
    const seen = await open(browser, host.page(page('action="/page-1"')));
    await heading(seen.page).waitFor();
    await answer(seen.page);
    const asked = await heading(seen.page).textContent();
    await seen.page.goto(host.page('<!doctype html><title>Elsewhere</title>'));
    await seen.page.goBack();
    await heading(seen.page).waitFor();
    await expect.poll(() => heading(seen.page).textContent()).toBe(asked);
    await seen.page.context().close();
  });

  test('that asks for the plant is held at the question, and the person is taken there', async () => {
    const address = host.page(page('action="/page-1"', 'required'));
    const seen = await open(browser, address);
    await heading(seen.page).waitFor();
    await send(seen.page);
    await expect.poll(() => heading(seen.page).evaluate((one) => one.matches(':focus'))).toBe(true);
    expect(seen.page.url()).toBe(address);
    expect(seen.faults).toEqual([]);
    await seen.page.context().close();
  });
});

test('a link brings the answers to another device, and leaves no step behind', async () => {
  const address = host.page(page('', 'link-parameter="plant" month="9"'));
  const seen = await open(browser, `${address}?a=%20x+y#here`);
  await heading(seen.page).waitFor();
  const steps = await seen.page.evaluate(() => history.length);
  await answer(seen.page);
  const asked = await heading(seen.page).textContent();
  const link = seen.page.url();
  expect(link).toMatch(/\?a=%20x\+y&plant=1_streambank_[^&#]+#here$/);
  expect(await seen.page.evaluate(() => history.length)).toBe(steps);
  const other = await open(browser, link);
  await heading(other.page).waitFor();
  await expect.poll(() => heading(other.page).textContent()).toBe(asked);
  expect([...seen.faults, ...other.faults]).toEqual([]);
  await seen.page.context().close();
  await other.page.context().close();
});
