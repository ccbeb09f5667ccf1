import { deleteDB, openDB } from 'idb';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Attempt } from '../practice/types.ts';
import { PracticeStore } from './practice.ts';

const DATABASE = 'leadwort practice creek';
const ANA = { id: '00000000-0000-4000-8000-000000000001', name: 'Ana' };
const attempt = (n: number): Attempt => ({
  id: `00000000-0000-4000-8000-0000000001${String(n).padStart(2, '0')}`,
  at: `2026-05-04T08:0${n}:00Z`,
  course: 'all',
  kind: 'name',
  item: 'taxon:reed',
  specimen: { taxon: 'reed', month: 5, seed: 1 },
  options: ['reed', 'cane'],
  truth: 'reed',
  said: 'reed',
  seconds: 4,
  right: true,
});
const isGood = (raw: unknown): raw is Attempt => typeof raw === 'object' && raw !== null && 'kind' in raw;

let store: PracticeStore;
beforeEach(async () => {
  await deleteDB(DATABASE);
  store = await PracticeStore.open('creek');
});
afterEach(() => store.close());

test('attempts are there after the page was closed, each once', async () => {
  await store.keep(ANA, 1);
  await store.add(ANA.id, [attempt(1)]);
  await store.add(ANA.id, [attempt(1), attempt(2)]);
  store.close();
  store = await PracticeStore.open('creek');
  expect(await store.learners()).toEqual([ANA]);
  expect(await store.read(ANA.id, isGood)).toEqual([attempt(1), attempt(2)]);
});

test('two who share a device keep apart, and the last one comes first', async () => {
  const ben = { id: '00000000-0000-4000-8000-000000000002', name: '' };
  await store.keep(ANA, 1);
  await store.keep(ben, 2);
  await store.add(ANA.id, [attempt(1)]);
  expect(await store.learners()).toEqual([ben, ANA]);
  expect(await store.read(ben.id, isGood)).toEqual([]);
  await store.keep({ ...ANA, name: 'Ana M.' }, 3);
  expect((await store.learners())[0]?.name).toBe('Ana M.');
});

test('what cannot be read is set aside, and the rest is there', async () => {
  await store.add(ANA.id, [attempt(1)]);
  const db = await openDB(DATABASE, 1);
  await db.put('attempts', 'damaged', [ANA.id, 'x']);
  db.close();
  expect(await store.read(ANA.id, isGood)).toEqual([attempt(1)]);
  expect(await store.aside()).toBe(1);
  expect(await store.read(ANA.id, isGood)).toEqual([attempt(1)]);
});

test('two tabs add to the same list', async () => {
  const other = await PracticeStore.open('creek');
  await Promise.all([store.add(ANA.id, [attempt(1)]), other.add(ANA.id, [attempt(2)])]);
  expect(await store.read(ANA.id, isGood)).toHaveLength(2);
  other.close();
});
