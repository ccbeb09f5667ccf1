// A place that was given to help nearby holds in the report of the same session, and the other way round.
import { expect, test } from 'vitest';
import { reporting } from '../../../tests/support/reporting.ts';
import { addressOf } from '../../../tests/support/small-bundle.ts';
import { answersOf } from '../../../tests/support/streambank.ts';
import '../nearby/define.ts';
import type { LeadwortNearby } from '../nearby/nearby.ts';
import './define.ts';

const demo = await (await fetch(new URL('../../site/areas/sallow-fork.geojson', import.meta.url))).text();

async function both() {
  const store = answersOf('giant-reed');
  const part = await reporting({ store });
  const nearby = document.createElement('leadwort-nearby') as LeadwortNearby;
  Object.assign(nearby, { areas: addressOf(demo), today: '2026-11-25' });
  (part.root as ShadowRoot).host.after(nearby);
  const root = nearby.shadowRoot as ShadowRoot;
  await expect.poll(() => root.querySelector('.by-numbers input')).not.toBeNull();
  const type = (text: string) => {
    (root.querySelector('.by-numbers input') as HTMLInputElement).value = text;
    root.querySelector('form')?.requestSubmit();
  };
  return { part, said: () => root.querySelector('.answer')?.textContent ?? '', type };
}
const fieldOf = (part: { find: (selector: string) => HTMLElement }) => (part.find('#place') as HTMLInputElement).value;

test('a place given to help nearby stands in the report, and can be cleared there for good', async () => {
  const { part, type } = await both();
  expect(fieldOf(part)).toBe('');
  type('30.72, -99.03');
  await expect.poll(() => fieldOf(part)).toBe('30.72000, -99.03000');
  expect(part.text()).toContain('typed');
  await part.type('place', '');
  await part.type('remarks', 'x').catch(() => undefined);
  expect(fieldOf(part)).toBe('');
});

test('a place given to the report leads to who helps there', async () => {
  const { part, said } = await both();
  await part.type('place', '30.72, -99.03');
  await expect.poll(said).not.toBe('');
});

test('a place that was chosen nearby is not overruled by the report', async () => {
  const { part, said, type } = await both();
  type('30.72, -99.03');
  await expect.poll(said).not.toBe('');
  const before = said();
  await part.type('place', '29.4, -95.2');
  expect(said()).toBe(before);
});

test('an opened report of somebody else keeps its own place', async () => {
  const one = await both();
  one.type('30.72, -99.03');
  await expect.poll(() => fieldOf(one.part)).not.toBe('');
  const other = await both();
  expect(fieldOf(other.part)).toBe('');
});
