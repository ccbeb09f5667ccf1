// Where a learner's attempts are kept: on the device, and in memory for where the device keeps nothing.
import type { Attempt } from '../../practice/types.ts';
import type { Learner } from '../../store/practice.ts';
import { untilDone } from '../shared/late.ts';

export interface Kept {
  readonly learner: Learner;
  readonly attempts: readonly Attempt[];
  /** Others who practised on this device. */
  readonly others: readonly Learner[];
}

export class PracticeKeeper {
  readonly #store;
  readonly #isGood: (raw: unknown) => raw is Attempt;
  /** Settles when all that was to be kept is. */
  #written: Promise<unknown> = Promise.resolve();

  /** `key` is the id of the key; `isGood` tells an attempt from what was damaged. */
  constructor(key: string, isGood: (raw: unknown) => raw is Attempt) {
    this.#isGood = isGood;
    this.#store = untilDone(async () => (await import('../../store/practice.ts')).PracticeStore.open(key));
  }

  /** Whoever practised last, or the one asked for; somebody new where nobody did. @throws when the device keeps nothing */
  async load(id?: string): Promise<Kept> {
    const store = await this.#store();
    const all = await store.learners();
    const learner = all.find((one) => one.id === id) ?? (id === undefined ? all[0] : undefined) ?? somebody(id);
    const attempts = await store.read(learner.id, this.#isGood);
    return { learner, attempts, others: all.filter((one) => one.id !== learner.id) };
  }

  /** Keeps the learner and adds what they did, after whatever is still being kept. @throws when the device keeps nothing */
  keep(learner: Learner, attempts: readonly Attempt[]): Promise<void> {
    const kept = this.#written.then(async () => {
      const store = await this.#store();
      await store.keep(learner, Date.now());
      await store.add(learner.id, attempts);
    });
    this.#written = kept.catch(() => undefined);
    return kept;
  }

  /** Nothing that was handed in before is lost. */
  close(): void {
    void this.#written.then(this.#store).then(
      (store) => store.close(),
      () => undefined,
    );
  }
}

/** Somebody who never practised here. */
export const somebody = (id: string = crypto.randomUUID()): Learner => ({ id, name: '' });
