import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf, freeBundle } from '../../../tests/support/small-bundle.ts';
import { answered, answeredUntil, commonName, streambank, verdictIs } from '../../../tests/support/streambank.ts';
import type { Album, Drawing } from '../../key/index.ts';
import '../names/define.ts';
import '../standing/define.ts';
import '../verdict/define.ts';
import './define.ts';
import '../key/define.ts';
import type { LeadwortKey } from '../key/key.ts';
import type { LeadwortComparison } from './comparison.ts';

const REEDS = ['arundo-donax', 'phragmites-australis-subsp-australis'];
const THREE = [...REEDS, 'arundinaria-gigantea'];
const EARS = ['colocasia-esculenta', 'peltandra-virginica'];

const side = (taxa: readonly string[]) =>
  html`<leadwort-comparison taxa=${taxa.join(' ')} closable></leadwort-comparison>`;
const compared = (taxa: readonly string[], answers: Parameters<typeof answered>[0] = {}, month?: 1 | 9) =>
  held<LeadwortComparison>(side(taxa), answered(answers, month));
const label = (id: string) => streambank().key.characters.find((one) => one.id === id)?.label as string;
/** The row of a character, open or folded away. */
const rowOf = (part: Held, id: string) => {
  const found = part.all('.row').find((one) => one.querySelector('[role=heading]')?.textContent?.trim() === label(id));
  if (found === undefined) throw new Error(`no row ${id}`);
  return found;
};
const words = (of: Element) => of.textContent?.replaceAll(/\s+/g, ' ').trim();

const drawing: Drawing = [['line', 'M10 10L80 80']];
const album: Album = {
  key: 'streambank',
  version: '1',
  states: new Map(
    streambank().key.characters.flatMap(({ id, states }) =>
      states.map((state) => [`${id}/${state.id}`, { drawing, alt: new Map([['en', `${state.label}, drawn.`]]) }]),
    ),
  ),
  taxa: new Map(),
  glossary: [],
  courses: [],
};

describe.each([
  ['two', REEDS],
  ['two that are drawn', EARS],
  ['three', THREE],
])('%s plants', (_, taxa) => {
  test('stand under their names, with their status, in the order asked for', async () => {
    const part = await compared(taxa);
    const heads = part.all('.plants > .cell');
    expect(heads.map((one) => one.querySelector('.common')?.textContent)).toEqual(taxa.map((id) => commonName(id)));
    for (const [i, id] of taxa.entries()) {
      const taxon = streambank().key.taxa.find((one) => one.id === id);
      expect(heads[i]?.querySelector('.latin')?.textContent).toBe(taxon?.name);
      expect(heads[i]?.querySelector('.status')?.textContent).toBe(taxon?.status);
    }
  });

  test('show every feature of all of them, each cell with its plant, in every row alike', async () => {
    const part = await compared(taxa);
    expect(part.all('.row').length).toBeGreaterThan(10);
    for (const row of part.all('.row')) {
      expect(row.parentElement?.matches('ul.rows')).toBe(true);
      const cells = [...row.querySelectorAll('.cells > .cell')];
      expect(cells.map((one) => one.querySelector('.who')?.textContent)).toEqual(taxa.map((id) => commonName(id)));
    }
  });

  test.each([280, 360, 768, 1400])('are sound and fit at %i px, open and folded, also as drawings', async (width) => {
    await page.viewport(Math.max(width, 320), 800);
    const part = await compared(taxa, { height: 'above' });
    part.holder.style.inlineSize = `${width}px`;
    part.holder.style.display = 'block';
    part.holder.album.setValue(album);
    for (const one of part.all('details')) (one as HTMLDetailsElement).open = true;
    await part.part.updateComplete;
    expect(part.all('.drawing').length).toBeGreaterThan(10);
    await expectSound(part);
    expectRoom(part);
  });
});

test('what can be seen now without touching is listed first, and a press asks for it', async () => {
  const store = answered({});
  const part = await held(side(REEDS), store);
  const now = part.all('.now button').map((one) => words(one)?.replace(/: Look at this now$/, ''));
  expect(now).toContain(label('stem-thickness'));
  // To touch, to measure, and not asked for at all.
  for (const id of ['leaf-base-mark', 'leaf-width', 'underground']) expect(now).not.toContain(label(id));
  await userEvent.click(part.control(label('stem-thickness')));
  expect(store.snapshot.question).toMatchObject({ character: 'stem-thickness', reason: 'chosen' });
});

