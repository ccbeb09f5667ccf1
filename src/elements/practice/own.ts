// The key made ready for whoever practised last on this device.
import { type PreparedKey, prepareKey } from '../../key/index.ts';
import { ownReading } from '../../practice/learner/own.ts';
import { isAttempt } from '../../practice/record/form.ts';
import { PracticeStore } from '../../store/practice.ts';

export interface Own {
  /** As they wish to be called; may be empty. */
  readonly name: string;
  readonly readings: number;
  readonly observer: string;
  readonly prepared: PreparedKey;
  /** The key as it was before. */
  readonly usual: PreparedKey;
}

/** Undefined where nobody practised here, or too little. @throws where the device keeps nothing */
export async function ownOf(usual: PreparedKey): Promise<Own | undefined> {
  const store = await PracticeStore.open(usual.key.id);
  try {
    const [learner] = await store.learners();
    const own = learner && ownReading(usual, await store.read(learner.id, isAttempt));
    if (!own) return undefined;
    const { readings, observer, misread } = own;
    return { name: learner.name, readings, observer, prepared: prepareKey(usual.key, { misread }), usual };
  } finally {
    store.close();
  }
}
