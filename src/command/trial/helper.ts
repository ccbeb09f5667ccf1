// One helper's share of a trial: it is given a key once, then one stretch after the other.
import type { MessagePort } from 'node:worker_threads';
import {
  coupletWay,
  free,
  type Stretch,
  type Tally,
  Trial,
  type Trials,
  tryThresholds,
  type Way,
  type WayLead,
} from '../../engine/trial/index.ts';
import { type Key, type PreparedKey, prepareKey } from '../../key/index.ts';
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

/** Ways through a key, by the name on the command line; the second only where the key has couplets. */
export const WAYS = ['free', 'couplets'] as const;

function wayOf({ key, characterIndex }: PreparedKey, id: string): Way {
  if (id !== 'couplets') return free;
  const at = new Map(key.couplets.map(({ number }, i) => [number, i]));
  return coupletWay(
    key.couplets.map(({ leads }) =>
      leads.map(({ character: name, states = [], to }): WayLead => {
        const character = name === undefined ? undefined : characterIndex.get(name);
        const ids = character === undefined ? [] : (key.characters[character]?.states ?? []).map((state) => state.id);
        return {
          ...(character === undefined ? {} : { character }),
          states: states.map((state) => ids.indexOf(state)),
          to: typeof to === 'number' ? (at.get(to) as number) : to,
        };
      }),
    ),
  );
}

export function worker({ key, way, seed, month }: Plan): (task: Task) => Result {
  const prepared = prepareKey(key);
  const setup = {
    nature: natureOf(prepared),
    rules: key.thresholds,
    way: wayOf(prepared, way),
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
