import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { english, expectRoom, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { addressOf } from '../../../tests/support/small-bundle.ts';
import { answersOf } from '../../../tests/support/streambank.ts';
import './define.ts';
import type { LeadwortNearby } from './nearby.ts';

const demo = await (await fetch(new URL('../../site/areas/sallow-fork.geojson', import.meta.url))).text();
const DAY = '2026-11-25';
const INSIDE = '30.72, -99.03';
const HOLE = '30.677, -98.97';
const FAR = '29.4, -95.2';

const root = (of: LeadwortNearby) => of.shadowRoot as ShadowRoot;
const text = (of: LeadwortNearby) => (root(of).textContent ?? '').replaceAll(/\s+/g, ' ').trim();
const find = <E extends HTMLElement>(of: LeadwortNearby, selector: string) => root(of).querySelector<E>(selector) as E;
const button = (of: LeadwortNearby, words: string) =>
  [...root(of).querySelectorAll<HTMLElement>('button, summary, a')].find((one) =>
    one.textContent?.includes(words),
  ) as HTMLElement;

async function alone(changes: Partial<LeadwortNearby> = {}, lang = 'en', width = 380): Promise<LeadwortNearby> {
  const frame = await fixture<HTMLElement>(html`<div lang=${lang}></div>`);
  frame.style.inlineSize = `${width}px`;
  const part = document.createElement('leadwort-nearby') as LeadwortNearby;
  Object.assign(part, { areas: addressOf(demo), today: DAY, ...changes });
  frame.append(part);
  await expect.poll(() => find(part, '.heading')).toBeTruthy();
  return part;
}

async function ready(changes: Partial<LeadwortNearby> = {}, lang = 'en', width = 380): Promise<LeadwortNearby> {
  const part = await alone(changes, lang, width);
  await expect.poll(() => find(part, '.choose')).toBeTruthy();
  return part;
}

/** Types a place and sends it, as a person does. */
async function type(part: LeadwortNearby, place: string): Promise<void> {
  const details = find<HTMLDetailsElement>(part, '.by-numbers');
  details.open = true;
  const input = find<HTMLInputElement>(part, 'input');
  await userEvent.fill(input, place);
  input.focus();
  await userEvent.keyboard('{Enter}');
  await part.updateComplete;
}

const device = Object.getOwnPropertyDescriptor(Navigator.prototype, 'geolocation');
let asked = 0;
/** Stands for the device: a place, or an error's code. */
function stub(answer: { latitude: number; longitude: number; accuracy: number } | number | undefined): void {
  asked = 0;
  const geolocation =
    answer === undefined
      ? undefined
      : {
          getCurrentPosition(done: (at: object) => void, fail: (error: object) => void) {
            asked++;
            setTimeout(() => (typeof answer === 'number' ? fail({ code: answer }) : done({ coords: answer })));
          },
        };
  Object.defineProperty(navigator, 'geolocation', { value: geolocation, configurable: true });
}
afterEach(() => {
  Reflect.deleteProperty(navigator, 'geolocation');
  expect(Object.getOwnPropertyDescriptor(Navigator.prototype, 'geolocation')).toEqual(device);
});

describe('the place', () => {
  test('is not asked of the device until a person presses the button', async () => {
    stub({ latitude: 30.72, longitude: -99.03, accuracy: 12 });
    const part = await ready();
    expect(asked).toBe(0);
    await userEvent.click(button(part, 'Use where I am now'));
    await expect.poll(() => text(part)).toContain('A program serves this place');
    expect(asked).toBe(1);
    expect(text(part)).toContain('Your place, from this device: 30.7200° N, 99.0300° W, good to about 40 ft (12 m).');
    expect(root(part).activeElement).toBe(find(part, '.answer'));
    await expectAccessible(part);
  });

  test.each([
    [1, 'not allowed'],
    [2, 'cannot tell where you are, perhaps'],
    [3, 'took too long'],
    [undefined, 'This device or browser cannot'],
  ] as const)('that the device does not give (%s) leads on: %s', async (code, words) => {
    stub(code);
    const part = await ready();
    await userEvent.click(button(part, 'Use where I am now'));
    await expect.poll(() => text(part)).toContain(words);
    expect(text(part)).toContain('You can point on the map, type the numbers, or ask without saying where.');
    await expectAccessible(part);
    await type(part, INSIDE);
    expect(text(part)).toContain('Upper Fork Cane Program');
  });

  test('typed wrong is said beside the field, which keeps what was typed', async () => {
    const part = await ready();
    await type(part, '-99.03, 30.72');
    const input = find<HTMLInputElement>(part, 'input');
    expect(find(part, '[role=alert]').textContent).toContain('latitude comes first');
    expect(input.value).toBe('-99.03, 30.72');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(root(part).activeElement).toBe(input);
    await expectAccessible(part);
    await type(part, INSIDE);
    expect(find(part, '[role=alert]').textContent?.trim()).toBe('');
    expect(input.getAttribute('aria-invalid')).toBe('false');
  });

  test('without its minus is noticed, and mended by one press', async () => {
    const part = await ready();
    await type(part, '30.72, 99.03');
    expect(text(part)).toContain('No program on this page reaches this place');
    expect(text(part)).toContain('Did you leave out a minus, or a W?');
    await userEvent.click(button(part, 'Use that place'));
    await expect.poll(() => text(part)).toContain('A program serves this place');
  });

  test('is told to nobody: no event, no request', async () => {
    const part = await ready();
    const told: string[] = [];
    for (const name of ['leadwort-help', 'leadwort-answer', 'leadwort-verdict'])
      part.addEventListener(name, () => told.push(name));
    const before = performance.getEntriesByType('resource').length;
    await type(part, INSIDE);
    expect(text(part)).toContain('Upper Fork');
    expect(told).toEqual([]);
    expect(performance.getEntriesByType('resource')).toHaveLength(before);
  });
});

describe('the map', () => {
  const map = (part: LeadwortNearby) => find(part, '.map');
  async function open(changes: Partial<LeadwortNearby> = {}, width = 380) {
    const part = await ready(changes, 'en', width);
    await userEvent.click(button(part, 'Point on a map'));
    return part;
  }

  test('shows the areas that go on, by number and name, and what to find one’s way by', async () => {
    const part = await open();
    expect(root(part).querySelectorAll('path.area')).toHaveLength(2);
    const legend = find(part, '.legend').textContent?.replaceAll(/\s+/g, ' ');
    expect(legend).toContain('1 Upper Fork Cane Program');
    expect(legend).not.toContain('Mill Pond');
    expect(find(part, 'svg').textContent).toContain('Willow Draw');
    expect(find(part, 'svg').textContent).toContain('5 mi (8 km)');
  });

  test('takes a tap: the cross stands where the finger was, and says what it stands on', async () => {
    const part = await open();
    const label = root(part).querySelectorAll('circle.plate')[1] as SVGCircleElement;
    const at = label.getBoundingClientRect();
    const [x, y] = [at.left + at.width / 2, at.top + at.height / 2];
    map(part).dispatchEvent(new MouseEvent('click', { clientX: x, clientY: y, bubbles: true }));
    await part.updateComplete;
    const cross = (root(part).querySelector('.aim') as SVGCircleElement).getBoundingClientRect();
    expect(Math.hypot(cross.left + cross.width / 2 - x, cross.top + cross.height / 2 - y)).toBeLessThan(2);
    expect(find(part, '.pointing [role=status]').textContent).toContain('Lower Fork Bank Watch');
    await userEvent.click(button(part, 'Find who helps here'));
    await expect.poll(() => text(part)).toContain('A program serves this place');
    expect(text(part)).toContain('The place on the map');
    await expectAccessible(part);
  });

  test('goes by keyboard alone: arrows move the cross, Shift in small steps, Enter takes the place', async () => {
    const part = await open();
    map(part).focus();
    const aim = () => Number(root(part).querySelector('.aim')?.getAttribute('cx'));
    await userEvent.keyboard('{ArrowLeft}');
    await part.updateComplete;
    const first = aim();
    await userEvent.keyboard('{ArrowLeft}');
    await part.updateComplete;
    expect(first - aim()).toBeCloseTo(24, 1);
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
    await part.updateComplete;
    expect(aim() - (first - 24)).toBeCloseTo(3, 1);
    for (let i = 0; i < 40; i++) await userEvent.keyboard('{ArrowLeft}');
    await part.updateComplete;
    expect(aim()).toBeCloseTo(0, 6);
    for (let i = 0; i < 6; i++) await userEvent.keyboard('{ArrowRight}');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => text(part)).toContain('The place on the map');
    expect(root(part).activeElement).toBe(find(part, '.answer'));
  });

  test('of areas across the antimeridian draws them side by side', async () => {
    const box = (west: number, east: number) => [
      [
        [west, -20],
        [east, -20],
        [east, -16],
        [west, -16],
        [west, -20],
      ],
    ];
    const feature = {
      type: 'Feature',
      properties: { programme: 'Fiji', contacts: [{ phone: '555-0100' }], reviewed: DAY },
      geometry: { type: 'MultiPolygon', coordinates: [box(177, 180), box(-180, -178)] },
    };
    const part = await open({ areas: addressOf({ type: 'FeatureCollection', features: [feature] }) });
    const box_ = (root(part).querySelector('path.area') as SVGPathElement).getBBox();
    expect(box_.width).toBeGreaterThan(400);
    expect(box_.width).toBeLessThan(600);
  });
});

