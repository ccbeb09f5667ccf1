import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import characters from '../../../keys/streambank/characters.json' with { type: 'json' };
import guidance from '../../../keys/streambank/guidance.json' with { type: 'json' };
import keyFile from '../../../keys/streambank/key.json' with { type: 'json' };
import sources from '../../../keys/streambank/sources.json' with { type: 'json' };
import taxa from '../../../keys/streambank/taxa.json' with { type: 'json' };
import text from '../../../keys/streambank/text/es.json' with { type: 'json' };
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { fiveCouplets } from '../../../tests/support/five-couplets.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf } from '../../../tests/support/small-bundle.ts';
import './define.ts';
import type { LeadwortKey } from './key.ts';

const bundle = {
  format: 1,
  key: keyFile,
  characters,
  taxa,
  guidance,
  sources,
  couplets: { couplets: fiveCouplets },
  text: { es: text },
};
const part = (key: LeadwortKey, name: string) => key.shadowRoot?.querySelector(`leadwort-${name}`) as HTMLElement;
const own = <E extends HTMLElement>(key: LeadwortKey, selector: string) =>
  key.shadowRoot?.querySelector<E>(selector) as E;
const asking = (key: LeadwortKey) => own(key, '[part=question]')?.shadowRoot as ShadowRoot;
const heading = (key: LeadwortKey) =>
  asking(key)?.querySelector('[role=heading]')?.textContent?.replace(/\s+/g, ' ').trim();
const press = (root: ParentNode | null | undefined, words: string) =>
  [...(root?.querySelectorAll('button') ?? [])].find((one) => one.textContent?.includes(words))?.click();
const notice = (key: LeadwortKey) => own(key, '[part=notice]').textContent?.replace(/\s+/g, ' ').trim();

async function opened(width = 380) {
  const frame = await fixture<HTMLElement>(html`<div></div>`);
  frame.style.inlineSize = `${width}px`;
  const key = document.createElement('leadwort-key') as LeadwortKey;
  key.src = addressOf(bundle);
  key.month = 9;
  frame.append(key);
  await expect.poll(() => heading(key)).toContain('Question 1');
  return key;
}

async function take(key: LeadwortKey, lead: number) {
  const before = heading(key);
  asking(key).querySelectorAll<HTMLElement>('.lead')[lead]?.click();
  await expect.poll(() => asking(key).querySelector('.sureness')).not.toBeNull();
  press(asking(key), 'Sure');
  await expect.poll(() => heading(key)).not.toBe(before);
}

/** Ticks an answer of the question on the screen by its words. */
async function tick(key: LeadwortKey, words: string) {
  const before = heading(key);
  press(asking(key), 'Show all');
  await expect
    .poll(() => [...asking(key).querySelectorAll<HTMLElement>('.card')].some((one) => one.textContent?.includes(words)))
    .toBe(true);
  [...asking(key).querySelectorAll<HTMLElement>('.card')].find((one) => one.textContent?.includes(words))?.click();
  await expect.poll(() => asking(key).querySelector('.sureness')).not.toBeNull();
  press(asking(key), 'Sure');
  await expect.poll(() => heading(key)).not.toBe(before);
}

const way = async (key: LeadwortKey, to: 'couplets' | 'free') => {
  own(key, `input[value=${to}]`).click();
  await expect
    .poll(() => own(key, '[part=question]').localName)
    .toBe(to === 'free' ? 'leadwort-question' : 'leadwort-couplet');
  await expect.poll(() => heading(key)).toBeTruthy();
};

describe('a key with couplets', () => {
  test('begins with the first couplet, and brings the question later', async () => {
    const key = await opened();
    expect(part(key, 'couplet')).not.toBeNull();
    expect(part(key, 'question')).toBeNull();
    await expect.poll(() => customElements.get('leadwort-question')).toBeDefined();
  });

  test('is walked either way in turn, and no answer is lost', async () => {
    const key = await opened();
    await take(key, 0);
    await way(key, 'free');
    expect(heading(key)).toContain('Question 2');
    press(asking(key), 'Can’t tell');
    await expect.poll(() => heading(key)).toContain('Question 3');
    await way(key, 'couplets');
    expect(heading(key)).toContain('Question 3');
    expect(part(key, 'trail').shadowRoot?.querySelectorAll('ol > li')).toHaveLength(2);
  });

  test('keeps the focus on the switch, and moves it to the question for "Something else"', async () => {
    const key = await opened();
    const radio = own(key, 'input[value=couplets]');
    radio.focus();
    await userEvent.keyboard('{ArrowRight}');
    await expect.poll(() => own(key, '[part=question]').localName).toBe('leadwort-question');
    expect(key.shadowRoot?.activeElement).toBe(own(key, 'input[value=free]'));
    await way(key, 'couplets');
    press(asking(key), 'Something else');
    await expect.poll(() => own(key, '[part=question]').localName).toBe('leadwort-question');
    await expect.poll(() => key.shadowRoot?.activeElement).toBe(part(key, 'question'));
  });

  test('says where the couplets end, and goes on with what would help', async () => {
    const key = await opened();
    await take(key, 0);
    await take(key, 1);
    expect(notice(key)).toMatch(/^Step by step you have come to .*cattail\. It is not settled yet/);
    expect(own(key, '[part=question]').localName).toBe('leadwort-question');
    await expect.poll(() => key.shadowRoot?.activeElement).toBe(part(key, 'question'));
    await expectAccessible(key);
  });

  test('asks out of turn what no couplet asks, and comes back', async () => {
    const key = await opened();
    await take(key, 0);
    own<HTMLDetailsElement>(key, '.names summary').click();
    await way(key, 'free');
    expect(heading(key)).toContain('Question 2');
    await way(key, 'couplets');
    expect(heading(key)).toContain('Question 2');
  });
});

