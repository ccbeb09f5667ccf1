// Keeps one element's trail: read once when the key is there, written after each change at once, a crash gives no notice, and before the page goes.
import type { PreparedKey } from '../key/index.ts';
import type { SessionStore } from '../session/index.ts';
import type { RestoredTrail } from '../session/restore.ts';
import { LeadwortStore } from './store.ts';
import { trailOf } from './trail.ts';

export interface KeeperOptions {
  /** The name that the trail is kept under: elements of other names keep others. */
  readonly name: string;
  /** It could not be kept: StoreFullError or StoreUnavailableError. Told once for each kind in a row. */
  readonly failed: (error: unknown) => void;
  /** Another tab wrote the same trail: what that one has holds until this one is changed. */
  readonly elsewhere?: () => void;
}

export class TrailKeeper {
  readonly #store: LeadwortStore;
  readonly #options: KeeperOptions;
  readonly #channel: BroadcastChannel | undefined;
  #stop: (() => void) | undefined;
  #fault = '';

  private constructor(store: LeadwortStore, key: string, options: KeeperOptions) {
    this.#store = store;
    this.#options = options;
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(`leadwort ${key}`) : undefined;
    this.#channel?.addEventListener('message', ({ data }) => {
      if (data === options.name) options.elsewhere?.();
    });
  }

  /** The keeper, and the trail it found. @throws StoreUnavailableError, StoreFullError */
  static async open(
    prepared: PreparedKey,
    options: KeeperOptions,
  ): Promise<{ keeper: TrailKeeper; restored: RestoredTrail | undefined }> {
    const store = await LeadwortStore.open(prepared.key.id);
    try {
      const restored = await store.readTrail(options.name, prepared);
      return { keeper: new TrailKeeper(store, prepared.key.id, options), restored };
    } catch (error) {
      store.close();
      throw error;
    }
  }

  /** Writes what changes from now on. */
  follow(session: SessionStore): void {
    this.#stop?.();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const flush = () => {
      if (timer === undefined) return;
      clearTimeout(timer);
      timer = undefined;
      void this.#write(session);
    };
    const hidden = () => {
      if (document.visibilityState === 'hidden') flush();
    };
    const unsubscribe = session.subscribe(() => {
      timer ??= setTimeout(flush);
    });
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', hidden);
    this.#stop = () => {
      flush();
      unsubscribe();
      removeEventListener('pagehide', flush);
      document.removeEventListener('visibilitychange', hidden);
    };
  }

  /** Writes what is still to be written; nothing more until it follows again. */
  pause(): void {
    this.#stop?.();
    this.#stop = undefined;
  }

  /** Writes what is still to be written, and lets go. */
  close(): void {
    this.pause();
    this.#channel?.close();
    // A database closes when what it was given is written.
    this.#store.close();
  }

  async #write({ snapshot }: SessionStore): Promise<void> {
    try {
      await this.#store.writeTrail(trailOf(this.#options.name, snapshot, new Date().toISOString()));
      this.#fault = '';
    } catch (error) {
      const fault = error instanceof Error ? error.name : 'Error';
      if (fault !== this.#fault) this.#options.failed(error);
      this.#fault = fault;
      return;
    }
    try {
      this.#channel?.postMessage(this.#options.name);
    } catch {
      // It was closed meanwhile: nobody is left to tell.
    }
  }
}
