import { fixture, fixtureCleanup } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf, smallBundle } from '../../../tests/support/small-bundle.ts';
import '../key/define.ts';
import type { SessionStore } from '../../session/index.ts';
import { parameterIn, readLink, withParameter } from '../../session/link/index.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import type { LeadwortKey } from '../key/key.ts';

const before = location.href;
const address = addressOf(smallBundle);
let told: HTMLElementEventMap['leadwort-keep']['detail'][] = [];
const hear = (event: Event) => told.push((event as HTMLElementEventMap['leadwort-keep']).detail);

beforeEach(() => {
  told = [];
  document.addEventListener('leadwort-keep', hear);
});
afterEach(() => {
  vi.restoreAllMocks();
  fixtureCleanup();
  history.replaceState(history.state, '', before);
  document.removeEventListener('leadwort-keep', hear);
});

const storeOf = (key: LeadwortKey) => {
  const { state } = (key as unknown as { provider: { state: { phase: string; store: SessionStore } } }).provider;
  return state.phase === 'ready' ? state.store : undefined;
};
async function open(parameter: string | undefined, more = '') {
  const key = document.createElement('leadwort-key');
  if (parameter !== undefined) key.setAttribute('link-parameter', parameter);
  if (more) key.setAttribute('keep', more);
  key.setAttribute('month', '9');
  key.setAttribute('src', address);
  (await fixture(html`<div></div>`)).append(key);
  await expect.poll(() => storeOf(key) !== undefined).toBe(true);
  return { key, store: storeOf(key) as SessionStore };
}
type Opened = Awaited<ReturnType<typeof open>>;
/** Answers the character with the first state. */
const answer = ({ store }: Opened, at = 0) => {
  const character = store.snapshot.prepared.key.characters[at];
  const states = [character?.states[0]?.id ?? ''];
  store.request('answer', { answer: { character: character?.id ?? '', states, sureness: 'think' } });
};
const trail = ({ store }: Opened) => store.snapshot.trail;
const put = (parameter: string, value: string) =>
  history.replaceState(history.state, '', `${withParameter(location.search, parameter, value)}${location.hash}`);

describe('a parameter of the address', () => {
  test('holds the answers as they are given, and goes with them; all else of the address stays', async () => {
    history.replaceState({ of: 'the page' }, '', '?a=%20x+y&b#here');
    const { length } = history;
    const one = await open('plant');
    expect(location.search).toBe('?a=%20x+y&b');
    answer(one);
    answer(one, 1);
    expect(location.search).toMatch(/^\?a=%20x\+y&b&plant=1_/);
    expect(readLink(parameterIn(location.search, 'plant') ?? '').answers).toEqual(trail(one));
    expect([location.hash, history.state, history.length]).toEqual(['#here', { of: 'the page' }, length]);
    one.store.request('restart', {});
    expect(location.search).toBe('?a=%20x+y&b');
  });

  test('brings the answers back, in their language', async () => {
    const one = await open('plant');
    one.key.lang = 'es';
    answer(one);
    fixtureCleanup();
    const two = await open('plant');
    expect(trail(two)).toEqual(trail(one));
    expect(two.key.lang).toBe('es');
    expect(told).toEqual([]);
  });

  test('is each element its own', async () => {
    const [one, two] = [await open('left'), await open('right')];
    answer(one);
    answer(two, 1);
    fixtureCleanup();
    expect(trail(await open('left'))).toEqual(trail(one));
    expect(trail(await open('right'))).toEqual(trail(two));
  });

  test('counts more than what the device kept', async () => {
    const name = `t-${crypto.randomUUID()}`;
    const kept = await open('plant', name);
    answer(kept);
    const linked = await open('plant');
    answer(linked, 1);
    fixtureCleanup();
    expect(trail(await open('plant', name))).toEqual(trail(linked));
  });

  test('is neither read nor written without the attribute', async () => {
    answer(await open('plant'));
    fixtureCleanup();
    const written = vi.spyOn(history, 'replaceState');
    const at = location.href;
    const plain = await open(undefined);
    expect(trail(plain)).toEqual([]);
    answer(plain);
    expect(location.href).toBe(at);
    expect(written).not.toHaveBeenCalled();
    expect(plain.key.renderRoot.querySelector('.copy')).toBeNull();
  });

  test('of an older key brings what still fits, and tells the page what was left', async () => {
    const character = smallBundle.characters.characters[0];
    put('plant', `1_${smallBundle.key.id}_0.0.1_en_9_novice_c__gone.s.away_${character?.id}.x`);
    const at = location.href;
    const one = await open('plant');
    expect(trail(one)).toEqual([{ character: character?.id, skipped: true }]);
    expect(told).toEqual([{ trouble: 'left', reason: 'gone' }]);
    // What was left stays in the address until the person goes on.
    expect(location.href).toBe(at);
  });

  test.each([
    ['en', en, 'nonsense', 'form: expected 1'],
    ['es', es, '1_another-key_1.0.0_en_9_novice_c_', `key: expected ${smallBundle.key.id}`],
  ] as const)(
    'that cannot be read is told of in %s, where it is wrong, and stays',
    async (lang, words, text, reason) => {
      put('plant', text);
      const at = location.href;
      const one = await open('plant');
      one.key.lang = lang;
      expect(told).toEqual([{ trouble: 'link', reason }]);
      expect(trail(one)).toEqual([]);
      await expect
        .poll(() => one.key.renderRoot.querySelector('[part=notice]')?.textContent ?? '')
        .toContain(words.keep.link);
      expect(location.href).toBe(at);
      await expectAccessible(one.key);
    },
  );

  test('that the browser does not let be written leaves the key at work', async () => {
    const one = await open('plant');
    vi.spyOn(history, 'replaceState').mockImplementation(() => {
      throw new DOMException('too often', 'SecurityError');
    });
    answer(one);
    expect(trail(one)).toHaveLength(1);
  });
});

describe('a link', () => {
  async function button(one: Opened) {
    await expect.poll(() => one.key.renderRoot.querySelector('.copy button')).not.toBeNull();
    const found = one.key.renderRoot.querySelector('.copy button') as HTMLButtonElement;
    return { button: found, said: () => found.nextElementSibling?.textContent ?? '' };
  }

  test('is copied at a press, once there is an answer', async () => {
    const copied = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
    const one = await open('plant');
    await expect.poll(() => one.key.renderRoot.querySelector('.settings')).not.toBeNull();
    expect(one.key.renderRoot.querySelector('.copy')).toBeNull();
    answer(one);
    const at = await button(one);
    at.button.focus();
    at.button.click();
    await expect.poll(at.said).toBe(en.key.copied);
    expect(copied.mock.calls).toEqual([[location.href]]);
    await expectAccessible(one.key);
    expectPolicyProof(one.key);
    at.button.blur();
    expect(at.said()).toBe('');
  });

  test('is shown where it cannot be copied', async () => {
    vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new DOMException('no', 'NotAllowedError'));
    const one = await open('plant');
    answer(one);
    const at = await button(one);
    at.button.click();
    await expect.poll(at.said).toBe(`${en.key.notCopied} ${location.href}`);
  });
});
