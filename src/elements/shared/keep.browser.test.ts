import { fixture, fixtureCleanup } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, expect, test, vi } from 'vitest';
import { addressOf, smallBundle } from '../../../tests/support/small-bundle.ts';
import '../session/define.ts';
import type { SessionStore } from '../../session/index.ts';
import type { LeadwortSession } from '../session/session.ts';

const keepName = () => `t-${crypto.randomUUID()}`;

/** The element, and the session once it is there. */
async function open(keep: string | null, src = addressOf(smallBundle)) {
  const holder = await fixture<LeadwortSession>(
    html`<leadwort-session .keep=${keep} src=${src} month="9"></leadwort-session>`,
  );
  const store = () => {
    const { state } = (holder as unknown as { provider: { state: { phase: string; store: SessionStore } } }).provider;
    return state.phase === 'ready' ? state.store : undefined;
  };
  await expect.poll(() => store() !== undefined).toBe(true);
  return { holder, store: store() as SessionStore };
}
const skipped = ({ store }: { store: SessionStore }) => {
  const { prepared } = store.snapshot;
  const character = prepared.key.characters[0]?.id as string;
  store.request('answer', { answer: { character, skipped: true } });
  return character;
};
const trail = ({ store }: { store: SessionStore }) => store.snapshot.trail.map(({ character }) => character);

afterEach(() => {
  vi.unstubAllGlobals();
});

test('answers come back after a reload, under their own name alone', async () => {
  const name = keepName();
  const character = skipped(await open(name));
  dispatchEvent(new PageTransitionEvent('pagehide'));
  fixtureCleanup();
  await expect.poll(async () => trail(await open(name))).toEqual([character]);
  expect(trail(await open(keepName()))).toEqual([]);
  expect(trail(await open(null))).toEqual([]);
});

test('a new plant is kept as well: what was said of the last does not come back', async () => {
  const name = keepName();
  const first = await open(name);
  skipped(first);
  first.store.request('restart', {});
  fixtureCleanup();
  await expect.poll(async () => trail(await open(name))).toEqual([]);
});

test('where nothing can be kept the key works, and the page is told', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const told: string[] = [];
  const hear = (event: Event) => told.push((event as HTMLElementEventMap['leadwort-keep']).detail.trouble);
  document.addEventListener('leadwort-keep', hear);
  const one = await open(keepName());
  const character = skipped(one);
  expect(trail(one)).toEqual([character]);
  expect(told).toEqual(['unavailable']);
  document.removeEventListener('leadwort-keep', hear);
});
