import { html } from 'lit';
import { afterEach, beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { strictCourse } from '../../key/courses/index.ts';
import type { Album, Course, Drawing, TaskKind } from '../../key/index.ts';
import { readRecord } from '../../practice/index.ts';
import { SessionStore } from '../../session/index.ts';
import { practice as en } from '../../words/practice/en.ts';
import { practice as es } from '../../words/practice/es.ts';
import './define.ts';
import type { LeadwortPractice } from './practice.ts';

const KINDS: readonly TaskKind[] = ['read', 'name', 'standing', 'pair', 'run', 'cover'];
const REEDS = ['arundo-donax', 'phragmites-australis-subsp-americanus'];

const courseOf = (kinds: readonly TaskKind[], taxa: readonly string[] = REEDS): Course =>
  strictCourse({
    id: 'reeds',
    title: { en: 'Two tall reeds', es: 'Dos carrizos altos' },
    about: { en: 'Tell one from the other.', es: 'Distinguir uno del otro.' },
    taxa: [...taxa],
    months: '6-9',
    kinds: [...kinds],
    test: { each: 2, kinds: ['name'] },
  });

const drawing: Drawing = [['line', 'M10 10L80 80']];
const albumWith = (courses: readonly Course[]): Album => ({
  key: 'streambank',
  version: '1',
  states: new Map(
    streambank().key.characters.flatMap(({ id, states }) =>
      states.map((state) => [`${id}/${state.id}`, { drawing, alt: new Map([['en', `${state.label}, drawn.`]]) }]),
    ),
  ),
  taxa: new Map(),
  glossary: [],
  courses,
});

interface Room extends Held<LeadwortPractice> {
  press(words: string): Promise<void>;
  choose(id: string): Promise<void>;
  heading(): HTMLElement;
  options(): string[];
  drawn(): Promise<void>;
}

async function room(courses: readonly Course[] = [courseOf(KINDS)], width = 360): Promise<Room> {
  await page.viewport(Math.max(width, 320), 780);
  const of = await held<LeadwortPractice>(html`<leadwort-practice></leadwort-practice>`, session());
  of.holder.style.inlineSize = `${width}px`;
  of.holder.style.display = 'block';
  of.holder.album.setValue(albumWith(courses));
  const drawn = async () => {
    await of.part.updateComplete;
    await of.part.updateComplete;
  };
  await vi.waitFor(() => of.find('.ways'));
  await drawn();
  return {
    ...of,
    drawn,
    heading: () => of.find('[role=heading]'),
    options: () => of.all('.options input').map((one) => (one as HTMLInputElement).value),
    press: async (words) => {
      of.control(words).click();
      await drawn();
    },
    choose: async (id) => {
      of.find(`.options input[value="${id}"]`).click();
      await drawn();
    },
  };
}

/** No target smaller than a wet thumb; a radio's or a file's is the whole of its label. */
function expectRoom({ all }: Room): void {
  for (const one of all('button, summary, label:is(.card, .pick), .field input')) {
    const { width, height } = one.getBoundingClientRect();
    if (width > 0) expect(Math.min(width, height), one.textContent ?? '').toBeGreaterThanOrEqual(47.5);
  }
}

/** The plant that a told reply was about, by its scientific name. */
const plantTold = (at: Room) => at.find('.answer .latin').textContent ?? '';

/** Every test has a key of its own, and with it a place on the device that no other test wrote to. */
let key = '';
let tests = 0;
beforeEach(() => {
  key = `streambank-${++tests}-${Date.now()}`;
});
const session = () => new SessionStore({ ...streambank(), key: { ...streambank().key, id: key } }, { month: 9 });
afterEach(() => {
  for (const one of document.querySelectorAll('leadwort-practice')) one.remove();
});

describe('A look', () => {
  test.each(KINDS)('of the kind "%s" is sound before, while and after it is answered', async (kind) => {
    const at = await room([courseOf([kind])]);
    await at.press(en.round);
    expect(at.find('.task').classList).toContain(kind);
    expect(at.root.activeElement).toBe(at.heading());
    expect(at.heading().textContent).toContain(en.kind[kind]);
    await expectSound(at);
    expectRoom(at);
    if (kind === 'run') {
      await at.press(en.runNone);
    } else {
      const [first = ''] = at.options();
      await at.choose(first);
      await expectSound(at);
      expectRoom(at);
      await at.press(en.sure.think);
    }
    expect([en.right, en.wrong]).toContain(at.heading().textContent);
    expect(at.root.activeElement).toBe(at.heading());
    await expectSound(at);
    expectRoom(at);
  });

  test.each([280, 360, 1280])(
    'keeps the plant inside its frame at %i px, and nothing moves sideways',
    async (width) => {
      const at = await room([courseOf(['name'])], width);
      await at.press(en.round);
      const frame = at.find('.scene').getBoundingClientRect();
      const own = at.part.getBoundingClientRect();
      expect(frame.width).toBeGreaterThan(200);
      expect(frame.left).toBeGreaterThanOrEqual(own.left);
      expect(frame.right).toBeLessThanOrEqual(own.right + 1);
      expect(at.find('.scene svg').getBoundingClientRect().right).toBeLessThanOrEqual(own.right + 1);
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(Math.max(width, 320));
    },
  );

  test('names no plant of the picture, and a reading is not given away by words', async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    const shown = at.find('.specimen').textContent ?? '';
    for (const { name, common } of streambank().key.taxa) {
      expect(shown).not.toContain(name);
      expect(shown).not.toContain(common.get('en')?.[0]);
    }
    const read = await room([courseOf(['read'])]);
    await read.press(en.round);
    expect(read.find('.scene svg').getAttribute('aria-label')).toBe(en.hidden);
    expect(read.all('.specimen details')).toEqual([]);
  });

  test('that cannot be told is told at once, and is not right', async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    await at.press(en.unsure);
    expect(at.heading().textContent).toBe(en.wrong);
    expect(at.text()).toContain(`${en.said}: ${en.unsure}`);
  });

  test('in which a native is called an invasive says what that costs', async () => {
    const at = await room([courseOf(['standing'])]);
    await at.press(en.round);
    for (let looks = 0; at.all('.caution').length === 0; looks++) {
      expect(looks, 'no native came').toBeLessThan(20);
      if (looks > 0) await at.press(en.next);
      await at.choose('invasive');
      await at.press(en.sure.sure);
      expect(at.heading().textContent).toBe(plantTold(at) === 'Arundo donax' ? en.right : en.wrong);
    }
    expect(plantTold(at)).toContain('americanus');
    expect(at.find('.caution').textContent).toBe(en.alarm);
    await expectSound(at);
  });

  test('shows what decided it: the character, and what each of the two has', async () => {
    const at = await room([courseOf(['pair'])]);
    await at.press(en.round);
    const [one = ''] = at.options();
    await at.choose(one);
    await at.press(en.sure.guess);
    expect(at.find('.decided').textContent).toContain(en.lookAt);
    expect(at.all('.sides li')).toHaveLength(2);
    expect(at.all('.sides svg')).toHaveLength(2);
  });
});

