import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { picturedBundle, smallAlbum, withPhoto } from '../../../tests/support/small-album.ts';
import './define.ts';
import type { LeadwortKey } from './key.ts';

const BUNDLE = new URL('keys/small.json', document.baseURI).href;
const ALBUM = new URL('keys/small.album.json', document.baseURI).href;
const text = (content: unknown) => (typeof content === 'string' ? content : JSON.stringify(content));

/** A host with these files: what was asked of it, and a gate that holds the album back. */
function host(bundle: unknown, album?: unknown) {
  const asked: string[] = [];
  const files = new Map([[BUNDLE, text(bundle)]]);
  if (album !== undefined) files.set(ALBUM, text(album));
  let open = () => {};
  const gate = new Promise<void>((resolve) => {
    open = resolve;
  });
  vi.spyOn(globalThis, 'fetch').mockImplementation(async (address) => {
    asked.push(String(address));
    if (String(address) === ALBUM) await gate;
    const body = files.get(String(address));
    return body === undefined ? new Response('', { status: 404 }) : new Response(body);
  });
  return { asked, files, open };
}
afterEach(() => {
  vi.restoreAllMocks();
});

async function opened(width = 360) {
  const frame = await fixture<HTMLElement>(html`<div></div>`);
  frame.style.inlineSize = `${width}px`;
  const key = document.createElement('leadwort-key') as LeadwortKey;
  key.src = 'keys/small.json';
  key.month = 9;
  frame.append(key);
  await expect.poll(() => root(key)?.querySelector('.card')).toBeTruthy();
  return key;
}
const root = (key: LeadwortKey) => key.shadowRoot?.querySelector('[part=question]')?.shadowRoot as ShadowRoot;
const cards = (key: LeadwortKey) => [...root(key).querySelectorAll<HTMLElement>('.card')];
const drawn = (key: LeadwortKey, pen: string) => root(key).querySelectorAll(`.card svg .${pen}`).length;
const album = (key: LeadwortKey) => expect.poll(() => drawn(key, 'mark')).toBeGreaterThan(0);
const places = (key: LeadwortKey) =>
  [...root(key).querySelectorAll('.card, .bar, [role=heading]')].map((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return [x, y, width, height].map(Math.round);
  });
async function free(key: LeadwortKey) {
  key.shadowRoot?.querySelector<HTMLInputElement>('input[value=free]')?.click();
  await expect.poll(() => root(key)?.host.localName).toBe('leadwort-question');
  await expect.poll(() => root(key)?.querySelector('.card')).toBeTruthy();
}
async function skip(key: LeadwortKey) {
  const before = root(key).querySelector('[role=heading]')?.textContent;
  root(key).querySelector<HTMLElement>('.skip')?.click();
  await expect.poll(() => root(key)?.querySelector('[role=heading]')?.textContent).not.toBe(before);
}

describe('pictures', () => {
  test('of the first couplet are there before the album, and nothing moves when it comes', async () => {
    await page.viewport(360, 740);
    const { asked, open } = host(picturedBundle, smallAlbum);
    const key = await opened();
    expect(drawn(key, 'trace')).toBe(2);
    await expect.poll(() => asked).toContain(ALBUM);
    await expect.poll(() => key.shadowRoot?.querySelector('leadwort-standing')?.shadowRoot).toBeTruthy();
    const before = places(key);
    const shifts: PerformanceEntry[] = [];
    const observer = new PerformanceObserver((list) => shifts.push(...list.getEntries()));
    observer.observe({ type: 'layout-shift', buffered: false });
    open();
    await album(key);
    await new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next)));
    shifts.push(...observer.takeRecords());
    observer.disconnect();
    expect(places(key)).toEqual(before);
    expect(shifts).toEqual([]);
    expect(asked).toEqual([BUNDLE, ALBUM]);
  });

  test.each([280, 360, 1000])(
    'keep their room in a free question %d px wide until the album is there',
    async (width) => {
      const { opening: _, ...bundle } = picturedBundle;
      const { open } = host(bundle, smallAlbum);
      const key = await opened(width);
      await free(key);
      const before = places(key);
      expect(root(key).querySelectorAll('.card .place').length).toBe(cards(key).length);
      open();
      await album(key);
      expect(places(key)).toEqual(before);
      expect(root(key).host.scrollWidth).toBeLessThanOrEqual(root(key).host.clientWidth + 1);
    },
  );

  test.each([280, 360, 600, 1000])('stand above the words where many short answers share %d px', async (width) => {
    const characters = picturedBundle.characters.characters.map((one) => {
      if (one.id !== 'growth-form') return one;
      const more = ['fern', 'vine', 'tree'].map((id) => ({ id }));
      return { ...one, states: [...(one.states ?? []), ...more].map((of) => ({ ...of, label: `A ${of.id}` })) };
    });
    host({ ...picturedBundle, characters: { ...picturedBundle.characters, characters } }, smallAlbum).open();
    const key = await opened(width);
    await free(key);
    while (cards(key).length < 6) await skip(key);
    for (const card of cards(key)) {
      const [place, words] = ['.place', '.text'].map((one) => card.querySelector(one)?.getBoundingClientRect());
      expect(words?.top).toBeGreaterThanOrEqual(place?.bottom ?? 0);
      expect(words?.width).toBeGreaterThan(card.clientWidth / 2);
    }
  });

  test('describe a choice and are no part of its name', async () => {
    const { open } = host(picturedBundle, smallAlbum);
    open();
    const key = await opened();
    await album(key);
    await free(key);
    const input = root(key).querySelector('input') as HTMLInputElement;
    expect(root(key).getElementById(input.getAttribute('aria-describedby') ?? '')?.textContent).toMatch(/^Seen: /);
    expect(input.labels?.[0]?.textContent).not.toContain('Seen');
    key.lang = 'es';
    await expect.poll(() => root(key).querySelector('[id^=seen]')?.textContent).toMatch(/^Se ve: /);
  });

  test('are accessible, keep to a strict policy, and hold in forced colours, the dark and print', async () => {
    const { open } = host(picturedBundle, smallAlbum);
    open();
    const key = await opened();
    await album(key);
    for (const way of ['couplets', 'free']) {
      if (way === 'free') await free(key);
      cards(key)[1]?.click();
      await expectAccessible(key);
      expectPolicyProof(key);
      const mark = () => getComputedStyle(root(key).querySelector('.mark') as Element).stroke;
      const plain = mark();
      await withMedia({ forcedColors: 'active' }, async () => {
        await expectAccessible(key);
        expect(mark()).not.toBe(plain);
      });
      await withMedia({ colorScheme: 'dark' }, () => expectAccessible(key));
      await withMedia({ print: true }, () => expect(mark()).toBe('rgb(0, 0, 0)'));
    }
  });

  test('leave the room of the chosen card unmistakable', async () => {
    const { open } = host(picturedBundle, smallAlbum);
    open();
    const key = await opened();
    cards(key)[1]?.click();
    const [other, chosen] = cards(key).map((card) => getComputedStyle(card));
    await expect.poll(() => chosen?.borderColor).not.toBe(other?.borderColor);
    expect(chosen?.backgroundColor).not.toBe(other?.backgroundColor);
    expect(chosen?.boxShadow).not.toBe('none');
  });
});

