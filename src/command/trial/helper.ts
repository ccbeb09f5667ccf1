// One helper's share of a trial: it is given a key once, then one stretch after the other.
import type { MessagePort } from 'node:worker_threads';
import {
  free,
  type Stretch,
  type Tally,
  Trial,
  type Trials,
  tryThresholds,
  type Way,
} from '../../engine/trial/index.ts';
import { type Key, prepareKey } from '../../key/index.ts';
import { natureOf } from './nature.ts';

/** What a trial is made from: plain data, that goes to a helper as it is. */
export interface Plan {
  readonly key: Key;
  readonly way: string;
  readonly seed: number;
  readonly month?: number;
}

/** One stretch: its people asked as they are, or, for `tune`, each set of thresholds tried on them. */
export interface Task {
  readonly kind: 'trial' | 'tune';
  readonly stretch: Stretch;
}

export type Result = { readonly tally: Tally } | { readonly trials: Trials };

/** Ways through a key, by the name on the command line. */
export const WAYS: ReadonlyMap<string, Way> = new Map([[free.id, free]]);

export function worker({ key, way, seed, month }: Plan): (task: Task) => Result {
  const prepared = prepareKey(key);
  const setup = {
    nature: natureOf(prepared),
    rules: key.thresholds,
    way: WAYS.get(way) ?? free,
    seed,
    ...(month === undefined ? {} : { month }),
  };
  const trial = new Trial(setup);
  return ({ kind, stretch }) =>
    kind === 'trial' ? { tally: trial.play(stretch) } : { trials: tryThresholds(setup, stretch) };
}

/** Answers every task that comes through the port. */
export function serve(port: MessagePort, plan: Plan): void {
  const work = worker(plan);
  port.on('message', (task: Task) => port.postMessage(work(task)));
}
