// The small trial that `check` runs: enough to see that a change broke something, quick enough to run every time.
import { figuresOf, type Share } from '../../engine/trial/index.ts';
import type { Key } from '../../key/index.ts';
import { worker } from './helper.ts';
import { observersOf } from './observers.ts';

const PLANTS = 550;
const SEED = 1;

/** Names are read by other programs: add, never rename. */
export interface SmallTrial {
  /** The key's own kind of observer who misreads most. */
  readonly observer: string;
  readonly plants: number;
  readonly seed: number;
  readonly settled: Share;
  /** Of the settled. */
  readonly settledRight: Share;
  /** Of native plants. */
  readonly nativesSettledAsInvasive: Share;
  /** Mean number asked. */
  readonly questions: number;
}

export function smallTrial(key: Key): SmallTrial | undefined {
  const [observer] = observersOf(key);
  if (observer === undefined) return undefined;
  const work = worker({ key, way: 'free', seed: SEED });
  const result = work({ kind: 'trial', stretch: { observer, from: 0, count: PLANTS } });
  if (!('tally' in result)) return undefined;
  const { settled, settledRight, nativesSettledAsInvasive, questions } = figuresOf(result.tally);
  return {
    observer: observer.id,
    plants: PLANTS,
    seed: SEED,
    settled,
    settledRight,
    nativesSettledAsInvasive,
    questions: questions.mean,
  };
}
