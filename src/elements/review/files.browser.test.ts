import { html } from 'lit';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { aFind } from '../../../tests/support/finds.ts';
import { english, expectSound, type Held, held } from '../../../tests/support/held.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { answered } from '../../../tests/support/streambank.ts';
import { type Find, readFind, writeFind } from '../../report/find/index.ts';
import './define.ts';
import type { LeadwortReview } from './review.ts';

const SECOND = '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a02';
const review = { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Invented', date: '2026-09-20' } as const;

const saved: { name: string; blob: Promise<string> }[] = [];
beforeEach(() => {
  saved.length = 0;
  let last = new Blob();
  const make = URL.createObjectURL.bind(URL);
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    last = blob as Blob;
    return make(blob);
  });
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, blob: last.text() });
  });
});
afterEach(() => vi.restoreAllMocks());

async function reviewing(finds: readonly Find[], at = ''): Promise<Held<LeadwortReview>> {
  const part = await held<LeadwortReview>(
    html`<leadwort-review find=${at} .finds=${finds}></leadwort-review>`,
    answered({}),
    english,
  );
  await expect.poll(() => part.text()).not.toBe('');
  return part;
}
const address = (text: string) => URL.createObjectURL(new Blob([text], { type: 'application/json' }));
const choose = (part: Held, texts: Readonly<Record<string, string>>) =>
  userEvent.upload(
    part.find('input[type=file]'),
    Object.entries(texts).map(([name, text]) => new File([text], name, { type: 'application/json' })),
  );
/** A picture of one colour as a find keeps it. */
function picture(colour: string): string {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 8;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  context.fillStyle = colour;
  context.fillRect(0, 0, 8, 8);
  return canvas.toDataURL('image/png').split(',')[1] as string;
}
const pictured = (id: string, colour: string) =>
  aFind({ id, photos: aFind().photos.map((one) => ({ ...one, type: 'image/png', data: picture(colour) })) });
const middle = (part: Held) => {
  const canvas = part.find('canvas') as HTMLCanvasElement;
  return [...(canvas.getContext('2d')?.getImageData(4, 4, 1, 1).data ?? [])].slice(0, 3);
};

describe('what is saved', () => {
  test('reads back with the review in it', async () => {
    const part = await reviewing([aFind({ review })]);
    part.control('Save the report').focus();
    await userEvent.keyboard('{Enter}');
    expect(saved.map(({ name }) => name)).toEqual(['find-3f0d6c5e.json']);
    expect(readFind((await saved[0]?.blob) ?? '')).toEqual(aFind({ review }));
  });

  test('is a table of all that is open, with what was corrected and what it was', async () => {
    const corrected = { ...review, status: 'corrected', taxon: 'typha-latifolia', remarks: 'ligule none' } as const;
    const part = await reviewing([aFind({ review: corrected }), aFind({ id: SECOND })]);
    await userEvent.click(part.control('Save all as a table'));
    await expect.poll(() => saved.map(({ name }) => name)).toEqual(['finds.csv']);
    const table = (await saved[0]?.blob) ?? '';
    for (const words of ['identificationVerificationStatus', 'Typha latifolia', 'ligule none', 'R. Invented', SECOND])
      expect(table).toContain(words);
  });
});

describe('what is opened', () => {
  test('several files at once: a damaged one is told with its place, and the others are there', async () => {
    const part = await reviewing([]);
    const damaged = writeFind(aFind()).replace(/"month": \d+/, '"month": 19');
    await choose(part, {
      'a.json': writeFind(aFind()),
      'bad.json': damaged,
      'b.json': writeFind(aFind({ id: SECOND })),
    });
    await expect.poll(() => part.part.finds.map(({ id }) => id)).toEqual([aFind().id, SECOND]);
    await expect.poll(() => part.text()).toContain('Report 1 of 2');
    const told = part.find('.opening [role=alert]').textContent;
    expect(told).toContain('bad.json');
    expect(told).toContain('month');
    await expectSound(part);
  });

  test('an address that answers, and one that does not', async () => {
    const there = await reviewing([], address(writeFind(aFind())));
    await expect.poll(() => there.part.finds.map(({ id }) => id)).toEqual([aFind().id]);
    const broken = await reviewing([], address('{"format": 1}'));
    await expect.poll(() => broken.text()).toContain('not a report that can be read');
    const gone = address('');
    URL.revokeObjectURL(gone);
    const none = await reviewing([], gone);
    await expect.poll(() => none.text()).toContain('did not come');
  });

  test('markup in a report is text', async () => {
    const hostile = '<img src=x onerror=alert(1)><script>alert(1)</script>';
    const trail = aFind().trail.map((one) => ({ ...one, label: hostile, words: hostile }));
    const photos = aFind().photos.map((one) => ({ ...one, caption: hostile }));
    const part = await reviewing([aFind({ trail, photos, review: { ...review, by: hostile, remarks: hostile } })]);
    expect(part.text()).toContain(hostile);
    expect(part.all('img, script')).toHaveLength(0);
    expectPolicyProof(part.part);
  });
});

test("photographs are drawn, and the next report shows its own, not the last one's", async () => {
  const part = await reviewing([pictured(aFind().id, '#ff0000'), pictured(SECOND, '#0000ff')]);
  await expect.poll(() => middle(part)).toEqual([255, 0, 0]);
  expect(part.find('.photos').textContent).toContain('The stand from the water');
  await userEvent.click(part.control('Next'));
  await expect.poll(() => middle(part)).toEqual([0, 0, 255]);
  expectPolicyProof(part.part);
});

test('without a key around it the part says so', async () => {
  const part = document.createElement('leadwort-review');
  document.body.append(part);
  await expect.poll(() => part.shadowRoot?.textContent).toContain('inside <leadwort-session>');
  part.remove();
});
