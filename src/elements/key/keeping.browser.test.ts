import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, expect, test, vi } from 'vitest';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { addressOf, smallBundle } from '../../../tests/support/small-bundle.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import './define.ts';
import type { LeadwortKey } from './key.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

test.each([
  ['en', en],
  ['es', es],
] as const)('where the device keeps nothing a person is told so, and how to be safe, in %s', async (lang, words) => {
  vi.stubGlobal('indexedDB', undefined);
  const key = await fixture<LeadwortKey>(
    html`<leadwort-key keep=${`t-${crypto.randomUUID()}`} lang=${lang} src=${addressOf(smallBundle)} month="9"></leadwort-key>`,
  );
  const notice = () => key.renderRoot.querySelector('[part=notice]')?.textContent ?? '';
  await expect.poll(notice).toContain(words.keep.unavailable);
  expect(key.renderRoot.querySelector('[part=notice]')?.getAttribute('role')).toBe('status');
  await expectAccessible(key);
});

test('where answers are kept nothing is said of it', async () => {
  const key = await fixture<LeadwortKey>(
    html`<leadwort-key keep=${`t-${crypto.randomUUID()}`} src=${addressOf(smallBundle)} month="9"></leadwort-key>`,
  );
  await expect.poll(() => key.renderRoot.querySelector('leadwort-question, leadwort-couplet')).not.toBeNull();
  expect(Object.values(en.keep).filter((one) => key.renderRoot.textContent?.includes(one))).toEqual([]);
});