test('a whole look takes the keyboard alone, and Enter goes on to the next', async () => {
  const at = await room([courseOf(['name'])]);
  (at.find('.ways .solid') as HTMLButtonElement).focus();
  await userEvent.keyboard('{Enter}');
  await at.drawn();
  for (let look = 1; look <= 2; look++) {
    expect(at.heading().textContent).toContain(en.number(look, undefined));
    for (let tabs = 0; !at.root.activeElement?.matches('.options input'); tabs++) {
      expect(tabs, 'the options are not reached').toBeLessThan(12);
      await userEvent.keyboard('{Tab}');
    }
    await userEvent.keyboard('{ArrowDown}');
    await at.drawn();
    expect(at.all('.options input').some((one) => (one as HTMLInputElement).checked)).toBe(true);
    await userEvent.keyboard('{Tab}{Enter}');
    await at.drawn();
    expect(at.root.activeElement).toBe(at.heading());
    expect([en.right, en.wrong]).toContain(at.heading().textContent);
    await userEvent.keyboard('{Tab}{Enter}');
    await at.drawn();
  }
});

test('the key runs inside a look: an answer is on its own trail, and the host hears nothing of it', async () => {
  const at = await room([courseOf(['run'])]);
  await at.press(en.round);
  const run = at.find('leadwort-practice-run');
  const question = await vi.waitFor(() => {
    const found = run.shadowRoot?.querySelector('leadwort-question')?.shadowRoot?.querySelector('.card');
    if (!found) throw new Error('no question');
    return found as HTMLElement;
  });
  (question.querySelector('input') ?? question).click();
  await at.drawn();
  const sure = run.shadowRoot
    ?.querySelector('leadwort-question')
    ?.shadowRoot?.querySelector<HTMLElement>('button.solid');
  sure?.click();
  await vi.waitFor(() =>
    expect(run.shadowRoot?.querySelector('leadwort-trail')?.shadowRoot?.querySelectorAll('li').length).toBe(1),
  );
  expect(at.find('.scene')).toBeTruthy();
  await expectSound(at);
});