test('what cannot be looked at now says why', async () => {
  const part = await compared(REEDS, {}, 1);
  expect(words(rowOf(part, 'leaf-base-mark'))).toContain('Needs touching');
  expect(words(rowOf(part, 'cluster-posture'))).toContain('Not to be seen in January');
  expect(words(rowOf(part, 'ligule-length'))).toContain('Needs a magnifying glass');
  expect(words(rowOf(part, 'underground'))).toContain('Below the ground: never dig for it');
  const now = part.all('.now button').map(words).join();
  expect(now).not.toContain(label('cluster-posture'));
});

test("the author's words, how sure the difference is, and its caution stand with the feature", async () => {
  const part = await compared(EARS);
  const row = rowOf(part, 'leaf-stalk');
  expect(words(row)).toContain('The stalk of elephant ear joins inches inside the notch.');
  expect(words(row)).toContain('Always different.');
  expect(row.querySelector('.caution')?.textContent).toContain(
    streambank().key.characters.find(({ id }) => id === 'leaf-stalk')?.caution,
  );
});

test('sizes are in the units of the reader', async () => {
  const part = await compared(REEDS);
  expect(words(rowOf(part, 'stem-thickness').querySelector('.cell') as Element)).toMatch(/ in\b/);
  part.holder.settings.setValue({ ...(await spanish()), units: 'metric' });
  await part.part.updateComplete;
  const spanishRow = part.all('.row').find((one) => words(one)?.includes('5 cm, rara vez 5 cm'));
  // Arundo: 10-35(-50) mm, as the key has it.
  expect(spanishRow?.querySelector('.cell')?.textContent).toMatch(/1 a 3[.,]5 cm, rara vez 5 cm/);
});

describe('what the person saw', () => {
  test('is marked on the plants it fits, and on no other', async () => {
    const part = await compared(REEDS, { 'leaf-base-mark': 'wedge' });
    const [giant, common] = [...rowOf(part, 'leaf-base-mark').querySelectorAll('.cell')];
    expect(giant?.textContent).toContain('You saw this');
    expect(common?.textContent).not.toContain('You saw this');
    expect(words(rowOf(part, 'leaf-base-mark'))).toContain('You answered: Yes, a brownish wedge');
    expect(part.all('.saw')).toHaveLength(1);
    await expectSound(part);
  });

  test('is marked on sizes, and is no longer among what to look at now', async () => {
    const part = await compared(EARS, { height: 'waist' });
    const now = part.all('.now button').map(words).join();
    expect(now).not.toContain(label('height'));
    expect(part.text()).toContain('You answered:');
  });

  test('that is passed over is not marked', async () => {
    const store = answered({});
    store.request('answer', { answer: { character: 'leaf-base-mark', skipped: true } });
    const part = await held(side(REEDS), store);
    expect(part.all('.saw')).toHaveLength(0);
    expect(part.text()).not.toContain('You answered');
  });
});

test('what is enough is marked, named by its number, and never without the advice to ask', async () => {
  const part = await compared(REEDS);
  const needs = streambank().key.lookalikes.find(({ taxa }) => REEDS.every((id) => taxa.includes(id)))?.needs;
  expect(part.all('.row.chosen')).toHaveLength(needs as number);
  expect(part.text()).toContain(`The ${needs} marked with a star usually tell the two apart together`);
  expect(part.text()).toContain('leave the plant where it stands');
  expect(part.text()).toContain('A comparison is not a confirmation');
});

test('where nothing is enough, it says so', async () => {
  const part = await compared(['echinodorus-cordifolius', 'echinodorus-berteroi']);
  expect(part.all('.row.chosen')).toHaveLength(0);
  expect(part.text()).toContain('Leave it to a person who knows plants.');
  await expectSound(part);
});

