// What carries a session beyond the page as it stands: on the device, in its address, in a form. Each comes only when its
// attribute is there, as a module with a function `carry`.
import type { Key, PreparedKey } from '../../key/index.ts';
import type { SessionStore } from '../../session/index.ts';
import type { RestoredTrail } from '../../session/restore.ts';
import { languageAt } from './language.ts';

/** Holds what it carries against the session from `follow` until `pause`. */
export interface Carrier {
  follow(store: SessionStore): void;
  pause(): void;
  /** As pause, and lets go. */
  close(): void;
}

export interface Carried {
  readonly keeper: Carrier;
  /** What it found of an earlier visit. */
  readonly restored: RestoredTrail | undefined;
}

/** What each needs of the element that holds the key. */
export type Carrying = HTMLElement & {
  readonly keep: string | boolean | null;
  readonly linkParameter: string;
  readonly required: boolean;
  /** As the browser gave it back; empty: none, or it was read. */
  formState: string;
};

/** Undefined when it cannot be had; the key works as ever. */
export type Carry = (host: Carrying, prepared: PreparedKey) => Promise<Carried | undefined>;

/** Follows by `write` alone, called at once with `now`, and after each change. */
export function following(write: (store: SessionStore) => void, now: boolean): Carrier {
  let stop: (() => void) | undefined;
  const pause = () => stop?.();
  return {
    follow(store) {
      pause();
      stop = store.subscribe(() => write(store));
      if (now) write(store);
    },
    pause,
    close: pause,
  };
}

/** Whoever comes back reads in the language they read in, where the key has it. */
export function speak(host: HTMLElement, language: string, { languages }: Key): void {
  const [primary = ''] = language.split('-');
  if (language !== languageAt(host) && languages.includes(primary)) host.lang = language;
}
