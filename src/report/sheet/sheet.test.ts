import { describe, expect, test } from 'vitest';
import { keyFiles } from '../../../tests/support/key-files.ts';
import { edited } from '../../../tests/support/small-key.ts';
import { type Couplet, type Key, readKey } from '../../key/index.ts';
import { htmlOf } from './html.ts';
import { type Sheet, type SheetLead, STYLES } from './sheet.ts';
import { sheetOf } from './spoken.ts';

const streambank = readKey(keyFiles('keys/streambank'));
const sheets = STYLES.map((style) => [style, sheetOf(streambank, { style, language: 'en' })] as const);
const [bracketed, indented] = sheets.map(([, sheet]) => sheet) as [Sheet, Sheet];
const small = (...couplets: Couplet[]): Key => ({ ...readKey(edited()), couplets });

/** Every way of leads from the start to a plant, read off the page alone: by numbers, or by what stands below what. */
function waysOf({ style, leads }: Sheet): string[] {
  const ways: string[] = [];
  const end = (way: readonly SheetLead[], to: SheetLead['to']) => {
    for (const { taxon } of typeof to === 'object' ? to : [])
      ways.push(`${way.map(({ couplet, lead }) => `${couplet}.${lead}`).join(' ')} ${taxon}`);
  };
  if (style === 'indented') {
    const way: SheetLead[] = [];
    for (const lead of leads) {
      way.splice(lead.depth);
      way.push(lead);
      end(way, lead.to);
    }
  } else {
    const follow = (number: number, way: readonly SheetLead[]): void => {
      for (const lead of leads.filter(({ couplet }) => couplet === number)) {
        end([...way, lead], lead.to);
        if (typeof lead.to === 'number') follow(lead.to, [...way, lead]);
      }
    };
    follow(leads[0]?.couplet ?? 0, []);
  }
  return ways.sort();
}

describe('the two layouts', () => {
  test('lead to the same plants by the same statements', () => {
    expect(waysOf(indented)).toEqual(waysOf(bracketed));
    expect(waysOf(bracketed).length).toBeGreaterThanOrEqual(streambank.taxa.length);
  });

  test.each(sheets)('%s: every plant of the key is reached, and stands in the list of names', (_, sheet) => {
    const all = streambank.taxa.map(({ id }) => id).sort();
    const reached = sheet.leads.flatMap(({ to }) => (typeof to === 'object' ? to.map(({ taxon }) => taxon) : []));
    expect([...new Set(reached)].sort()).toEqual(all);
    expect(sheet.plants.map(({ name }) => name.taxon).sort()).toEqual(all);
    for (const { couplets } of sheet.plants) expect(couplets.length).toBeGreaterThan(0);
  });

  test('the bracketed one leads on only to couplets that say where one came from', () => {
    for (const { couplet, to } of bracketed.leads) {
      if (typeof to !== 'number') continue;
      const next = bracketed.leads.find((lead) => lead.couplet === to);
      expect(next?.from).toContain(couplet);
      // Numbers only grow along the way, so that nobody turns pages back.
      expect(to).toBeGreaterThan(couplet);
    }
  });

  test('the indented one goes one step in below a statement that ends with no name, and never further', () => {
    indented.leads.forEach(({ to, depth }, i) => {
      const next = indented.leads[i + 1];
      if (to === undefined) expect(next?.depth).toBe(depth + 1);
      else expect(next?.depth ?? 0).toBeLessThanOrEqual(depth);
    });
  });
});

