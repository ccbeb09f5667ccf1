import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { aFind } from '../../../tests/support/finds.ts';
import { english, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { answered, streambank } from '../../../tests/support/streambank.ts';
import type { Settings } from '../../contexts/index.ts';
import { translate } from '../../key/index.ts';
import type { Find } from '../../report/find/index.ts';
import './define.ts';
import type { LeadwortReview } from './review.ts';

async function reviewing(find: Find, settings: Settings): Promise<Held<LeadwortReview>> {
  const part = await held<LeadwortReview>(
    html`<leadwort-review .finds=${[find]}></leadwort-review>`,
    answered({}),
    settings,
  );
  await expect.poll(() => part.text()).not.toBe('');
  return part;
}
const toggle = (part: Held) => part.all('button[aria-pressed]')[0];
const review = { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Invented', date: '2026-09-20' } as const;
const told = (part: Held) =>
  decodeURIComponent(
    part
      .all('a')
      .map((one) => one.getAttribute('href') ?? '')
      .join(),
  );

describe.each([
  ['a Spanish review of an English report', 'en', 'es', 'Como lo vio la persona, en inglés'],
  ['an English review of a Spanish report', 'es', 'en', 'As the person saw it, in Spanish'],
] as const)('%s', (_, theirs, mine, label) => {
  const settings = () => (mine === 'es' ? spanish() : Promise.resolve(english));
  const find = aFind({}, 'giant-reed', theirs);

  test("says the answers in the reader's language, and on a press as the person saw them, marked as theirs", async () => {
    const part = await reviewing(find, await settings());
    const { key } = streambank();
    for (const { character } of find.trail) {
      const own = key.characters.find(({ id }) => id === character)?.label ?? '';
      expect(part.find('.answers').textContent).toContain(translate(key, mine, own));
    }
    expect(part.all('.theirs')).toHaveLength(0);
    await expectSound(part);

    const button = part.control(label);
    button.focus();
    await userEvent.keyboard('{Enter}');
    expect(button.getAttribute('aria-pressed')).toBe('true');
    const lines = part.all('.theirs');
    expect(lines.map((one) => one.textContent)).toEqual(find.trail.map((one) => `${one.label}: ${one.words}`));
    for (const one of lines) expect(one.lang).toBe(theirs);
    await expectSound(part);
    await userEvent.keyboard('{Enter}');
    expect(part.all('.theirs')).toHaveLength(0);
  });

  test('is answered in the language of the report', async () => {
    const part = await reviewing({ ...find, review }, await settings());
    const please = { en: 'Please do not cut, dig or spray', es: 'Por favor no corte, no excave ni rocíe' };
    await expect.poll(() => told(part)).toContain(please[theirs]);
    expect(told(part)).not.toContain(please[mine]);
    expect(told(part)).toContain(theirs === 'es' ? 'carrizo gigante' : 'giant reed');
    await expectSound(part);
  });

  test("the person's own words are marked as of their language", async () => {
    const part = await reviewing(find, await settings());
    const marked = part.all(`[lang=${theirs}]`).map((one) => one.textContent);
    expect(marked).toContain(find.place?.words);
    for (const words of [find.remarks, find.access])
      await expect.poll(() => part.all(`dd[lang=${theirs}]`).map((one) => one.textContent)).toContain(words);
    expect(marked).toContain(find.photos[0]?.caption);
  });
});

test('a report in the language of the reader has nothing to turn', async () => {
  const part = await reviewing(aFind(), english);
  expect(toggle(part)).toBeUndefined();
});

test('an answer that the key does not have is shown as the person saw it, in their language', async () => {
  const find = aFind({}, 'giant-reed', 'es');
  const [first, ...rest] = find.trail;
  const gone = { ...(first as Find['trail'][number]), character: 'gone', label: 'Rasgo de antes' };
  const part = await reviewing({ ...find, trail: [gone, ...rest] }, english);
  const line = part.find('.answers [lang=es]');
  expect(line.textContent).toContain(`Rasgo de antes: ${gone.words}`);
  expect(line.parentElement?.textContent).toContain('Not in the key as it is today.');
});
