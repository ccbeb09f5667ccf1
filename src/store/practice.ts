// What learners did in the practice room, on the device they did it on: each attempt is written at once, by itself.
import { type DBSchema, openDB } from 'idb';
import type { Attempt } from '../practice/types.ts';
import { Connection } from './connection.ts';
import { StoreUnavailableError } from './errors.ts';

/** Somebody who practises here. */
export interface Learner {
  /** UUID made on the device. */
  readonly id: string;
  /** As they wish to be called; may be empty. */
  readonly name: string;
}

interface Tables extends DBSchema {
  learners: { key: string; value: Learner & { readonly format: 1; readonly last: number } };
  attempts: { key: [learner: string, id: string]; value: unknown };
  aside: { key: number; value: { readonly learner: string; readonly raw: unknown } };
}

/** Every method throws StoreUnavailableError or StoreFullError when the device does not keep what it is given. */
export class PracticeStore {
  readonly #connection: Connection<Tables>;

  private constructor(connection: Connection<Tables>) {
    this.#connection = connection;
  }

  /** The practice with a key, by its id. @throws StoreUnavailableError in private browsing, or when storage is switched off */
  static async open(key: string): Promise<PracticeStore> {
    return new PracticeStore(
      await Connection.open(async () => {
        if (!globalThis.indexedDB) throw new StoreUnavailableError('this browser keeps nothing');
        return openDB<Tables>(`leadwort practice ${key}`, 1, {
          upgrade: (db) => {
            db.createObjectStore('learners', { keyPath: 'id' });
            db.createObjectStore('attempts');
            db.createObjectStore('aside', { autoIncrement: true });
          },
          blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
        });
      }),
    );
  }

  close(): void {
    this.#connection.close();
  }

  /** Whoever practised here, the last one first. */
  async learners(): Promise<readonly Learner[]> {
    const rows = await this.#connection.use((db) => db.getAll('learners'));
    return rows.sort((a, b) => b.last - a.last).map(({ id, name }) => ({ id, name }));
  }

  /** Keeps a learner, or changes the name; `now` is milliseconds. */
  async keep({ id, name }: Learner, now: number): Promise<void> {
    await this.#connection.use((db) => db.put('learners', { id, name, format: 1, last: now }));
  }

  /** Adds attempts; one that is there already stays as it is. */
  add(learner: string, attempts: readonly Attempt[]): Promise<void> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction('attempts', 'readwrite');
      const there = new Set((await tx.store.getAllKeys(of(learner))).map(([, id]) => id));
      const fresh = attempts.filter(({ id }) => !there.has(id));
      await Promise.all([...fresh.map((attempt) => tx.store.put(attempt, [learner, attempt.id])), tx.done]);
    });
  }

  /** All attempts of a learner as they were kept. What `isGood` does not know is set aside, and not deleted. */
  read(learner: string, isGood: (raw: unknown) => raw is Attempt): Promise<readonly Attempt[]> {
    return this.#connection.use(async (db) => {
      const tx = db.transaction(['attempts', 'aside'], 'readwrite');
      const table = tx.objectStore('attempts');
      const [keys, rows] = await Promise.all([table.getAllKeys(of(learner)), table.getAll(of(learner))]);
      const bad = keys.flatMap((key, i) => (isGood(rows[i]) ? [] : [{ key, raw: rows[i] }]));
      await Promise.all([
        ...bad.map(({ raw }) => tx.objectStore('aside').put({ learner, raw })),
        ...bad.map(({ key }) => table.delete(key)),
        tx.done,
      ]);
      return rows.filter(isGood);
    });
  }

  /** How many records were set aside. */
  aside(): Promise<number> {
    return this.#connection.use((db) => db.count('aside'));
  }
}

const of = (learner: string): IDBKeyRange => IDBKeyRange.bound([learner, ''], [learner, '\uffff']);