describe('couplets by hand', () => {
  const to = (taxon: string) => [taxon];
  const lead = (text: string, goal: number | string[]) => ({ text, also: [], to: goal });
  const arundo = to('arundo-donax');
  const cane = to('arundinaria-gigantea');

  test('that several leads lead to are printed once, with a word where to find them', () => {
    const key = small(
      { number: 1, leads: [lead('tall', 2), lead('low', 2), lead('other', cane)] },
      { number: 2, leads: [lead('green', arundo), lead('grey', cane)] },
    );
    const sheet = sheetOf(key, { style: 'indented', language: 'en' });
    expect(sheet.leads.map(({ main, depth, to: goal }) => [main, depth, typeof goal])).toEqual([
      ['tall', 0, 'undefined'],
      ['green', 1, 'object'],
      ['grey', 1, 'object'],
      ['low', 0, 'number'],
      ['other', 0, 'object'],
    ]);
    expect(htmlOf(sheet)).toContain('href="#c2">see 2<');
    expect(sheetOf(key, { style: 'bracketed', language: 'en' }).leads[3]?.from).toEqual([1]);
  });

  test('that nothing leads to are not printed, and a circle ends where it closes', () => {
    const key = small(
      { number: 5, leads: [lead('a', 2), lead('b', arundo)] },
      { number: 2, leads: [lead('c', 5), lead('d', cane)] },
      { number: 9, leads: [lead('e', arundo), lead('f', cane)] },
    );
    const printed = STYLES.map((style) => sheetOf(key, { style, language: 'en' }).leads.map(({ main }) => main));
    expect(printed).toEqual([
      ['a', 'b', 'c', 'd'],
      ['a', 'c', 'd', 'b'],
    ]);
  });

  test('are drawn even when they go on for thousands of steps', () => {
    const long = Array.from(
      { length: 5000 },
      (_, i): Couplet => ({
        number: i + 1,
        leads: [lead('here', arundo), lead('on', i === 4999 ? cane : i + 2)],
      }),
    );
    for (const style of STYLES) {
      const sheet = sheetOf(small(...long), { style, language: 'en' });
      expect(sheet.leads).toHaveLength(10_000);
      expect(htmlOf(sheet)).toContain('5000b');
    }
  });
});

describe('words', () => {
  const main = (sheet: Sheet, couplet: number, lead: number) =>
    sheet.leads.find((one) => one.couplet === couplet && one.lead === lead);
  const asked = (states: string[][], also: Couplet['leads'][number]['also'] = []): Key => ({
    ...streambank,
    couplets: [
      {
        number: 1,
        leads: states.map((some) => ({ character: 'leaf-shape', states: some, also, to: ['arundo-donax'] })),
      },
    ],
  });
  const all = streambank.characters.find(({ id }) => id === 'leaf-shape')?.states.map(({ id }) => id) ?? [];

  test('name the character and its states, and say what usually holds', () => {
    const key = asked(
      [['heart', 'arrowhead'], ['linear']],
      [{ character: 'leaf-tip', states: ['down'], how: 'usually' }],
    );
    const sheet = sheetOf(key, { style: 'bracketed', language: 'en' });
    expect(main(sheet, 1, 0)).toMatchObject({
      main: 'Leaf shape: heart-shaped or arrowhead',
      also: ['Where the tip points, usually: down to the ground'],
    });
  });

  test('say what a plant is not where the list would be long', () => {
    const sheet = sheetOf(asked([['linear'], all.slice(1)]), { style: 'bracketed', language: 'en' });
    expect(main(sheet, 1, 1)?.main).toBe('Leaf shape: not grass-like');
    const both = sheetOf(asked([all.slice(0, 5), all.slice(5)]), { style: 'bracketed', language: 'en' });
    expect(main(both, 1, 1)?.main).not.toContain('not ');
  });

  test('give sizes in the units of the key', () => {
    const key: Key = {
      ...streambank,
      couplets: [
        {
          number: 1,
          leads: [
            { character: 'height', states: ['ankle', 'knee'], also: [], to: ['arundo-donax'] },
            { character: 'height', states: ['head', 'reach', 'above'], also: [], to: ['canna-indica'] },
          ],
        },
      ],
    };
    const said = (one: Key) => sheetOf(one, { style: 'bracketed', language: 'en' }).leads.map((lead) => lead.main);
    expect(said(key)).toEqual([
      'Height: below the ankle or up to the knee (under 20 in)',
      'Height: up to your head, up to twice your height, or more than twice your height (over 3 ft)',
    ]);
    expect(said({ ...key, units: 'metric' })[0]).toContain('(under 50 cm)');
  });

  test('come in the language asked for, names included', () => {
    const sheet = sheetOf(streambank, { style: 'bracketed', language: 'es-MX' });
    expect(sheet.language).toBe('es');
    expect(sheet.leads[0]?.main).not.toBe(bracketed.leads[0]?.main);
    expect(sheet.plants.map(({ name }) => name.common)).toContain('carrizo gigante');
    expect(htmlOf(sheet)).toMatch(/<html lang="es">[\s\S]*>invasora</);
  });

  test('say when plants are not told apart, and put pairs of a native and an invader first', () => {
    const key = { ...asked([['heart'], ['linear']]) };
    const pair = ['colocasia-esculenta', 'peltandra-virginica'];
    const [couplet] = key.couplets as [Couplet];
    const both = { ...key, couplets: [{ ...couplet, leads: couplet.leads.map((one) => ({ ...one, to: pair })) }] };
    expect(htmlOf(sheetOf(both, { style: 'bracketed', language: 'en' }))).toContain('not told apart in this key:');
    const mixed = bracketed.alike.map(({ names }) =>
      names
        .map(({ status }) => status)
        .sort()
        .join(),
    );
    expect(mixed[0]).toBe('invasive,native');
    expect(mixed.lastIndexOf('invasive,native')).toBeLessThan(mixed.indexOf('native,native'));
  });
});

