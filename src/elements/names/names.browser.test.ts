import { html } from 'lit';
import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { answered, answersOf, commonName, streambank } from '../../../tests/support/streambank.ts';
import { prepareKey } from '../../key/index.ts';
import { SessionStore } from '../../session/index.ts';
import './define.ts';

const names = html`<leadwort-names></leadwort-names>`;
const type = async (part: Held, text: string) => {
  await userEvent.fill(part.find('input'), text);
  await part.part.updateComplete;
};

test('a field with a label and a hint is all there is at first', async () => {
  const part = await held(names, answered({}));
  const input = part.find('input') as HTMLInputElement;
  expect(input.labels?.[0]?.textContent).toBe('Look up a name');
  expect(part.root.getElementById(input.getAttribute('aria-describedby') as string)?.textContent).toContain('Latin');
  expect(part.all('li')).toHaveLength(0);
  await expectSound(part);
});

test('what is found is an ordinary list, and its length is said', async () => {
  const part = await held(names, answered({}));
  const region = part.find('[role=status]');
  await type(part, 'Arundo');
  expect(part.find('[role=status]')).toBe(region);
  expect(region.textContent).toMatch(/^\d+ plants?$/);
  expect(part.all('.plants > li').length).toBe(Number.parseInt(region.textContent as string, 10));
  const first = part.find('.plants > li');
  expect(first.querySelector('.latin')?.textContent).toBe('Arundo donax');
  expect(first.querySelector('.status')?.textContent).toBe('invasive');
  expect(first.querySelector('[lang=es]')?.textContent).toBe(commonName('arundo-donax', 'es'));
  expect(first.textContent).toContain('Easily taken for');
  expectRoom(part);
  await expectSound(part);
});

test('a name that several plants share opens a choice with where each belongs and how to tell them', async () => {
  const part = await held(names, answered({}));
  await type(part, 'giant cane');
  expect(part.text()).toContain('Several plants are called “giant cane”');
  const found = part.all('.plants > li').map((one) => one.querySelector('.status')?.textContent);
  expect(found.slice(0, 2).sort()).toEqual(['invasive', 'native']);
  const pair = streambank().key.lookalikes.find(
    ({ taxa }) => taxa.includes('arundo-donax') && taxa.includes('arundinaria-gigantea'),
  );
  expect(part.find('.shared').textContent).toContain(pair?.separate[0]?.words);
  await expectSound(part);
});

test('no name leads to advice: nothing of the guidance is ever shown', async () => {
  const { key } = streambank();
  const part = await held(names, answersOf('giant-reed'));
  await type(part, 'giant reed');
  const said = [...(key.guidance.get('arundo-donax')?.statements ?? [])];
  expect(said.length).toBeGreaterThan(0);
  for (const { text } of said) expect(part.text()).not.toContain(text);
});

test('after answers each plant tells how it stands by them', async () => {
  const part = await held(names, answered({}));
  await type(part, 'giant reed');
  expect(part.text()).not.toContain('By your answers');
  const later = await held(names, answersOf('giant-reed'));
  await type(later, 'Arundo donax');
  expect(later.text()).toContain('By your answers: more than 99 in 100');
});

test('"Check it by its features" asks for what tells the plant from a look-alike', async () => {
  const store = answered({});
  const part = await held(names, store);
  await type(part, 'arrow arum');
  part.control('Check it by its features').focus();
  await userEvent.keyboard('{Enter}');
  expect(store.snapshot.question?.reason).toBe('chosen');
  const asked = store.snapshot.question?.character;
  const tells = streambank().key.lookalikes.filter(({ taxa }) => taxa.includes('peltandra-virginica'));
  expect(tells.flatMap(({ separate }) => separate.map((one) => one.character))).toContain(asked);
  expect(store.snapshot.trail).toEqual([]);
});

test('a plant without look-alikes is checked by what the key would ask next', async () => {
  const { key } = streambank();
  const alone = key.taxa.find((taxon) => !key.lookalikes.some((pair) => pair.taxa.includes(taxon.id)));
  if (alone === undefined) throw new Error('every plant of the key has a look-alike: take another key for this test');
  const store = answered({});
  const next = store.snapshot.identification.next[0]?.character;
  const part = await held(names, store);
  await type(part, alone.name);
  await userEvent.click(part.control('Check it by its features'));
  expect(store.snapshot.question).toMatchObject({ character: next, reason: 'chosen' });
});

test('a name that nobody has says so and sends back to what can be seen', async () => {
  const part = await held(names, answered({}));
  await type(part, '<b>xylophone</b>');
  expect(part.find('[role=status]').textContent).toBe('No plant found');
  expect(part.text()).toContain('go by what you can see');
  expect(part.all('b')).toHaveLength(0);
  await type(part, '');
  expect(part.find('[role=status]').textContent).toBe('');
  await expectSound(part);
});

test('another key is looked through as soon as it is there', async () => {
  const part = await held(names, answered({}));
  await type(part, 'giant reed');
  const { key } = streambank();
  const taxa = key.taxa.filter((taxon) => taxon.id !== 'arundo-donax');
  const lookalikes = key.lookalikes.filter((pair) => !pair.taxa.includes('arundo-donax'));
  part.holder.session.setValue(new SessionStore(prepareKey({ ...key, taxa, lookalikes }), { month: 9 }));
  await part.part.updateComplete;
  expect(part.all('.plants .latin').map((one) => one.textContent)).not.toContain('Arundo donax');
});

test('in Spanish, from right to left and in a narrow column it holds together', async () => {
  const part = await held(
    names,
    answered({}),
    await spanish(),
    html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
  );
  await type(part, 'carizo');
  expect(part.text()).toMatch(/\d+ plantas/);
  expect(part.text()).toContain('Varias plantas se llaman «carrizo»');
  await expectSound(part);
});
