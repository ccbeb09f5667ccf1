import { html } from 'lit';
import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectRoom, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { answered, answeredUntil, commonName, verdictIs } from '../../../tests/support/streambank.ts';
import { en } from '../../words/index.ts';
import './define.ts';

const standing = html`<leadwort-standing></leadwort-standing>`;
const CANE = { 'growth-form': 'tall-cane', height: 'above', 'leaf-base-mark': 'wedge' };

test('before any answer the sentence counts the plants, and the list names them all without odds', async () => {
  const part = await held(standing, answered({}));
  expect(part.text()).toContain('55 plants are in this key.');
  await userEvent.click(part.control('See the plants'));
  expect(part.all('ol > li')).toHaveLength(8);
  expect(part.all('.odds')).toHaveLength(0);
  await userEvent.click(part.control('Show all 55 plants'));
  expect(part.all('ol > li')).toHaveLength(55);
  const names = part.all('.common').map((one) => one.textContent as string);
  expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')));
  await expectSound(part);
});

test('after answers the sentence names the likeliest plant and how likely in words', async () => {
  const { snapshot } = answered(CANE);
  const part = await held(standing, answered(CANE));
  const [lead] = snapshot.identification.standing;
  expect(lead?.taxon).toBe('arundo-donax');
  const odds = en.common.odds(lead?.probability as number);
  expect(part.text()).toContain(`${snapshot.fitting} plants still fit; most likely giant reed, ${odds}.`);
});

test('a plant that is hardly likely is not named, so that nobody is frightened', async () => {
  const store = answered({ light: 'full-sun' });
  expect(store.snapshot.identification.standing[0]?.probability).toBeLessThan(0.25);
  const part = await held(standing, store);
  expect(part.find('[role=status]').textContent).toContain('none stands out yet');
});

test('the sentence is said politely when it changes: the same live region, there before', async () => {
  const store = answered({});
  const part = await held(standing, store);
  const region = part.find('[role=status]');
  const before = region.textContent;
  store.request('answer', { answer: { character: 'growth-form', states: ['tall-cane'], sureness: 'sure' } });
  await part.part.updateComplete;
  expect(part.find('[role=status]')).toBe(region);
  expect(region.textContent).not.toBe(before);
});

test('the whole of it works by keyboard', async () => {
  const part = await held(standing, answered(CANE));
  await userEvent.tab();
  expect(part.root.activeElement).toBe(part.control('See the plants'));
  expect(part.find('[part=list]').hidden).toBe(true);
  await userEvent.keyboard('{Enter}');
  expect(part.find('[part=list]').hidden).toBe(false);
  expect(part.control('Close the list').getAttribute('aria-expanded')).toBe('true');
  await userEvent.tab();
  expect(part.root.activeElement?.localName).toBe('summary');
  await userEvent.keyboard(' ');
  expect(part.find('details').hasAttribute('open')).toBe(true);
});

test('each plant tells what speaks for it, what against, and what was not looked at', async () => {
  const part = await held(standing, answered(CANE));
  await userEvent.click(part.control('See the plants'));
  const first = part.find('ol > li');
  expect(first.querySelector('.latin')?.getAttribute('lang')).toBe('la');
  expect(first.querySelector('.status')?.textContent).toBe('invasive');
  (first.querySelector('details') as HTMLDetailsElement).open = true;
  expect(first.textContent).toMatch(/Speaks for it.*Mark at the leaf base: Yes/s);
  expect(first.textContent).toMatch(/\d+ of its features have not been looked at/);
  expectRoom(part);
  await expectSound(part);
});

test('the bar is as long as the plant is likely', async () => {
  const store = answered(CANE);
  const part = await held(standing, store);
  const p = store.snapshot.identification.standing[0]?.probability as number;
  expect(Number(part.find('.held').getAttribute('width'))).toBeCloseTo(p * 100, 0);
});

test('when the plant is likely none of the key, the sentence and the list say so', async () => {
  const store = answeredUntil('pond-algae', verdictIs('outside'));
  const part = await held(standing, store);
  expect(part.text()).toContain('Probably none of the 55 plants in this key.');
  await userEvent.click(part.control('See the plants'));
  expect(part.text()).toContain('None of these');
  await expectSound(part);
});

test('a plant opened for its reasons stays open with its own line when the order changes', async () => {
  const store = answered(CANE);
  const part = await held(standing, store);
  await userEvent.click(part.control('See the plants'));
  (part.find('ol > li details') as HTMLDetailsElement).open = true;
  store.request('answer', { answer: { character: 'leaf-base-mark', states: ['none'], sureness: 'sure' } });
  await part.part.updateComplete;
  const opened = part.all('ol > li').filter((line) => line.querySelector('details')?.open);
  expect(opened.length).toBeLessThanOrEqual(1);
  for (const line of opened) expect(line.querySelector('.latin')?.textContent).toBe('Arundo donax');
});

test('in Spanish, from right to left, in a narrow column it holds together', async () => {
  const part = await held(
    standing,
    answered(CANE),
    await spanish(),
    html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
  );
  expect(part.text()).toContain(`la más probable es ${commonName('arundo-donax', 'es')}`);
  await userEvent.click(part.control('Ver las plantas'));
  await expectSound(part);
});