test('cautions of the key, of what is looked at, and of plants that can hurt stand before the key', () => {
  const { general, looking, plants } = bracketed.cautions;
  expect(general).toEqual(streambank.cautions);
  expect(looking.length).toBeGreaterThan(0);
  expect(new Set(looking).size).toBe(looking.length);
  // Nobody is sent to look below the ground.
  expect(looking.join(' ')).not.toMatch(/dig/i);
  expect(plants.map(({ text }) => text).join(' ')).toContain('sharp');
  const page = htmlOf(bracketed);
  expect(page.indexOf('class="cautions"')).toBeLessThan(page.indexOf('class="key bracketed"'));
});

describe('whatever a key says', () => {
  const HOSTILE = `</style></title><script>alert(1)</script><img src=x onerror='x'>"'&\\}`;

  test('is text on the page, in all its places', () => {
    const files = edited(
      ['key.json', 'title', HOSTILE],
      ['key.json', 'region', HOSTILE],
      ['couplets.json', 'couplets[0].leads[0].text', HOSTILE],
      ['taxa.json', 'taxa[0].common.en', [HOSTILE]],
    );
    const key = readKey(files);
    const evil: Key = {
      ...key,
      cautions: [HOSTILE],
      characters: key.characters.map((one) => ({
        ...one,
        label: HOSTILE,
        states: one.states.map((state) => ({ ...state, label: HOSTILE })),
      })),
      lookalikes: key.lookalikes.map((pair) => ({
        ...pair,
        separate: pair.separate.map((one) => ({ ...one, words: HOSTILE })),
      })),
    };
    for (const style of STYLES) {
      const page = htmlOf(sheetOf(evil, { style, language: 'en' }));
      expect(page).not.toMatch(/<script|<img/i);
      expect(page.match(/<\/style>/g)).toHaveLength(1);
      expect(page.match(/<\/title>/g)).toHaveLength(1);
      const tags = new Set([...page.matchAll(/<([a-z0-9]+)/gi)].map(([, tag]) => tag));
      expect([...tags].filter((tag) => /script|img|iframe|link|object/.test(tag ?? ''))).toEqual([]);
      expect(page).toContain('&lt;script&gt;');
    }
  });

  test('a key without couplets makes a sheet without a key', () => {
    const sheet = sheetOf(small(), { style: 'bracketed', language: 'en' });
    expect(sheet.leads).toEqual([]);
    expect(htmlOf(sheet)).not.toContain('class="key');
  });
});
