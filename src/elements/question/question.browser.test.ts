import { html } from 'lit';
import { beforeEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { english, held } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { answered, streambank } from '../../../tests/support/streambank.ts';
import type { KeyAnswer } from '../../key/index.ts';
import type { Requests, SessionStore } from '../../session/index.ts';
import './define.ts';
import type { LeadwortQuestion } from './question.ts';

/** A question drawn from a session, handled as a person would. */
async function asked(store: SessionStore, settings = english) {
  const requests: { name: string; detail: unknown }[] = [];
  const request = store.request.bind(store);
  store.request = (name: keyof Requests, detail: never) => {
    requests.push({ name, detail });
    request(name, detail);
  };
  const drawn = await held(html`<leadwort-question></leadwort-question>`, store, settings);
  const { holder, root } = drawn;
  const part = drawn.part as LeadwortQuestion;
  const find = <E extends HTMLElement>(selector: string, text = '') =>
    [...root.querySelectorAll<E>(selector)].find((one) => (one.textContent ?? '').includes(text));
  const get = <E extends HTMLElement>(selector: string, text = ''): E => {
    const found = find<E>(selector, text);
    if (!found) throw new Error(`no ${selector} with "${text}"`);
    return found;
  };
  return {
    part,
    holder,
    root,
    requests,
    find,
    get,
    settle: () => part.updateComplete,
    heading: () => get('[role=heading]'),
    cards: () => [...root.querySelectorAll<HTMLElement>('.card')],
    tick: async (text: string) => {
      get('.card', text).click();
      await part.updateComplete;
    },
    press: async (text: string) => {
      get('button', text).click();
      await part.updateComplete;
    },
    async ask(character: string) {
      store.request('ask', { character });
      await part.updateComplete;
    },
  };
}
const last = <T>(list: readonly T[]): T => list[list.length - 1] as T;
const answerOf = (requests: readonly { detail: unknown }[]) => (last(requests).detail as Requests['answer']).answer;

let store: SessionStore;
beforeEach(() => {
  store = answered({}, 9);
});

describe('a question', () => {
  test('stands as a heading that says its number, the part of the plant and the question', async () => {
    const { heading } = await asked(store);
    expect(heading().textContent?.replace(/\s+/g, ' ').trim()).toBe(
      'Question 1 · Whole plant: What kind of plant is it?',
    );
    expect(heading().getAttribute('aria-level')).toBe('2');
  });

  test('does not take the focus from a page that has just opened', async () => {
    const { root } = await asked(store);
    expect(root.activeElement).toBeNull();
  });

  test('shows the six answers that matter most, then all, and moves to the first of the rest', async () => {
    const { cards, press, root } = await asked(store);
    expect(cards()).toHaveLength(6);
    await press('Show all 8');
    expect(cards()).toHaveLength(8);
    await expect.poll(() => root.activeElement?.closest('.card')?.textContent).toContain('Woody');
  });

  test('keeps the order in which its author put the answers, shown in part or whole', async () => {
    const { root, ask, press } = await asked(store);
    const months = streambank().key.characters.find((one) => one.id === 'flowering-month')?.states ?? [];
    const shown = () => [...root.querySelectorAll<HTMLInputElement>('.card input')].map((input) => input.value);
    await ask('flowering-month');
    expect(shown()).toEqual(months.map(({ id }) => id).filter((id) => shown().includes(id)));
    expect(shown()).toHaveLength(6);
    await press('Show all 12');
    expect(shown()).toEqual(months.map(({ id }) => id));
  });

  test('keeps what was ticked in sight, although others matter more', async () => {
    const { root, ask } = await asked(answered({ 'growth-form': 'threads' }));
    await ask('growth-form');
    expect(root.querySelectorAll(':checked')).toHaveLength(1);
  });

  test('says what is unsafe before the answers', async () => {
    const { ask, get } = await asked(store);
    await ask('habitat');
    const caution = get('.caution');
    expect(caution.textContent).toContain('Careful');
    expect(caution.compareDocumentPosition(get('.cards')) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
  });

  test('about what lies below the ground says not to dig, whatever the key says', async () => {
    const { ask, get } = await asked(store);
    await ask('underground');
    expect(get('.caution').textContent).toContain('Do not dig or pull');
  });
});

describe('an answer', () => {
  test('does not leave when it is ticked, only when a person says how sure they are', async () => {
    const { tick, press, requests } = await asked(store);
    await tick('A tall cane');
    expect(requests).toEqual([]);
    await press('I think so');
    expect(requests).toEqual([
      { name: 'answer', detail: { answer: { character: 'growth-form', states: ['tall-cane'], sureness: 'think' } } },
    ]);
  });

  test('may be any of several, in the order of the key', async () => {
    const { tick, press, requests, get } = await asked(store);
    await tick('A grass');
    await tick('A tall cane');
    expect(get('[role=status]').textContent).toBe('It could be any of these 2.');
    await press('A guess');
    expect(answerOf(requests)).toEqual({
      character: 'growth-form',
      states: ['tall-cane', 'grass'],
      sureness: 'guess',
    });
  });

  test('may be that a person cannot tell, ticked or not', async () => {
    const { tick, press, requests } = await asked(store);
    await tick('A grass');
    await press('Can’t tell');
    expect(answerOf(requests)).toEqual({ character: 'growth-form', skipped: true });
  });

  test('moves the focus to the heading of the next question', async () => {
    const { press, heading, root } = await asked(store);
    await press('Can’t tell');
    expect(heading().textContent).toContain('Question 2');
    expect(root.activeElement).toBe(heading());
  });

  test('is told to the page', async () => {
    const { part, tick, press } = await asked(store);
    const told: KeyAnswer[] = [];
    const listen = (event: CustomEvent<KeyAnswer>) => void told.push(event.detail);
    document.body.addEventListener('leadwort-answer', listen);
    await tick('A grass');
    await press('Sure');
    document.body.removeEventListener('leadwort-answer', listen);
    expect(part.isConnected).toBe(true);
    expect(told).toEqual([{ character: 'growth-form', states: ['grass'], sureness: 'sure' }]);
  });

  test('opens nothing of the last question on the next one', async () => {
    const { get, press, root } = await asked(store);
    get<HTMLDetailsElement>('details.help').open = true;
    await press('Can’t tell');
    expect(root.querySelectorAll('details[open]')).toHaveLength(0);
    expect(root.querySelectorAll(':checked')).toHaveLength(0);
  });
});

describe('an earlier answer', () => {
  test('is there, ticked, when it is opened again, and takes the focus', async () => {
    const { ask, heading, root, get } = await asked(
      answered({ 'growth-form': ['tall-cane', 'grass'], light: 'full-sun' }),
    );
    await ask('growth-form');
    expect(heading().textContent).toContain('Question 1 again');
    expect(root.activeElement).toBe(heading());
    expect(get<HTMLInputElement>('input[value=tall-cane]').checked).toBe(true);
    expect(get<HTMLInputElement>('input[value=grass]').checked).toBe(true);
  });

  test('can be kept as it was', async () => {
    const session = answered({ 'growth-form': 'grass' });
    const { ask, press, requests, root, heading } = await asked(session);
    await ask('growth-form');
    await press('Keep as it was');
    expect(last(requests)).toEqual({ name: 'propose', detail: {} });
    expect(session.snapshot.trail).toHaveLength(1);
    expect(root.activeElement).toBe(heading());
  });

  test('changed keeps its place and the rest', async () => {
    const session = answered({ 'growth-form': 'grass', light: 'full-sun' });
    const { ask, tick, press } = await asked(session);
    await ask('growth-form');
    await tick('A grass');
    await tick('A tall cane');
    await press('Sure');
    expect(session.snapshot.trail.map(({ character }) => character)).toEqual(['growth-form', 'light']);
    expect(session.snapshot.trail[0]).toMatchObject({ states: ['tall-cane'] });
  });
});

describe('a size', () => {
  test('is shown in the units of the person', async () => {
    const us = await asked(answered({}));
    await us.ask('height');
    expect(us.cards().map((card) => card.querySelector('.size')?.textContent)).toEqual([
      'under 6 in',
      '6 to 20 in',
      '20 in to 3 ft',
      '3 to 6 ft',
      '6 to 12 ft',
      'over 12 ft',
    ]);
    const metric = await asked(answered({}), { ...english, units: 'metric' });
    await metric.ask('height');
    expect(metric.cards()[2]?.querySelector('.size')?.textContent).toBe('50 cm to 1 m');
  });

  const type = async (at: Awaited<ReturnType<typeof asked>>, text: string) => {
    at.get<HTMLDetailsElement>('details.typed').open = true;
    await userEvent.fill(at.get('#size'), text);
    await at.settle();
  };

  test.each([
    ['us', '30', { value: 30, unit: 'in' }],
    ['metric', '75,5', { value: 75.5, unit: 'cm' }],
  ] as const)('typed by a %s reader is sent as typed', async (units, text, sent) => {
    const at = await asked(answered({}), { ...english, units });
    await at.ask('leaf-length');
    await at.tick('Shorter than a finger');
    await type(at, text);
    expect(at.root.querySelectorAll(':checked:not(option)')).toHaveLength(0);
    await at.press('Sure');
    expect(answerOf(at.requests)).toEqual({ character: 'leaf-length', sureness: 'sure', ...sent });
  });

  test('takes another unit', async () => {
    const at = await asked(answered({}));
    await at.ask('height');
    await type(at, '12');
    await userEvent.selectOptions(at.get('select'), 'ft');
    await at.press('Sure');
    expect(answerOf(at.requests)).toMatchObject({ value: 12, unit: 'ft' });
  });

  test.each(['abc', '0', '-3', '1e9', '3.5.1'])(
    'typed as %j is refused where it stands, and nothing is lost',
    async (text) => {
      const at = await asked(answered({}), { ...english, units: 'metric' });
      await at.ask('leaf-length');
      const before = at.requests.length;
      await type(at, text);
      await at.press('Sure');
      expect(at.requests).toHaveLength(before);
      expect(at.get('#wrong').textContent).toBe('Enter a length in cm, for example 3.5');
      expect(at.get('#size').getAttribute('aria-invalid')).toBe('true');
      expect(at.get<HTMLInputElement>('#size').value).toBe(text);
      await expect.poll(() => at.root.activeElement).toBe(at.get('#size'));
      await expectAccessible(at.part);
    },
  );
});

describe('something else to look at', () => {
  test('lists every character that may be asked, by part, with how it stands', async () => {
    const { root, get } = await asked(answered({ light: 'full-sun' }, 1));
    const askable = streambank().key.characters.filter((one) => one.asked);
    expect(root.querySelectorAll('.feature')).toHaveLength(askable.length);
    expect(get('.feature', 'Light').textContent).toContain('Full sun');
    expect(get('.group', 'Flowers').textContent).toContain('not to be seen in January');
    expect(get('.group', 'Below the ground').textContent).toContain('only if it lies bare');
  });

  test('asks what is chosen, and leads back', async () => {
    const at = await asked(store);
    at.get<HTMLDetailsElement>('.else').open = true;
    at.get('.feature', 'Light').click();
    await at.settle();
    expect(last(at.requests)).toEqual({ name: 'ask', detail: { character: 'light' } });
    expect(at.root.activeElement).toBe(at.heading());
    expect(at.get<HTMLDetailsElement>('.else').open).toBe(false);
    await at.press('Back to the next question');
    expect(last(at.requests)).toEqual({ name: 'propose', detail: {} });
  });
});

/** As giant reed is described in the key's own sources: enough answers to settle it, taken from the key. */
const settledReed = () => {
  const session = answered({}, 9);
  const taxon = streambank().key.taxa.find((one) => one.id === 'arundo-donax');
  for (let asks = 0; asks < 40 && session.snapshot.question; asks++) {
    const { character } = session.snapshot.question;
    const trait = taxon?.traits.get(character);
    const known = streambank().key.characters.find((one) => one.id === character);
    const states =
      trait?.kind === 'states' ? trait.states.filter((one) => one.how === 'usually').map((one) => one.state) : [];
    session.request('answer', {
      answer: states.length > 0 && known ? { character, states, sureness: 'sure' } : { character, skipped: true },
    });
  }
  return session;
};

describe('when there is nothing to ask', () => {
  test('a settled verdict says so, and offers to go on', async () => {
    const session = settledReed();
    expect(session.snapshot.identification.verdict.kind).toBe('settled');
    const at = await asked(session);
    expect(at.heading().textContent).toContain('That is enough for a verdict.');
    await expectAccessible(at.part);
    await at.press('Look at more features');
    expect(last(at.requests)).toEqual({ name: 'onward', detail: {} });
    expect(at.root.activeElement).toBe(at.heading());
  });

  test('a key without a further question says that, too', async () => {
    const session = answered({}, 9);
    for (let asks = 0; asks < 60 && session.snapshot.question; asks++)
      session.request('answer', { answer: { character: session.snapshot.question.character, skipped: true } });
    const at = await asked(session);
    expect(at.heading().textContent).toContain('There is nothing more in this key that would help.');
    await expectAccessible(at.part);
  });
});

describe('everybody', () => {
  test('can go through it by keyboard alone', async () => {
    const at = await asked(store);
    at.part.focus();
    await userEvent.tab();
    expect(at.root.activeElement?.textContent).toContain('How to look');
    await userEvent.tab();
    await userEvent.keyboard(' ');
    await at.settle();
    const ticked = at.root.querySelector<HTMLInputElement>(':checked')?.value;
    for (let steps = 0; steps < 20 && !at.root.activeElement?.textContent?.includes('I think so'); steps++)
      await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    await at.settle();
    expect(answerOf(at.requests)).toMatchObject({ states: [ticked], sureness: 'think' });
    expect(at.root.activeElement).toBe(at.heading());
  });

  test('meets no barrier that can be found by a machine, in any state', async () => {
    const at = await asked(store);
    await expectAccessible(at.part);
    await at.tick('A grass');
    for (const details of at.root.querySelectorAll('details')) details.open = true;
    await expectAccessible(at.part);
    Object.assign(at.holder.style, { display: 'block', colorScheme: 'dark', background: '#141a17' });
    await expectAccessible(at.part);
    at.holder.removeAttribute('style');
    await withMedia({ forcedColors: 'active' }, () => expectAccessible(at.part));
    expectPolicyProof(at.part);
  });

  test('finds targets of 48 px', async () => {
    const at = await asked(answered({ light: 'full-sun' }));
    await at.ask('height');
    await at.tick('Up to the knee');
    for (const details of at.root.querySelectorAll('details')) details.open = true;
    const targets = [...at.root.querySelectorAll<HTMLElement>('button, summary, select, .card, #size')];
    expect(targets.length).toBeGreaterThan(40);
    const small = targets.filter((one) => one.offsetHeight < 48 || one.offsetWidth < 48);
    expect(small.map((one) => one.textContent)).toEqual([]);
  });

  test('reads it from right to left where the page does', async () => {
    const at = await asked(store);
    at.holder.dir = 'rtl';
    const [card] = at.cards();
    const box = card?.querySelector('input') as HTMLElement;
    const text = card?.querySelector('.text') as HTMLElement;
    expect(box.getBoundingClientRect().left).toBeGreaterThan(text.getBoundingClientRect().left);
    await expectAccessible(at.part);
  });
});