describe('who helps', () => {
  test('inside: the programme, what it offers and until when, with its telephone, mail and form', async () => {
    const part = await ready();
    await type(part, INSIDE);
    const card = find(part, '.programme').textContent?.replaceAll(/\s+/g, ' ') ?? '';
    for (const words of [
      'Upper Fork Cane Program',
      'Sallow Fork Stream Stewards',
      'Treatment at no cost to you',
      'Maribel Ostrander',
      'Monday to Friday, 8 to 4',
      'In English and Spanish',
      'Goes on until May 31, 2028.',
      'Checked on October 15, 2026.',
    ])
      expect(card).toContain(words);
    const [call, write, form] = [...find(part, '.programme').querySelectorAll('a')];
    expect(call?.getAttribute('href')).toBe('tel:5550142');
    expect(write?.getAttribute('href')).toMatch(
      /^mailto:plants@example\.org\?subject=A%20plant%20at%20the%20stream&body=/,
    );
    expect(form?.getAttribute('href')).toBe('https://example.org/sallow-fork/ask');
    expect([form?.target, form?.rel]).toEqual(['_blank', 'noopener noreferrer']);
    await expectAccessible(part);
  });

  test('in a hole: near, with the distance in both systems', async () => {
    const part = await ready();
    await type(part, HOLE);
    expect(text(part)).toMatch(/No program serves this very place, but one is \d[\d,.]* (mi|ft) \([\d,.]+ k?m\) away/);
    expect(find(part, '.programme').textContent).toContain('Upper Fork Cane Program');
  });

  test('outside: how far the nearest is, and whom to ask instead', async () => {
    const part = await ready();
    await type(part, FAR);
    expect(text(part)).toContain('No program on this page reaches this place');
    expect(text(part)).toMatch(/The nearest is Lower Fork Bank Watch, \d{3} mi \(\d{3} km\) away\./);
    expect(text(part)).toContain('Sallow County extension office');
    expect(root(part).querySelector('.programme')).toBeNull();
    await expectAccessible(part);
  });

  test('what has ended is said where it was, and not offered', async () => {
    const part = await ready();
    await type(part, '30.555, -98.78');
    expect(text(part)).toContain(
      'Mill Pond Elephant-ear Drive worked here until June 30, 2026. It has come to its end.',
    );
    expect(text(part)).not.toContain('555-0118');
    expect(find(part, '.programme').textContent).toContain('Lower Fork Bank Watch');
  });

  test('a review day that has passed is said', async () => {
    const part = await ready({ today: '2027-03-02' });
    await type(part, '30.555, -98.78');
    expect(text(part)).toContain(
      'Last checked on September 2, 2026, and due for another check. Ask whether it still holds.',
    );
  });

  test('an edge nearer than the place is known is said', async () => {
    stub({ latitude: 30.72, longitude: -99.03, accuracy: 6000 });
    const part = await ready();
    await userEvent.click(button(part, 'Use where I am now'));
    await expect.poll(() => text(part)).toContain('your place is only known to about 3.7 mi (6 km)');
  });

  test('a way that is opened tells the page which programme and how, and nothing else', async () => {
    const part = await ready();
    const told: unknown[] = [];
    part.addEventListener('leadwort-help', (event) => told.push(event.detail));
    await type(part, INSIDE);
    root(part).addEventListener('click', (event) => event.preventDefault());
    for (const link of find(part, '.programme').querySelectorAll('a')) link.click();
    button(part, 'Write to extension').click();
    expect(told).toEqual([
      { programme: 'upper-fork', how: 'phone' },
      { programme: 'upper-fork', how: 'mail' },
      { programme: 'upper-fork', how: 'form' },
      { programme: 'elsewhere', how: 'mail' },
    ]);
  });

  test('without a file it names whoever keeps the page', async () => {
    const part = await alone({ areas: '', contactPhone: '555-0142', contactEmail: 'plants@example.org' });
    const told: unknown[] = [];
    part.addEventListener('leadwort-help', (event) => told.push(event.detail));
    root(part).addEventListener('click', (event) => event.preventDefault());
    for (const link of find(part, '.asking').querySelectorAll('a')) link.click();
    expect(told).toEqual([
      { programme: 'page', how: 'phone' },
      { programme: 'page', how: 'mail' },
    ]);
  });

  test('without any file or contact it still says where to turn', async () => {
    const part = await alone({ areas: '' });
    expect(text(part)).toContain('Try your county extension office');
    expect(text(part)).toContain('Look upstream too');
    expect(root(part).querySelector('.choose')).toBeNull();
    await expectAccessible(part);
  });
});

