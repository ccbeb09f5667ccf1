// Trails, and reports on their way with their photographs, on the device of the person they belong to.
import type { IDBPTransaction } from 'idb';
import type { PreparedKey } from '../key/index.ts';
import type { Parcel, ParcelPhoto } from '../report/send/index.ts';
import { type RestoredTrail, restoreTrail } from '../session/restore.ts';
import { Connection } from './connection.ts';
import { openDatabase, type Tables } from './database.ts';
import { StoreFullError } from './errors.ts';
import { faultOfEntry } from './outbox/entry.ts';
import type { AsideRecord, OutboxRecord, TrailRecord } from './records.ts';
import { faultOfTrail } from './trail.ts';

type Table = AsideRecord['from'];
type KeyOf<T extends Table> = Tables[T]['key'];

/** Reports that arrived are remembered up to this many, the last ones (ours). */
export const RECEIPTS = 20;

/** Every method throws StoreUnavailableError or StoreFullError when the device does not keep what it is given. */
export class LeadwortStore {
  readonly #connection: Connection<Tables>;
  readonly #now: () => Date;

  private constructor(connection: Connection<Tables>, now: () => Date) {
    this.#connection = connection;
    this.#now = now;
  }

  /** The store of a key, by its id. @throws StoreUnavailableError in private browsing, or when storage is switched off */
  static async open(key: string, now: () => Date = () => new Date()): Promise<LeadwortStore> {
    return new LeadwortStore(await Connection.open(() => openDatabase(key)), now);
  }

  close(): void {
    this.#connection.close();
  }

  writeTrail(record: TrailRecord): Promise<void> {
    return this.#write(['trails'], (tx) => [tx.objectStore('trails').put(record)]);
  }

