import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { aFind } from '../../../tests/support/finds.ts';
import { english, expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { answered } from '../../../tests/support/streambank.ts';
import { type Find, writeFind } from '../../report/find/index.ts';
import './define.ts';
import type { LeadwortReview } from './review.ts';

const SECOND = '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a02';
const clock = () => Date.UTC(2026, 8, 20, 15, 0, 0);

async function reviewing(finds: readonly Find[], settings = english): Promise<Held<LeadwortReview>> {
  const part = await held<LeadwortReview>(
    html`<leadwort-review .finds=${finds} .clock=${clock}></leadwort-review>`,
    answered({}),
    settings,
  );
  await expect.poll(() => part.text()).not.toBe('');
  return part;
}
const radio = (part: Held, words: string) => {
  const label = part.all('label').find((one) => one.textContent?.includes(words));
  if (!label) throw new Error(`no choice says ${words}`);
  return label.querySelector('input') as HTMLInputElement;
};
/** The picker's own input lies unseen under its label, and a choice is pressed by its label. */
const shown = (part: Held): Held => ({
  ...part,
  all: (asked) => part.all(asked).filter((one) => !one.matches('.unseen, [type=radio], [type=checkbox]')),
});
const events = (part: Held) => {
  const heard: unknown[] = [];
  part.holder.addEventListener('leadwort-review', (event) => heard.push(event.detail));
  return heard;
};

describe('a report is shown', () => {
  test('with answers, photographs, place, what separates, and the standing then and now', async () => {
    const part = await reviewing([aFind()]);
    const text = part.text();
    for (const words of [
      '30.26120, -98.8721',
      'within 12 m',
      'What tells them apart',
      "By today's key",
      '4 s',
      'does not fit',
    ])
      expect(text).toContain(words);
    // The stand and the person are told in the words of the printed report, which come later.
    await expect.poll(() => part.all('dt').map((one) => one.textContent)).toContain('Remarks');
    expect(part.text()).toContain('Mowed in spring');
    expect(part.all('canvas')).toHaveLength(1);
    expect(part.all('a')).toHaveLength(0);
    expectRoom(shown(part));
    for (const label of part.all('label.target'))
      expect(label.getBoundingClientRect().height).toBeGreaterThanOrEqual(47.5);
    await expectSound(part);
  });

  test('with a word where it was made with another version of the key, and in Spanish', async () => {
    const find = aFind({ key: { ...aFind().key, version: '0.0.1' } });
    const part = await reviewing([find], await spanish());
    await expect.poll(() => part.text()).toContain('El reporte se hizo con la versión');
    await expectSound(part);
  });
});

describe('a review by keyboard alone', () => {
  test('confirms', async () => {
    const part = await reviewing([aFind()]);
    const heard = events(part);
    radio(part, 'It is ').focus();
    await userEvent.keyboard(' ');
    part.find('#by').focus();
    await userEvent.keyboard('R. Invented');
    part.control('Write the review').focus();
    await userEvent.keyboard('{Enter}');
    expect(heard).toEqual([{ find: aFind().id, status: 'confirmed' }]);
    expect(part.part.finds[0]?.review).toMatchObject({ taxon: 'arundo-donax', by: 'R. Invented' });
    expect(Date.parse(part.part.finds[0]?.review?.date ?? '')).toBe(clock());
    await expect
      .poll(() => part.all('a').map((one) => one.getAttribute('href')?.split('?')[0]))
      .toEqual(['mailto:ana@example.org']);
    await expectSound(part);
  });

  test('corrects to any plant by its name', async () => {
    const part = await reviewing([aFind()]);
    radio(part, 'It is another plant').focus();
    await userEvent.keyboard(' ');
    part.find('#search').focus();
    await userEvent.keyboard('broadleaf cattail');
    await expect.poll(() => part.text()).toContain('Typha latifolia');
    radio(part, 'Typha latifolia').focus();
    await userEvent.keyboard(' ');
    part.find('#by').focus();
    await userEvent.keyboard('R.');
    part.control('Write the review').focus();
    await userEvent.keyboard('{Enter}');
    expect(part.part.finds[0]?.review).toMatchObject({ status: 'corrected', taxon: 'typha-latifolia' });
    expectRoom(shown(part));
    await expectSound(part);
  });

  test('asks for photographs, and first says what is lacking', async () => {
    const part = await reviewing([aFind()]);
    await userEvent.click(radio(part, 'I need a photograph'));
    await userEvent.click(part.control('Write the review'));
    expect(part.all('[role=alert] .wrong').map((one) => one.textContent)).toEqual([
      'Choose at least one photograph.',
      'Write your name.',
    ]);
    expect(part.part.finds[0]?.review).toBeUndefined();
    part.find('[role=group] input').focus();
    await userEvent.keyboard(' ');
    part.find('#by').focus();
    await userEvent.keyboard('R.');
    await userEvent.click(part.control('Write the review'));
    expect(part.part.finds[0]?.review?.wanted).toHaveLength(1);
    await expectSound(part);
  });
});

describe('several reports', () => {
  test('are a list with the next and the one before, and what was entered stays with its own', async () => {
    const part = await reviewing([aFind(), aFind({ id: SECOND }, 'arrow-arum')]);
    (part.find('#remarks') as HTMLTextAreaElement).focus();
    await userEvent.keyboard('look again');
    await userEvent.click(part.control('Next'));
    expect(part.text()).toContain('Report 2 of 2');
    expect((part.find('#remarks') as HTMLTextAreaElement).value).toBe('');
    await userEvent.click(part.control('Next'));
    expect((part.find('#remarks') as HTMLTextAreaElement).value).toBe('look again');
    await expectSound(part);
  });

  test('come pasted; what cannot be read is told with its place, and the rest stays', async () => {
    const part = await reviewing([aFind()]);
    await userEvent.click(part.control('Or paste a report'));
    const area = part.find('#pasted') as HTMLTextAreaElement;
    await userEvent.fill(area, writeFind(aFind({ id: SECOND })));
    await userEvent.click(part.control('Open what was pasted'));
    expect(part.part.finds.map(({ id }) => id)).toEqual([aFind().id, SECOND]);
    await userEvent.fill(area, '{"format": 1}');
    await userEvent.click(part.control('Open what was pasted'));
    expect(part.find('.opening [role=alert]').textContent).toContain('expected');
    expect(area.value).toBe('{"format": 1}');
    expect(part.part.finds).toHaveLength(2);
  });
});

test('an address that does not answer is told', async () => {
  const part = await held(html`<leadwort-review find="/no-such-find.json"></leadwort-review>`, answered({}));
  await expect.poll(() => part.text()).toMatch(/did not come|not a report/);
});
