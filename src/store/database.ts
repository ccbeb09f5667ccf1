// The database of one key on one origin: its form, and how an older one becomes today's.
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { named, StoreUnavailableError } from './errors.ts';
import type { AsideRecord, FindRecord, OutboxRecord, PhotoRecord, TrailRecord } from './records.ts';

export interface Tables extends DBSchema {
  trails: { key: string; value: TrailRecord };
  finds: { key: string; value: FindRecord };
  photos: { key: [find: string, id: string]; value: PhotoRecord };
  outbox: { key: string; value: OutboxRecord };
  aside: { key: number; value: AsideRecord };
}
export type Database = IDBPDatabase<Tables>;
type Upgrade = IDBPTransaction<Tables, ('trails' | 'finds' | 'photos' | 'outbox' | 'aside')[], 'versionchange'>;

/** Version 1 had trails alone, without the way taken, the couplets' turns and the times. */
export const VERSION = 2;
export const databaseName = (key: string): string => `leadwort ${key}`;
/** Some browsers never answer in private browsing or after an update: then nothing is kept, and nobody waits. */
const MOST_WAIT = 3000;

/** @throws StoreUnavailableError */
export async function openDatabase(key: string): Promise<Database> {
  let given: IDBFactory | undefined;
  try {
    given = globalThis.indexedDB;
  } catch (error) {
    throw named(error);
  }
  if (!given) throw new StoreUnavailableError('this browser keeps nothing');
  let late = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  // Inside a promise: some browsers throw at once.
  const opening = Promise.resolve().then(() =>
    openDB<Tables>(databaseName(key), VERSION, {
      upgrade: (db, from, _to, tx) => upgrade(db, from, tx as unknown as Upgrade),
      // Another tab wants a newer form: it may have it.
      blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
    }),
  );
  const waited = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      late = true;
      reject(new StoreUnavailableError('the device does not answer'));
    }, MOST_WAIT);
  });
  // What opens too late is not left open.
  opening.then(
    (db) => late && db.close(),
    () => undefined,
  );
  try {
    return await Promise.race([opening, waited]);
  } catch (error) {
    throw named(error);
  } finally {
    clearTimeout(timer);
  }
}

async function upgrade(db: Database, from: number, tx: Upgrade): Promise<void> {
  if (from < 1) db.createObjectStore('trails', { keyPath: 'name' });
  if (from < 2) {
    db.createObjectStore('finds', { keyPath: 'id' });
    db.createObjectStore('photos', { keyPath: ['find', 'id'] });
    db.createObjectStore('outbox', { keyPath: 'key' });
    db.createObjectStore('aside', { autoIncrement: true });
  }
  if (from !== 1) return;
  const trails = tx.objectStore('trails');
  for (let at = await trails.openCursor(); at; at = await at.continue()) {
    const old: unknown = at.value;
    // Whatever else it lacks is found, and set aside, when it is read.
    if (typeof old === 'object' && old !== null)
      await at.update({ way: 'couplets', turns: [], took: [], ...old, format: 2 } as unknown as TrailRecord);
  }
}
