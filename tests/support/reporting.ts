// A report on the screen, and the hands of a person who fills it in.
import { html } from 'lit';
import { expect, vi } from 'vitest';
import { memoryKeeper } from '../../src/elements/report/keeper.ts';
import type { LeadwortReport } from '../../src/elements/report/report.ts';
import type { Find } from '../../src/report/find/index.ts';
import type { SessionStore } from '../../src/session/index.ts';
import { english, type Held, held } from './held.ts';
import { answersOf } from './streambank.ts';

/** The day of these tests, at noon where they run. */
export const NOW = new Date(2026, 10, 25, 12);

interface Came {
  readonly key: string;
  readonly find: Find;
  readonly photos: readonly { readonly name: string; readonly size: number }[];
}
let runs = 0;
/** An address of the receiver of these tests that takes these steps, and what came to it. */
export function receiver(steps: string) {
  const name = `${Date.now()}-${++runs}`;
  return {
    endpoint: `/receiver/${name}/${steps}`,
    came: async () => (await (await fetch(`/receiver/${name}`)).json()) as { seen: Came[]; kept: [string, string][] },
  };
}

export interface Reporting extends Held<LeadwortReport> {
  /** Types over what stands in a field, or chooses in a list, and leaves it. */
  readonly type: (field: string, text: string) => Promise<void>;
  /** Opens all that is folded away. */
  readonly unfold: () => Promise<void>;
  /** Hands files to a picker; the first unless another is meant. */
  readonly photograph: (names: readonly string[], picker?: string) => Promise<void>;
  /** A photograph, a place: with the date and the answers it can be sent. */
  readonly fill: () => Promise<void>;
  readonly press: (words: string) => Promise<void>;
}

export async function reporting({
  store = answersOf('giant-reed'),
  settings = english,
  endpoint = '',
  around,
}: {
  store?: SessionStore;
  settings?: typeof english;
  endpoint?: string;
  around?: ReturnType<typeof html>;
} = {}): Promise<Reporting> {
  const part = await held<LeadwortReport>(
    html`<leadwort-report .clock=${() => NOW} .keeper=${memoryKeeper()} endpoint=${endpoint}></leadwort-report>`,
    store,
    settings,
    around,
  );
  await expect.poll(() => part.root.querySelector('.form')).not.toBeNull();
  const put = async (element: HTMLInputElement, value: string) => {
    element.value = value;
    element.dispatchEvent(new Event('input', { bubbles: true }));
    element.dispatchEvent(new Event('change', { bubbles: true }));
    await part.part.updateComplete;
  };
  const photograph = async (names: readonly string[], picker = '.photos > .picker input') => {
    const files = new DataTransfer();
    for (const name of names) files.items.add(await photoFile(name));
    const input = part.find(picker) as HTMLInputElement;
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await part.part.updateComplete;
    await vi.waitUntil(() => part.root.querySelector('[role=status].working')?.textContent === '', { timeout: 15_000 });
  };
  const unfold = async () => {
    for (const details of part.all('details')) (details as HTMLDetailsElement).open = true;
    await expect.poll(() => part.root.querySelector('#remarks')).not.toBeNull();
  };
  const type = async (field: string, text: string) => {
    if (!part.root.querySelector(`#${field}`)) await unfold();
    await put(part.find(`#${field}`) as HTMLInputElement, text);
  };
  return {
    ...part,
    type,
    unfold,
    photograph,
    fill: async () => {
      await photograph(['with-place.jpg']);
      await type('place', '30.2096, -97.7355');
    },
    press: async (words) => {
      part.control(words).click();
      await part.part.updateComplete;
    },
  };
}

export async function photoFile(name: string): Promise<File> {
  const blob = await (await fetch(new URL(`../fixtures/photos/${name}`, import.meta.url))).blob();
  return new File([blob], name, { type: blob.type });
}

/** Files that were handed to the browser's downloads, and addresses that were followed, while `body` ran. */
export async function handedOut(body: () => Promise<void>, many = 1) {
  const blobs = new Map<string, Blob>();
  const followed: { href: string; name: string }[] = [];
  const made = vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    const address = `blob:made-${blobs.size}`;
    blobs.set(address, blob as Blob);
    return address;
  });
  const clicked = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    followed.push({ href: this.href, name: this.download });
  });
  try {
    await body();
    await vi.waitUntil(() => followed.length >= many, { timeout: 15_000 });
  } finally {
    made.mockRestore();
    clicked.mockRestore();
  }
  return Promise.all(followed.map(async ({ href, name }) => ({ href, name, text: await blobs.get(href)?.text() })));
}
