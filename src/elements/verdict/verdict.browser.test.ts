import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectRoom, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import {
  answered,
  answeredUntil,
  answersOf,
  commonName,
  streambank,
  verdictIs,
} from '../../../tests/support/streambank.ts';
import type { Snapshot } from '../../session/index.ts';
import { en } from '../../words/index.ts';
import './define.ts';

const verdict = html`<leadwort-verdict></leadwort-verdict>`;
const leaning = () => answeredUntil('giant-reed', verdictIs('leaning'));
const outside = () => answeredUntil('pond-algae', (now) => verdictIs('outside')(now) && now.answered >= 3);
const CANE = { 'growth-form': 'tall-cane', height: 'above', 'leaf-base-mark': 'wedge' };
const kindOf = (store: ReturnType<typeof answered>) => store.snapshot.identification.verdict.kind;

describe('what is shown', () => {
  test('is nothing before any answer, and no open verdict before the third', async () => {
    for (const answers of [{}, { 'growth-form': 'tall-cane' }, { 'growth-form': 'tall-cane', height: 'reach' }]) {
      const store = answered(answers);
      expect(kindOf(store)).toBe('open');
      const part = await held(verdict, store);
      expect(part.part.getBoundingClientRect().height).toBe(0);
      // A live region that is not displayed would not be heard when the first verdict is put into it.
      expect(part.find('[role=status]').checkVisibility()).toBe(true);
      expect(part.text()).toBe('');
    }
  });

  test('an open verdict names what it could be, never what it is, and gives no reasons for one plant', async () => {
    const store = answered(CANE);
    expect(kindOf(store)).toBe('open');
    const part = await held(verdict, store);
    expect(part.find('[role=heading]').textContent).toBe('Too early to say');
    expect(part.text()).toMatch(/It could be giant reed, .+ or .+\./);
    expect(part.text()).not.toContain('most likely');
    await expectSound(part);
  });

  test('an open verdict says what to do when nothing more can be asked', async () => {
    const store = answered(CANE);
    expect((await held(verdict, store)).text()).toContain('A few more answers will help.');
    while (store.snapshot.question) {
      const { character } = store.snapshot.question;
      store.request('answer', { answer: { character, skipped: true } });
    }
    expect(kindOf(store)).toBe('open');
    expect((await held(verdict, store)).text()).toContain('Take photographs and ask a person who knows plants.');
  });

  test('a leaning verdict says so, how sure, what is in the way, and that a native may still hold', async () => {
    const store = leaning();
    expect(kindOf(store)).toBe('leaning');
    const part = await held(verdict, store);
    expect(part.find('[role=heading]').textContent).toBe('It leans to giant reed');
    const { identification, natives, answered: answers } = store.snapshot;
    const odds = en.common.odds(identification.standing[0]?.probability as number);
    expect(part.text()).toContain(`The chance is ${odds}, going by your ${answers} answers.`);
    expect(natives).toBeGreaterThan(0.01);
    expect(part.text()).toContain(`It could still be a native plant: ${en.common.odds(natives)}.`);
    expect(part.text()).toContain('What is still in the way');
    expectRoom(part);
    await expectSound(part);
  });

  test('a settled verdict says "most likely" and never "this is" alone', async () => {
    const store = answersOf('giant-reed');
    expect(kindOf(store)).toBe('settled');
    const part = await held(verdict, store);
    expect(part.find('[role=heading]').textContent).toBe('This is most likely giant reed');
    expect(part.text()).not.toContain('What is still in the way');
    expect(part.text()).toContain('more than 99 in 100');
    expectRoom(part);
    await expectSound(part);
  });

  test('outside the key it names no plant and says what to do', async () => {
    const store = outside();
    expect(kindOf(store)).toBe('outside');
    const part = await held(verdict, store);
    expect(part.find('[role=heading]').textContent).toBe('Probably not a plant of this key');
    expect(part.text()).toContain('Leave it where it stands.');
    for (const taxon of streambank().key.taxa) expect(part.text()).not.toContain(taxon.name);
    await expectSound(part);
  });

  test.each([
    ['open', () => answered(CANE)],
    ['leaning', () => leaning()],
    ['settled', () => answersOf('elephant-ear')],
    ['outside', () => outside()],
  ])('under a verdict that is %s every caution of the key is on the screen, unopened', async (_, store) => {
    const part = await held(verdict, store());
    const stop = part.find('[part=stop]');
    expect(stop.checkVisibility()).toBe(true);
    for (const caution of streambank().key.cautions) expect(stop.textContent).toContain(caution);
    expect(stop.closest('details')).toBeNull();
  });
});