describe('A round', () => {
  test('that is stopped says what was looked at and when it comes back, without points', async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    await at.choose(at.options()[0] as string);
    await at.press(en.sure.sure);
    const ended = vi.fn();
    at.part.addEventListener('leadwort-practice', (event) => ended((event as CustomEvent).detail));
    await at.press(en.stop);
    expect(at.heading().textContent).toBe(en.done);
    expect(at.text()).toContain(en.looked(1));
    expect(at.all('.back li').length).toBeGreaterThan(0);
    expect(ended.mock.calls).toEqual([[{ course: 'reeds', kind: 'round', looks: 1 }]]);
    await expectSound(at);
    expectRoom(at);
  });

  test('goes on in Spanish when the page does, with what was chosen', async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    const [first = ''] = at.options();
    await at.choose(first);
    at.holder.settings.setValue(await spanish());
    await vi.waitFor(() => expect(at.heading().textContent).toContain(es.ask.name));
    expect((at.find(`.options input[value="${first}"]`) as HTMLInputElement).checked).toBe(true);
    await at.press(es.sure.sure);
    expect([es.right, es.wrong]).toContain(at.heading().textContent);
    await expectSound(at);
  });

  test('is kept look by look: whoever comes back after a reload finds them', async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    await at.choose(at.options()[0] as string);
    await at.press(en.sure.sure);
    // The page goes away in the middle of the round.
    await vi.waitFor(async () => {
      at.part.remove();
      const again = await room([courseOf(['name'])]);
      await again.press(en.figures);
      expect(again.all('.readiness tbody tr')).toHaveLength(2);
      again.part.remove();
    });
  });

  test('works where the device keeps nothing, and says so in the language of the page', async () => {
    vi.stubGlobal('indexedDB', undefined);
    onTestFinished(() => {
      vi.unstubAllGlobals();
    });
    const at = await room([courseOf(['name'])]);
    await vi.waitFor(() => expect(at.find('.trouble').textContent).toBe(en.notKept));
    await at.press(en.round);
    await at.press(en.unsure);
    expect(at.heading().textContent).toBe(en.wrong);
    at.holder.settings.setValue(await spanish());
    await vi.waitFor(() => expect(at.find('.trouble').textContent).toBe(es.notKept));
  });
});

test('a final test tells nothing before its end, goes on after a reload, and then shows every look', async () => {
  const course = courseOf(['name']);
  let at = await room([course]);
  await at.press(en.test);
  expect(at.heading().textContent).toContain(en.number(1, 4));
  await at.choose('arundo-donax');
  await at.press(en.sure.think);
  expect(at.heading().textContent).toContain(en.number(2, 4));
  expect(at.text()).not.toContain(en.wrong);
  expect(at.root.activeElement).toBe(at.heading());
  await vi.waitFor(async () => {
    at.part.remove();
    at = await room([course]);
    expect(at.find('.ways').textContent).toContain(en.resume);
  });
  await at.press(en.resume);
  for (let look = 2; look <= 4; look++) {
    expect(at.heading().textContent).toContain(en.number(look, 4));
    await at.choose('arundo-donax');
    await at.press(en.sure.think);
  }
  expect(at.heading().textContent).toBe(en.testDone);
  expect(at.all('.every article')).toHaveLength(4);
  expect(at.all('.readiness tbody tr').length).toBeGreaterThanOrEqual(2);
  (at.find('.every') as HTMLDetailsElement).open = true;
  await expectSound(at);
});