  /** The trail of that name as it fits the key; undefined for none. What cannot be read, or no longer fits, is set aside. */
  async readTrail(name: string, prepared: PreparedKey): Promise<RestoredTrail | undefined> {
    const raw = await this.#get('trails', name);
    if (raw === undefined) return undefined;
    const fault =
      faultOfTrail(raw) ??
      (raw.key === prepared.key.id ? undefined : `key: expected ${prepared.key.id}, not ${raw.key}`);
    if (fault !== undefined) {
      await this.#setAside('trails', name, raw, fault);
      return undefined;
    }
    const restored = restoreTrail(prepared, raw);
    if (restored.left.length > 0) {
      const { version } = prepared.key;
      const now = { ...raw, answers: restored.start.trail ?? [], turns: restored.start.turns ?? [], version };
      await this.#write(['trails', 'aside'], (tx) => [
        tx.objectStore('aside').put(this.#aside('trails', raw, `answers that version ${version} does not know`)),
        tx.objectStore('trails').put(now),
      ]);
    }
    return restored;
  }

  async photos(find: string): Promise<readonly ParcelPhoto[]> {
    const rows = await this.#connection.use((db) => db.getAll('photos', photosOf(find)));
    return rows.map(({ id, blob }) => ({ id, blob }));
  }

  /**
   * Puts a parcel into the outbox with its photographs, in place of what has not arrived of the same find. One that is
   * there already stays as it is, unless it was refused.
   */
  async post(find: string, endpoint: string, parcel: Parcel): Promise<void> {
    const now = this.#now().getTime();
    const { key, find: text, photos } = parcel;
    const ids = photos.map(({ id }) => id);
    const fresh: OutboxRecord = {
      ...{ key, format: 1, find, endpoint, text, photos: ids, state: 'waiting' },
      ...{ tries: 0, since: now, next: now },
    };
    await this.#connection.use(async (db) => {
      const tx = db.transaction(['outbox', 'photos'], 'readwrite');
      const outbox = tx.objectStore('outbox');
      const before = await outbox.get(key);
      const older = (await outbox.getAll()).filter(isOlder(find, key));
      const done =
        before && before.state !== 'refused'
          ? []
          : [
              ...photos.map(({ id, blob }) => tx.objectStore('photos').put({ find, id, format: 1, blob })),
              outbox.put({ ...fresh, tries: before?.tries ?? 0 }),
            ];
      await Promise.all([...done, ...older.map((one) => outbox.delete(one.key)), tx.done]);
    });
  }

  /** Lets go what has not arrived of a find, but for the parcel of that key, which says what the person changed since. */
  overtake(find: string, key: string): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction('outbox', 'readwrite');
      const older = (await tx.store.getAll()).filter(isOlder(find, key));
      await Promise.all([...older.map((one) => tx.store.delete(one.key)), tx.done]);
    });
  }

  /** All that is on its way, was refused or has arrived. What cannot be read is set aside. */
  async outbox(): Promise<readonly OutboxRecord[]> {
    const rows = await this.#connection.use((db) => db.getAll('outbox'));
    const good: OutboxRecord[] = [];
    for (const row of rows) {
      const fault = faultOfEntry(row);
      if (fault === undefined) good.push(row);
      // Without room it stays where it is, and holds up none of the others.
      else await this.#setAside('outbox', row.key, row, fault).catch(unlessFull);
    }
    return good;
  }

  /** Changes one record as it is at that moment, no other tab between; undefined leaves it. Returns what was written. */
  change(key: string, to: (now: OutboxRecord) => OutboxRecord | undefined): Promise<OutboxRecord | undefined> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction('outbox', 'readwrite');
      const now = await tx.store.get(key);
      const next = now && to(now);
      await Promise.all([...(next ? [tx.store.put(next)] : []), tx.done]);
      return next;
    });
  }

  /** What a record sends; undefined when a photograph of it is gone. */
  async parcel({ key, find, text, photos }: OutboxRecord): Promise<Parcel | undefined> {
    const there = new Map((await this.photos(find)).map((photo) => [photo.id, photo]));
    const all = photos.flatMap((id) => there.get(id) ?? []);
    return all.length === photos.length ? { key, find: text, photos: all } : undefined;
  }

  /**
   * Lets go what is needed no more once a report of a find has arrived: its photographs, unless one that has not arrived
   * needs them, and all receipts but the last `RECEIPTS`.
   */
  tidy(find: string): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(['photos', 'outbox'], 'readwrite');
      const [photos, outbox] = [tx.objectStore('photos'), tx.objectStore('outbox')];
      const [entries, keys] = await Promise.all([outbox.getAll(), photos.getAllKeys(photosOf(find))]);
      const unsent = entries.filter((one) => one.find === find && one.state !== 'sent');
      const needed = new Set(unsent.flatMap((one) => one.photos));
      // What cannot be read may need any of them.
      const free = unsent.some((one) => faultOfEntry(one)) ? [] : keys.filter(([, id]) => !needed.has(id));
      const sent = entries.filter((one) => one.state === 'sent' && !faultOfEntry(one));
      const old = sent.sort((a, b) => b.since - a.since).slice(RECEIPTS);
      await Promise.all([
        ...free.map((key) => photos.delete(key)),
        ...old.map(({ key }) => outbox.delete(key)),
        tx.done,
      ]);
    });
  }

  /** What was set aside, oldest first. */
  aside(): Promise<readonly AsideRecord[]> {
    return this.#connection.use((db) => db.getAll('aside'));
  }

  #aside(from: Table, raw: unknown, reason: string): AsideRecord {
    return { from, format: 1, raw, reason, when: this.#now().toISOString() };
  }

  #setAside<T extends Table>(from: T, key: KeyOf<T>, raw: unknown, reason: string): Promise<void> {
    return this.#write([from, 'aside'], (tx) => [
      tx.objectStore('aside').put(this.#aside(from, raw, reason)),
      tx.objectStore(from).delete(key as never),
    ]);
  }

  #get<T extends Table>(table: T, key: KeyOf<T>) {
    return this.#connection.use((db) => db.get(table, key));
  }

  #write(tables: (Table | 'aside')[], writes: (tx: Writing) => readonly Promise<unknown>[]): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(tables, 'readwrite');
      const done = tx.done;
      try {
        await Promise.all([...writes(tx as unknown as Writing), done]);
      } catch (error) {
        // All or nothing: what was written of it goes again.
        try {
          tx.abort();
        } catch {
          // It is over already.
        }
        await done.catch(() => undefined);
        throw error;
      }
    });
  }
}

type Writing = IDBPTransaction<Tables, (Table | 'aside')[], 'readwrite'>;

/** Also one that is being sent: what comes of that is of no more interest. */
const isOlder =
  (find: string, key: string) =>
  (one: OutboxRecord): boolean =>
    one.find === find && one.key !== key && one.state !== 'sent';

function unlessFull(error: unknown): void {
  if (!(error instanceof StoreFullError)) throw error;
}

const photosOf = (find: string): IDBKeyRange => IDBKeyRange.bound([find, ''], [find, '\uffff']);
