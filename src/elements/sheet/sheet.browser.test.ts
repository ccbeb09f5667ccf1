import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import couplets from '../../../keys/streambank/couplets.json' with { type: 'json' };
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { fiveCouplets } from '../../../tests/support/five-couplets.ts';
import { english, expectRoom, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf, freeBundle, smallBundle } from '../../../tests/support/small-bundle.ts';
import { answered, commonName, streambankWith } from '../../../tests/support/streambank.ts';
import { type PreparedKey, prepareKey } from '../../key/index.ts';
import { htmlOf, STYLES, type Style, sheetOf } from '../../report/sheet/index.ts';
import { SessionStore } from '../../session/index.ts';
import './define.ts';
import '../key/define.ts';
import type { LeadwortKey } from '../key/key.ts';
import type { LeadwortSheet } from './sheet.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

const prepared = streambankWith(fiveCouplets);
const of = (key: PreparedKey) => new SessionStore(key, { month: 9 });
const sheet = html`<leadwort-sheet></leadwort-sheet>`;
const inLayout = (layout: string) => html`<leadwort-sheet layout=${layout}></leadwort-sheet>`;
const run = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, '');

/** The text of the file that `leadwort sheet` writes, spaces left out. */
function file(style: Style, language: string): string {
  const page = new DOMParser().parseFromString(htmlOf(sheetOf(prepared.key, { style, language })), 'text/html');
  return run(page.body.textContent);
}

