// Shares a trial out among helpers. What comes out is the same for any number of them.
import { merge, noTally, type Observer, type Tally, type Trials } from '../../engine/trial/index.ts';
import type { Io } from '../io.ts';
import { type Plan, type Result, type Task, worker } from './helper.ts';

const HELPERS = 2;
/** Plants in one stretch: enough that handing over costs nothing, few enough that the bar moves. */
const STRETCH = 100;

export interface Counted {
  readonly tallies: ReadonlyMap<string, Tally>;
  /** Empty unless thresholds were tried. */
  readonly trials: ReadonlyMap<string, Trials>;
}

export async function runTrial(
  plan: Plan,
  observers: readonly Observer[],
  plants: number,
  kinds: readonly Task['kind'][],
  io: Pick<Io, 'progress' | 'helper'>,
): Promise<Counted> {
  const tasks = kinds.flatMap((kind) =>
    observers
      .filter(({ slips }) => kind === 'trial' || slips !== 'one')
      .flatMap((observer) =>
        Array.from({ length: Math.ceil(plants / STRETCH) }, (_, k): Task => {
          const from = k * STRETCH;
          return { kind, stretch: { observer, from, count: Math.min(STRETCH, plants - from) } };
        }),
      ),
  );
  const { taxa, characters } = plan.key;
  const tallies = new Map<string, Tally>();
  const trials = new Map<string, Trials>();
  let done = 0;
  const take = ({ stretch: { observer } }: Task, result: Result): void => {
    done++;
    io.progress?.(bar(done / tasks.length, observer.id));
    if ('tally' in result) {
      tallies.set(
        observer.id,
        merge(tallies.get(observer.id) ?? noTally(taxa.length, characters.length), result.tally),
      );
    } else {
      const before = trials.get(observer.id);
      trials.set(observer.id, before ? before.map((n, i) => n + (result.trials[i] as number)) : result.trials);
    }
  };
  try {
    if (io.helper === undefined || tasks.length < HELPERS) {
      const work = worker(plan);
      for (const task of tasks) take(task, work(task));
    } else await share(plan, tasks, io.helper, take);
  } finally {
    io.progress?.('');
  }
  // In the order of the observers, whoever was ready first.
  const inOrder = <T>(of: ReadonlyMap<string, T>) =>
    new Map(observers.flatMap(({ id }) => (of.has(id) ? [[id, of.get(id) as T] as const] : [])));
  return { tallies: inOrder(tallies), trials: inOrder(trials) };
}

async function share(
  plan: Plan,
  tasks: readonly Task[],
  helper: NonNullable<Io['helper']>,
  take: (task: Task, result: Result) => void,
): Promise<void> {
  const crew = Array.from({ length: HELPERS }, () => helper(plan));
  let next = 0;
  try {
    await Promise.all(
      crew.map(
        (one) =>
          new Promise<void>((resolve, reject) => {
            let task: Task | undefined;
            const hand = () => {
              task = tasks[next++];
              if (task === undefined) resolve();
              else one.postMessage(task);
            };
            one.on('message', (result: Result) => {
              take(task as Task, result);
              hand();
            });
            one.on('error', reject);
            hand();
          }),
      ),
    );
  } finally {
    await Promise.all(crew.map((one) => one.terminate()));
  }
}

const WIDTH = 30;
const bar = (share: number, what: string): string => {
  const full = Math.round(share * WIDTH);
  return `${'#'.repeat(full)}${'.'.repeat(WIDTH - full)} ${Math.floor(share * 100)} % ${what}`;
};