describe('an id that the key does not have', () => {
  test('is named, and the others are compared all the same', async () => {
    const part = await compared([...REEDS, 'arundo-donux']);
    expect(part.find('[role=alert]').textContent).toBe('This key has no plant “arundo-donux”.');
    expect(part.all('.plants > .cell')).toHaveLength(2);
    await expectSound(part);
  });

  test.each([['arundo-donux arundo-donax'], ['arundo-donax'], [[...THREE, 'typha-latifolia'].join(' ')]])(
    'or a wrong number of them leaves nothing to compare, and that is said: %s',
    async (taxa) => {
      const part = await held(html`<leadwort-comparison taxa=${taxa}></leadwort-comparison>`, answered({}));
      expect(part.all('.board')).toHaveLength(0);
      expect(part.text()).toContain('Name two or three plants of this key to compare them.');
      await expectSound(part);
    },
  );

  test('nothing asked for shows nothing', async () => {
    expect((await compared([])).text()).toBe('');
  });
});

describe('on a narrow screen', () => {
  const narrow = html`<div class="narrow"><test-holder></test-holder></div>`;

  test('columns that do not fit are moved by keyboard, in a region with a name', async () => {
    const part = await held(side(THREE), answered({}), undefined, narrow);
    await expect.poll(() => part.find('.board').getAttribute('tabindex')).toBe('0');
    const board = part.find('.board');
    expect(board.getAttribute('role')).toBe('region');
    board.focus();
    await userEvent.keyboard('{ArrowRight}');
    await expect.poll(() => board.scrollLeft).toBeGreaterThan(0);
    // The words of the feature stay where they can be read.
    const about = board.querySelector('.row .about') as HTMLElement;
    expect(about.getBoundingClientRect().left).toBeGreaterThanOrEqual(board.getBoundingClientRect().left - 1);
  });

  test('a button puts one below the other, and back', async () => {
    const part = await held(side(THREE), answered({}), undefined, narrow);
    const turn = part.control('One below the other');
    await userEvent.click(turn);
    await part.part.updateComplete;
    expect(turn.getAttribute('aria-pressed')).toBe('true');
    const [one, two] = part.all('.row .cell').map((cell) => cell.getBoundingClientRect());
    expect(two?.top).toBeGreaterThanOrEqual(one?.bottom as number);
    expect(part.find('.board').scrollWidth).toBeLessThanOrEqual(part.find('.board').clientWidth + 1);
    await expectSound(part);
    await userEvent.click(turn);
    await part.part.updateComplete;
    expect(turn.getAttribute('aria-pressed')).toBe('false');
  });

  test('from right to left it holds together', async () => {
    const part = await held(
      side(EARS),
      answered({ height: 'waist' }),
      await spanish(),
      html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
    );
    const [one, two] = part.all('.plants > .cell').map((cell) => cell.getBoundingClientRect());
    expect(two?.left).toBeLessThan(one?.left as number);
    await expectSound(part);
  });
});

test('on paper the buttons are gone, and the advice to ask stays', async () => {
  const part = await compared(EARS);
  await withMedia({ print: true }, () => {
    for (const button of part.all('button')) expect(getComputedStyle(button).display).toBe('none');
    expect(part.find('.unsure').checkVisibility()).toBe(true);
    for (const row of part.all('.row.chosen')) expect(row.checkVisibility()).toBe(true);
  });
});

