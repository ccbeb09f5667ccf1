// Two copies of the script on one page, of one version and of two.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { VERSION } from '../../src/version.ts';
import { open, type Partner, partner, startBrowser } from './host.ts';

vi.setConfig({ testTimeout: 120_000 });
const LATER = '999.0.0';
let host: Partner;
let browser: Browser;
beforeAll(async () => {
  host = await partner('standalone', 'whole');
  // The same files as a later release would have them.
  for (const [from, to] of [
    ['whole/leadwort.js', 'whole/later.js'],
    ['whole/leadwort-classic.js', 'whole/later-classic.js'],
  ] as const) {
    const text = readFileSync(join(host.folder, from), 'utf8');
    expect(text).toContain(VERSION);
    writeFileSync(join(host.folder, to), text.replaceAll(VERSION, LATER));
  }
  browser = await startBrowser();
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await host?.close();
});

const SMALL = '<script type="module" src="/standalone/leadwort.js"></script>';
const WHOLE = '<script type="module" src="/whole/leadwort.js"></script>';
const LATER_WHOLE = '<script type="module" src="/whole/later.js"></script>';
const LATER_CLASSIC = '<script src="/whole/later-classic.js"></script>';
const page = (scripts: string) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Streams</title>
<link rel="icon" href="data:,">${scripts}</head><body><leadwort-key src="/keys/streambank.json"></leadwort-key>
<div data-leadwort data-src="/keys/streambank.json"></div></body></html>`;

test.each([
  ['the same version twice, small and whole', SMALL + WHOLE, VERSION, []],
  ['the same version twice, whole and small', WHOLE + SMALL, VERSION, []],
  ['a later one after it', SMALL + LATER_WHOLE, VERSION, [[VERSION, LATER]]],
  ['a later one before it', LATER_CLASSIC + SMALL, LATER, [[LATER, VERSION]]],
  ['two and a later one', SMALL + WHOLE + LATER_WHOLE, VERSION, [[VERSION, LATER]]],
] as const)('%s: all works, and each copy that stays out says so once', async (_, scripts, stands, told) => {
  const seen = await open(browser, host.page(page(scripts)));
  for (const key of await seen.page.locator('leadwort-key').all()) {
    await key.locator('[part=question] .card').first().click();
    await key.locator('[part=question] .bar .solid').first().click();
    await expect
      .poll(() => key.locator('[part=question] [role=heading]').first().textContent())
      .toContain('Question 2');
    // The parts that come late understand the element that holds the answers.
    await expect.poll(() => key.locator('leadwort-trail .line').textContent()).toContain('tall cane');
    await key.locator('leadwort-verdict [part=verdict]').waitFor({ state: 'attached' });
  }
  // The div was filled once, whichever copy saw it.
  expect(await seen.page.locator('leadwort-key').count()).toBe(2);
  const version = await seen.page.evaluate(
    () => (customElements as unknown as Record<symbol, string>)[Symbol.for('leadwort')],
  );
  expect(version).toBe(stands);
  const warnings = seen.warnings.filter((text) => text.includes('Leadwort'));
  expect(warnings).toEqual(
    told.map(
      ([first, second]) =>
        `Leadwort ${first} is on this page; ${second} came later and stays out. Name only one of them.`,
    ),
  );
  expect(seen.faults).toEqual([]);
  await seen.page.context().close();
});
