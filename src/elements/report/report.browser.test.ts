import { html } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { english, expectRoom, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { handedOut, photoFile, receiver, reporting } from '../../../tests/support/reporting.ts';
import { answered, answeredUntil, answersOf, verdictIs } from '../../../tests/support/streambank.ts';
import { type Find, readFind } from '../../report/find/index.ts';
import { takenAt } from '../../report/photos/position.ts';
import './define.ts';
import { DraftStore } from '../../store/drafts.ts';
import type { Draft } from './draft.ts';
import { deviceKeeper, memoryKeeper } from './keeper.ts';
import { queueOf } from './queue.ts';
import type { LeadwortReport } from './report.ts';

/** Opens a saved report. */
async function opened(part: { find: (selector: string) => HTMLElement }, text: string): Promise<void> {
  const files = new DataTransfer();
  files.items.add(new File([text], 'find.json'));
  const input = part.find('.files input') as HTMLInputElement;
  input.files = files.files;
  input.dispatchEvent(new Event('change'));
}

const pixel = (canvas: HTMLCanvasElement, x: number, y: number) =>
  [...(canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(x, y, 1, 1).data].slice(0, 3);

describe('what is needed', () => {
  // That a report needs the plant, the place, the size, the day and the person is the North American standard's "five
  // questions" (NAISMA); of these the size and the person are asked for and not required (ours), a photograph is.
  test('before a question of the key was answered only telling of none is offered', async () => {
    const part = await reporting({ store: answered({}) });
    expect(part.text()).toMatch(/^Your report I looked for a plant and saw none/);
    expect(part.all('input, select, textarea, button')).toHaveLength(1);
    await expectSound(part);
  });

  test('is four things, each said to be there as it comes, and no more', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint });
    const states = () => part.all('.state').map((one) => one.textContent);
    expect(states()).toEqual(['needed', 'needed', 'done', 'done']);
    expect(part.find('.lacking[role=status]').textContent).toBe(
      'Still needed: a photograph (or why there is none) and the place.',
    );
    await part.press('Send the report');
    expect(part.root.activeElement).toBe(part.find('.photos .picker input'));
    await part.photograph(['with-place.jpg']);
    expect(states()).toEqual(['done', 'needed', 'done', 'done']);
    await part.press('Send the report');
    expect(part.root.activeElement?.id).toBe('place');
    await part.type('place', '30.2096, -97.7355');
    expect(states()).toEqual(['done', 'done', 'done', 'done']);
    await part.type('date', '');
    expect(states()).toEqual(['done', 'done', 'needed', 'done']);
    expect((await came()).seen).toEqual([]);
    await part.type('date', '2026-11-24');
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    expect((await came()).seen).toHaveLength(1);
  });

  test('can be a reason instead of a photograph', async () => {
    const part = await reporting();
    await part.type('noPhotos', 'The light is gone.');
    await part.type('place', '30.2096, -97.7355');
    expect(part.all('.lacking[role=status]')[0]?.textContent).toBe('');
  });

  test('an open verdict can be reported too', async () => {
    const part = await reporting({ store: answeredUntil('giant-reed', verdictIs('open')) });
    expect(part.text()).toContain('Too early to say.');
    await expectSound(part);
  });
});

