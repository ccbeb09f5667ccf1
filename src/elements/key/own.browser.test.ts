// The choice to be read as one reads in the practice room.
import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import characters from '../../../keys/streambank/characters.json' with { type: 'json' };
import guidance from '../../../keys/streambank/guidance.json' with { type: 'json' };
import keyFile from '../../../keys/streambank/key.json' with { type: 'json' };
import sources from '../../../keys/streambank/sources.json' with { type: 'json' };
import taxa from '../../../keys/streambank/taxa.json' with { type: 'json' };
import text from '../../../keys/streambank/text/es.json' with { type: 'json' };
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { attempt, idOf } from '../../../tests/support/attempts.ts';
import { addressOf } from '../../../tests/support/small-bundle.ts';
import type { SessionStore } from '../../session/index.ts';
import { PracticeStore } from '../../store/practice.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import './define.ts';
import type { LeadwortKey } from './key.ts';

let keys = 0;
const freshId = () => `own-${Date.now()}-${++keys}`;

/** Misread the kind of plant every time. */
async function practise(id: string, readings: number, name = 'Ann'): Promise<void> {
  const store = await PracticeStore.open(id);
  await store.keep({ id: idOf(0xa), name }, 1);
  const read = (n: number) =>
    attempt(n, 'panicum-virgatum', {
      ...{ kind: 'read', item: 'character:growth-form', character: 'growth-form', options: ['tall-cane', 'grass'] },
      ...{ truth: 'grass', said: 'tall-cane', right: false },
    });
  await store.add(
    idOf(0xa),
    Array.from({ length: readings }, (_, n) => read(n + 1)),
  );
  store.close();
}

async function opened(id: string, language = 'en') {
  await page.viewport(360, 780);
  const bundle = { format: 1, key: { ...keyFile, id }, characters, taxa, guidance, sources, text: { es: text } };
  const frame = await fixture<HTMLElement>(html`<div lang=${language}></div>`);
  const key = document.createElement('leadwort-key') as LeadwortKey;
  key.src = addressOf(bundle);
  key.month = 9;
  frame.append(key);
  const find = <E extends HTMLElement>(selector: string) => key.shadowRoot?.querySelector<E>(selector) as E;
  await expect.poll(() => find('.settings')).toBeTruthy();
  const store = (key as unknown as { provider: { state: { store: SessionStore } } }).provider.state.store;
  store.request('answer', { answer: { character: 'growth-form', states: ['tall-cane'], sureness: 'sure' } });
  find<HTMLDetailsElement>('.settings').open = true;
  const options = () => [...find('.observer').querySelectorAll('option')].map((one) => one.textContent?.trim());
  return { key, find, store, options };
}

test.each([
  { language: 'en', words: en },
  { language: 'es', words: es },
])('whoever practised enough here may be read as they read, in $language; the answers stay', async (visit) => {
  const { language, words } = visit;
  const id = freshId();
  await practise(id, 60);
  const { key, find, store, options } = await opened(id, language);
  await expect.poll(options).toContain(words.key.own('Ann'));
  const before = store.snapshot;
  const select = find<HTMLSelectElement>('.observer');
  select.focus();
  await userEvent.selectOptions(select, words.key.own('Ann'));
  await expect.poll(() => find('.settings [role=status]')?.textContent).toBe(words.key.ownSays(60));
  expect(store.snapshot.trail).toEqual(before.trail);
  const misreads = ({ prepared }: typeof before) =>
    prepared.matrix.spec.characters.find((one) => one.id === 'growth-form')?.misread ?? 0;
  expect(misreads(store.snapshot)).toBeGreaterThan(2 * misreads(before));
  expect(store.snapshot.identification.standing[0]?.probability).toBeLessThan(
    before.identification.standing[0]?.probability ?? 0,
  );
  await expectAccessible(key);
  // And back: as if nothing had been chosen.
  await userEvent.selectOptions(select, words.key.observers.get('novice') ?? '');
  await expect.poll(() => find('.settings [role=status]')).toBeNull();
  expect(store.snapshot.prepared).toBe(before.prepared);
  expect(store.snapshot.identification).toEqual(before.identification);
});

test('whoever practised too little, or never, is not offered it, and nothing is made on the device for asking', async () => {
  const little = freshId();
  await practise(little, 10);
  const ids = Object.keys(keyFile.observers);
  const few = await opened(little);
  const never = freshId();
  const none = await opened(never);
  await new Promise((done) => setTimeout(done, 300));
  await vi.waitFor(() => expect(few.options()).toHaveLength(ids.length));
  expect(none.options()).toHaveLength(ids.length);
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(`leadwort practice ${never}`);
});