describe('asked for by', () => {
  const asked = async (part: Held, press: () => HTMLElement) => {
    const heard: (readonly string[])[] = [];
    part.holder.addEventListener('leadwort-comparison', ({ detail }) => heard.push(detail.taxa));
    await userEvent.click(press());
    expect(heard).toHaveLength(1);
    return heard[0] as readonly string[];
  };
  const leaning = () => answeredUntil('giant-reed', verdictIs('leaning'));

  test("a look-alike of the verdict: it and the verdict's plant", async () => {
    const part = await held(html`<leadwort-verdict></leadwort-verdict>`, leaning());
    const taxa = await asked(part, () => part.control('Compare side by side'));
    expect(taxa[0]).toBe('arundo-donax');
    expect(taxa).toHaveLength(2);
  });

  test('an open verdict: the plants that it could be', async () => {
    const store = answered({ 'growth-form': 'tall-cane', height: 'above', 'leaf-base-mark': 'wedge' });
    const part = await held(html`<leadwort-verdict></leadwort-verdict>`, store);
    expect(await asked(part, () => part.control('Compare side by side'))).toEqual(
      store.snapshot.identification.verdict.taxa,
    );
  });

  test('a line of the standing: the plant and the leading one', async () => {
    const store = leaning();
    const part = await held(html`<leadwort-standing></leadwort-standing>`, store);
    await userEvent.click(part.control('See the plants'));
    const lines = part.all('li details') as HTMLDetailsElement[];
    expect(lines[0]?.querySelector('.compare')).toBeNull();
    (lines[1] as HTMLDetailsElement).open = true;
    const taxa = await asked(part, () => part.control('Compare with giant reed'));
    expect(taxa).toEqual(store.snapshot.identification.standing.slice(0, 2).map(({ taxon }) => taxon));
  });

  test('a look-alike under a name that was looked up', async () => {
    const part = await held(html`<leadwort-names></leadwort-names>`, answered({}));
    await userEvent.fill(part.find('input'), 'Arundo');
    await part.part.updateComplete;
    const taxa = await asked(part, () => part.find('.plants .compare'));
    expect(taxa[0]).toBe('arundo-donax');
    expectRoom(part);
    await expectSound(part);
  });

  test('the parts of a session, which holds one comparison', async () => {
    const session = await fixture<HTMLElement>(
      html`<leadwort-session><leadwort-comparison></leadwort-comparison><p></p></leadwort-session>`,
    );
    const shown = session.querySelector('leadwort-comparison') as LeadwortComparison;
    const ask = (taxa: readonly string[]) =>
      session
        .querySelector('p')
        ?.dispatchEvent(new CustomEvent('leadwort-comparison', { detail: { taxa }, bubbles: true, composed: true }));
    ask(REEDS);
    expect(shown.taxa).toBe(REEDS.join(' '));
    ask([]);
    expect(shown.taxa).toBe('');
  });
});

describe('in a key', () => {
  const opened = async (compare?: string) => {
    const key = document.createElement('leadwort-key') as LeadwortKey;
    key.src = addressOf(freeBundle);
    key.month = 9;
    if (compare) key.setAttribute('compare', compare);
    (await fixture<HTMLElement>(html`<div></div>`)).append(key);
    await expect.poll(() => key.shadowRoot?.querySelector('leadwort-names, .names')).not.toBeNull();
    return key;
  };
  const shown = (key: LeadwortKey) => key.shadowRoot?.querySelector<LeadwortComparison>('[part=comparison]') ?? null;
  const taxa = (freeBundle as { taxa: { taxa: { id: string }[] } }).taxa.taxa.slice(0, 2).map(({ id }) => id);

  test('the attribute opens it, and the focus stays where it was', async () => {
    const key = await opened(taxa.join(' '));
    await expect.poll(() => shown(key)?.shadowRoot?.querySelector('.board')).toBeTruthy();
    expect(document.activeElement).toBe(document.body);
    await expectAccessible(key);
    expectPolicyProof(key);
  });

  test('a press opens it and takes the focus there; closing it takes the focus back', async () => {
    const key = await opened();
    const names = key.shadowRoot?.querySelector<HTMLDetailsElement>('details.names') as HTMLDetailsElement;
    names.open = true;
    const search = () => names.querySelector('leadwort-names')?.shadowRoot;
    await expect.poll(() => search()?.querySelector('input')).toBeTruthy();
    const input = search()?.querySelector('input') as HTMLInputElement;
    input.value = streambankName(taxa[0] as string);
    input.dispatchEvent(new InputEvent('input'));
    await expect.poll(() => search()?.querySelector('.compare')).toBeTruthy();
    const button = search()?.querySelector('.compare') as HTMLElement;
    button.focus();
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => shown(key)?.shadowRoot?.activeElement?.id).toBe('heading');
    expect(key.compare.split(' ')[0]).toBe(taxa[0]);
    await userEvent.keyboard('{Tab}{Enter}');
    await expect.poll(() => shown(key)).toBeNull();
    expect(search()?.activeElement).toBe(button);
    expect(key.compare).toBe('');
  });

  test('an id that it does not have is named', async () => {
    const key = await opened(`${taxa[0]} no-such-plant`);
    await expect
      .poll(() => shown(key)?.shadowRoot?.querySelector('[role=alert]')?.textContent)
      .toBe('This key has no plant “no-such-plant”.');
  });

  function streambankName(id: string): string {
    const found = (freeBundle as { taxa: { taxa: { id: string; name: string }[] } }).taxa.taxa.find(
      (one) => one.id === id,
    );
    return found?.name ?? '';
  }
});