describe('a plant that was looked for and not seen', () => {
  const noneSeen = async (part: Awaited<ReturnType<typeof reporting>>) => {
    (part.find('#none') as HTMLInputElement).click();
    await part.part.updateComplete;
  };

  test('needs no answer and no photograph, but the plant, the place, the date and what was searched', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint, store: answered({}) });
    await noneSeen(part);
    expect(part.all('.photos')).toHaveLength(0);
    expect(part.find('.lacking[role=status]').textContent).toBe(
      'Still needed: the plant you looked for, the place, and what you searched, and for how long.',
    );
    await expectSound(part);
    await part.press('Send the report');
    expect(part.root.activeElement?.id).toBe('sought');
    await part.type('sought', 'colocasia-esculenta');
    await part.type('place', '30.2096, -97.7355');
    await part.press('Send the report');
    expect(part.root.activeElement?.id).toBe('effort');
    await part.type('effort', 'Walked 200 yards, 40 minutes');
    await part.type('date', '');
    await part.press('Send the report');
    expect(part.root.activeElement?.id).toBe('date');
    await part.type('date', '2026-11-24');
    expect((await came()).seen).toEqual([]);
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    expect((await came()).seen[0]?.find).toMatchObject({
      detected: false,
      sought: { taxon: 'colocasia-esculenta', name: 'Colocasia esculenta' },
      effort: 'Walked 200 yards, 40 minutes',
      date: '2026-11-24',
      place: { lat: 30.2096 },
      photos: [],
    });
  });

  test('is the one that the answers lead to, unless another is chosen; what was typed of a stand is not told', async () => {
    const part = await reporting();
    await part.type('bankLength', 'twelve');
    await noneSeen(part);
    expect((part.find('#sought') as HTMLSelectElement).value).toBe('arundo-donax');
    await part.type('place', '30.2096, -97.7355');
    await part.type('effort', 'Walked 200 yards');
    expect(part.find('.lacking[role=status]').textContent).toBe('');
    expect(part.all('#bankLength, #height, .cover')).toHaveLength(0);
    const [file] = await handedOut(() => part.press('Save as a file'));
    const find = readFind(file?.text as string);
    expect(find).toMatchObject({ detected: false, sought: { taxon: 'arundo-donax', name: 'Arundo donax' } });
    await noneSeen(part);
    await part.unfold();
    expect((part.find('#bankLength') as HTMLInputElement).value).toBe('twelve');

    const other = await reporting({ store: answersOf('arrow-arum') });
    await opened(other, file?.text as string);
    await expect.poll(() => other.root.querySelector<HTMLTextAreaElement>('#effort')?.value).toBe('Walked 200 yards');
    expect((other.find('#sought') as HTMLSelectElement).value).toBe('arundo-donax');
    const [again] = await handedOut(() => other.press('Save as a file'));
    expect(readFind(again?.text as string)).toEqual({ ...find, changed: expect.any(String) });
  });

  test('in Spanish stays within a narrow column', async () => {
    const around = html`<div class="narrow"><test-holder></test-holder></div>`;
    const part = await reporting({ settings: await spanish(), around });
    await noneSeen(part);
    expect(part.text()).toContain('Qué recorrió, cómo y por cuánto tiempo');
    await expectSound(part);
    expectRoom({ ...part, all: () => part.all('button, select, label.target, textarea') });
  });
});

