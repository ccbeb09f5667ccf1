import { html } from 'lit';
import { expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { english, expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { answered, commonName, streambank } from '../../../tests/support/streambank.ts';
import type { Album } from '../../key/index.ts';
import './define.ts';
import type { LeadwortPortrait } from './portrait.ts';

const portrait = (taxon: string) => html`<leadwort-portrait taxon=${taxon}></leadwort-portrait>`;
const september = () => answered({}, 9);
const image = (part: Held) => part.find('.scene svg');
const flowers = (part: Held) => part.all('.flower').length;
const press = async (part: Held, words: string) => {
  await userEvent.click(
    part.all('button').find((one) => (one.ariaLabel ?? one.textContent ?? '').includes(words)) as HTMLElement,
  );
  await part.part.updateComplete;
};

test.each([
  'arundo-donax',
  'colocasia-esculenta',
  'typha-latifolia',
  'pontederia-crassipes',
  'nelumbo-lutea',
  'caladium-bicolor',
])('%s is drawn and described, and sound in any colours', async (id) => {
  const part = await held(portrait(id), september());
  expect(part.all('.scene svg path').length).toBeGreaterThan(20);
  expect(image(part).getAttribute('aria-label')).toContain(`${commonName(id)}, `);
  expect(part.text()).toContain('Drawn from the key’s data, not from life.');
  expectRoom(part);
  expectPolicyProof(part.holder);
  await expectSound(part);
});

test('what is to be seen is one sentence, with the size and who stands beside it', async () => {
  const part = await held(portrait('arundo-donax'), september());
  // 3-6 m in the key: the middle of a log-normal is the root of 18, 4.2 m or 14 ft.
  expect(image(part).getAttribute('aria-label')).toMatch(
    /^giant reed, 14 ft tall, beside a person\. Kind of plant: a tall cane or reed; where it stands: at the water.s edge; .*flowers: a dense plume; .*\.$/,
  );
});

test('the month is that of the session, and is turned by hand and by key', async () => {
  const part = await held(portrait('arundo-donax'), september());
  const month = () => part.find('.months [role=status]').textContent;
  expect(month()).toBe('September: in flower');
  expect(flowers(part)).toBeGreaterThan(0);
  await press(part, 'One month later');
  await press(part, 'One month later');
  // The plume stays, dry and of another colour.
  expect(month()).toBe('November: in seed');
  expect(flowers(part)).toBeGreaterThan(0);
  expect(part.all('.flower .wash-tan').length).toBeGreaterThan(0);
  const later = part.all('.step')[1] as HTMLElement;
  later.focus();
  await userEvent.keyboard('{Enter}{Enter}');
  await part.part.updateComplete;
  expect(month()).toBe('January: not in flower');
  expect(flowers(part)).toBe(0);
  expect(part.root.activeElement).toBe(later);
  await press(part, 'Show it in flower');
  expect(month()).toBe('August: in flower');
});

test('a month that the page gives goes before that of the session', async () => {
  const part = await held(html`<leadwort-portrait taxon="arundo-donax" month="1"></leadwort-portrait>`, september());
  expect(part.find('.months [role=status]').textContent).toBe('January: not in flower');
});

test('another plant of the kind is drawn on request, and the usual one again', async () => {
  const part = await held<LeadwortPortrait>(portrait('colocasia-esculenta'), september());
  const drawn = () => image(part).innerHTML;
  const usual = drawn();
  await press(part, 'Draw another one');
  const first = drawn();
  expect(first).not.toBe(usual);
  expect(part.text()).toContain('One plant among many');
  await press(part, 'Draw another one');
  expect(drawn()).not.toBe(first);
  await press(part, 'As it usually is');
  expect(drawn()).toBe(usual);
});

test('all that the key knows can be read in words, in the units asked for', async () => {
  const part = await held(portrait('arundo-donax'), september());
  await userEvent.click(part.control('In words'));
  const rows = new Map(
    part.all('dl > div').map((row) => [row.querySelector('dt')?.textContent, row.querySelector('dd')?.textContent]),
  );
  expect(rows.get('Height')).toBe('9.8 ft to 20 ft');
  expect(rows.get('Leaf length')).toBe('12 in to 39 in');
  expect(rows.get('Leaf shape')).toBe('Grass-like');
  expect(rows.get('Branching')).toBe('No; sometimes Now and then, single side shoots');
  expect(rows.has('Where the tip points')).toBe(false);
});

test('what is not known is named', async () => {
  const part = await held(portrait('phyllostachys-aurea'), september());
  expect(part.find('.unknown').textContent).toContain('Not known, and left out: ');
  expect(part.find('.unknown').textContent).toContain('Month of flowering');
  expect(part.find('.months [role=status]').textContent).toBe('September: flowers not known');
});

test('details are pictures where the album has them, and words without it', async () => {
  const part = await held(portrait('arundo-donax'), september());
  expect(part.all('.close li').length).toBeGreaterThan(15);
  expect(part.all('.close svg')).toHaveLength(0);
  const album: Album = {
    key: 'streambank',
    version: '1',
    states: new Map([['ligule/fringed', { drawing: [['line', 'M0 0L9 9']], alt: new Map([['en', 'A fringe.']]) }]]),
    taxa: new Map([
      [
        'arundo-donax',
        [
          {
            file: 'reed.jpg',
            width: 800,
            height: 600,
            sizes: [],
            credit: 'A. Steward',
            licence: 'CC0',
            organ: 'whole',
            alt: new Map([['en', 'Canes by the water.']]),
          },
        ],
      ],
    ]),
    glossary: [],
    courses: [],
  };
  part.holder.album.setValue(album);
  await part.part.updateComplete;
  expect(part.all('.close svg')).toHaveLength(1);
  // No address for photographs, no request for one.
  expect(part.all('img')).toHaveLength(0);
  await expectSound(part);
});

test('photographs come first, with whose they are, where the page says where they lie', async () => {
  const part = await held(portrait('arundo-donax'), september(), { ...english, images: 'https://images.example.org/' });
  const photo = {
    file: 'reed.jpg',
    width: 800,
    height: 600,
    sizes: [],
    credit: 'A. Steward',
    licence: 'CC0',
    organ: 'whole',
    alt: new Map([['en', 'Canes by the water.']]),
  };
  part.holder.album.setValue({
    key: 'streambank',
    version: '1',
    states: new Map(),
    taxa: new Map([['arundo-donax', [photo]]]),
    glossary: [],
    courses: [],
  });
  await part.part.updateComplete;
  const shown = part.find('img') as HTMLImageElement;
  expect(shown.src).toBe('https://images.example.org/reed.jpg');
  expect(shown.alt).toBe('Canes by the water.');
  expect(part.find('.photos').textContent).toContain('A. Steward, CC0');
  expect(shown.compareDocumentPosition(image(part)) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
});

test('it speaks Spanish, from right to left and in a narrow column', async () => {
  const around = html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`;
  const part = await held(portrait('colocasia-esculenta'), september(), await spanish(), around);
  expect(part.text()).toContain('Dibujada con los datos de la clave');
  expect(image(part).getAttribute('aria-label')).toContain(commonName('colocasia-esculenta', 'es'));
  expectRoom(part);
  await expectSound(part);
});

test.each([280, 360, 1200])('nothing is wider than a page of %i px', async (width) => {
  await page.viewport(width, 800);
  const part = await held(portrait('zizaniopsis-miliacea'), september());
  expect(part.part.scrollWidth).toBeLessThanOrEqual(part.part.clientWidth + 1);
  expect(image(part).getBoundingClientRect().width).toBeLessThanOrEqual(width);
});

test('on paper there is the drawing and no button', async () => {
  const part = await held(portrait('arundo-donax'), september());
  await withMedia({ print: true }, () => {
    expect(part.find('.scene').offsetHeight).toBeGreaterThan(0);
    for (const one of part.all('button')) expect(one.offsetHeight).toBe(0);
  });
});

test('only the drawing, or all but the name, where the page says so', async () => {
  const bare = await held(html`<leadwort-portrait bare taxon="arundo-donax"></leadwort-portrait>`, september());
  expect(bare.text()).toBe('');
  expect(image(bare).getAttribute('role')).toBe('img');
  const off = await held(html`<leadwort-portrait heading="off" taxon="arundo-donax"></leadwort-portrait>`, september());
  expect(off.all('.plant')).toHaveLength(0);
});

test('a plant that the key has not is named as missing', async () => {
  const part = await held(portrait('quercus-robur'), september());
  expect(part.text()).toBe('This key has no plant “quercus-robur”.');
});

test('an answer draws nothing anew', async () => {
  const store = september();
  const part = await held(portrait('arundo-donax'), store);
  const before = part.find('.scene path');
  store.request('answer', { answer: { character: 'leaf-shape', states: ['linear'], sureness: 'sure' } });
  await part.part.updateComplete;
  expect(part.find('.scene path')).toBe(before);
});

test('every plant of the key can be drawn without an error', async () => {
  const errors = vi.spyOn(console, 'error');
  const store = september();
  for (const { id } of streambank().key.taxa) {
    const part = await held(portrait(id), store);
    expect(part.all('.scene path').length, id).toBeGreaterThan(8);
  }
  expect(errors).not.toHaveBeenCalled();
});
