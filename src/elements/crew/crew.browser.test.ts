import { html } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { attempt, idOf, record } from '../../../tests/support/attempts.ts';
import { expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import type { Album } from '../../key/index.ts';
import { type PracticeRecord, readRecord, writeRecord } from '../../practice/index.ts';
import { SessionStore } from '../../session/index.ts';
import dale from '../../site/crew/dale.json?raw';
import maribel from '../../site/crew/maribel.json?raw';
import ruth from '../../site/crew/ruth.json?raw';
import { practice as en } from '../../words/practice/en.ts';
import { practice as es } from '../../words/practice/es.ts';
import './define.ts';
import type { LeadwortCrew } from './crew.ts';

const album: Album = {
  ...{ key: 'streambank', version: '1', states: new Map(), taxa: new Map(), glossary: [] },
  courses: courses.courses.map((one) => strictCourse(one as LooseCourse)),
};
const CREW = [maribel, dale, ruth].map((text) => readRecord(text));
const file = (name: string, text: string) => new File([text], name, { type: 'application/json' });

interface Crew extends Held<LeadwortCrew> {
  drawn(): Promise<void>;
  choose(...files: File[]): Promise<void>;
}

async function crew(records: readonly PracticeRecord[] = CREW, width = 360, settings?: Parameters<typeof held>[2]) {
  await page.viewport(Math.max(width, 320), 780);
  const of = await held<LeadwortCrew>(
    html`<leadwort-crew day="2026-05-15" .records=${records}></leadwort-crew>`,
    new SessionStore(streambank(), { month: 9 }),
    settings,
  );
  of.holder.style.inlineSize = `${width}px`;
  of.holder.style.display = 'block';
  of.holder.album.setValue(album);
  await vi.waitFor(() => of.find('.crew'));
  const drawn = async () => {
    await of.part.updateComplete;
    await of.part.updateComplete;
  };
  const at: Crew = {
    ...of,
    drawn,
    choose: async (...files) => {
      const data = new DataTransfer();
      for (const one of files) data.items.add(one);
      const input = of.find('input[type=file]') as HTMLInputElement;
      const before = of.part.records;
      input.files = data.files;
      input.dispatchEvent(new Event('change'));
      await vi.waitFor(() => {
        if (of.part.records === before) throw new Error('not read yet');
      });
      await drawn();
    },
  };
  await drawn();
  return at;
}

const BROKEN = file('broken.json', '{"format": 1,\n "learner": 7}');

function expectRoom({ all }: Crew): void {
  for (const one of all('button, summary, select, label.pick, input[type=date]')) {
    const { width, height } = one.getBoundingClientRect();
    if (width > 0) expect(Math.min(width, height), one.textContent ?? '').toBeGreaterThanOrEqual(47.5);
  }
}
const rows = ({ all }: Crew) => all('.ready-table tbody tr:not(.why)');
afterEach(() => {
  vi.restoreAllMocks();
});

describe.each([360, 1280])('At %i px the crew', (width) => {
  test.each(['en', 'es'])('is sound in every state, in "%s"', async (language) => {
    const words = language === 'es' ? es : en;
    const at = await crew([], width, language === 'es' ? await spanish() : undefined);
    expect(at.text()).toContain(words.crew.nobody);
    await expectSound(at);
    expectRoom(at);
    await at.choose(BROKEN);
    expect(at.find('[role=alert]').textContent).toContain('broken.json');
    await expectSound(at);
    await at.choose(...[maribel, dale, ruth].map((text, i) => file(`${i}.json`, text)));
    expect(at.text()).toContain(words.crew.opened(3));
    expect(at.find('[role=alert]').textContent?.trim()).toBe('');
    at.find('.cell').click();
    for (const one of at.all('details')) (one as HTMLDetailsElement).open = true;
    await at.drawn();
    await expectSound(at);
    expectRoom(at);
    await withMedia({ colorScheme: 'dark' }, () => expectSound(at));
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(Math.max(width, 320));
  });
});

describe('The table of plants and people', () => {
  test('has a row for each plant of the course, and says in a word and a shape who is ready', async () => {
    const at = await crew();
    const [course] = album.courses;
    expect(rows(at)).toHaveLength(course?.taxa.length ?? 0);
    expect(at.all('.ready-table thead th').map((one) => one.firstChild?.textContent)).toHaveLength(4);
    const shapes = new Map<string, Set<string>>();
    for (const cell of at.all('.cell')) {
      const word = cell.textContent?.trim() ?? '';
      shapes.set(word, (shapes.get(word) ?? new Set()).add(cell.querySelector('path')?.getAttribute('d') ?? ''));
    }
    expect([...shapes.keys()].sort()).toEqual([en.notYet, en.isReady].sort());
    const [one, other] = [...shapes.values()];
    expect([one?.size, other?.size]).toEqual([1, 1]);
    expect([...(one ?? [])]).not.toEqual([...(other ?? [])]);
  });

  test('tells by keyboard which rule decided, one cell at a time', async () => {
    const at = await crew();
    const [first, second] = at.all('.cell') as [HTMLElement, HTMLElement];
    first.focus();
    await userEvent.keyboard('{Enter}');
    await at.drawn();
    expect(first.getAttribute('aria-expanded')).toBe('true');
    expect(at.root.activeElement).toBe(first);
    const told = at.find('.why').textContent ?? '';
    expect(told).toContain(at.find('.people b').textContent);
    expect(Object.values(en.rule).some((rule) => told.includes(rule))).toBe(true);
    await userEvent.keyboard('{Tab}{ }');
    await at.drawn();
    expect(second.getAttribute('aria-expanded')).toBe('true');
    expect(at.all('.why')).toHaveLength(1);
    await userEvent.keyboard('{ }');
    await at.drawn();
    expect(at.all('.why')).toHaveLength(0);
  });

  test('counts nothing that was done after the day', async () => {
    const at = await crew();
    const day = at.find('input[type=date]') as HTMLInputElement;
    day.value = '2026-05-05';
    day.dispatchEvent(new Event('change'));
    await at.drawn();
    const looks = CREW.map(({ learner, attempts }) => ({
      name: learner.name,
      n: attempts.filter(({ at }) => at.slice(0, 10) <= '2026-05-05').length,
    }));
    for (const { name, n } of looks) {
      const person = at.all('.people li').find((one) => one.textContent?.includes(name));
      expect(person?.textContent).toContain(n === 0 ? '0 looks' : `${n} looks`);
    }
    expect(at.all('.cell.yes')).toHaveLength(0);
  });
});

describe('A crew of files', () => {
  test('keeps the good ones beside one that cannot be read, whether chosen or dropped', async () => {
    const at = await crew([]);
    await at.choose(BROKEN, file('ruth.json', ruth));
    expect(at.find('[role=alert]').textContent).toContain('learner');
    expect(at.all('.people li')).toHaveLength(1);
    const data = new DataTransfer();
    data.items.add(file('dale.json', dale));
    const over = new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true });
    at.part.dispatchEvent(over);
    expect(over.defaultPrevented).toBe(true);
    at.part.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    await vi.waitFor(() => expect(at.all('.people li')).toHaveLength(2));
  });

  test('is of one person where two files are of the same', async () => {
    const at = await crew([]);
    await at.choose(file('a.json', ruth), file('b.json', ruth));
    expect(at.all('.people li')).toHaveLength(1);
    expect(at.text()).toContain(en.crew.agreeAlone);
  });

  test('lets somebody be taken out, and the focus goes to the top', async () => {
    const at = await crew();
    at.control(en.crew.remove('Dale H.')).click();
    await at.drawn();
    expect(at.all('.people li')).toHaveLength(2);
    expect(at.text()).toContain(en.crew.removed('Dale H.'));
    expect(at.root.activeElement).toBe(at.find('[role=heading]'));
  });

  test('says of a file of another key that it does not count, and numbers who has no name', async () => {
    const other = record([attempt(1, 'arundo-donax')], { id: idOf(0xd), key: 'elsewhere', name: 'Kim' });
    const nameless = record([attempt(2, 'arundo-donax')], { id: idOf(0xe), name: '' });
    const at = await crew([other, nameless]);
    expect(at.text()).toContain(en.crew.otherKey('Kim', 'elsewhere'));
    expect(at.all('.people b').map((one) => one.textContent)).toEqual([en.crew.unnamed(1)]);
  });

  test('of the page itself is fetched only once its button is pressed, and one that does not come is told', async () => {
    const asked = vi
      .spyOn(globalThis, 'fetch')
      .mockImplementation(async (address) =>
        String(address).endsWith('ruth.json') ? new Response(ruth) : new Response('', { status: 404 }),
      );
    const at = await crew([]);
    at.part.files = './ruth.json ./gone.json';
    await at.drawn();
    expect(asked).not.toHaveBeenCalled();
    at.control(en.crew.examples(2)).click();
    await vi.waitFor(() => expect(at.all('.people li')).toHaveLength(1));
    expect(at.find('[role=alert]').textContent).toContain('./gone.json');
    expect(asked.mock.calls.map(([address]) => String(address))).toEqual(
      ['ruth.json', 'gone.json'].map((name) => new URL(name, document.baseURI).href),
    );
  });
});

