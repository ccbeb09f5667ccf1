// Against the browser's own IndexedDB; each test has a database of its own.
import { deleteDB, openDB } from 'idb';
import { afterEach, expect, test, vi } from 'vitest';
import { answered, streambank } from '../../tests/support/streambank.ts';
import { SessionStore } from '../session/index.ts';
import { DraftStore } from './drafts.ts';
import {
  aloneByLock,
  databaseName,
  LeadwortStore,
  Outbox,
  RECEIPTS,
  StoreFullError,
  StoreUnavailableError,
} from './index.ts';
import { LEASE } from './outbox/entry.ts';
import type { OutboxRecord, TrailRecord } from './records.ts';
import { trailOf } from './trail.ts';

const WHEN = '2026-07-01T12:00:00.000Z';
let count = 0;
const fresh = () => `test-${crypto.randomUUID()}-${++count}`;
const opened: LeadwortStore[] = [];
async function open(name = fresh()): Promise<LeadwortStore> {
  const store = await LeadwortStore.open(name, () => new Date(WHEN));
  opened.push(store);
  return store;
}
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  for (const store of opened.splice(0)) store.close();
});

const session = () => answered({ habitat: 'waterline', light: 'full-sun' });
const trail = (name = 'a', from = session()) => trailOf(name, from.snapshot, WHEN);
/** Puts anything where a record should lie. */
async function putRaw(key: string, table: string, value: unknown): Promise<void> {
  const db = await openDB(databaseName(key));
  await db.put(table, value);
  db.close();
}
const blob = new Blob([new Uint8Array([1, 2, 3])], { type: 'image/jpeg' });
const parcel = { key: 'find-1-abc', find: '{"format":1}', photos: [{ id: 'p1', blob }] };
const taken = (number = 'R-1') => ({
  state: 'sent' as const,
  receipt: { number, when: WHEN, key: parcel.key, photos: 1, bytes: 15, tries: 1 },
});

test('a trail comes back whole, and two names keep apart', async () => {
  const key = fresh();
  await (await open(key)).writeTrail(trail());
  const again = await open(key);
  const restored = await again.readTrail('a', streambank());
  expect(restored?.left).toEqual([]);
  const store = new SessionStore(streambank(), restored?.start ?? { month: 1 });
  expect(store.snapshot.trail).toEqual(session().snapshot.trail);
  expect(store.snapshot.month).toBe(9);
  expect(await again.readTrail('b', streambank())).toBeUndefined();
});

test('of a trail of another version, what fits is kept, and all of it is set aside as it was', async () => {
  const key = fresh();
  const store = await open(key);
  const gone = { character: 'long-gone', skipped: true };
  const old = { ...trail(), version: '0.0.1', answers: [gone, ...trail().answers] } as TrailRecord;
  await store.writeTrail(old);
  const restored = await store.readTrail('a', streambank());
  expect(restored?.left).toEqual([gone]);
  expect(restored?.start.trail).toEqual(session().snapshot.trail);
  expect((await store.aside()).map(({ raw }) => raw)).toEqual([old]);
  expect((await store.readTrail('a', streambank()))?.left).toEqual([]);
});

test.each([
  [{ name: 'a', format: 9 }, 'format: expected 2, not 9'],
  [{ ...trail(), month: 13 }, 'month: expected 1 to 12'],
  [{ ...trail(), answers: 'all' }, 'answers: expected a list'],
])('a damaged trail is set aside with the reason: %#', async (raw, reason) => {
  const key = fresh();
  const store = await open(key);
  await putRaw(key, 'trails', raw);
  expect(await store.readTrail('a', streambank())).toBeUndefined();
  expect(await store.aside()).toEqual([{ from: 'trails', format: 1, raw, reason, when: WHEN }]);
});