describe('photographs', () => {
  test('are asked for by what would settle it, drawn without an address, and hold no hidden data', async () => {
    const part = await reporting();
    expect(part.all('.wanted > li').length).toBeGreaterThanOrEqual(3);
    await part.photograph(['with-place.jpg'], '.wanted li:first-child .picker input');
    expect(part.all('.have')).toHaveLength(1);
    const canvas = part.find('canvas') as HTMLCanvasElement;
    await expect.poll(() => canvas.dataset.drawn).toBe('');
    await expect.poll(() => pixel(canvas, 2, 2)[1]).toBeGreaterThan(120);
    expect([canvas.width, canvas.height]).toEqual([80, 120]);
    expect(part.all('img')).toHaveLength(0);
    expect(part.text()).toContain('without the data that cameras hide in it');
  });

  test('several can be chosen at once, and each removed', async () => {
    const part = await reporting();
    await part.photograph(['with-place.jpg', 'plain.png']);
    expect(part.all('canvas')).toHaveLength(2);
    await part.press('Remove');
    expect(part.all('canvas')).toHaveLength(1);
    expect(part.root.activeElement?.matches('.picker input')).toBe(true);
  });

  test('that cannot be read are refused in words, and the others stay', async () => {
    const part = await reporting();
    await part.photograph(['plain.png']);
    await part.photograph(['plain.heic']);
    expect(part.text()).toContain('no photograph that this browser can read');
    expect(part.all('canvas')).toHaveLength(1);
  });

  test('are sent as they came only when somebody ticks it, and can be stripped again', async () => {
    const part = await reporting();
    await part.photograph(['with-place.jpg']);
    const saved = async () => {
      const [file] = await handedOut(() => part.press('Save as a file'));
      return readFind(file?.text as string).photos[0];
    };
    expect(await saved()).toMatchObject({ hiddenDataKept: false, width: 80, height: 120 });
    (part.find('#keep') as HTMLInputElement).click();
    await expect.poll(part.text).toContain('As it came, with its hidden data.');
    const kept = await saved();
    const bytes = Uint8Array.from(atob(kept?.data as string), (letter) => letter.charCodeAt(0));
    expect(await takenAt(new Blob([bytes]))).toBeDefined();
    await part.type('place', '30.2096, -97.7355');
    (part.find('input[name=tell][value="0.1"]') as HTMLInputElement).click();
    await part.part.updateComplete;
    expect(part.text()).toContain('may tell the exact place all the same');
    (part.find('#keep') as HTMLInputElement).click();
    await expect.poll(part.text).toContain('without the data that cameras hide in it');
  });
});

describe('the place', () => {
  const located = (answer: (done: PositionCallback, fail: PositionErrorCallback) => void) => {
    const asked = vi
      .spyOn(navigator.geolocation, 'getCurrentPosition')
      .mockImplementation((done, fail) => answer(done, fail as PositionErrorCallback));
    return asked;
  };

  test('is asked of the device only on a tap', async () => {
    const asked = located((done) =>
      done({ coords: { latitude: 30.2096, longitude: -97.7355271, accuracy: 12 } } as GeolocationPosition),
    );
    const part = await reporting();
    await part.photograph(['with-place.jpg']);
    expect(asked).not.toHaveBeenCalled();
    await part.press('Use where I am now');
    expect(asked).toHaveBeenCalledTimes(1);
    expect((part.find('#place') as HTMLInputElement).value).toBe('30.20960, -97.73553');
    expect((part.find('#uncertainty') as HTMLInputElement).value).toBe('40');
    expect((part.find('#uncertaintyUnit') as HTMLSelectElement).value).toBe('ft');
    expect(part.text()).toContain('From this device.');
    await part.type('place', '30.2, -97.7');
    expect(part.text()).toContain('As typed.');
    expect((part.find('#uncertainty') as HTMLInputElement).value).toBe('');
    asked.mockRestore();
  });

  test.each([
    [1, 'may not ask for your place'],
    [2, 'does not know where it is'],
    [3, 'took too long'],
  ])('that the device does not tell (%i) leads to another way', async (code, words) => {
    const asked = located((_, fail) => fail({ code } as GeolocationPositionError));
    const part = await reporting();
    await part.press('Use where I am now');
    expect(part.text()).toContain(words);
    asked.mockRestore();
  });

  test('is read from a photograph only when somebody agrees, with its day', async () => {
    const part = await reporting();
    await part.photograph(['without-place.jpg']);
    await part.press('Use the place in the photograph');
    await expect.poll(part.text).toContain('There is no place in these photographs.');
    await part.photograph(['with-place.jpg']);
    expect((part.find('#place') as HTMLInputElement).value).toBe('');
    await part.press('Use the place in the photograph');
    await expect.poll(() => (part.find('#place') as HTMLInputElement).value).toBe('30.20960, -97.73552');
    expect((part.find('#uncertainty') as HTMLInputElement).value).toBe('42');
    await expect.poll(() => (part.find('#date') as HTMLInputElement).value).toBe('2026-11-20');
    expect(part.text()).toContain('From the photograph.');
  });

  test('that cannot be read is kept as typed, told when it is left, and not sent', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint });
    await part.photograph(['with-place.jpg']);
    const field = part.find('#place') as HTMLInputElement;
    field.focus();
    await userEvent.keyboard('under the bridge');
    expect(part.find('#place-trouble').textContent).toBe('');
    await userEvent.keyboard('{Tab}');
    await expect.poll(() => part.find('#place-trouble').textContent).toContain('These are no coordinates.');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    await part.press('Send the report');
    expect(part.text()).toContain('nothing is lost');
    expect(field.value).toBe('under the bridge');
    expect((await came()).seen).toEqual([]);
    await expectSound(part);
  });

  test('goes roughly, with an uncertainty that fits, when that is wanted', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint });
    await part.fill();
    (part.find('input[name=tell][value="0.01"]') as HTMLInputElement).click();
    await part.part.updateComplete;
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    const find = (await came()).seen[0]?.find as Find;
    expect(find.consent.exactPlace).toBe(false);
    expect(JSON.stringify(find)).not.toContain('30.2096');
    expect(find.place).toMatchObject({ lat: 30.205, lon: -97.735 });
    expect(find.place?.uncertainty).toBeGreaterThan(700);
  });
});