describe('a list that cannot be used', () => {
  test('for want of a connection is asked for again', async () => {
    const part = await alone({ areas: '/no/such/file.geojson', contactPhone: '555-0142' });
    await expect.poll(() => text(part)).toMatch(/did not come|has mistakes/);
    expect(button(part, 'Call 555-0142').getAttribute('href')).toBe('tel:5550142');
    part.areas = addressOf(demo);
    await expect.poll(() => find(part, '.choose')).toBeTruthy();
  });

  test('for its mistakes says which and where, and keeps the people to call', async () => {
    const wrong = JSON.parse(demo);
    wrong.features[0].properties.untill = '2026-01-01';
    const part = await alone({ areas: addressOf(wrong), contactEmail: 'plants@example.org' });
    await expect.poll(() => text(part)).toContain('features[0].properties.untill');
    expect(button(part, 'Write to plants@example.org')).toBeTruthy();
    await expectAccessible(part);
  });
});

describe('inside a key', () => {
  const inKey = async (plant: Parameters<typeof answersOf>[0], settings = english): Promise<Held<LeadwortNearby>> => {
    const part = await held<LeadwortNearby>(
      html`<leadwort-nearby areas=${addressOf(demo)} today=${DAY}></leadwort-nearby>`,
      answersOf(plant),
      settings,
    );
    await expect.poll(() => part.all('.choose').length).toBe(1);
    return part;
  };

  test('the programme for the plant comes first, and mail begins with its name', async () => {
    const part = await inKey('giant-reed');
    await type(part.part, INSIDE);
    expect(part.find('.programme').textContent).toContain('Meant for giant reed');
    const mail = new URL(part.find('.programme a[href^=mailto]').getAttribute('href') ?? '');
    expect(mail.searchParams.get('subject')).toMatch(/giant reed/);
    expect(mail.searchParams.get('body')).toMatch(
      /after \d+ answers\. Nobody has confirmed it\.\r\nPlace: 30\.7200° N, 99\.0300° W/,
    );
    await expectSound(part);
    expectRoom(part);
  });

  test('a programme for another plant says so', async () => {
    const part = await inKey('elephant-ear');
    await type(part.part, INSIDE);
    expect(part.text()).toContain('This program is for giant reed.');
  });

  test('a plant that the key does not know is to be left, and asked about', async () => {
    const part = await inKey('pond-algae');
    expect(part.find('.heading').textContent).toBe('Ask before you do anything');
    expect(part.text()).toContain('Leave it as it stands');
    const mail = new URL(part.find('.asking a[href^=mailto]').getAttribute('href') ?? '');
    expect(mail.searchParams.get('subject')).toBe('A plant that the key does not know');
    await expectSound(part);
  });

  test('a native is left alone, upstream too', async () => {
    const part = await inKey('arrow-arum');
    expect(part.text()).not.toContain('Look upstream too');
  });

  test('in Spanish, from right to left and in a narrow column it holds together', async () => {
    const part = await held<LeadwortNearby>(
      html`<leadwort-nearby areas=${addressOf(demo)} today=${DAY}></leadwort-nearby>`,
      answersOf('giant-reed'),
      { ...(await spanish()), headingLevel: 5 },
      html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
    );
    await expect.poll(() => part.text()).toContain('Quién ayuda cerca de usted');
    await expect.poll(() => part.all('.choose').length).toBe(1);
    await type(part.part, '30,72 N 99,03 O');
    expect(part.text()).toContain('Tratamiento sin costo para usted');
    expect(part.text()).toContain('Llamar al 555-0142');
    for (const details of part.all('details')) (details as HTMLDetailsElement).open = true;
    await expectSound(part);
    expect(part.find('.heading').getAttribute('aria-level')).toBe('5');
  });
});