test('a database of the first version is brought to today, nothing lost', async () => {
  const key = fresh();
  const { took: _took, turns: _turns, way: _way, ...rest } = trail();
  const db = await openDB(databaseName(key), 1, {
    upgrade: (one) => void one.createObjectStore('trails', { keyPath: 'name' }),
  });
  await db.put('trails', { ...rest, format: 1 });
  await db.put('trails', { name: 'odd', format: 1 });
  db.close();
  const store = await open(key);
  expect((await store.readTrail('a', streambank()))?.start.trail).toEqual(session().snapshot.trail);
  expect(await store.readTrail('odd', streambank())).toBeUndefined();
  expect((await store.aside()).map(({ raw }) => raw)).toMatchObject([{ name: 'odd' }]);
});

test('a full device is told by name, and what was kept before stays', async () => {
  const store = await open();
  await store.writeTrail(trail());
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await expect(store.writeTrail({ ...trail(), month: 1 })).rejects.toThrow(StoreFullError);
  await expect(store.post('find-1', 'https://example.org/', parcel)).rejects.toThrow(StoreFullError);
  vi.restoreAllMocks();
  expect((await store.readTrail('a', streambank()))?.start.month).toBe(9);
  expect(await store.outbox()).toEqual([]);
});

test('private browsing is told by name', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await expect(LeadwortStore.open('any')).rejects.toThrow(StoreUnavailableError);
  vi.stubGlobal('indexedDB', {
    open: () => {
      throw new DOMException('not here', 'SecurityError');
    },
  });
  await expect(LeadwortStore.open('any')).rejects.toThrow(StoreUnavailableError);
});

test('a report posted twice is there once, and two tabs send it once', async () => {
  const key = fresh();
  const [one, two] = [await open(key), await open(key)];
  await one.post('find-1', 'https://example.org/', parcel);
  await two.post('find-1', 'https://example.org/', parcel);
  const sent: string[] = [];
  const send = async ({ key: under, photos }: typeof parcel) => {
    sent.push(`${under} ${photos.length} ${photos[0]?.blob.size}`);
    return taken();
  };
  const now = () => Date.parse(WHEN);
  const later = () => () => undefined;
  await Promise.all([one, two].map((store) => new Outbox(store, { send: send as never, now, later }).run()));
  expect(sent).toEqual(['find-1-abc 1 3']);
  expect(await two.outbox()).toMatchObject([{ state: 'sent', tries: 1, receipt: { number: 'R-1' } }]);
});

test('a report waits through a dead spot and goes when the signal is back', async () => {
  const store = await open();
  await store.post('find-1', 'https://example.org/', parcel);
  const planned: number[] = [];
  let signal = false;
  const outbox = new Outbox(store, {
    send: async () => {
      if (!signal) throw new TypeError('Failed to fetch');
      return taken();
    },
    now: () => Date.parse(WHEN),
    random: () => 0,
    later: (_, ms) => {
      planned.push(ms);
      return () => undefined;
    },
  });
  await outbox.run();
  expect(await store.outbox()).toMatchObject([{ state: 'waiting', tries: 1 }]);
  expect(planned).toEqual([1000]);
  signal = true;
  const stop = outbox.start();
  dispatchEvent(new Event('online'));
  await expect.poll(async () => (await store.outbox())[0]?.state).toBe('sent');
  stop();
});

test('a tab that was closed while it sent leaves the report to the next, under the same key', async () => {
  const store = await open();
  await store.post('find-1', 'https://example.org/', parcel);
  let now = Date.parse(WHEN);
  const keys: string[] = [];
  const options = { now: () => now, later: () => () => undefined };
  const send = async ({ key }: { key: string }) => {
    keys.push(key);
    return taken();
  };
  // The first never hears back.
  void new Outbox(store, {
    ...options,
    send: (sent) => {
      keys.push(sent.key);
      return new Promise(() => undefined);
    },
  }).run();
  await expect.poll(() => keys.length).toBe(1);
  await new Outbox(store, { ...options, send }).run();
  expect(keys).toHaveLength(1);
  now += LEASE;
  await new Outbox(store, { ...options, send }).run();
  expect(keys).toEqual([parcel.key, parcel.key]);
  expect(await store.outbox()).toMatchObject([{ state: 'sent', tries: 2 }]);
});