describe('The file', () => {
  const done = async () => {
    const at = await room([courseOf(['name'])]);
    await at.press(en.round);
    await at.choose(at.options()[0] as string);
    await at.press(en.sure.sure);
    await at.press(en.stop);
    await at.press(en.back);
    await at.press(en.file);
    return at;
  };
  const saved = async (at: Room) => {
    const made = vi.spyOn(URL, 'createObjectURL');
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    await at.press(en.download);
    const [blob] = made.mock.calls.at(-1) as [Blob];
    made.mockRestore();
    click.mockRestore();
    return blob.text();
  };
  const open = async (at: Room, text: string) => {
    const input = at.find('input[type=file]') as HTMLInputElement;
    const files = new DataTransfer();
    files.items.add(new File([text], 'mine.json', { type: 'application/json' }));
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await vi.waitFor(() => at.find('.trouble'));
    await at.drawn();
  };

  test('holds the looks and the name that was typed, and is taken over once, however often it is opened', async () => {
    const at = await done();
    const name = at.find('.field input') as HTMLInputElement;
    name.value = 'Ana Ruiz';
    name.dispatchEvent(new Event('change'));
    await at.drawn();
    const text = await saved(at);
    const record = readRecord(text);
    expect(record.learner.name).toBe('Ana Ruiz');
    expect(record.attempts).toHaveLength(1);
    await open(at, text);
    expect(at.find('.trouble').textContent).toBe(en.opened(1));
    expect(readRecord(await saved(at)).attempts).toEqual(record.attempts);
    expect(at.find('.record').textContent).toContain('Ana Ruiz');
    await expectSound(at);
    expectRoom(at);
  });

  test.each([
    ['no file of a learner', '{"format":1}', 'learner'],
    ['not JSON', '{"format":', ''],
  ])('that is %s is refused with the place of the fault, and nothing is lost', async (_, text, place) => {
    const at = await done();
    const before = await saved(at);
    await open(at, text);
    expect(at.find('.trouble').textContent).toContain(en.bad('mine.json'));
    expect(at.find('.trouble').textContent).toContain(place);
    expect(await saved(at)).toBe(before);
    await expectSound(at);
  });

  test('of another key is refused', async () => {
    const at = await done();
    const before = await saved(at);
    await open(at, before.replace(`"id":"${key}"`, '"id":"orchard"'));
    expect(at.find('.trouble').textContent).toContain('key.id');
    expect(await saved(at)).toBe(before);
  });

  test('of somebody else puts them in front, and the first learner stays to be chosen', async () => {
    const at = await done();
    const mine = await saved(at);
    const { learner } = readRecord(mine);
    await open(at, mine.replace(learner.id, '11111111-2222-4333-8444-555555555555'));
    expect(readRecord(await saved(at)).learner.id).toBe('11111111-2222-4333-8444-555555555555');
    await at.press(en.crew.unnamed(1));
    await vi.waitFor(async () => expect(readRecord(await saved(at)).learner.id).toBe(learner.id));
  });

  test('prints as the record alone, with every plant and lines to sign on', async () => {
    const at = await done();
    await withMedia({ print: true }, async () => {
      const shown = at.all('.room > *').filter((one) => one.getBoundingClientRect().height > 0);
      expect(shown.map((one) => one.className)).toEqual(['record']);
      expect(at.all('.record .readiness tbody tr')).toHaveLength(2);
      expect(at.all('.sign p').map((one) => one.textContent)).toEqual([en.signature, en.lead, en.date]);
    });
  });
});

test('every screen is sound in the dark, and without motion', async () => {
  await withMedia({ colorScheme: 'dark', reducedMotion: 'reduce' }, async () => {
    const at = await room([courseOf(KINDS)], 1280);
    await expectSound(at);
    expectRoom(at);
    await at.press(en.figures);
    expect(at.text()).toContain(en.nothingYet);
    await expectSound(at);
    await at.press(en.back);
    await at.press(en.file);
    await expectSound(at);
  });
});

test('a key without courses says so', async () => {
  const at = await held<LeadwortPractice>(html`<leadwort-practice></leadwort-practice>`, session());
  at.holder.album.setValue(albumWith([]));
  await vi.waitFor(() => expect(at.text()).toBe(en.none));
});
