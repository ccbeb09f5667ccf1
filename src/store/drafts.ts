// Reports as they are being typed, on the device of the person who types. Pictures lie apart: they are written once.
import { type DBSchema, openDB } from 'idb';
import { Connection } from './connection.ts';
import { StoreUnavailableError } from './errors.ts';

interface Tables extends DBSchema {
  drafts: { key: string; value: { readonly name: string; readonly format: 1; readonly draft: unknown } };
  pictures: { key: [name: string, id: string]; value: Blob };
}

/** Blobs by an id of the caller's: another picture has another id. */
export type Pictures = ReadonlyMap<string, Blob>;

/** Every method throws StoreUnavailableError or StoreFullError when the device does not keep what it is given. */
export class DraftStore {
  readonly #connection: Connection<Tables>;

  private constructor(connection: Connection<Tables>) {
    this.#connection = connection;
  }

  /** @throws StoreUnavailableError in private browsing, or when storage is switched off */
  static async open(): Promise<DraftStore> {
    return new DraftStore(
      await Connection.open(async () => {
        if (!globalThis.indexedDB) throw new StoreUnavailableError('this browser keeps nothing');
        return openDB<Tables>('leadwort drafts', 1, {
          upgrade: (db) => {
            db.createObjectStore('drafts', { keyPath: 'name' });
            db.createObjectStore('pictures');
          },
          blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
        });
      }),
    );
  }

  close(): void {
    this.#connection.close();
  }

  /** What was kept under a name, as it was given, and its pictures; undefined for nothing. */
  read(name: string): Promise<{ readonly draft: unknown; readonly pictures: Pictures } | undefined> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(['drafts', 'pictures']);
      const pictures = tx.objectStore('pictures');
      const [kept, keys, blobs] = await Promise.all([
        tx.objectStore('drafts').get(name),
        pictures.getAllKeys(of(name)),
        pictures.getAll(of(name)),
      ]);
      return kept && { draft: kept.draft, pictures: new Map(keys.map(([, id], i) => [id, blobs[i] as Blob])) };
    });
  }

  /** Keeps it in place of what there was; pictures that are there already are not written again, others are let go. */
  write(name: string, draft: unknown, pictures: Pictures): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(['drafts', 'pictures'], 'readwrite');
      const table = tx.objectStore('pictures');
      const there = new Set((await table.getAllKeys(of(name))).map(([, id]) => id));
      await Promise.all([
        tx.objectStore('drafts').put({ name, format: 1, draft }),
        ...[...pictures].filter(([id]) => !there.has(id)).map(([id, blob]) => table.put(blob, [name, id])),
        ...[...there].filter((id) => !pictures.has(id)).map((id) => table.delete([name, id])),
        tx.done,
      ]);
    });
  }

  drop(name: string): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(['drafts', 'pictures'], 'readwrite');
      await Promise.all([tx.objectStore('drafts').delete(name), tx.objectStore('pictures').delete(of(name)), tx.done]);
    });
  }
}

const of = (name: string): IDBKeyRange => IDBKeyRange.bound([name, ''], [name, '\uffff']);