describe('What is told of the whole crew', () => {
  test('is in order what to teach, with its counts, and where natives were called invaders first', async () => {
    const at = await crew();
    const items = at.all('.lessons > li');
    expect(items.length).toBeGreaterThan(5);
    const alarms = items.map((one) => Number(/^(\d+)/.exec(one.querySelector('.alarms')?.textContent ?? '')?.[1] ?? 0));
    expect(alarms).toEqual([...alarms].sort((a, b) => b - a));
    for (const one of items) expect(one.textContent).toMatch(/\d+ of \d+ wrong/);
  });

  test('is the agreement of two who named the same specimens, in per cent and as kappa with its interval', async () => {
    // Four tasks of both, of which they say the same three times. Rows 3 and 1, columns 2 and 2 of four: chance
    // (3 · 2 + 1 · 2) / 16 = 1/2, kappa (3/4 - 1/2) / (1 - 1/2) = 1/2 (J. Cohen 1960, from memory).
    const [reed, switchgrass] = ['arundo-donax', 'panicum-virgatum'] as const;
    const did = (from: number, said: readonly string[]) =>
      said.map((one, i) =>
        attempt(from + i, switchgrass, {
          specimen: { taxon: switchgrass, month: 8, seed: i + 1 },
          options: [reed, switchgrass],
          said: one,
        }),
      );
    const at = await crew([
      record(did(1, [reed, reed, switchgrass, reed]), { name: 'Ann' }),
      record(did(11, [reed, reed, switchgrass, switchgrass]), { id: idOf(0xb), name: 'Bea' }),
    ]);
    const row = at.find('[part=agreement] tbody tr').textContent ?? '';
    expect(row).toContain(en.crew.pair('Ann', 'Bea'));
    expect(row).toContain('0.5');
    expect(row).toContain('75%');
    expect(row).toMatch(/4\s*$/);
  });

  test('is how two judge cover, in points of the ground', async () => {
    // Classes 2 against 3, twice: middles 15 and 37.5 percent, so 22.5 less, and no spread.
    const plot = (n: number, seed: number, said: string) =>
      attempt(n, 'arundo-donax', {
        ...{ kind: 'cover', item: 'cover:2', specimen: { taxon: 'arundo-donax', month: 8, seed } },
        ...{ options: ['1', '2', '3', '4', '5', '6'], truth: '2', said, right: said === '2' },
      });
    const at = await crew([
      record([plot(1, 1, '2'), plot(2, 3, '2')], { name: 'Ann' }),
      record([plot(11, 1, '3'), plot(12, 3, '3')], { id: idOf(0xb), name: 'Bea' }),
    ]);
    expect(at.text()).toContain(en.crew.cover);
    expect(at.text()).toContain(en.crew.points('-22.5'));
  });

  test('goes along as two tables, under names that tell them apart', async () => {
    const at = await crew();
    const saved = new Map<string, Promise<string>>();
    const blobs: Blob[] = [];
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      blobs.push(blob as Blob);
      return `blob:${blobs.length}`;
    });
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      saved.set(this.download, (blobs.at(-1) as Blob).text());
    });
    at.control(en.crew.csvPlants).click();
    at.control(en.crew.csvAttempts).click();
    const [plants = '', looks = ''] = await Promise.all(saved.values());
    expect([...saved.keys()]).toEqual(['giant-reed-plants.csv', 'looks.csv']);
    const lines = (csv: string) => csv.trimEnd().split('\r\n').length;
    expect(lines(plants)).toBe(1 + 3 * (album.courses[0]?.taxa.length ?? 0));
    expect(lines(looks)).toBe(1 + CREW.flatMap(({ attempts }) => attempts).length);
  });

  test('comes on paper with the rule in every cell, and without what can only be pressed', async () => {
    const at = await crew(CREW, 720);
    await withMedia({ print: true }, () => {
      const shown = (selector: string) => at.all(selector).filter((one) => one.getClientRects().length > 0).length;
      expect(shown('.opening, .choices, .taking, .people button')).toBe(0);
      expect(shown('td .paper')).toBe(at.all('.cell').length);
      expect(shown('.lessons > li')).toBe(5);
      for (const one of at.all('.scroll')) expect(one.scrollWidth).toBeLessThanOrEqual(one.clientWidth + 1);
    });
  });

  test('is nothing that a file did not say: an empty record is nobody ready for anything', async () => {
    const at = await crew([readRecord(writeRecord(record([])))]);
    expect(at.all('.cell.yes')).toHaveLength(0);
    expect(at.text()).toContain(en.crew.teachNone);
  });
});
