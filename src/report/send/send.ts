// Sends a report to the address that the page's owner names.
import { meaningOf } from './answer.ts';
import type { Outcome, WaitReason } from './outcome.ts';
import { bodyOf, bytesOf, type Parcel } from './parcel.ts';

export interface SendOptions {
  /** An http or https address. */
  readonly endpoint: string;
  /** Stops it; `send` then throws its reason. */
  readonly signal?: AbortSignal;
  /** Milliseconds that one try may take; 120,000 when left out: photographs go slowly where the signal is weak. */
  readonly timeout?: number;
  /** Tries before it waits for another occasion; 4 when left out. */
  readonly tries?: number;
  /** What the world does; each can be handed in. */
  readonly fetch?: typeof fetch;
  readonly wait?: (ms: number, signal: AbortSignal | undefined) => Promise<void>;
  /** From 0 to 1: spreads the tries of many devices. */
  readonly random?: () => number;
  readonly now?: () => number;
}

const TIMEOUT = 120_000;
const TRIES = 4;
const FIRST_WAIT = 1000;
/** A receiver that asks for more than this is tried at another occasion. */
const LONGEST_WAIT = 30_000;

/**
 * Sends a parcel, trying again as long as that can help. A receiver that got it twice knows it by its key.
 * @throws the signal's reason when stopped, a TypeError for an endpoint that is no http or https address
 */
export async function send(parcel: Parcel, options: SendOptions): Promise<Outcome> {
  const { tries = TRIES, wait = sleep, random = Math.random, signal } = options;
  for (let number = 1; ; number++) {
    const outcome = await sendOnce(parcel, options, number);
    if (outcome.state !== 'waiting' || number >= tries) return outcome;
    const pause = outcome.after ?? backoff(number, random());
    if (pause > LONGEST_WAIT) return outcome;
    await wait(pause, signal);
  }
}

/** Milliseconds after a number of tries: 1, 3, 9 seconds and so on, each up to a half longer by chance (ours). */
export const backoff = (tries: number, chance: number): number => FIRST_WAIT * 3 ** (tries - 1) * (1 + chance / 2);

/** One try; `number` counts it. @throws as `send` */
export async function sendOnce(parcel: Parcel, options: SendOptions, number = 1): Promise<Outcome> {
  const { signal, timeout = TIMEOUT, now = Date.now } = options;
  const address = new URL(options.endpoint);
  if (!/^https?:$/.test(address.protocol)) throw new TypeError(`a report is not sent to ${address.protocol}`);
  signal?.throwIfAborted();
  const late = AbortSignal.timeout(timeout);
  const waiting = (reason: WaitReason, after?: number): Outcome => ({
    state: 'waiting',
    reason,
    tries: number,
    ...(after === undefined ? {} : { after }),
  });
  try {
    const response = await (options.fetch ?? fetch)(address, {
      method: 'POST',
      body: bodyOf(parcel),
      headers: { Accept: 'application/json', 'Idempotency-Key': `"${parcel.key}"` },
      signal: signal ? AbortSignal.any([signal, late]) : late,
      // Only to the address that was named, and nothing that tells who sends it.
      redirect: 'manual',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
    });
    const meaning = await meaningOf(response, now());
    if (meaning.kind === 'later') return waiting(meaning.reason, meaning.after);
    if (meaning.kind === 'refused') {
      const { moved, words, faults } = meaning;
      return { state: 'refused', status: response.status, moved, words, faults };
    }
    const { kind: _, ...named } = meaning;
    return {
      state: 'sent',
      receipt: {
        ...named,
        when: new Date(now()).toISOString(),
        key: parcel.key,
        photos: parcel.photos.length,
        bytes: bytesOf(parcel),
        tries: number,
      },
    };
  } catch (error) {
    signal?.throwIfAborted();
    if (late.aborted) return waiting('too-slow');
    // Fetch says no more than this of a lost connection; anything else is a fault of ours.
    if (error instanceof TypeError) return waiting('no-signal');
    throw error;
  }
}

function sleep(ms: number, signal: AbortSignal | undefined): Promise<void> {
  return new Promise((done, stop) => {
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', stopped);
      done();
    }, ms);
    const stopped = () => {
      clearTimeout(timer);
      stop(signal?.reason);
    };
    signal?.addEventListener('abort', stopped, { once: true });
  });
}
