// Reports that could not be sent yet: they go by themselves when the signal is back. One queue for each key on the page.
import { type Parcel, type Receipt, sendOnce } from '../../report/send/index.ts';
import { aloneByLock, LeadwortStore, Outbox, type OutboxRecord } from '../../store/index.ts';

/** Milliseconds after a try that failed, unless the signal comes back before (ours). */
const SOON = 15_000;

export class Queue {
  readonly #store: LeadwortStore;
  readonly #outbox: Outbox;
  readonly #listeners = new Set<() => void>();

  constructor(key: string, store: LeadwortStore) {
    this.#store = store;
    this.#outbox = new Outbox(store, {
      send: (parcel, endpoint, number) => sendOnce(parcel, { endpoint }, number),
      alone: (what) => aloneByLock(`leadwort outbox ${key}`, what),
      changed: () => {
        for (const listener of [...this.#listeners]) listener();
      },
    });
    this.#outbox.start();
  }

  /**
   * Puts a report in that was just tried. `find` is the find's id, `endpoint` absolute, `after` the milliseconds that the
   * receiver asked to wait.
   */
  async post(find: string, endpoint: string, parcel: Parcel, after: number | undefined): Promise<void> {
    await this.#store.post(find, endpoint, parcel);
    await this.#store.change(parcel.key, (entry) =>
      entry.state === 'waiting'
        ? { ...entry, next: entry.since + (after ?? SOON), ...(after === undefined ? {} : { asked: true as const }) }
        : undefined,
    );
    await this.#outbox.run();
  }

  /** It arrived by another way: neither it nor what the find said before needs sending any more. */
  async settle(find: string, key: string, receipt: Receipt): Promise<void> {
    await this.#store.overtake(find, key);
    await this.#store.change(key, (entry) =>
      entry.state === 'sent' ? undefined : { ...entry, state: 'sent', since: Date.now(), receipt },
    );
    await this.#store.tidy(find);
  }

  /** What became of the reports. */
  records(): Promise<readonly OutboxRecord[]> {
    return this.#store.outbox();
  }

  /** Calls `listener` when something may have changed; returns how to stop. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}

const queues = new Map<string, Promise<Queue>>();

/** The queue of a key, by its id. @throws StoreUnavailableError where the device keeps nothing */
export function queueOf(key: string): Promise<Queue> {
  const queue = queues.get(key) ?? LeadwortStore.open(key).then((store) => new Queue(key, store));
  queues.set(key, queue);
  queue.catch(() => queues.delete(key));
  return queue;
}