describe('look-alikes', () => {
  test('not checked yet come first, the first of them open with the words that tell it and a way to look', async () => {
    const untested = ({ identification }: Snapshot) =>
      identification.verdict.rivals.some((one) => one.told.length === 0);
    const store = answeredUntil('giant-reed', (now) => verdictIs('leaning')(now) && untested(now));
    const part = await held(verdict, store);
    const [first] = part.all('.alike > li > details') as HTMLDetailsElement[];
    expect(first?.open).toBe(true);
    expect(first?.querySelector('.test')?.textContent).toMatch(/not checked yet|checks made/);
    expect(first?.querySelector('.checks > li p')?.checkVisibility()).toBe(true);
    expect(part.text()).toContain('A plant that looks much like it has not been checked yet.');
  });

  test('a press on "Look at this now" asks for that character', async () => {
    const store = answeredUntil(
      'native-common-reed',
      ({ identification: { verdict, standing } }) =>
        verdict.kind === 'leaning' && standing[0]?.taxon === 'phragmites-australis-subsp-americanus',
    );
    const part = await held(verdict, store);
    for (const one of part.all('details')) (one as HTMLDetailsElement).open = true;
    expect(part.text()).toContain('Easily taken for American common reed');
    await userEvent.click(part.control('Look at this now'));
    expect(store.snapshot.question?.reason).toBe('chosen');
    const asked = store.snapshot.question?.character as string;
    const separates = streambank().key.lookalikes.some(
      ({ taxa, separate }) =>
        taxa.includes('phragmites-australis-subsp-americanus') && separate.some((one) => one.character === asked),
    );
    expect(separates).toBe(true);
  });

  test('what was answered is told beside the words, without a button', async () => {
    const part = await held(verdict, leaning());
    for (const one of part.all('details')) (one as HTMLDetailsElement).open = true;
    const line = part.all('.checks > li').find((one) => one.textContent?.includes('You answered'));
    expect(line?.querySelector('button')).toBeNull();
    await expectSound(part);
  });
});

test('an answer that goes against the others is named and can be looked at again', async () => {
  const store = answered({
    'growth-form': 'tall-cane',
    height: 'above',
    'leaf-base-mark': 'none',
    stand: 'clump',
    'flower-cluster': 'plume',
    'stem-thickness': 'thumb',
    'leaf-width': 'fingers',
  });
  expect(store.snapshot.identification.recheck[0]?.character).toBe('leaf-base-mark');
  const part = await held(verdict, store);
  expect(part.text()).toContain('One answer does not go with the others.');
  await userEvent.click(part.control('Look again at'));
  expect(store.snapshot.question).toMatchObject({ character: 'leaf-base-mark', reason: 'changing' });
});

test('the verdict is said when it changes: the same live region, there before the words', async () => {
  const store = answered(CANE);
  const part = await held(verdict, store);
  const region = part.find('[role=status]');
  expect(region.textContent).toContain('Too early to say');
  for (const answer of answersOf('giant-reed').snapshot.trail) store.request('answer', { answer });
  await part.part.updateComplete;
  expect(part.find('[role=status]')).toBe(region);
  expect(region.textContent).toContain('giant reed');
  store.request('restart', {});
  await part.part.updateComplete;
  expect(part.text()).toBe('');
});

test('reasons are folded, and open by keyboard', async () => {
  const part = await held(verdict, answersOf('elephant-ear'));
  expect((part.find('.why') as HTMLDetailsElement).open).toBe(false);
  expect(part.find('.why').textContent).toMatch(/Speaks for it/);
  part.control('Why the key says so').focus();
  await userEvent.keyboard('{Enter}');
  expect((part.find('.why') as HTMLDetailsElement).open).toBe(true);
});

test('headings follow the level that the page asks for', async () => {
  const store = leaning();
  const part = await held(verdict, store, { ...(await spanish()), headingLevel: 4 });
  expect(part.all('[role=heading]').map((one) => one.getAttribute('aria-level'))).toEqual(
    expect.arrayContaining(['4', '5']),
  );
});

test('in Spanish and from right to left it holds together', async () => {
  const part = await held(verdict, leaning(), await spanish(), html`<div dir="rtl"><test-holder></test-holder></div>`);
  expect(part.find('[role=heading]').textContent).toBe(`Se inclina hacia ${commonName('arundo-donax', 'es')}`);
  expect(part.text()).toContain('Alto');
  await expectSound(part);
});

test('on paper the buttons are gone and the cautions stay', async () => {
  const part = await held(verdict, leaning());
  await withMedia({ print: true }, () => {
    for (const button of part.all('button')) expect(getComputedStyle(button).display).toBe('none');
    expect(part.find('[part=stop]').checkVisibility()).toBe(true);
  });
});