test('a refused report stays with its reason, and goes again when it is posted again', async () => {
  const store = await open();
  await store.post('find-1', 'https://example.org/', parcel);
  let tries = 0;
  const options = {
    send: async () => {
      tries++;
      return { state: 'refused' as const, status: 422, moved: false, words: 'No place.', faults: [] };
    },
    now: () => Date.parse(WHEN),
    later: () => () => undefined,
  };
  await new Outbox(store, options).run();
  await new Outbox(store, options).run();
  expect(tries).toBe(1);
  expect(await store.outbox()).toMatchObject([{ state: 'refused', refusal: { status: 422, words: 'No place.' } }]);
  await store.post('find-1', 'https://example.org/', parcel);
  expect(await store.outbox()).toMatchObject([{ state: 'waiting', key: parcel.key }]);
});

test('a damaged entry of the outbox is set aside, and the others go', async () => {
  const key = fresh();
  const store = await open(key);
  await putRaw(key, 'outbox', { key: 'bad', format: 1 } as Partial<OutboxRecord>);
  await store.post('find-1', 'https://example.org/', parcel);
  await new Outbox(store, {
    send: async () => taken(),
    now: () => Date.parse(WHEN),
    later: () => () => undefined,
  }).run();
  expect((await store.outbox()).map(({ state }) => state)).toEqual(['sent']);
  expect(await store.aside()).toMatchObject([{ from: 'outbox', raw: { key: 'bad' } }]);
});

test('a damaged entry that a full device cannot set aside stays where it is, and the others go', async () => {
  const key = fresh();
  const store = await open(key);
  await putRaw(key, 'outbox', { key: 'bad', format: 1 } as Partial<OutboxRecord>);
  await store.post('find-1', 'https://example.org/', parcel);
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    if (this.name === 'aside') throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, given);
  });
  const now = () => Date.parse(WHEN);
  await new Outbox(store, { send: async () => taken(), now, later: () => () => undefined }).run();
  vi.restoreAllMocks();
  expect((await store.outbox()).map(({ state }) => state)).toEqual(['sent']);
  expect(await store.aside()).toMatchObject([{ from: 'outbox', raw: { key: 'bad' } }]);
});

test('a report that was changed goes instead of what it was; one that arrived stays', async () => {
  const store = await open();
  const options = { now: () => Date.parse(WHEN), later: () => () => undefined };
  const sent: string[] = [];
  const send = async ({ key }: { key: string }) => {
    sent.push(key);
    return taken();
  };
  await store.post('find-1', 'https://example.org/', { ...parcel, key: 'find-1-z' });
  await store.post('find-2', 'https://example.org/', { ...parcel, key: 'find-2-a' });
  await store.post('find-1', 'https://example.org/', parcel);
  await new Outbox(store, { ...options, send }).run();
  expect(sent.sort()).toEqual([parcel.key, 'find-2-a']);
  await store.post('find-1', 'https://example.org/', { ...parcel, key: 'find-1-later' });
  await store.overtake('find-1', 'find-1-latest');
  expect((await store.outbox()).map(({ key }) => key).sort()).toEqual([parcel.key, 'find-2-a']);
});

test('photographs of a report that arrived are let go, those of one that has not are kept', async () => {
  const key = fresh();
  const store = await open(key);
  const ids = async (find: string) => (await store.photos(find)).map(({ id }) => id);
  const outbox = new Outbox(store, {
    send: async () => taken(),
    now: () => Date.parse(WHEN),
    later: () => () => undefined,
  });
  await store.post('find-1', 'https://example.org/', parcel);
  expect(await ids('find-1')).toEqual(['p1']);
  await outbox.run();
  expect(await ids('find-1')).toEqual([]);

  await store.post('find-2', 'https://example.org/', { ...parcel, key: 'find-2-a' });
  await store.tidy('find-2');
  expect(await ids('find-2')).toEqual(['p1']);
});