describe('sending', () => {
  test('tells what was sent, when, and under which number, and hands over what may be told', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint });
    const told: unknown[] = [];
    part.holder.addEventListener('leadwort-report', (event) => told.push(event.detail));
    await part.fill();
    await part.type('bankLength', '120');
    await part.type('name', 'A. Person');
    await part.type('phone', '555-0142');
    await part.type('access', 'Gate by the mill');
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    const receipt = part.find('.receipt').textContent ?? '';
    for (const words of ['R-1', 'November 25, 2026', '1 photograph']) expect(receipt).toContain(words);
    expect(part.root.activeElement?.id).toBe('arrived');
    expect(told).toEqual([{ how: 'sent' }]);
    const { seen, kept } = await came();
    expect(kept).toHaveLength(1);
    expect(seen[0]?.photos).toHaveLength(1);
    const find = readFind(JSON.stringify(seen[0]?.find));
    expect(find).toMatchObject({
      date: '2026-11-25',
      place: { lat: 30.2096, lon: -97.7355, uncertainty: 30, source: 'typed' },
      extent: { bankLength: { value: 120, unit: 'ft' } },
      access: 'Gate by the mill',
      consent: { contact: false, exactPlace: true, photos: false },
    });
    expect(find.trail).toHaveLength(13);
    expect(find).not.toHaveProperty('contact');
    await expectSound(part);
  });

  test('the receipt can be copied', async () => {
    const part = await reporting({ endpoint: receiver('201').endpoint });
    const copied = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    await part.press('Copy this');
    await expect.poll(part.text).toContain('Copied.');
    expect(copied.mock.calls[0]?.[0]).toMatch(/^Receipt number: R-1\nWhen: November 25, 2026/);
    copied.mockRestore();
  });

  test('that has to wait is told so; tried again it arrives, once', async () => {
    const { endpoint, came } = receiver('far,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('Not sent yet');
    expect(part.text()).toContain('Your report is kept.');
    expect(part.root.activeElement?.matches('.waiting')).toBe(true);
    await expectSound(part);
    await part.press('Try again');
    await expect.poll(part.text).toContain('It arrived');
    const { seen, kept } = await came();
    expect(seen.map(({ key }) => key)).toEqual([seen[0]?.key, seen[0]?.key]);
    expect(kept).toHaveLength(1);
  });

  test('that found nobody goes by itself when the signal is back, once', async () => {
    const { endpoint, came } = receiver('503,503,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It goes by itself as soon as it can');
    expect((await came()).seen).toHaveLength(2);
    window.dispatchEvent(new Event('online'));
    await expect.poll(part.text).toContain('It arrived');
    expect(part.text()).not.toContain('Not sent yet');
    const { seen, kept } = await came();
    expect(new Set(seen.map(({ key }) => key)).size).toBe(1);
    expect(kept).toHaveLength(1);
  });

  test('that arrived while the element was off the page is told when it is back', async () => {
    const { endpoint, came } = receiver('503,503,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It goes by itself as soon as it can');
    part.part.remove();
    window.dispatchEvent(new Event('online'));
    await expect.poll(async () => (await came()).kept.length).toBe(1);
    await expect
      .poll(async () => (await (await queueOf('streambank')).records()).map(({ state }) => state))
      .not.toContain('waiting');
    part.holder.append(part.part);
    await expect.poll(part.text).toContain('It arrived');
    expect(part.text()).not.toContain('Not sent yet');
  });

  test('that waited and is refused when its turn comes says so, and waits no more', async () => {
    const { endpoint } = receiver('503,503,refuse');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It goes by itself as soon as it can');
    window.dispatchEvent(new Event('online'));
    await expect.poll(part.text).toContain('It was not taken');
    expect(part.text()).toContain('Two things are wrong.');
    expect(part.text()).not.toContain('Not sent yet');
  });

  test('that was changed while it waited goes as it is now, and not as it was', async () => {
    const { endpoint, came } = receiver('503,503,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It goes by itself as soon as it can');
    await part.type('place', '30.3000, -97.8000');
    await part.press('Try again');
    await expect.poll(part.text).toContain('It arrived');
    window.dispatchEvent(new Event('online'));
    await expect
      .poll(async () => (await (await queueOf('streambank')).records()).map(({ state }) => state))
      .not.toContain('waiting');
    const { seen, kept } = await came();
    expect(kept).toHaveLength(1);
    expect(seen.at(-1)?.find.place?.lat).toBe(30.3);
  });

  test('whose answer was lost is sent once more and kept once', async () => {
    const { endpoint, came } = receiver('lost,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    const { seen, kept } = await came();
    expect(seen).toHaveLength(2);
    expect(kept).toHaveLength(1);
  });

  test('that is refused shows why, beside the field it is about, and loses nothing', async () => {
    const { endpoint, came } = receiver('refuse');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It was not taken');
    expect(part.text()).toContain('Two things are wrong.');
    expect(part.find('#place-trouble').textContent).toBe('The place is not in this county.');
    expect((part.find('#place') as HTMLInputElement).value).toBe('30.2096, -97.7355');
    expect(part.all('canvas')).toHaveLength(1);
    expect((await came()).seen).toHaveLength(1);
    await expectSound(part);
  });

  test('can be stopped, and begun again', async () => {
    const { endpoint, came } = receiver('stall,201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('on its way');
    await expect.poll(async () => (await came()).seen.length).toBe(1);
    await part.press('Stop');
    await expect.poll(part.text).not.toContain('on its way');
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    expect((await came()).kept).toHaveLength(1);
  });

  test('a report that was changed after it arrived can be sent again, as another', async () => {
    const { endpoint, came } = receiver('201');
    const part = await reporting({ endpoint });
    await part.fill();
    await part.press('Send the report');
    await expect.poll(part.text).toContain('It arrived');
    expect(part.all('.send')).toHaveLength(0);
    await part.type('remarks', 'There is more of it upstream.');
    expect(part.text()).toContain('You changed it since.');
    await part.press('Send the report');
    await expect.poll(async () => (await came()).kept.length).toBe(2);
    const { seen } = await came();
    expect(seen[1]?.find.id).toBe(seen[0]?.find.id);
    expect(seen[1]?.key).not.toBe(seen[0]?.key);
  });
});

describe('other ways out', () => {
  test('a file holds everything and opens again as it was', async () => {
    const part = await reporting();
    await part.fill();
    await part.type('bankLength', '40,5');
    await part.type('lengthUnit', 'm');
    await part.type('height', '4');
    (part.find('input[name=cover][value="3"]') as HTMLInputElement).click();
    await part.type('email', 'person@example.org');
    await part.type('remarks', '=1+1 "cañas" \u202e');
    const [file] = await handedOut(() => part.press('Save as a file'));
    const find = readFind(file?.text as string);
    expect(find).toMatchObject({
      extent: { bankLength: { value: 40.5, unit: 'm' } },
      cover: { scheme: 'daubenmire', class: 3 },
      height: { value: 4, high: 8, unit: 'm' },
      contact: { email: 'person@example.org' },
    });
    const other = await reporting({ store: answersOf('arrow-arum') });
    await opened(other, file?.text as string);
    await expect.poll(other.text).toContain('The result is as it was then');
    await other.unfold();
    expect(other.text()).toContain('Most likely giant reed');
    expect((other.find('#bankLength') as HTMLInputElement).value).toBe('40.5');
    expect((other.find('#height') as HTMLSelectElement).value).toBe('4');
    expect((other.find('input[name=cover][value="3"]') as HTMLInputElement).checked).toBe(true);
    expect(other.all('canvas')).toHaveLength(1);
    const [again] = await handedOut(() => other.press('Save as a file'));
    expect(readFind(again?.text as string)).toEqual({ ...find, changed: expect.any(String) });
  });

  test('what is cleared in an opened file is no longer told', async () => {
    const part = await reporting();
    await part.fill();
    await part.type('remarks', 'by the old mill');
    const [file] = await handedOut(() => part.press('Save as a file'));
    await opened(part, file?.text as string);
    await expect.poll(part.text).toContain('The result is as it was then');
    await part.type('remarks', '');
    await part.type('place', '');
    const [again] = await handedOut(() => part.press('Save as a file'));
    const find = readFind(again?.text as string);
    expect([find.remarks, find.place]).toEqual([undefined, undefined]);
  });

  test('what is no report is refused with the place of its faults, and the draft stays', async () => {
    const part = await reporting();
    await part.type('noPhotos', 'dark');
    const files = new DataTransfer();
    files.items.add(new File(['{"format": 1, "id": 5}'], 'find.json'));
    const input = part.find('.files input') as HTMLInputElement;
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await expect.poll(part.text).toContain('no report that can be opened');
    expect(part.find('pre').textContent).toContain('id');
    expect((part.find('#noPhotos') as HTMLInputElement).value).toBe('dark');
    await expectSound(part);
  });

  test('a map and a table tell the place as it may be told', async () => {
    const part = await reporting();
    await part.fill();
    const [map] = await handedOut(() => part.press('GeoJSON'));
    expect(map?.name).toMatch(/^find-\w{8}\.geojson$/);
    expect(JSON.parse(map?.text as string).features[0].geometry).toEqual({
      type: 'Point',
      coordinates: [-97.7355, 30.2096],
    });
    const [table] = await handedOut(() => part.press('Darwin Core CSV'));
    expect(table?.text).toContain('occurrenceID');
    expect(table?.text).toContain('Arundo');
  });

  test('a mail that is too long for a mail comes with the file', async () => {
    const part = await reporting();
    await part.fill();
    const handed = await handedOut(() => part.press('Write a mail'), 2);
    expect(handed.map(({ href }) => href.split(':')[0])).toEqual(['blob', 'mailto']);
    expect(readFind(handed[0]?.text as string).photos).toHaveLength(1);
    expect(decodeURIComponent(handed[1]?.href as string)).toContain('giant reed');
  });

  test('on paper stands the readable page and not the form', async () => {
    const part = await reporting();
    await part.fill();
    const seen: string[] = [];
    const print = vi.spyOn(window, 'print').mockImplementation(() => {
      const paper = part.find('.paper');
      seen.push(paper.textContent ?? '', String(part.part.printing), part.find('.paper canvas').dataset.drawn ?? 'no');
    });
    await part.press('Print or PDF');
    await expect.poll(() => seen.length).toBe(3);
    expect(seen[0]).toContain('giant reed');
    expect(seen[0]).toContain('30.2096');
    expect(seen.slice(1)).toEqual(['true', '']);
    print.mockRestore();
    await expect.poll(() => part.part.printing).toBe(false);
    await withMedia({ print: true }, () => {
      expect(part.find('.form').checkVisibility()).toBe(false);
    });
  });
});

describe('it holds together', () => {
  test('with everything open, in both languages, from right to left, in a narrow column and in the dark', async () => {
    for (const settings of [english, await spanish()]) {
      const part = await reporting({
        settings,
        endpoint: receiver('201').endpoint,
        around: html`<div dir="rtl" class="narrow"><test-holder></test-holder></div>`,
      });
      await part.fill();
      await part.unfold();
      await expectSound(part);
      await withMedia({ colorScheme: 'dark' }, () => expectSound(part));
    }
  });

  test('every control is as large as a thumb', async () => {
    const part = await reporting({ endpoint: receiver('201').endpoint });
    await part.fill();
    await part.unfold();
    expectRoom({
      ...part,
      all: () => part.all('button, summary, select, .picker, label.target, input[type=text], textarea'),
    });
  });

  test('ticked and unticked in a hurry, no photograph keeps its hidden data', async () => {
    const part = await reporting();
    await part.photograph(['with-place.jpg', 'south-east.jpg']);
    const box = part.find('#keep') as HTMLInputElement;
    for (let press = 0; press < 4; press++) box.click();
    await expect.poll(() => part.find('.working').textContent).toBe('');
    const [file] = await handedOut(() => part.press('Save as a file'));
    expect(readFind(file?.text as string).photos.map(({ hiddenDataKept }) => hiddenDataKept)).toEqual([false, false]);
  });

  test('a change of language keeps what was typed and added', async () => {
    const part = await reporting();
    await part.fill();
    await part.type('remarks', 'half a sentence');
    part.holder.settings.setValue(await spanish());
    await expect.poll(part.text).toContain('Su aviso');
    expect((part.find('#remarks') as HTMLTextAreaElement).value).toBe('half a sentence');
    expect(part.all('canvas')).toHaveLength(1);
    expect((part.find('#place') as HTMLInputElement).value).toBe('30.2096, -97.7355');
  });

  test('the keyboard alone takes a person through it', async () => {
    const { endpoint } = receiver('201');
    const part = await reporting({ endpoint });
    (part.find('.photos .picker input') as HTMLElement).focus();
    const to = async (wanted: (at: Element) => boolean) => {
      for (let step = 0; step < 60; step++) {
        if (part.root.activeElement && wanted(part.root.activeElement)) return;
        await userEvent.keyboard('{Tab}');
      }
      throw new Error('never reached by the keyboard');
    };
    await to((at) => at.id === 'noPhotos');
    await userEvent.keyboard('too dark');
    await to((at) => at.id === 'place');
    await userEvent.keyboard('30.2096, -97.7355');
    await to((at) => at.localName === 'summary' && at.textContent === 'Only if you like');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => part.root.querySelector('#bankLength')).not.toBeNull();
    await to((at) => at.id === 'bankLength');
    await userEvent.keyboard('12');
    await to((at) => at.classList.contains('send'));
    await userEvent.keyboard('{Enter}');
    await expect.poll(part.text).toContain('It arrived');
  });

  test('a new report has another number, and the one before can be taken up again', async () => {
    const part = await reporting();
    const id = async () => {
      const [file] = await handedOut(() => part.press('Save as a file'));
      return readFind(file?.text as string).id;
    };
    await part.type('noPhotos', 'dark');
    const first = await id();
    await part.press('Begin a new report');
    expect((part.find('#noPhotos') as HTMLInputElement).value).toBe('');
    expect(await id()).not.toBe(first);
    await part.press('Back to the report before');
    expect((part.find('#noPhotos') as HTMLInputElement).value).toBe('dark');
    expect(await id()).toBe(first);
  });

  test('a new plant is another report: the photographs of one never go with the answers of the next', async () => {
    const store = answersOf('giant-reed');
    const part = await reporting({ store });
    await part.fill();
    const { trail } = answersOf('arrow-arum').snapshot;
    store.request('restart', {});
    await part.part.updateComplete;
    expect(part.text()).toMatch(/^Your report I looked for a plant and saw none/);
    expect(part.all('canvas')).toHaveLength(0);
    for (const answer of trail) store.request('answer', { answer });
    await expect.poll(part.text).toContain('arrow arum');
    expect(part.all('canvas')).toHaveLength(0);
    await part.press('Back to the report before');
    await expect.poll(part.text).toContain('Most likely giant reed');
    expect(part.all('canvas')).toHaveLength(1);
  });

  test('what was typed is still there when the element is taken off the page and comes back', async () => {
    const kept = memoryKeeper();
    const shown = () =>
      held<LeadwortReport>(html`<leadwort-report .keeper=${kept}></leadwort-report>`, answersOf('giant-reed'));
    const part = await shown();
    await expect.poll(() => part.root.querySelector('#place')).not.toBeNull();
    const field = part.find('#place') as HTMLInputElement;
    field.value = 'half a pla';
    field.dispatchEvent(new Event('input'));
    part.part.remove();
    const again = await shown();
    await expect.poll(() => (again.root.querySelector('#place') as HTMLInputElement | null)?.value).toBe('half a pla');
  });

  test('what was typed, and its photographs, are still on the device when the page is opened again', async () => {
    const name = `test ${Date.now()}`;
    const part = await reporting();
    await part.fill();
    await part.type('place', 'half a pla');
    const [file] = await handedOut(() => part.press('Save as a file'));
    const { draftOf } = await import('./opened.ts');
    const opened = draftOf(readFind(file?.text as string));
    const draft = { ...opened, fields: { ...opened.fields, place: 'half a pla' } };
    await deviceKeeper().save(name, draft);
    const { photos, ...rest } = (await deviceKeeper().load(name)) as Draft;
    expect(rest).toEqual({ ...draft, photos: undefined });
    expect(await photos[0]?.blob.text()).toBe(await draft.photos[0]?.blob.text());
    await deviceKeeper().save(name, { ...draft, photos: [] });
    expect((await deviceKeeper().load(name))?.photos).toEqual([]);
    await deviceKeeper().drop(name);
    expect(await deviceKeeper().load(name)).toBeUndefined();
  });

  test('a kept draft that cannot be read is put aside as it is, and nobody is kept from beginning', async () => {
    const name = `test damaged ${Date.now()}`;
    const store = await DraftStore.open();
    await store.write(name, { id: 5, words: 'worth something' }, new Map());
    expect(await deviceKeeper().load(name)).toBeUndefined();
    expect((await store.read(`${name}/damaged`))?.draft).toEqual({ id: 5, words: 'worth something' });
    store.close();
  });

  test('a device that cannot keep it says so, and offers the file', async () => {
    const full = {
      load: async () => undefined,
      drop: async () => undefined,
      save: () => Promise.reject(new Error('full')),
    };
    const part = await held<LeadwortReport>(
      html`<leadwort-report .keeper=${full}></leadwort-report>`,
      answersOf('giant-reed'),
    );
    await expect.poll(() => part.root.querySelector('#place')).not.toBeNull();
    const field = part.find('#place') as HTMLInputElement;
    field.value = '1';
    field.dispatchEvent(new Event('input'));
    await expect.poll(part.text).toContain('Save it as a file before you leave the page.');
    expect(field.value).toBe('1');
  });

  test('a photograph handed over twice is two, and the thirteenth is refused', async () => {
    const part = await reporting();
    await part.photograph(Array.from({ length: 13 }, () => 'plain.png'));
    expect(part.all('canvas')).toHaveLength(12);
    expect(part.text()).toContain('Twelve photographs are enough.');
    expect((await photoFile('plain.png')).type).toBe('image/png');
  });
});