describe('without an album', () => {
  test('a bundle that names none asks for nothing and shows words', async () => {
    const { opening: _, album: __, ...bundle } = picturedBundle;
    const { asked } = host(bundle);
    const key = await opened();
    await free(key);
    expect(root(key).querySelector('.place, svg')).toBeNull();
    expect(cards(key)[0]?.textContent?.trim()).not.toBe('');
    expect(asked).toEqual([BUNDLE]);
  });

  test.each([
    ['is not there', undefined],
    ['is no album', '{"format": 1}'],
    ['is cut off', JSON.stringify(smallAlbum).slice(0, 300)],
  ])('that %s, nobody is told, and it is tried again with the next question', async (_, broken) => {
    const { asked, files, open } = host(picturedBundle, broken);
    open();
    const key = await opened();
    await free(key);
    await expect.poll(() => asked.filter((one) => one === ALBUM).length).toBeGreaterThan(0);
    await skip(key);
    expect(key.shadowRoot?.querySelector('[part=status]')?.textContent?.trim()).toBe('');
    expect(key.shadowRoot?.querySelector('.page')?.textContent).not.toContain('did not come');
    files.set(ALBUM, text(smallAlbum));
    await skip(key);
    // What is on the screen stays as it is; the same question put anew has its pictures.
    const again = async () => {
      key.shadowRoot?.querySelector<HTMLInputElement>('input[value=couplets]')?.click();
      await key.updateComplete;
      await free(key);
      return drawn(key, 'mark');
    };
    await expect.poll(again).toBeGreaterThan(0);
    await expectAccessible(key);
  });

  test.each([
    ['another version', { ...smallAlbum, version: '0.9.0' }],
    ['another key', { ...smallAlbum, key: 'other-key' }],
  ])('one of %s is dropped and not asked for again', async (_, stale) => {
    const { asked, open } = host(picturedBundle, stale);
    open();
    const key = await opened();
    await expect.poll(() => asked).toContain(ALBUM);
    await free(key);
    await skip(key);
    await skip(key);
    expect(drawn(key, 'mark')).toBe(0);
    expect(asked).toEqual([BUNDLE, ALBUM]);
  });
});

describe('photographs', () => {
  const photographed = withPhoto('leaf-base-mark/brown-wedge', 'leaf-base-mark/wedge.jpg');
  const photo = (key: LeadwortKey) => root(key).querySelector<HTMLImageElement>('img');

  test('are not asked for without an address', async () => {
    const { open } = host(picturedBundle, photographed);
    open();
    const key = await opened();
    await album(key);
    expect(photo(key)).toBeNull();
    expect(drawn(key, 'mark')).toBe(2);
  });

  test('come from the folder the page names, before the drawing, which stays behind one that fails', async () => {
    const { open } = host(picturedBundle, photographed);
    open();
    const key = await opened();
    key.images = 'pictures';
    await expect.poll(() => photo(key)).toBeTruthy();
    const shown = photo(key) as HTMLImageElement;
    const folder = new URL('pictures/', document.baseURI).href;
    expect(shown.src).toBe(`${folder}leaf-base-mark/wedge.jpg`);
    expect(shown.srcset).toBe(`${folder}leaf-base-mark/wedge-400.jpg 400w, ${folder}leaf-base-mark/wedge.jpg 1200w`);
    expect([shown.width, shown.loading, shown.decoding, shown.alt]).toEqual([shown.width, 'lazy', 'async', '']);
    expect(shown.parentElement?.querySelector('svg')).not.toBeNull();
    // There is no such file on the test's own host.
    await expect.poll(() => shown.hidden).toBe(true);
    await expectAccessible(key);
  });
});