test('of reports that arrived the last twenty are remembered; what has not arrived stays, however old', async () => {
  const store = await open();
  const many = RECEIPTS + 5;
  let now = Date.parse(WHEN);
  let gone = true;
  const outbox = new Outbox(store, {
    send: async ({ key }) => {
      if (gone && key === 'key-0') throw new TypeError('Failed to fetch');
      return taken();
    },
    now: () => now++,
    later: () => () => undefined,
  });
  for (let i = 0; i < many; i++) {
    await store.post(`find-${i}`, 'https://example.org/', { ...parcel, key: `key-${i}` });
    await outbox.run();
  }
  const keys = async () => (await store.outbox()).map(({ key }) => key).sort();
  const last = Array.from({ length: RECEIPTS }, (_, i) => `key-${many - 1 - i}`);
  expect(await keys()).toEqual(['key-0', ...last].sort());
  gone = false;
  now += 3_600_000;
  await outbox.run();
  // It arrived last.
  expect(await keys()).toEqual(['key-0', ...last.slice(0, -1)].sort());
});

test('what an overtaken report came to says nothing of the newer one', async () => {
  const store = await open();
  await store.post('find-1', 'https://example.org/', { ...parcel, key: 'find-1-old' });
  const options = { now: () => Date.parse(WHEN), later: () => () => undefined };
  await new Outbox(store, {
    ...options,
    send: async () => {
      await store.post('find-1', 'https://example.org/', parcel);
      return taken('R-old');
    },
  }).run();
  expect(await store.outbox()).toMatchObject([{ key: parcel.key, state: 'waiting', tries: 0 }]);
});

test('a connection that was lost is opened again; under a newer page the store says that it keeps nothing', async () => {
  const key = fresh();
  const store = await open(key);
  await store.writeTrail(trail());
  // Whoever clears the data closes the connection.
  await deleteDB(databaseName(key));
  await Promise.all([store.writeTrail(trail('a')), store.writeTrail(trail('b'))]);
  expect((await store.readTrail('b', streambank()))?.left).toEqual([]);
  (await openDB(databaseName(key), 99)).close();
  await expect(store.writeTrail(trail())).rejects.toThrow(StoreUnavailableError);
  store.close();
  await expect(store.writeTrail(trail())).rejects.toThrow(StoreUnavailableError);
});

test('a draft is kept as well when the connection was lost', async () => {
  const store = await DraftStore.open();
  const name = fresh();
  const open = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
    throw new DOMException('The database connection is closing.', 'InvalidStateError');
  });
  await store.write(name, { format: 1 }, new Map([['p1', blob]]));
  expect(open).toHaveBeenCalledTimes(2);
  expect((await store.read(name))?.pictures.get('p1')?.size).toBe(3);
  await store.drop(name);
  store.close();
});

test('one tab holds the lock, another leaves the outbox to it; without locks the claim in the database does', async () => {
  const key = fresh();
  const store = await open(key);
  await store.post('find-1', 'https://example.org/', parcel);
  const sent: string[] = [];
  const outbox = new Outbox(store, {
    send: async (one) => {
      sent.push(one.key);
      return taken();
    },
    alone: (what) => aloneByLock(key, what),
    now: () => Date.parse(WHEN),
    later: () => () => undefined,
  });
  await navigator.locks.request(key, () => outbox.run());
  expect(sent).toEqual([]);
  vi.spyOn(Navigator.prototype, 'locks', 'get').mockReturnValue(undefined as never);
  await outbox.run();
  expect(sent).toEqual([parcel.key]);
  vi.restoreAllMocks();
  await outbox.run();
  expect(sent).toEqual([parcel.key]);
});
