import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf, smallBundle, withCharacter } from '../../../tests/support/small-bundle.ts';
import '../question/define.ts';
import '../trail/define.ts';
import type { LeadwortQuestion } from '../question/question.ts';
import type { LeadwortEvents } from '../shared/events.ts';
import type { LeadwortSession } from './session.ts';

/** Answers to fetch, given by hand: each call waits until it is answered. */
function byHand() {
  const calls: { address: string; signal: AbortSignal; answer: (response: Response) => void }[] = [];
  vi.spyOn(globalThis, 'fetch').mockImplementation(
    (address, init) =>
      new Promise((resolve, reject) => {
        const signal = init?.signal as AbortSignal;
        signal.addEventListener('abort', () => reject(signal.reason));
        calls.push({ address: String(address), signal, answer: resolve });
      }),
  );
  return calls;
}
const good = (content: unknown = smallBundle) => new Response(JSON.stringify(content));
const titled = (label: string) => withCharacter('habitat', { question: label });

afterEach(() => {
  vi.restoreAllMocks();
});

async function session(src: string) {
  const holder = await fixture<LeadwortSession>(
    html`<leadwort-session src=${src} month="9"><leadwort-question></leadwort-question></leadwort-session>`,
  );
  const question = holder.querySelector('leadwort-question') as LeadwortQuestion;
  return {
    holder,
    question,
    heading: () => question.shadowRoot?.querySelector('[role=heading]')?.textContent?.replace(/\s+/g, ' ').trim(),
    notice: () => holder.shadowRoot?.querySelector('.notice')?.textContent?.replace(/\s+/g, ' ').trim(),
    retry: () => holder.shadowRoot?.querySelector('button') as HTMLButtonElement,
  };
}
const asking = 'Question 1 · Where it stands: Where is the plant standing?';

describe('a key', () => {
  test('comes from an address that is read from the page', async () => {
    const calls = byHand();
    const at = await session('keys/small.json?a=1');
    expect(calls.map(({ address }) => address)).toEqual([new URL('keys/small.json?a=1', document.baseURI).href]);
    expect(at.notice()).toBe('The key is on its way.');
    await expectAccessible(at.holder);
    calls[0]?.answer(good());
    await expect.poll(at.heading).toBe(asking);
    expect(at.notice()).toBe('');
    expectPolicyProof(at.holder);
  });

  test('that is not there is told of, and can be tried again', async () => {
    const calls = byHand();
    const at = await session('keys/none.json');
    calls[0]?.answer(new Response('nothing here', { status: 404 }));
    await expect.poll(at.notice).toBe('The key could not be opened. Try again');
    await expectAccessible(at.holder);
    at.retry().click();
    await expect.poll(() => calls.length).toBe(2);
    calls[1]?.answer(good());
    await expect.poll(at.heading).toBe(asking);
  });

  test('without a connection is told of, and can be tried again', async () => {
    const fetching = vi.spyOn(globalThis, 'fetch').mockRejectedValueOnce(new TypeError('Failed to fetch'));
    const at = await session('keys/small.json');
    await expect.poll(at.notice).toContain('could not be opened');
    fetching.mockResolvedValueOnce(good());
    at.retry().click();
    await expect.poll(at.heading).toBe(asking);
  });

  test('that is no JSON is told of with line and column', async () => {
    const at = await session(addressOf('{\n  "format": 1,\n  oops'));
    await expect.poll(at.notice).toMatch(/has mistakes in it.*line 3 column 3/);
    await expectAccessible(at.holder);
  });

  test('with a mistake is told of with the place, and the mistake is text and nothing else', async () => {
    const at = await session(addressOf(withCharacter('height', { unit: '<img src=x onerror=alert(1)>' })));
    await expect.poll(at.notice).toContain('characters.json');
    expect(at.notice()).toContain('characters[2].unit: expected one of mm, cm, m, in, ft, count');
    expect(at.notice()).toContain('<img src=x onerror=alert(1)>');
    expect(at.holder.shadowRoot?.querySelector('img')).toBeNull();
  });

  test('with many mistakes shows a few and counts the rest', async () => {
    const bad = { ...smallBundle, characters: { characters: Array.from({ length: 9 }, () => 7) } };
    const at = await session(addressOf(bad));
    await expect.poll(() => at.holder.shadowRoot?.querySelectorAll('li').length).toBe(6);
    expect(at.notice()).toContain('and 4 more');
  });

  test('too large to be one is given up while it comes', async () => {
    const calls = byHand();
    const at = await session('keys/huge.json');
    let sent = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent++;
        controller.enqueue(new Uint8Array(500_000).fill(32));
      },
    });
    calls[0]?.answer(new Response(endless));
    await expect.poll(at.notice).toContain('could not be opened');
    expect(sent).toBeLessThan(15);
  });

  test('that says hostile things shows them as text', async () => {
    const at = await session(addressOf(titled('<b onclick="x()">Tall?</b> %s')));
    await expect.poll(at.heading).toContain('<b onclick="x()">Tall?</b> %s');
    expect(at.question.shadowRoot?.querySelector('[role=heading] b')).toBeNull();
  });
});

