import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { expect, test } from 'vitest';
import { addressOf, smallBundle } from '../../../tests/support/small-bundle.ts';
import '../session/define.ts';
import type { SessionStore } from '../../session/index.ts';
import type { LeadwortSession } from '../session/session.ts';

test('a page hears the start of a plant and each answer, and not what was said', async () => {
  const page = await fixture<HTMLElement>(html`<div></div>`);
  const told: [string, unknown][] = [];
  for (const name of ['leadwort-started', 'leadwort-answered'] as const)
    page.addEventListener(name, ({ type, detail }) => told.push([type, detail]));
  const holder = document.createElement('leadwort-session') as LeadwortSession;
  holder.src = addressOf(smallBundle);
  page.append(holder);
  const store = () => {
    const { state } = (holder as unknown as { provider: { state: { phase: string; store: SessionStore } } }).provider;
    return state.phase === 'ready' ? state.store : undefined;
  };
  await expect.poll(store).toBeDefined();
  const heard = (name: Parameters<SessionStore['request']>[0], detail: object) => {
    told.length = 0;
    store()?.request(name, detail as never);
    return told.filter(([type]) => type !== 'leadwort-verdict');
  };
  const [one, two] = smallBundle.characters.characters.map(({ id }) => id);
  const started = ['leadwort-started', { key: smallBundle.key.id, version: smallBundle.key.version }];
  const answered = (character = '', number = 0) => ['leadwort-answered', { character, number }];
  const skip = (character = '') => ({ answer: { character, skipped: true } });
  expect(heard('month', { month: 5 })).toEqual([]);
  expect(heard('answer', skip(one))).toEqual([started, answered(one, 1)]);
  expect(heard('answer', skip(two))).toEqual([answered(two, 2)]);
  expect(heard('answer', skip(one))).toEqual([answered(one, 1)]);
  expect(heard('withdraw', { character: one })).toEqual([]);
  expect(heard('restart', {})).toEqual([]);
  expect(heard('answer', skip(two))).toEqual([started, answered(two, 1)]);
});
