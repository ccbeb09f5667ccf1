// One database, opened again when its connection is lost.
import type { DBSchema, IDBPDatabase } from 'idb';
import { named } from './errors.ts';

/** Every method throws StoreUnavailableError or StoreFullError when the device does not keep what it is given. */
export class Connection<Tables extends DBSchema> {
  readonly #open: () => Promise<IDBPDatabase<Tables>>;
  #db: IDBPDatabase<Tables>;
  #closed = false;

  private constructor(db: IDBPDatabase<Tables>, open: () => Promise<IDBPDatabase<Tables>>) {
    this.#db = db;
    this.#open = open;
  }

  static async open<Tables extends DBSchema>(open: () => Promise<IDBPDatabase<Tables>>): Promise<Connection<Tables>> {
    try {
      return new Connection(await open(), open);
    } catch (error) {
      throw named(error);
    }
  }

  /** What it was given before is still written. */
  close(): void {
    this.#closed = true;
    this.#db.close();
  }

  /**
   * Begins at once, so that a page that goes can still write. Does it once more where the connection was lost: a page
   * that lay in the background, data cleared, another tab's upgrade.
   */
  async use<Result>(what: (db: IDBPDatabase<Tables>) => Promise<Result>): Promise<Result> {
    try {
      return await what(this.#db);
    } catch (error) {
      if (this.#closed || !(error instanceof DOMException) || error.name !== 'InvalidStateError') throw named(error);
    }
    try {
      const db = await this.#open();
      // Somebody else of this page may have opened it meanwhile.
      this.#db.close();
      this.#db = db;
      if (this.#closed) db.close();
      return await what(db);
    } catch (error) {
      throw named(error);
    }
  }
}