describe('one address after another', () => {
  test('the last one wins, also when the first comes later', async () => {
    const calls = byHand();
    const at = await session('one.json');
    at.holder.src = 'two.json';
    await expect.poll(() => calls.length).toBe(2);
    expect(calls[0]?.signal.aborted).toBe(true);
    calls[1]?.answer(good(titled('Two?')));
    await expect.poll(at.heading).toContain('Two?');
    calls[0]?.answer(good(titled('One?')));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(at.heading()).toContain('Two?');
  });

  test('a new one puts a new key in the place of the old', async () => {
    const at = await session(addressOf(titled('One?')));
    await expect.poll(at.heading).toContain('One?');
    at.holder.src = addressOf(titled('Two?'));
    await expect.poll(at.heading).toContain('Two?');
  });

  test('taken off the page, a load is given up; put back, it starts again', async () => {
    const calls = byHand();
    const at = await session('one.json');
    const parent = at.holder.parentElement as HTMLElement;
    at.holder.remove();
    expect(calls[0]?.signal.aborted).toBe(true);
    parent.append(at.holder);
    await expect.poll(() => calls.length).toBe(2);
    calls[1]?.answer(good());
    await expect.poll(at.heading).toBe(asking);
  });

  test('moved elsewhere on the page, the answers stay', async () => {
    const at = await session(addressOf(smallBundle));
    await expect.poll(at.heading).toBe(asking);
    const skip = at.question.shadowRoot?.querySelector('.skip') as HTMLButtonElement;
    skip.click();
    await expect.poll(at.heading).toContain('Question 2');
    at.holder.parentElement?.append(at.holder);
    await at.question.updateComplete;
    expect(at.heading()).toContain('Question 2');
    at.question.shadowRoot?.querySelector<HTMLElement>('.skip')?.click();
    await expect.poll(at.heading).toContain('Question 3');
  });
});

describe('what the page sets', () => {
  test('language follows the nearest lang, through shadow roots, at once and later', async () => {
    const outer = await fixture<HTMLElement>(html`<div lang="es-MX"></div>`);
    const inner = outer.attachShadow({ mode: 'open' });
    const holder = document.createElement('leadwort-session') as LeadwortSession;
    const question = document.createElement('leadwort-question') as LeadwortQuestion;
    const text = { 'Where is the plant standing?': '¿Dónde está la planta?' };
    holder.src = addressOf({ ...smallBundle, text: { es: { language: 'es', text } } });
    holder.append(question);
    inner.append(holder);
    const heading = () => question.shadowRoot?.querySelector('[role=heading]')?.textContent;
    await expect.poll(heading).toContain('¿Dónde está la planta?');
    await expect.poll(heading).toContain('Pregunta 1');
    outer.lang = 'en';
    await expect.poll(heading).toContain('Where is the plant standing?');
    expect(heading()).toContain('Question 1');
    holder.lang = 'es';
    await expect.poll(heading).toContain('Pregunta 1');
  });

  test('heading level, units, month and observer reach the parts', async () => {
    const at = await session(addressOf(smallBundle));
    await expect.poll(at.heading).toBe(asking);
    at.holder.setAttribute('heading-level', '4');
    at.holder.setAttribute('units', 'metric');
    await expect
      .poll(() => at.question.shadowRoot?.querySelector('[role=heading]')?.getAttribute('aria-level'))
      .toBe('4');
    const list = () => at.question.shadowRoot?.querySelector('.else')?.textContent;
    expect(list()).not.toContain('not to be seen');
    at.holder.setAttribute('month', '1');
    await expect.poll(list).toContain('not to be seen in January');
  });

  test('what means nothing falls back to what holds without it', async () => {
    const at = await session(addressOf(smallBundle));
    for (const [name, value] of [
      ['month', '13'],
      ['units', 'ells'],
      ['heading-level', '9'],
      ['observer', 'nobody'],
    ])
      at.holder.setAttribute(name as string, value as string);
    await expect.poll(at.heading).toBe(asking);
    expect(at.question.shadowRoot?.querySelector('[role=heading]')?.getAttribute('aria-level')).toBe('2');
  });

  test('without an address nothing is fetched and nothing is said', async () => {
    const calls = byHand();
    const at = await session('');
    expect(calls).toHaveLength(0);
    expect(at.notice()).toBe('');
  });
});

test('a verdict that an answer changed is told to the page', async () => {
  const at = await session(addressOf(smallBundle));
  await expect.poll(at.heading).toBe(asking);
  const told: string[] = [];
  const listen = (event: CustomEvent<LeadwortEvents['leadwort-verdict']>) =>
    void told.push(`${event.detail.kind} ${event.detail.taxa[0]}`);
  document.body.addEventListener('leadwort-verdict', listen);
  // As giant reed looks in the small key.
  for (const seen of ['damp bank', 'tall cane', 'More than twice', 'brown wedge', 'More than a finger']) {
    const cards = [...(at.question.shadowRoot?.querySelectorAll<HTMLElement>('.card') ?? [])];
    cards.find((card) => card.textContent?.includes(seen))?.click();
    await at.question.updateComplete;
    at.question.shadowRoot?.querySelector<HTMLElement>('.bar .solid')?.click();
    await at.question.updateComplete;
  }
  document.body.removeEventListener('leadwort-verdict', listen);
  expect(told.at(-1)).toMatch(/^(leaning|settled) arundo-donax$/);
  expect(told.filter((one, i) => one === told[i - 1])).toEqual([]);
});

test('two sessions on a page keep apart', async () => {
  const one = await session(addressOf(smallBundle));
  const two = await session(addressOf(smallBundle));
  await expect.poll(one.heading).toBe(asking);
  await expect.poll(two.heading).toBe(asking);
  one.question.shadowRoot?.querySelector<HTMLElement>('.skip')?.click();
  await expect.poll(one.heading).toContain('Question 2');
  expect(two.heading()).toBe(asking);
});