describe('a wrong turn', () => {
  /** A narrow leaf at the first couplet, and then everything as arrow arum has it. */
  async function astray(width = 380) {
    const key = await opened(width);
    await take(key, 0);
    await way(key, 'free');
    for (const [label, words] of [
      ['Kind of plant', 'Big or broad leaves'],
      ['Base of the blade', 'Two pointed lobes'],
      ['Veins', 'Like a feather'],
      ['How the leaf joins', 'A stalk at the edge'],
    ] as const) {
      const root = asking(key);
      root.querySelector<HTMLDetailsElement>('.else')?.setAttribute('open', '');
      [...root.querySelectorAll<HTMLElement>('.feature')].find((one) => one.textContent?.includes(label))?.click();
      await expect.poll(() => asking(key).querySelector('.others')?.textContent).toContain('Back to the next');
      await tick(key, words);
    }
    await way(key, 'couplets');
    await expect.poll(() => notice(key)).toContain('The water runs elsewhere');
    return key;
  }

  test('is told in plain words, with the plants and the step to look at again', async () => {
    const key = await astray();
    expect(notice(key)).toMatch(/speaks for arrow arum.*The step most worth a second look: Leaf shape/);
    await expectAccessible(key);
    await withMedia({ forcedColors: 'active' }, () => expectAccessible(key));
    (key.parentElement as HTMLElement).dir = 'rtl';
    await expectAccessible(key);
    expectPolicyProof(key);
  });

  test('is looked at again, put right, and told no more', async () => {
    const key = await astray();
    press(own(key, '[part=notice]'), 'Look at it again');
    await expect.poll(() => heading(key)).toContain('Question 1 again');
    await expect.poll(() => key.shadowRoot?.activeElement).toBe(part(key, 'couplet'));
    await take(key, 1);
    await expect.poll(() => notice(key)).not.toContain('The water runs elsewhere');
  });

  test('can be left to the water: the walk carries on where the weight is, and the answers stay', async () => {
    const key = await astray();
    const steps = () => part(key, 'trail').shadowRoot?.querySelectorAll('ol > li').length;
    const before = steps();
    press(own(key, '[part=notice]'), 'Carry on from there');
    await expect.poll(() => notice(key)).not.toContain('The water runs elsewhere');
    expect(steps()).toBe(before);
    await expect.poll(() => key.shadowRoot?.activeElement).toBe(own(key, '[part=question]'));
  });
});

describe('the stream', () => {
  test('stands beside the couplet where it is wide', async () => {
    await page.viewport(1400, 900);
    const key = await opened(1300);
    await expect.poll(() => part(key, 'stream').shadowRoot?.querySelector('svg')).toBeTruthy();
    const stream = part(key, 'stream').getBoundingClientRect();
    const couplet = part(key, 'couplet').getBoundingClientRect();
    expect(stream.left).toBeGreaterThan(couplet.right);
    expect(stream.top).toBeLessThan(couplet.bottom);
    await expectAccessible(key);
    expectPolicyProof(key);
  });

  test('waits behind a line where it is narrow, and comes only when it is opened', async () => {
    const key = await opened(380);
    const details = own<HTMLDetailsElement>(key, 'details.stream');
    expect(details.open).toBe(false);
    details.querySelector('summary')?.click();
    await expect.poll(() => part(key, 'stream').shadowRoot?.querySelector('svg')).toBeTruthy();
    await expectAccessible(key);
  });
});

test.each([280, 360, 768, 1024, 1400])('the walk fits into %d px without scrolling sideways', async (width) => {
  const key = await opened(width);
  own<HTMLDetailsElement>(key, 'details.stream').open = true;
  await expect.poll(() => part(key, 'stream').shadowRoot?.querySelector('svg')).toBeTruthy();
  await take(key, 1);
  expect(own(key, '.page').scrollWidth).toBeLessThanOrEqual(own(key, '.page').clientWidth + 1);
});

test('the switch and the notice speak Spanish', async () => {
  const key = await opened();
  key.lang = 'es';
  await expect.poll(() => own(key, '[part=ways]').textContent).toContain('Paso a paso');
  await expect.poll(() => heading(key)).toContain('Pregunta 1');
  await expectAccessible(key);
});
