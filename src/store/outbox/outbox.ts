// Sends what waits, whenever there is a hope of it: one tab at a time, each report under its own key.
import type { Outcome, Parcel } from '../../report/send/index.ts';
import type { OutboxRecord } from '../records.ts';
import type { LeadwortStore } from '../store.ts';
import { begun, dueAt, hurried, reset, settled } from './entry.ts';

export interface OutboxOptions {
  /** One try; `number` counts the tries. What it throws is taken for a lost signal. */
  readonly send: (parcel: Parcel, endpoint: string, number: number) => Promise<Outcome>;
  readonly now?: () => number;
  /** 0 to 1. */
  readonly random?: () => number;
  /** Calls later, after milliseconds; returns how to take it back. */
  readonly later?: (call: () => void, ms: number) => () => void;
  /** Lets one tab at a time do something; the others leave it. Where it is missing, the claim in the database does. */
  readonly alone?: (what: () => Promise<void>) => Promise<void>;
  /** Something in the outbox changed. */
  readonly changed?: () => void;
  /** The device does not keep what came of it. */
  readonly failed?: (error: unknown) => void;
}

/** Between two looks when nothing else calls for one: another tab may have been closed while it sent. */
const LOOK = 60_000;
const NOWHERE: Outcome = { state: 'waiting', reason: 'no-signal', tries: 1 };

const timer = (call: () => void, ms: number): (() => void) => {
  const id = setTimeout(call, ms);
  return () => clearTimeout(id);
};

/** One tab at a time by the Web Locks API; where it is missing, whoever asks. */
export async function aloneByLock(name: string, what: () => Promise<void>): Promise<void> {
  if (!globalThis.navigator?.locks) return what();
  await navigator.locks.request(name, { ifAvailable: true }, async (lock) => {
    if (lock) await what();
  });
}

export class Outbox {
  readonly #store: LeadwortStore;
  readonly #options: Required<Omit<OutboxOptions, 'alone' | 'changed' | 'failed'>> & OutboxOptions;
  #cancel: (() => void) | undefined;
  #running: Promise<void> | undefined;
  #again = false;
  #stopped = false;

  constructor(store: LeadwortStore, options: OutboxOptions) {
    this.#store = store;
    this.#options = { now: Date.now, random: Math.random, later: timer, ...options };
  }

  /** Sends what is due and sets the time of the next look. Called while it runs, it looks once more. */
  run(): Promise<void> {
    if (this.#running) {
      this.#again = true;
      return this.#running;
    }
    const { alone = (what) => what(), failed } = this.#options;
    this.#running = alone(() => this.#round())
      .catch((error) => failed?.(error))
      .then(() => {
        this.#running = undefined;
        if (this.#stopped) return undefined;
        if (this.#again) {
          this.#again = false;
          return this.run();
        }
        return this.#plan();
      });
    return this.#running;
  }

  /** The signal is back. */
  async hurry(): Promise<void> {
    try {
      for (const { key } of await this.#store.outbox())
        await this.#store.change(key, (entry) => hurried(entry, this.#options.now()));
    } catch (error) {
      this.#options.failed?.(error);
    }
    await this.run();
  }

  /** Follows the signal and the page; returns how to stop. */
  start(page: Window = window): () => void {
    const online = () => void this.hurry();
    const seen = () => {
      if (page.document.visibilityState === 'visible') void this.run();
    };
    page.addEventListener('online', online);
    page.document.addEventListener('visibilitychange', seen);
    void this.run();
    return () => {
      this.#stopped = true;
      this.#cancel?.();
      page.removeEventListener('online', online);
      page.document.removeEventListener('visibilitychange', seen);
    };
  }

  async #round(): Promise<void> {
    for (const { key } of await this.#store.outbox()) {
      if (this.#stopped) return;
      const { now } = this.#options;
      await this.#store.change(key, (entry) => reset(entry, now()));
      const claimed = await this.#store.change(key, (entry) => begun(entry, now()));
      if (claimed) await this.#try(claimed);
    }
  }

  async #try(claimed: OutboxRecord): Promise<void> {
    const { send, now, random, changed } = this.#options;
    changed?.();
    const parcel = await this.#store.parcel(claimed);
    const outcome: Outcome = parcel
      ? await send(parcel, claimed.endpoint, claimed.tries).catch(() => NOWHERE)
      : // The page's own words are the element's; these are for whoever looks into the record.
        { state: 'refused', status: 0, moved: false, words: 'a photograph of it is no longer kept', faults: [] };
    await this.#store.change(claimed.key, (entry) => settled(entry, claimed.tries, outcome, now(), random()));
    changed?.();
    if (outcome.state === 'sent') await this.#store.tidy(claimed.find);
  }

  async #plan(): Promise<void> {
    this.#cancel?.();
    const { now, later, failed } = this.#options;
    try {
      const at = (await this.#store.outbox()).flatMap((entry) =>
        entry.state === 'waiting' || entry.state === 'sending' ? [dueAt(entry, now()) ?? now() + LOOK] : [],
      );
      if (at.length === 0 || this.#stopped) return;
      const wait = Math.min(Math.max(Math.min(...at) - now(), 1000), LOOK);
      this.#cancel = later(() => void this.run(), wait);
    } catch (error) {
      failed?.(error);
    }
  }
}
