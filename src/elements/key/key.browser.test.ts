import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf, freeBundle, withCharacter } from '../../../tests/support/small-bundle.ts';
import './define.ts';
import type { LeadwortKey } from './key.ts';

const part = (key: LeadwortKey, name: string) => key.shadowRoot?.querySelector(`leadwort-${name}`) as HTMLElement;
const inside = <E extends HTMLElement>(key: LeadwortKey, name: string, selector: string) =>
  part(key, name)?.shadowRoot?.querySelector<E>(selector) ?? null;
const own = <E extends HTMLElement>(key: LeadwortKey, selector: string) =>
  key.shadowRoot?.querySelector<E>(selector) as E;
const heading = (key: LeadwortKey) =>
  inside(key, 'question', '[role=heading]')?.textContent?.replace(/\s+/g, ' ').trim();
const line = (key: LeadwortKey) => inside(key, 'trail', '.line')?.textContent?.replace(/\s+/g, ' ').trim();
const press = (key: LeadwortKey, text: string) =>
  [...(key.shadowRoot?.querySelectorAll('button') ?? [])].find((one) => one.textContent?.includes(text))?.click();

async function opened(width = 380, bundle: unknown = freeBundle) {
  const frame = await fixture<HTMLElement>(html`<div></div>`);
  frame.style.inlineSize = `${width}px`;
  const key = document.createElement('leadwort-key') as LeadwortKey;
  key.src = addressOf(bundle);
  key.month = 9;
  key.innerHTML = '<p>Call the office.</p>';
  frame.append(key);
  await expect.poll(() => heading(key)).toContain('Question 1');
  await expect.poll(() => own(key, '.settings')).toBeTruthy();
  return key;
}
/** Ticks the first answer and is sure of it. */
async function answer(key: LeadwortKey) {
  const number = heading(key);
  inside(key, 'question', '.card')?.click();
  await expect.poll(() => inside(key, 'question', '.bar .solid')).not.toBeNull();
  inside(key, 'question', '.bar .solid')?.click();
  await expect.poll(() => heading(key)).not.toBe(number);
}