describe('everywhere', () => {
  test.each([280, 360, 768, 1400])('fits into %d px with everything open', async (width) => {
    await page.viewport(Math.max(width + 40, 400), 900);
    const part = await ready({ contactPhone: '555-0142', contactEmail: 'plants@example.org' }, 'en', width);
    await type(part, INSIDE);
    for (const details of root(part).querySelectorAll('details')) details.open = true;
    expect(part.scrollWidth).toBeLessThanOrEqual(part.clientWidth + 1);
    const right = part.getBoundingClientRect().right;
    for (const one of root(part).querySelectorAll('a, p, button, input, summary, .map'))
      expect(one.getBoundingClientRect().right, one.textContent ?? '').toBeLessThanOrEqual(right + 1);
    for (const one of root(part).querySelectorAll('a, button, summary'))
      expect(one.getBoundingClientRect().height, one.textContent ?? '').toBeGreaterThanOrEqual(47.5);
  });

  test('in the dark and in forced colours nothing is lost, and nothing is inline', async () => {
    const part = await ready();
    await type(part, INSIDE);
    for (const details of root(part).querySelectorAll('details')) details.open = true;
    document.documentElement.style.colorScheme = 'dark';
    // What the page has behind it there.
    (part.parentElement as HTMLElement).style.background = '#141a17';
    try {
      await expectAccessible(part);
    } finally {
      document.documentElement.style.colorScheme = '';
    }
    await withMedia({ forcedColors: 'active' }, () => expectAccessible(part));
    expectPolicyProof(part);
  });

  test('on paper the address stands without what can be pressed only on a screen', async () => {
    const part = await ready();
    await type(part, INSIDE);
    await withMedia({ print: true }, () => {
      expect(find(part, '.choose').getBoundingClientRect().height).toBe(0);
      expect(find(part, '.print').textContent).toBe('https://example.org/sallow-fork/ask');
      expect(find(part, '.print').getBoundingClientRect().height).toBeGreaterThan(0);
      expect(find(part, '.programme a').getBoundingClientRect().height).toBeGreaterThan(0);
      expect(find(part, '.programme a').textContent).toContain('555-0142');
    });
  });

  test('the language of the page can change under it', async () => {
    const part = await ready();
    (part.parentElement as HTMLElement).lang = 'es';
    await expect.poll(() => text(part)).toContain('Quién ayuda cerca de usted');
    (part.parentElement as HTMLElement).lang = 'en';
    await expect.poll(() => text(part)).toContain('Who helps near you');
  });
});