describe.each(STYLES)('%s', (style) => {
  test('says what the file says that the command writes', async () => {
    const part = await held(inLayout(style), of(prepared));
    expect(run(part.find('[part=sheet]').textContent)).toBe(file(style, 'en'));
    expect(part.all('.lead')).toHaveLength(10);
    expect(part.all('tbody tr')).toHaveLength(prepared.key.taxa.length);
    await expectSound(part);
    expectRoom({ ...part, all: () => part.all('button, label') });
    expectPolicyProof(part.holder);
  });

  test('says it in Spanish, from right to left and in a narrow column', async () => {
    const around = html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`;
    const part = await held(inLayout(style), of(prepared), await spanish(), around);
    expect(run(part.find('[part=sheet]').textContent)).toBe(file(style, 'es'));
    expect(part.text()).toContain('Plantas de esta clave');
    expect(part.control('Imprimir')).toBeTruthy();
    await expectSound(part);
  });
});

describe('the layout', () => {
  const first = (part: { find: (selector: string) => HTMLElement }) => part.find('.key').className;

  test('is chosen by the attribute, and by number for a word that is none', async () => {
    expect(first(await held(inLayout('indented'), of(prepared)))).toBe('key indented');
    expect(first(await held(inLayout('sideways'), of(prepared)))).toBe('key bracketed');
    expect(first(await held(sheet, of(prepared)))).toBe('key bracketed');
  });

  test('is chosen by hand, with the arrow keys too', async () => {
    const part = await held<LeadwortSheet>(sheet, of(prepared));
    const radios = part.all('input[type=radio]') as HTMLInputElement[];
    expect(radios.map((one) => one.checked)).toEqual([true, false]);
    radios[0]?.focus();
    await userEvent.keyboard('{ArrowDown}');
    await part.part.updateComplete;
    expect(part.part.layout).toBe('indented');
    expect(first(part)).toBe('key indented');
    expect(part.all('.lead.step-1').length).toBeGreaterThan(0);
    expect(part.root.activeElement).toBe(radios[1]);
  });

  test('lets each step stand further in', async () => {
    const part = await held(inLayout('indented'), of(prepared));
    const at = (selector: string) => part.find(selector).getBoundingClientRect().left;
    expect(at('.step-1')).toBeGreaterThan(at('.lead:not([class*=step])'));
    expect(at('.step-2')).toBeGreaterThan(at('.step-1'));
  });
});

test('sizes are in the units that the person has chosen', async () => {
  const classes = prepared.key.characters.find(({ id }) => id === 'height')?.states.map(({ id }) => id) ?? [];
  const lead = (states: string[], to: string) => ({ character: 'height', states, to });
  const leads = [lead(classes.slice(0, 1), 'typha-latifolia'), lead(classes.slice(1), 'arundo-donax')];
  const key = streambankWith([{ number: 1, leads }]);
  // 0.15 m are 5.9 in: an inch is 25.4 mm exactly (NIST Special Publication 811, Appendix B, from memory).
  expect((await held(sheet, of(key))).find('.main').textContent).toContain('(under 6 in)');
  const metric = await held(sheet, of(key), { ...english, units: 'metric' });
  expect(metric.find('.main').textContent).toContain('(under 15 cm)');
});

test('headings follow the level that the page gives, and go no deeper than six', async () => {
  const part = await held(sheet, of(prepared), { ...english, headingLevel: 5 });
  const levels = part.all('[role=heading]').map((one) => Number(one.ariaLevel));
  expect([...new Set(levels)].sort()).toEqual([5, 6]);
});

test('an answer draws nothing anew, and another key at once', async () => {
  const store = of(prepared);
  const part = await held(sheet, store);
  const before = part.find('.lead');
  store.request('answer', { answer: { character: 'leaf-shape', states: ['linear'], sureness: 'sure' } });
  await part.part.updateComplete;
  expect(part.find('.lead')).toBe(before);
  part.holder.session.setValue(of(prepareKey({ ...prepared.key, title: 'Another key' })));
  await part.part.updateComplete;
  expect(part.find('[role=heading]').textContent).toBe('Another key');
});

test('a key without couplets has no sheet', async () => {
  const part = await held(sheet, answered({}));
  expect(part.root.textContent).toBe('');
});

test('marks in a key are text and never markup', async () => {
  const bad = '<img src=x onerror="alert(1)"><b>bold</b>';
  const couplets = fiveCouplets.map((one) => ({ ...one, leads: one.leads.map((lead) => ({ ...lead, text: bad })) }));
  const { key } = streambankWith(couplets);
  const taxa = key.taxa.map((taxon) => ({ ...taxon, common: new Map([['en', [bad]]]) }));
  const part = await held(sheet, of(prepareKey({ ...key, title: bad, region: bad, cautions: [bad], taxa })));
  expect(part.all('img')).toHaveLength(0);
  expect(part.find('.head-0').textContent).toBe(bad);
  expect(part.find('.main').textContent).toBe(`${bad}.`);
  expect(part.find('tbody td').textContent).toBe(bad);
});

test('names of plants are those of the language, Latin ones marked as Latin', async () => {
  const part = await held(sheet, of(prepared), await spanish());
  const row = part.all('tbody tr').find((one) => one.textContent?.includes('Arundo donax'));
  expect(row?.textContent).toContain(commonName('arundo-donax', 'es'));
  expect(row?.querySelector('i')?.lang).toBe('la');
  expect(row?.textContent).toContain('invasora');
});

describe('printing', () => {
  test('begins at the press of a button', async () => {
    const print = vi.spyOn(window, 'print').mockImplementation(() => undefined);
    const part = await held(sheet, of(prepared));
    await userEvent.click(part.control('Print'));
    expect(print).toHaveBeenCalledOnce();
  });

  test('leaves out what can be pressed, and is black on white in a dark scheme', async () => {
    const part = await held(sheet, of(prepared));
    await withMedia({ print: true, colorScheme: 'dark' }, () => {
      expect(part.find('[part=choice]').offsetHeight).toBe(0);
      expect(part.find('[part=sheet]').offsetHeight).toBeGreaterThan(0);
      const { color } = getComputedStyle(part.find('.main'));
      const { backgroundColor } = getComputedStyle(part.find('.to'));
      expect([color, backgroundColor]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    });
  });
});

describe.each(STYLES)('the whole key, %s', (style) => {
  const whole = streambankWith(couplets.couplets);
  // A4 is 210 mm wide (ISO 216, from memory), less 15 mm on either side 180 mm; 280 px is the narrowest column.
  test.each([
    ['on paper', 680, true],
    ['on a desk', 1100, false],
    ['on a phone', 328, false],
    ['in a narrow column', 280, false],
  ])('has no number on a statement and no name over the edge %s', async (_, width, print) => {
    await page.viewport(1200, 900);
    const part = await held(inLayout(style), of(whole));
    part.holder.style.cssText = `display: block; inline-size: ${width}px`;
    await withMedia({ print }, () => {
      const { right } = part.find('[part=sheet]').getBoundingClientRect();
      const faults = part.all('.lead').filter((lead) => {
        const [number, says, to] = ['.number', '.says', '.to'].map((one) => lead.querySelector(one)?.getClientRects());
        const label = [...(number ?? [])].at(-1);
        const text = says?.[0];
        if (!label || !text) throw new Error('a lead without number or statement');
        return label.right > text.left || [...(to ?? [])].some((one) => one.right > right + 0.5);
      });
      expect(faults.map((one) => one.textContent)).toEqual([]);
      expect(part.all('.lead').length).toBeGreaterThan(100);
      expect(part.part.scrollWidth).toBeLessThanOrEqual(part.part.clientWidth + 1);
    });
  });
});

describe('in the foot of the whole', () => {
  async function opened(bundle: unknown): Promise<LeadwortKey> {
    const key = await fixture<LeadwortKey>(html`<leadwort-key src=${addressOf(bundle)} month="9"></leadwort-key>`);
    await expect.poll(() => key.shadowRoot?.querySelector('.foot summary')).toBeTruthy();
    return key;
  }
  const root = (key: LeadwortKey) => key.shadowRoot as ShadowRoot;
  const printed = (key: LeadwortKey) => root(key).querySelector('leadwort-sheet')?.shadowRoot;
  async function openSheet(key: LeadwortKey): Promise<void> {
    root(key).querySelector<HTMLElement>('.sheet > summary')?.click();
    await expect.poll(() => printed(key)?.querySelector('.lead')).toBeTruthy();
  }
  /** Classes of what of the page is shown at all. */
  const shown = (key: LeadwortKey) =>
    [...root(key).querySelectorAll<HTMLElement>('.page > *, .foot > *, .sheet > *')]
      .filter((one) => one.offsetHeight > 0 && !one.matches('.unseen'))
      .map((one) => one.classList[0] ?? one.localName);

  test('it waits behind quiet words, and comes once somebody wants it', async () => {
    await page.viewport(360, 740);
    const key = await opened(smallBundle);
    expect(root(key).querySelector('.sheet > summary')?.textContent).toBe('Print the key');
    expect(root(key).querySelector('leadwort-sheet')).toBeNull();
    await openSheet(key);
    await expectAccessible(key);
    expectPolicyProof(key);
    expect(key.scrollWidth).toBeLessThanOrEqual(key.clientWidth + 1);
    key.lang = 'es';
    await expect.poll(() => printed(key)?.querySelector('legend')?.textContent).toBe('Cómo se ordena');
    expect(root(key).querySelector('.sheet > summary')?.textContent).toBe('Imprimir la clave');
  });

  test('a key without couplets offers nothing to print', async () => {
    const key = await opened(freeBundle);
    expect(root(key).querySelector('.sheet')).toBeNull();
  });

  test('while it is open, it alone goes to paper; otherwise all but the foot does', async () => {
    const key = await opened(smallBundle);
    await openSheet(key);
    expect(shown(key)).toContain('ask');
    await withMedia({ print: true }, () => expect(shown(key)).toEqual(['foot', 'sheet', 'leadwort-sheet']));
    root(key).querySelector<HTMLElement>('.sheet > summary')?.click();
    await key.updateComplete;
    await withMedia({ print: true }, () => {
      expect(shown(key)).toContain('ask');
      expect(shown(key)).not.toContain('foot');
    });
  });
});