describe('the page', () => {
  test('shows its own content until the key is there', async () => {
    const key = await fixture<LeadwortKey>(html`<leadwort-key><p>Call the office.</p></leadwort-key>`);
    expect((key.firstElementChild as HTMLElement).offsetHeight).toBeGreaterThan(0);
    key.src = addressOf(freeBundle);
    await expect.poll(() => heading(key)).toContain('Question 1');
    expect((key.firstElementChild as HTMLElement).offsetHeight).toBe(0);
  });

  test('keeps its own content when the key does not come', async () => {
    const key = await fixture<LeadwortKey>(
      html`<leadwort-key src=${addressOf('nonsense')}><p>Call the office.</p></leadwort-key>`,
    );
    await expect.poll(() => own(key, '.notice')?.textContent).toContain('has mistakes');
    expect((key.firstElementChild as HTMLElement).offsetHeight).toBeGreaterThan(0);
  });

  test('brings verdict and guidance by itself', async () => {
    const key = await opened();
    await expect.poll(() => part(key, 'verdict').shadowRoot).not.toBeNull();
    await expect.poll(() => part(key, 'guidance').shadowRoot).not.toBeNull();
  });

  test('has the first question and two of its answers on a screen of 360 by 640', async () => {
    await page.viewport(360, 640);
    const key = await opened(360);
    const cards = part(key, 'question').shadowRoot?.querySelectorAll('.card');
    const top = key.getBoundingClientRect().top;
    expect((cards?.[1]?.getBoundingClientRect().bottom ?? 999) - top).toBeLessThan(640);
  });

  test('stands question beside standing where it is wide, below one another where it is narrow', async () => {
    await page.viewport(1400, 900);
    const wide = await opened(1300);
    const left = (key: LeadwortKey, name: string) => part(key, name).getBoundingClientRect();
    expect(left(wide, 'standing').left).toBeGreaterThan(left(wide, 'question').right);
    expect(left(wide, 'standing').top).toBeLessThan(left(wide, 'question').bottom);
    const narrow = await opened(380);
    expect(left(narrow, 'standing').top).toBeGreaterThanOrEqual(left(narrow, 'question').bottom);
  });

  test.each([280, 360, 768, 1024, 1400])('fits into %d px without scrolling sideways', async (width) => {
    const key = await opened(width);
    await answer(key);
    own<HTMLDetailsElement>(key, '.settings').open = true;
    for (const name of ['trail', 'question', 'standing'])
      for (const details of part(key, name).shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    const right = key.getBoundingClientRect().right;
    const wide = ['trail', 'question', 'standing'].flatMap((name) =>
      [...(part(key, name).shadowRoot?.querySelectorAll<HTMLElement>('button, p, label, summary, li') ?? [])].filter(
        (one) => one.getBoundingClientRect().right > right + 1,
      ),
    );
    expect(wide.map((one) => one.textContent?.trim())).toEqual([]);
    expect(own(key, '.page').scrollWidth).toBeLessThanOrEqual(own(key, '.page').clientWidth + 1);
  });
});

test('no answer that has the focus lies behind the buttons', async () => {
  await page.viewport(360, 640);
  const more = Array.from({ length: 9 }, (_, i) => ({ id: `place-${i}`, label: `Another place, number ${i}` }));
  const states = freeBundle.characters.characters.find((one) => one.id === 'habitat')?.states ?? [];
  const key = await opened(360, withCharacter('habitat', { states: [...states, ...more] }));
  const root = part(key, 'question').shadowRoot as ShadowRoot;
  expect(root.querySelectorAll('.card')).toHaveLength(12);
  root.querySelector<HTMLElement>('.card')?.click();
  await expect.poll(() => root.querySelector('.bar .solid')).not.toBeNull();
  for (const input of root.querySelectorAll<HTMLInputElement>('.card input')) {
    input.focus();
    const bar = root.querySelector('.bar') as HTMLElement;
    expect(getComputedStyle(bar).position).toBe('sticky');
    expect(input.getBoundingClientRect().bottom).toBeLessThanOrEqual(bar.getBoundingClientRect().top);
    expect(input.getBoundingClientRect().top).toBeGreaterThanOrEqual(0);
  }
});

describe('settings', () => {
  test('change the month and the kind of observer, and keep the answers', async () => {
    const key = await opened();
    await answer(key);
    own<HTMLDetailsElement>(key, '.settings').open = true;
    const [month, observer] = key.shadowRoot?.querySelectorAll('select') ?? [];
    await userEvent.selectOptions(month as HTMLElement, 'January');
    await userEvent.selectOptions(observer as HTMLElement, 'Trained for this work');
    await expect.poll(() => own(key, '.settings summary').textContent).toContain('January');
    expect((observer as HTMLSelectElement).value).toBe('technician');
    expect(line(key)).toBeTruthy();
  });

  test('change the units of every size', async () => {
    const key = await opened();
    own<HTMLInputElement>(key, 'input[value=metric]').click();
    await expect.poll(() => own(key, '.settings summary').textContent).toContain('centimeters');
    expect(key.units).toBe('metric');
  });

  test('the month is today’s unless the page says otherwise', async () => {
    const key = await fixture<LeadwortKey>(html`<leadwort-key src=${addressOf(freeBundle)}></leadwort-key>`);
    await expect.poll(() => heading(key)).toContain('Question 1');
    await expect.poll(() => own(key, '.settings')).toBeTruthy();
    const today = new Intl.DateTimeFormat('en', { month: 'long' }).format(new Date());
    expect(own(key, '.settings summary').textContent).toContain(today);
  });

  test('switch the language at once and keep the trail', async () => {
    const key = await opened();
    await answer(key);
    const before = heading(key);
    press(key, 'Español');
    await expect.poll(() => own(key, '.settings summary').textContent).toContain('Ajustes');
    expect(heading(key)).toContain('Pregunta 2');
    expect(before).toContain('Question 2');
    expect(own(key, '.page').lang).toBe('es');
    expect(line(key)).toBeTruthy();
    await expectAccessible(key);
    press(key, 'English');
    await expect.poll(() => heading(key)).toBe(before);
  });
});

describe('a new plant', () => {
  test('is not offered before anything was said', async () => {
    const key = await opened();
    expect(own(key, '.foot').textContent).not.toContain('Start with a new plant');
  });

  test('takes two presses, and leads to the first question', async () => {
    const key = await opened();
    await answer(key);
    press(key, 'Start with a new plant');
    await key.updateComplete;
    expect(heading(key)).toContain('Question 2');
    press(key, 'Press again');
    await expect.poll(() => heading(key)).toContain('Question 1');
    expect(line(key)).toBeUndefined();
    await expect
      .poll(() => (part(key, 'question').shadowRoot as ShadowRoot).activeElement)
      .toBe(inside(key, 'question', '[role=heading]'));
  });

  test('forgets the first press when the focus goes elsewhere', async () => {
    const key = await opened();
    await answer(key);
    const button = [...(key.shadowRoot?.querySelectorAll('.foot button') ?? [])].at(-1) as HTMLButtonElement;
    button.focus();
    button.click();
    await key.updateComplete;
    expect(button.textContent).toContain('Press again');
    button.blur();
    await key.updateComplete;
    expect(button.textContent).toContain('Start with a new plant');
  });
});

test('a name can be looked up, and the search comes only then', async () => {
  const key = await opened();
  expect(key.shadowRoot?.querySelector('leadwort-names')).toBeNull();
  own(key, '.names summary').click();
  await expect.poll(() => part(key, 'names')?.shadowRoot?.querySelector('input')).toBeTruthy();
  await expectAccessible(key);
});

test('an answer opened from the trail takes the focus to its question', async () => {
  const key = await opened();
  await answer(key);
  inside<HTMLDetailsElement>(key, 'trail', 'summary')?.click();
  inside(key, 'trail', '.change')?.click();
  await expect.poll(() => heading(key)).toContain('Question 1 again');
  expect(key.shadowRoot?.activeElement).toBe(part(key, 'question'));
});

test('two on a page keep apart', async () => {
  const one = await opened();
  const two = await opened();
  await answer(one);
  one.lang = 'es';
  await expect.poll(() => heading(one)).toContain('Pregunta 2');
  expect(heading(two)).toContain('Question 1');
  expect(line(two)).toBeUndefined();
});

test('the whole meets no barrier that can be found by a machine, and nothing a strict policy blocks', async () => {
  const key = await opened();
  await expectAccessible(key);
  expectPolicyProof(key);
  for (let answers = 0; answers < 4 && inside(key, 'question', '.card'); answers++) await answer(key);
  await expect.poll(() => part(key, 'verdict').shadowRoot).not.toBeNull();
  await expectAccessible(key);
  await withMedia({ forcedColors: 'active' }, () => expectAccessible(key));
  (key.parentElement as HTMLElement).dir = 'rtl';
  await expectAccessible(key);
  expectPolicyProof(key);
});

test('who helps nearby comes with the verdict, from the page’s own file, and else nothing is asked for', async () => {
  const position = (lon: number, lat: number) => [lon, lat];
  const ring = [position(0, 0), position(1, 0), position(1, 1), position(0, 1), position(0, 0)];
  const feature = {
    type: 'Feature',
    properties: { programme: 'Reed Watch', contacts: [{ phone: '555-0100' }], reviewed: '2026-05-01' },
    geometry: { type: 'Polygon', coordinates: [ring] },
  };
  const key = await opened();
  for (let n = 0; n < 5 && !inside(key, 'verdict', '[part=heading]'); n++) await answer(key);
  expect(inside(key, 'verdict', '[part=heading]')).not.toBeNull();
  expect(part(key, 'nearby')).toBeNull();
  key.contactPhone = '555-0142';
  key.areas = addressOf({ type: 'FeatureCollection', features: [feature] });
  await expect.poll(() => inside(key, 'nearby', '.choose')).not.toBeNull();
  expect(inside(key, 'nearby', '.asking a')?.getAttribute('href')).toBe('tel:5550142');
  await expectAccessible(key);
});
