import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { english, expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import {
  answered,
  answeredUntil,
  answersOf,
  commonName,
  streambank,
  verdictIs,
} from '../../../tests/support/streambank.ts';
import { type Guidance, type Key, prepareKey } from '../../key/index.ts';
import { SessionStore } from '../../session/index.ts';
import './define.ts';

const guidance = html`<leadwort-guidance></leadwort-guidance>`;

/** The session of a plant under the demonstration key with other guidance on it, or with none. */
function withGuidance(statements: Guidance['statements'] | undefined, sources: Key['sources'] = new Map()) {
  const { trail, month } = answersOf('giant-reed').snapshot;
  const { key } = streambank();
  const entry: Guidance | undefined = statements && { taxon: 'arundo-donax', reviewed: '2026-11-25', statements };
  const guidance = new Map(entry ? [[entry.taxon, entry]] : []);
  return new SessionStore(prepareKey({ ...key, guidance, sources: new Map([...key.sources, ...sources]) }), {
    month,
    trail,
  });
}

describe('guidance is shown', () => {
  test('under a settled verdict: what not to do and what to do first, on the screen without a tap', async () => {
    const part = await held(guidance, answersOf('giant-reed'));
    expect(part.find('[role=heading]').textContent).toBe('What to do about giant reed');
    const shown = part.all('section > section').map((one) => one.getAttribute('part'));
    expect(shown.slice(0, 2)).toEqual(['dont', 'do']);
    for (const text of ['Do not', 'Do', 'Keep safe']) expect(part.text()).toContain(text);
    for (const section of part.all('section > section li'))
      if (!section.closest('details')) expect(section.checkVisibility()).toBe(true);
    expectRoom(part);
    await expectSound(part);
  });

  test('under a leaning verdict, with the warning first that it holds only for this plant', async () => {
    const part = await held(guidance, answeredUntil('giant-reed', verdictIs('leaning')));
    expect(part.all('.guidance > *')[1]?.textContent).toBe(
      'This advice holds only if it is giant reed. A look-alike would need other care.',
    );
    await expectSound(part);
  });

  test('with what it depends on, and with whom to ask in sight', async () => {
    const part = await held(
      html`<leadwort-guidance contact-phone="+1 555 0142" contact-email="creek@example.org?bcc=x@example.org"></leadwort-guidance>`,
      answersOf('giant-reed'),
    );
    expect(part.find('.rests').textContent).toMatch(/^It rests on your \d+ answers, and it is not a confirmation\./);
    const links = part.all('[part=who] a.target');
    expect(links.map((one) => [one.textContent?.trim(), one.getAttribute('href')])).toEqual([
      ['Call +1 555 0142', 'tel:+15550142'],
    ]);
    await expectSound(part);
  });

  test('for a native with why to leave it first', async () => {
    const part = await held(
      guidance,
      answeredUntil(
        'native-common-reed',
        ({ identification: { verdict, standing } }) =>
          verdict.kind !== 'open' && standing[0]?.taxon === 'phragmites-australis-subsp-americanus',
      ),
    );
    expect(part.find('section > section').getAttribute('part')).toBe('leave');
    await expectSound(part);
  });
});

describe('an open verdict', () => {
  const open = () => answeredUntil('giant-reed', (now) => verdictIs('open')(now) && now.answered >= 3);

  test('gives no advice, and leads to the comparison and to a person', async () => {
    const part = await held(
      html`<leadwort-guidance contact-phone="555-0142" contact-email="creek@example.org"></leadwort-guidance>`,
      open(),
    );
    expect(part.find('[role=heading]').textContent).toBe('No advice yet');
    expect(part.text()).toContain('What is right for one can be wrong for the other');
    expect(part.text()).toContain('show photographs to a person who knows plants');
    expect(part.all('.statements, details, .handout')).toHaveLength(0);
    expect(part.all('a').map((one) => one.getAttribute('href'))).toEqual(['tel:5550142', 'mailto:creek@example.org']);
    const asked: (readonly string[])[] = [];
    part.holder.addEventListener('leadwort-comparison', (event) => asked.push(event.detail.taxa));
    await userEvent.click(part.control('Compare side by side'));
    expect(asked).toHaveLength(1);
    expect(asked[0]?.length).toBeGreaterThan(1);
    expect(asked[0]?.length).toBeLessThanOrEqual(3);
    expectRoom(part);
    await expectSound(part);
  });
});

describe('guidance is not shown', () => {
  test.each([
    ['before any answer', () => answered({})],
    ['under an open verdict that comes early', () => answeredUntil('giant-reed', verdictIs('open'))],
    ['outside the key', () => answeredUntil('pond-algae', verdictIs('outside'))],
  ])('%s', async (_, store) => {
    expect((await held(guidance, store())).text()).toBe('');
  });

  test('for a plant that the verdict does not name, whatever the page asks for', async () => {
    const part = await held(
      html`<leadwort-guidance taxon="colocasia-esculenta"></leadwort-guidance>`,
      answersOf('giant-reed'),
    );
    expect(part.text()).toBe('');
  });

  test('for a plant on which the key has none: it says so, and to ask', async () => {
    const part = await held(guidance, withGuidance(undefined));
    expect(part.text()).toContain('This key has no advice on giant reed.');
    expect(part.text()).toContain('ask before you do anything');
    expect(part.all('section > section, details')).toHaveLength(0);
    await expectSound(part);
  });
});

describe('sources', () => {
  test('of each statement are a tap away, by number, and open elsewhere without telling where from', async () => {
    const part = await held(guidance, answersOf('giant-reed'));
    await userEvent.click(part.control('Where this comes from'));
    const link = part.find('[part=dont] .sources a') as HTMLAnchorElement;
    expect(link.target).toBe('_blank');
    expect(link.rel).toBe('noopener noreferrer');
    expect(link.protocol).toMatch(/^https?:$/);
    expect(link.textContent).toContain('opens a new tab');
    expect(part.find('[part=dont] sup').textContent).toBe('1');
    expect(part.find('[part=dont] .sources .number').textContent).toBe('1');
    await expectSound(part);
  });

  test('that are memory say so, and an address that is no web address is no link', async () => {
    const source = { id: 'bad', title: 'A title', institution: 'An office', kind: 'web', url: 'javascript:alert(1)' };
    const part = await held(
      guidance,
      withGuidance([{ topic: 'do', text: 'Ask first.', source: ['memory', 'bad'] }], new Map([['bad', source]])),
    );
    await userEvent.click(part.control('Where this comes from'));
    expect(part.text()).toContain('From memory, not read in a source');
    expect(part.text()).toContain('A title. An office');
    expect(part.all('a')).toHaveLength(0);
  });

  test('and statements that hold markup are shown as written', async () => {
    const text = 'Look <img src=x onerror=alert(1)> here';
    const part = await held(guidance, withGuidance([{ topic: 'do', text, source: ['memory'] }]));
    expect(part.text()).toContain(text);
    expect(part.all('img')).toHaveLength(0);
  });
});

test('months are said in words and drawn, with the present month marked', async () => {
  const store = withGuidance([
    { topic: 'when', text: 'Clear nothing then.', source: ['memory'], months: [3, 4, 5, 6, 7, 8] },
  ]);
  const part = await held(guidance, store);
  await userEvent.click(part.control('When'));
  expect(part.find('.months-words').textContent).toBe('March to August');
  const band = part.find('svg.months');
  expect(band.getAttribute('aria-label')).toBe('March to August. It is October now.');
  expect(band.querySelectorAll('.cross')).toHaveLength(0);
  expect(band.querySelectorAll('rect.meant')).toHaveLength(6);
  expect(band.querySelectorAll('.now')).toHaveLength(1);
  expect([...band.querySelectorAll('text')].map((one) => one.textContent).join('')).toBe('JFMAMJJASOND');
  await expectSound(part);
});

test.each([
  ['act', 'When specialists act: September to October', 0],
  ['avoid', 'When nothing is done: September to October', 2],
] as const)('months to %s in are told apart in words and by how they are drawn', async (season, said, crosses) => {
  const part = await held(
    guidance,
    withGuidance([{ topic: 'when', text: 'A reason.', source: ['memory'], months: [9, 10], season }]),
  );
  await userEvent.click(part.control('When'));
  expect(part.find('.months-words').textContent).toBe(said);
  expect(part.all(`svg.months rect.${season}`)).toHaveLength(2);
  expect(part.all('svg.months .cross')).toHaveLength(crosses);
  expect(part.find('svg.months').getAttribute('aria-label')).toBe(`${said}. It is October now.`);
  await expectSound(part);
});

describe('the hand-out', () => {
  /** Presses the button and gives the frame's document, with what was printed. */
  async function printed(part: Held): Promise<{ page: Document; times: () => number }> {
    let times = 0;
    const watch = new MutationObserver(() => {
      const frame = part.root.querySelector('iframe');
      if (frame?.contentWindow) frame.contentWindow.print = () => times++;
    });
    watch.observe(part.root, { childList: true });
    await userEvent.click(part.control('Print a hand-out'));
    await expect.poll(() => times).toBe(1);
    const page = part.root.querySelector('iframe')?.contentDocument;
    if (!page) throw new Error('no frame');
    return { page, times: () => times };
  }

  test('is printed alone, with its own styles, by the policy of the page', async () => {
    const part = await held(guidance, answersOf('giant-reed'));
    const { page } = await printed(part);
    expect(page.title).toBe('giant reed');
    expect(page.documentElement.lang).toBe('en');
    expect(page.body.textContent).toContain('Stop: before you do anything');
    expect(page.body.textContent).toContain('This page holds only if the plant is giant reed.');
    expect(page.querySelectorAll('svg.picture path').length).toBeGreaterThan(10);
    expect(page.querySelectorAll('[style], style, script, link')).toHaveLength(0);
    const stop = page.querySelector('.stop');
    expect(stop && page.defaultView?.getComputedStyle(stop).borderTopStyle).toBe('solid');
    await expectSound(part);
  });

  test('is made anew at each press, and taken away once it was printed', async () => {
    const part = await held(guidance, answersOf('giant-reed'));
    const { page } = await printed(part);
    await printed(part);
    expect(part.all('iframe')).toHaveLength(1);
    expect(part.find('iframe')).not.toBe(page.defaultView?.frameElement);
    (part.find('iframe') as HTMLIFrameElement).contentWindow?.dispatchEvent(new Event('afterprint'));
    expect(part.all('iframe')).toHaveLength(0);
  });
});

test('opening a topic tells the page which plant was read about, once, and nothing more', async () => {
  const part = await held(guidance, answersOf('giant-reed'));
  const told: unknown[] = [];
  part.holder.addEventListener('leadwort-guidance', (event) => told.push(event.detail));
  expect(told).toEqual([]);
  part.control('How it spreads').focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => told).toEqual([{ taxon: 'arundo-donax' }]);
  await userEvent.keyboard('{Enter}');
  await userEvent.click(part.control('What it does to a stream'));
  await expect.poll(() => part.all('details[open]').length).toBe(1);
  expect(told).toHaveLength(1);
});

test('on paper everything is there, opened or not', async () => {
  const part = await held(guidance, answersOf('giant-reed'));
  const hidden = part.find('details.topic li');
  expect(hidden.checkVisibility({ contentVisibilityAuto: true })).toBe(false);
  await withMedia({ print: true }, () => {
    expect(hidden.getBoundingClientRect().height).toBeGreaterThan(0);
  });
});

test('in Spanish, from right to left and in a narrow column it holds together', async () => {
  const part = await held(
    guidance,
    answersOf('elephant-ear'),
    { ...(await spanish()), headingLevel: 5 },
    html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
  );
  expect(part.find('[role=heading]').textContent).toBe(`Qué hacer con ${commonName('colocasia-esculenta', 'es')}`);
  expect(part.all('[role=heading]').map((one) => one.getAttribute('aria-level'))).toEqual(['5', '6', '6', '6', '6']);
  await expectSound(part);
});

test('the settings of the page can change under it', async () => {
  const part = await held(guidance, answersOf('giant-reed'));
  part.holder.settings.setValue(await spanish());
  await part.part.updateComplete;
  expect(part.text()).toContain('Qué hacer con');
  part.holder.settings.setValue(english);
  await part.part.updateComplete;
  expect(part.text()).toContain('What to do about');
});
