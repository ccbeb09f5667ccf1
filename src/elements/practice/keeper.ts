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

  async keep(learner: Learner): Promise<void> {
    await (await this.#store()).keep(learner, Date.now());
  }

  async add(learner: Learner, attempts: readonly Attempt[]): Promise<void> {
    await (await this.#store()).add(learner.id, attempts);
  }

  close(): void {
    void this.#store().then(
      (store) => store.close(),
      () => undefined,
    );
  }
}

/** Somebody who never practised here. */
export const somebody = (id: string = crypto.randomUUID()): Learner => ({ id, name: '' });
