// The figures in a bare element as narrow as a phone, with the words of the practice room.
import { fixture } from '@open-wc/testing';
import { html, LitElement, type TemplateResult } from 'lit';
import { expect, test } from 'vitest';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { withMedia } from '../../../tests/support/media.ts';
import type { Readiness } from '../../practice/index.ts';
import { rateOf } from '../../practice/index.ts';
import { type PracticeWords, practiceWords } from '../../words/practice/index.ts';
import { shared } from '../shared/styles.ts';
import { renderConfusion } from './confusion.ts';
import { figureStyles } from './figures.styles.ts';
import { rangeOf, renderRates } from './rates.ts';
import { renderReadiness } from './readiness.ts';

class TestFigure extends LitElement {
  static override styles = [shared, figureStyles];
  static override properties = { shown: { attribute: false } };
  declare shown: TemplateResult;
  override render() {
    return this.shown;
  }
}
customElements.define('test-figure', TestFigure);

// 360 px less a page's margins; and a column with room.
const widths = new CSSStyleSheet();
widths.replaceSync('.phone { inline-size: 328px; } .desk { inline-size: 720px; }');
document.adoptedStyleSheets.push(widths);

async function shown(of: TemplateResult, language = 'en') {
  const box = await fixture<HTMLElement>(
    html`<div class="phone" lang=${language}><test-figure .shown=${of}></test-figure></div>`,
  );
  const figure = box.firstElementChild as TestFigure;
  await figure.updateComplete;
  const root = figure.shadowRoot as ShadowRoot;
  return { box, figure, all: (selector: string) => [...root.querySelectorAll<HTMLElement>(selector)] };
}
type Shown = Awaited<ReturnType<typeof shown>>;

const PLANTS = new Map([
  ['reed', 'giant reed'],
  ['common', 'common reed'],
  ['cane', 'giant cane, switch cane and river cane'],
  ['corn', 'corn'],
]);
const name = (id: string) => PLANTS.get(id) ?? id;
const taxa = [...PLANTS.keys()];
const confusion = {
  taxa,
  counts: [
    [9, 1, 0, 0, 0],
    [2, 6, 1, 0, 1],
    [0, 1, 8, 0, 0],
    [0, 0, 0, 0, 0],
  ],
  agreement: undefined,
  interval: undefined,
};
const pass = { right: 0.9, looks: 10, days: 2, alarms: 0 };
const readiness: readonly Readiness[] = [
  {
    taxon: 'reed',
    ready: true,
    rule: 'ready',
    looks: 14,
    right: rateOf(13, 14),
    alarms: 0,
    days: 3,
    recall: 0.94,
    pass,
  },
  {
    taxon: 'cane',
    ready: false,
    rule: 'alarm',
    looks: 12,
    right: rateOf(9, 12),
    alarms: 2,
    days: 2,
    recall: 0.9,
    pass,
  },
  {
    taxon: 'corn',
    ready: false,
    rule: 'looks',
    looks: 0,
    right: rateOf(0, 0),
    alarms: 0,
    days: 0,
    recall: undefined,
    pass,
  },
];
const confused = (words: PracticeWords) =>
  renderConfusion(confusion, name, { was: words.was, unsure: words.unsure, title: words.confusion });
const rates = (words: PracticeWords) =>
  renderRates(
    [
      { label: 'where the leaf meets the stem, and what it leaves there', rate: rateOf(3, 12), mark: 0.2 },
      { label: 'kind of plant', rate: rateOf(0, 40) },
      { label: 'fruit', rate: rateOf(0, 0) },
    ],
    {
      label: words.character,
      share: words.wrongly,
      looks: words.looks,
      mark: words.meant,
      between: words.between,
      language: words.language,
    },
  );
const ready = (words: PracticeWords) => renderReadiness(readiness, name, words, words.language);

async function expectFits({ box, figure, all }: Shown): Promise<void> {
  await expectAccessible(box);
  await withMedia({ forcedColors: 'active' }, () => expectAccessible(box));
  await withMedia({ colorScheme: 'dark' }, () => expectAccessible(box));
  expect(all('[style], style, script')).toHaveLength(0);
  expect(figure.scrollWidth, 'wider than the phone').toBeLessThanOrEqual(figure.clientWidth + 1);
}

const FIGURES = { confusion: confused, rates, readiness: ready };
const KINDS = Object.keys(FIGURES) as (keyof typeof FIGURES)[];

test.each(KINDS.flatMap((kind) => ['en', 'es'].map((language) => [kind, language] as const)))(
  '%s in %s keeps to a phone, and is sound in light, dark and forced colours',
  async (kind, language) => {
    await expectFits(await shown(FIGURES[kind](await practiceWords(language)), language));
  },
);

test('the table of what was said leaves out plants nobody asked or said, and heads every row and column', async () => {
  const words = await practiceWords('en');
  const { all } = await shown(confused(words));
  expect(all('tbody th').map((one) => one.textContent)).toEqual([name('reed'), name('common'), name('cane')]);
  expect(all('thead th').map((one) => one.textContent?.trim())).toEqual([
    name('reed'),
    name('common'),
    name('cane'),
    words.unsure,
  ]);
  const cells = all('tbody tr').map((row) => [...row.querySelectorAll('td')].map((cell) => cell.textContent?.trim()));
  expect(cells).toEqual([
    ['9', '1', '', ''],
    ['2', '6', '1', '1'],
    ['', '1', '8', ''],
  ]);
});

