import { html } from 'lit';
import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { english, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { answered } from '../../../tests/support/streambank.ts';
import type { Album, Term } from '../../key/index.ts';
import '../guidance/define.ts';
import { terms } from '../shared/terms.ts';
import './define.ts';
import { LeadwortTerm } from './term.ts';

const ligule: Term = {
  id: 'ligule',
  term: 'ligule',
  words: ['ligule', 'ligules'],
  plain: 'A thin skin at the collar.',
  definition: 'An outgrowth at the top of the sheath.',
  part: 'collar',
  where: 'Look inside the angle.',
  picture: { character: 'ligule', state: 'membrane' },
  source: ['gl-psu', 'memory'],
  text: new Map([
    [
      'es',
      {
        term: 'lígula',
        words: ['lígula'],
        plain: 'Una piel delgada.',
        definition: 'Saliente en lo alto de la vaina.',
        where: 'Mire dentro del ángulo.',
      },
    ],
  ]),
};
const collar: Term = {
  ...ligule,
  id: 'collar',
  term: 'collar',
  words: ['collar'],
  plain: 'Where a leaf bends.',
  text: new Map(),
};
const album: Album = {
  key: 'streambank',
  version: '0.1.0',
  states: new Map([
    ['ligule/membrane', { drawing: [['line', 'M4 4L92 92']], alt: new Map([['en', 'A thin skin above the sheath.']]) }],
  ]),
  taxa: new Map(),
  glossary: [ligule, collar],
  courses: [],
};

const word = html`<leadwort-term word="ligule">ligule</leadwort-term>`;
const both = html`<div><leadwort-term word="ligule">ligules</leadwort-term>, <leadwort-term word="Collar">collar</leadwort-term></div>`;

async function withAlbum<Part extends HTMLElement>(
  held: Held<Part>,
  given: Album | undefined = album,
): Promise<Held<Part>> {
  held.holder.album.setValue(given);
  for (const one of held.holder.querySelectorAll<LeadwortTerm>('leadwort-term, leadwort-terms'))
    await one.updateComplete;
  return held;
}
const one = async (settings = english, around?: Parameters<typeof held>[3]) =>
  withAlbum(await held<LeadwortTerm>(word, answered({}), settings, around));
const shown = ({ find }: Held): boolean => find('#panel').checkVisibility();

describe('a word that is asked', () => {
  test('says what it means: plainly, drawn, where to look, as the trade has it, and from where', async () => {
    const part = await one();
    expect(shown(part)).toBe(false);
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    expect(shown(part)).toBe(true);
    expect(part.find('[part=word]').getAttribute('aria-expanded')).toBe('true');
    for (const text of [ligule.plain, ligule.where, ligule.definition, 'In botany:', 'From memory'])
      expect(part.text()).toContain(text);
    expect(part.find('[role=img]').getAttribute('aria-label')).toBe('A thin skin above the sheath.');
    expect(part.find('.sources a').getAttribute('rel')).toBe('noopener noreferrer');
    for (const control of part.all('.close'))
      expect(control.getBoundingClientRect().height).toBeGreaterThanOrEqual(47.5);
    await expectSound(part);
  });

  test('opens by keyboard, closes for Escape and gives the focus back', async () => {
    const part = await one();
    part.find('[part=word]').focus();
    await userEvent.keyboard('{Enter}');
    await part.part.updateComplete;
    expect(shown(part)).toBe(true);
    await userEvent.tab();
    expect(part.root.activeElement?.closest('#panel')).not.toBeNull();
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => shown(part)).toBe(false);
    expect(part.root.activeElement).toBe(part.find('[part=word]'));
    expect(part.find('[part=word]').getAttribute('aria-expanded')).toBe('false');
  });

  test('closes for its button', async () => {
    const part = await one();
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    await userEvent.click(part.control('Close'));
    await expect.poll(() => shown(part)).toBe(false);
    expect(part.root.activeElement).toBe(part.find('[part=word]'));
  });

  test('closes for a tap elsewhere and when another is asked: one at a time', async () => {
    const { holder } = await withAlbum(await held(html`<p>Elsewhere</p>${word}${both}`, answered({})));
    const all = [...holder.querySelectorAll('leadwort-term')];
    const open = () => all.map((term) => term.shadowRoot?.querySelector('#panel')?.matches(':popover-open'));
    const press = (i: number) => all[i]?.shadowRoot?.querySelector<HTMLElement>('[part=word]')?.click();
    press(0);
    expect(open()).toEqual([true, false, false]);
    press(2);
    expect(open()).toEqual([false, false, true]);
    await userEvent.click(holder.querySelector('p') as HTMLElement);
    expect(open()).toEqual([false, false, false]);
  });

  test('is found by one of its forms, in Spanish too', async () => {
    const part = await withAlbum(
      await held(html`<leadwort-term word="Lígula">lígula</leadwort-term>`, answered({}), await spanish()),
    );
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    for (const text of ['Una piel delgada.', 'En botánica:', 'Cerrar']) expect(part.text()).toContain(text);
    await expectSound(part);
  });

  test('stays on the screen, however much it says, in a narrow column from right to left', async () => {
    const around = html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`;
    const wordy = { ...album, glossary: [{ ...ligule, definition: ligule.definition.repeat(60) }] };
    const part = await withAlbum(await held<LeadwortTerm>(word, answered({}), english, around), wordy);
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    const panel = part.find('#panel');
    const { left, right, top, bottom } = panel.getBoundingClientRect();
    expect(left).toBeGreaterThanOrEqual(0);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(innerWidth);
    expect(bottom).toBeLessThanOrEqual(innerHeight);
    expect(panel.scrollHeight).toBeGreaterThan(panel.clientHeight);
    await expectSound(part);
  });

  test('is as large as a thumb where it stands alone', async () => {
    const part = await withAlbum(
      await held(html`<leadwort-term alone word="ligule">ligule</leadwort-term>`, answered({})),
    );
    const { width, height } = part.find('[part=word]').getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(47.5);
  });

  test('is plain on paper', async () => {
    const part = await one();
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    await withMedia({ print: true }, () => {
      expect(getComputedStyle(part.find('[part=word]')).textDecorationLine).toBe('none');
      expect(shown(part)).toBe(false);
    });
  });
});

describe('a word is plain text', () => {
  test.each([
    ['without an album', undefined],
    ['that the glossary lacks', { ...album, glossary: [] }],
  ])('%s', async (_, given) => {
    const part = await held(word, answered({}));
    part.holder.album.setValue(given);
    await part.part.updateComplete;
    expect(part.all('button')).toHaveLength(0);
    expect(part.part.getBoundingClientRect().width).toBeGreaterThan(10);
    await expectAccessible(part.holder);
  });
});

describe('where the browser has no popovers', () => {
  afterEach(() => {
    LeadwortTerm.popovers = true;
  });

  test('it opens below the line, and closes for Escape or a tap elsewhere', async () => {
    LeadwortTerm.popovers = false;
    const part = await one();
    await userEvent.click(part.find('[part=word]'));
    await part.part.updateComplete;
    expect(shown(part)).toBe(true);
    expect(part.find('#panel').getBoundingClientRect().top).toBeGreaterThanOrEqual(
      part.find('[part=word]').getBoundingClientRect().bottom,
    );
    await expectSound(part);
    await userEvent.keyboard('{Escape}');
    await part.part.updateComplete;
    expect(shown(part)).toBe(false);
    expect(part.root.activeElement).toBe(part.find('[part=word]'));
    await userEvent.click(part.find('[part=word]'));
    await userEvent.click(document.body, { position: { x: 1, y: 1 } });
    await part.part.updateComplete;
    expect(shown(part)).toBe(false);
  });
});

describe('a sentence', () => {
  const sentence = 'At the collar, look at the ligule; ligules differ.';
  const told = (part: Held) => part.all('leadwort-term').map((term) => term.textContent);

  test('marks each of its terms once, and stays the sentence', async () => {
    const part = await withAlbum(await held(terms(sentence), answered({})));
    expect(told(part)).toEqual(['collar', 'ligule']);
    expect(part.text()).toBe(sentence);
    expect(part.part.textContent).toBe(sentence);
    await expectAccessible(part.holder);
  });

  test('leaves out what the block said earlier', async () => {
    const part = await withAlbum(await held(terms(sentence, 'The ligule is hairy.'), answered({})));
    expect(told(part)).toEqual(['collar']);
  });

  test('is itself without an album, and follows when one comes or the words change', async () => {
    const part = await held<HTMLElement & { sentence: string }>(terms(sentence), answered({}));
    expect(part.all('leadwort-term')).toHaveLength(0);
    await withAlbum(part);
    expect(told(part)).toHaveLength(2);
    part.part.sentence = 'No such word.';
    await part.part.updateComplete;
    expect(part.all('leadwort-term')).toHaveLength(0);
  });
});

test('nothing is asked of any server', async () => {
  performance.clearResourceTimings();
  const part = await one();
  await userEvent.click(part.find('[part=word]'));
  await part.part.updateComplete;
  expect(performance.getEntriesByType('resource').filter(({ name }) => !name.includes('axe'))).toEqual([]);
});
