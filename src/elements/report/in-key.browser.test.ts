import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { expect, test } from 'vitest';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { receiver } from '../../../tests/support/reporting.ts';
import { addressOf, freeBundle } from '../../../tests/support/small-bundle.ts';
import { parcelOf } from '../../report/send/index.ts';
import { LeadwortStore } from '../../store/index.ts';
import type { LeadwortKey } from '../key/key.ts';
import '../key/define.ts';

const find = <E extends HTMLElement>(key: LeadwortKey, selector: string) => key.shadowRoot?.querySelector<E>(selector);

test('a report that found no signal goes when the page is opened again, without a tap', async () => {
  const { endpoint, came } = receiver('201');
  const store = await LeadwortStore.open(freeBundle.key.id);
  await store.post('f1', new URL(endpoint, location.href).href, await parcelOf('f1', '{"id":"f1"}', []));
  store.close();
  const key = await fixture<LeadwortKey>(
    html`<leadwort-key src=${addressOf(freeBundle)} endpoint=${endpoint}></leadwort-key>`,
  );
  await expect.poll(async () => (await came()).kept.length).toBe(1);
  expect(find(key, 'leadwort-report')).toBeNull();
});

test('inside the key it comes after an answer, is fetched when it is opened, and is told where to send', async () => {
  const key = await fixture<LeadwortKey>(
    html`<leadwort-key src=${addressOf(freeBundle)} month="9" endpoint="/take" contact-email="help@example.org"></leadwort-key>`,
  );
  await expect.poll(() => find(key, 'leadwort-question')?.shadowRoot?.querySelector('.card')).toBeTruthy();
  expect(find(key, '.report')).toBeNull();
  const question = find(key, 'leadwort-question')?.shadowRoot as ShadowRoot;
  (question.querySelector('.card') as HTMLElement).click();
  await expect.poll(() => question.querySelector('.bar .solid')).not.toBeNull();
  (question.querySelector('.bar .solid') as HTMLElement).click();
  await expect.poll(() => find(key, '.report')).toBeTruthy();
  expect(find(key, 'leadwort-report')).toBeNull();
  (find(key, '.report > summary') as HTMLElement).click();
  await expect.poll(() => find(key, 'leadwort-report')?.shadowRoot?.querySelector('.form')).toBeTruthy();
  const report = find(key, 'leadwort-report');
  expect(report).toMatchObject({ endpoint: '/take', contactEmail: 'help@example.org' });
  await expectAccessible(key);
  expectPolicyProof(key);
  report?.toggleAttribute('printing', true);
  await withMedia({ print: true }, () => {
    expect(find(key, 'leadwort-verdict')?.checkVisibility()).toBe(false);
    expect(find(key, '.foot')?.checkVisibility()).toBe(false);
    expect(report?.checkVisibility()).toBe(true);
  });
});