test('right and wrong cells differ by the dot they carry, filled or open, and its size follows the share of the row', async () => {
  const { all } = await shown(confused(await practiceWords('en')));
  const [first, second] = all('tbody tr').map((row) => [...row.querySelectorAll('circle')]);
  expect(first?.map((dot) => dot.getAttribute('class'))).toEqual(['good', 'bad']);
  const radius = (dot?: Element) => Number(dot?.getAttribute('r'));
  expect(radius(first?.[0])).toBeGreaterThan(radius(second?.[1]));
  expect(getComputedStyle(all('circle.bad')[0] as Element).fill).toBe('none');
  expect(getComputedStyle(all('circle.good')[0] as Element).fill).not.toBe('none');
});

test('the line of a share runs from low to high on a scale from 0 to 1, the dot at the mean', async () => {
  const { all } = await shown(rangeOf({ n: 8, count: 4, mean: 0.5, low: 0, high: 1 }, 0.25));
  const [axis = '', bar = ''] = all('path').map((one) => one.getAttribute('d') ?? '');
  expect(bar).toBe('M6.0 10H114.0');
  expect(axis).toContain('M6 10H114');
  expect(all('circle')[0]?.getAttribute('cx')).toBe('60.0');
  expect(all('.mark')[0]?.getAttribute('d')).toBe('M33.0 2V18');
});

test('what is drawn is said in numbers too, in the language of the words, and what was never looked at has none', async () => {
  const { all } = await shown(rates(await practiceWords('es')), 'es');
  const { mean, low, high } = rateOf(3, 12);
  const percent = new Intl.NumberFormat('es', { style: 'percent', maximumFractionDigits: 0 });
  const [first, , never] = all('tbody tr').map((row) => row.textContent ?? '');
  for (const value of [mean, low, high, 0.2]) expect(first).toContain(percent.format(value));
  expect(never).not.toMatch(/\d+\s?%/);
  expect(all('svg')).toHaveLength(2);
  for (const one of all('svg')) expect(one.getAttribute('aria-hidden')).toBe('true');
});

test('a number names its column where there is no room for the row of headings', async () => {
  const words = await practiceWords('en');
  const { box, all } = await shown(rates(words));
  const named = () => all('.heading').filter((one) => getComputedStyle(one).display !== 'none');
  const once = [words.meant, words.looks, words.looks, words.looks].map((one) => `${one}: `);
  expect(named().map((one) => one.textContent)).toEqual(once);
  box.className = 'desk';
  expect(named()).toEqual([]);
});

test('each plant is ready or not yet in a word, with the rule that decided and its numbers', async () => {
  const words = await practiceWords('en');
  const { all } = await shown(ready(words));
  const rows = all('tbody tr').map((row) => row.textContent ?? '');
  expect(rows[0]).toContain(words.isReady);
  expect(rows[1]).toContain(words.notYet);
  expect(rows[1]).toContain(words.rule.alarm);
  expect(rows[1]).toContain('12');
  expect(rows[2]).toContain(words.rule.looks);
  // Two shapes, not two colours of one.
  const [yes, no] = all('.mark path').map((one) => one.getAttribute('d'));
  expect(yes).not.toBe(no);
});

// Twenty plants are wider than any phone: the names of the rows stay while the columns move.
test('a wide table of what was said moves inside its own box, by keyboard too, and keeps the names of its rows', async () => {
  const many = Array.from({ length: 20 }, (_, i) => `plant ${i}`);
  const counts = many.map((_, i) => [...many.map((_, j) => (i === j ? 3 : Number(j === (i + 1) % 20))), 0]);
  const words = await practiceWords('en');
  const { figure, all } = await shown(
    renderConfusion({ ...confusion, taxa: many, counts }, (id) => id, { ...words, title: words.confusion }),
  );
  const [box] = all('.scroll');
  if (box === undefined) throw new Error('no box to scroll');
  expect(figure.scrollWidth).toBeLessThanOrEqual(figure.clientWidth + 1);
  expect(box.tabIndex).toBe(0);
  box.scrollLeft = 400;
  expect(box.scrollLeft).toBe(400);
  const left = (one?: Element) => one?.getBoundingClientRect().left ?? Number.NaN;
  expect(left(all('tbody th')[3])).toBeCloseTo(left(box), 0);
});

test.each(KINDS)('%s keeps its dots and lines on paper', async (kind) => {
  const { all } = await shown(FIGURES[kind](await practiceWords('en')));
  await withMedia({ print: true }, () => {
    for (const one of all('svg')) expect(one.getBoundingClientRect().width).toBeGreaterThan(0);
    for (const one of all('.scroll')) expect(one.scrollWidth).toBeLessThanOrEqual(one.clientWidth + 1);
  });
});
