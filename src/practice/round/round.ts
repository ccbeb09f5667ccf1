// A round of about ten minutes: what went wrong comes back in it, then what is new, then what is due.
import { Random } from '../../engine/trial/random.ts';
import type { Course, TaskKind } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm } from '../judge/judge.ts';
import { replay, type Scheduled } from '../schedule/schedule.ts';
import { itemsOf, kindsOf, parseItem } from '../task/items.ts';
import { taskOf } from '../task/task.ts';
import type { Attempt, ItemId, Task } from '../types.ts';

/** What a round is made of: the same of all gives the same tasks. */
export interface RoundPlan {
  readonly course: Course;
  /** All attempts before the round. */
  readonly before: readonly Attempt[];
  /** Any whole number. */
  readonly seed: number;
  readonly minutes: number;
}

/** Seconds that a task takes of somebody who is not known yet, and of looking at what was told after it (ours). */
const USUAL: Readonly<Record<TaskKind, number>> = { read: 12, name: 15, standing: 10, pair: 12, run: 90, cover: 12 };
const TOLD = 6;
/** At most so many items are met for the first time in a round, so that some of what was met before comes too (ours). */
export const NEW = 24;
/** What went wrong comes back after so many other tasks, where the course has as many. */
const APART = 8;
/** How often a plant is to be named, put among natives and invaders, or walked to through the key (ours). */
const SHARE: Readonly<Record<TaskKind, number>> = { name: 6, standing: 3, run: 1, read: 1, pair: 1, cover: 1 };

/** Median seconds of what was done so far, by kind of task; the usual ones where nothing was. */
export function secondsOf(attempts: readonly Attempt[]): Readonly<Record<TaskKind, number>> {
  const of = (kind: TaskKind): number => {
    const all = attempts.filter((one) => one.kind === kind).map(({ seconds }) => seconds);
    const sorted = all.sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)] ?? USUAL[kind];
  };
  return {
    read: of('read'),
    name: of('name'),
    standing: of('standing'),
    pair: of('pair'),
    run: of('run'),
    cover: of('cover'),
  };
}

/**
 * The next task of a round, after those done in it; undefined when its time is up or nothing can be asked. `now` is
 * milliseconds.
 */
export function nextTask(
  prepared: PreparedKey,
  { course, before, seed, minutes }: RoundPlan,
  done: readonly Attempt[],
  now: number,
): Task | undefined {
  const usual = secondsOf([...before, ...done]);
  const left = minutes * 60 - done.reduce((sum, { seconds }) => sum + seconds + TOLD, 0);
  const random = new Random(seed, done.length);
  const schedule = replay(prepared, [...before, ...done], now);
  for (const item of candidates(prepared, course, schedule, before, done, now)) {
    const kinds = kindsOf(course, item).filter((kind) => usual[kind] + TOLD <= left);
    while (kinds.length > 0) {
      const [kind] = kinds.splice(random.pick(kinds.map((one) => SHARE[one])), 1) as [TaskKind];
      const task = taskOf(prepared, course, item, kind, random);
      if (task !== undefined) return task;
    }
  }
  return undefined;
}

/** The items of a course, those to be asked now first. */
function candidates(
  prepared: PreparedKey,
  course: Course,
  schedule: ReadonlyMap<ItemId, Scheduled>,
  before: readonly Attempt[],
  done: readonly Attempt[],
  now: number,
): ItemId[] {
  const items = itemsOf(prepared, course);
  // Asked for just now, longest ago first.
  const recent = new Set(
    [
      ...new Set(
        done
          .slice(-APART)
          .map(({ item }) => item)
          .reverse(),
      ),
    ].reverse(),
  );
  const met = new Set([...before, ...done].map(({ item }) => item));
  const fresh = items.filter((item) => !met.has(item) && !schedule.has(item));
  const first = new Set(before.map(({ item }) => item));
  const newNow = new Set(done.map(({ item }) => item).filter((item) => !first.has(item))).size;
  const known = items.flatMap((item) => schedule.get(item) ?? []).filter(({ item }) => !recent.has(item));
  const missed = missedIn(prepared, done);
  const rank = ({ item, alarm }: Scheduled) =>
    missed.get(item) === 'alarm' ? 3 : missed.has(item) ? 2 : alarm ? 1 : 0;
  const worth = ({ item, recall }: Scheduled) => weightOf(prepared, item) * (1 - recall);
  const sooner = (a: Scheduled, b: Scheduled) =>
    rank(b) - rank(a) || worth(b) - worth(a) || b.difficulty - a.difficulty || (a.item < b.item ? -1 : 1);
  const due = known.filter((one) => missed.has(one.item) || one.due <= now).sort(sooner);
  const later = known.filter((one) => !due.includes(one)).sort(sooner);
  // What is dearest to get wrong is met first; else in the course's own order.
  fresh.sort((a, b) => weightOf(prepared, b) - weightOf(prepared, a));
  const open = newNow < NEW ? fresh : [];
  const shut = newNow < NEW ? [] : fresh;
  // What went wrong goes before what is new, and that before what is merely due: on a large course nothing else would
  // ever be new (measured by `leadwort rehearse`).
  const back = due.filter((one) => rank(one) > 0);
  const rest = due.filter((one) => rank(one) === 0);
  const ids = (list: readonly Scheduled[]) => list.map(({ item }) => item);
  // A course of few items comes round sooner.
  return [...ids(back), ...open, ...ids(rest), ...ids(later), ...shut, ...recent];
}

/** How much hangs on knowing an item: a plant, and natives and invaders apart, more than a single character (ours). */
const WEIGHT = { taxon: 1, risky: 1, pair: 0.6, cover: 0.3, character: 0.1 };

function weightOf({ key, taxonIndex }: PreparedKey, item: ItemId): number {
  const parsed = parseItem(item);
  if (parsed?.of !== 'pair') return WEIGHT[parsed?.of ?? 'character'];
  const [a, b] = parsed.pair.map((id) => key.taxa[taxonIndex.get(id) ?? -1]?.status);
  return a !== b && (a === 'invasive' || b === 'invasive') ? WEIGHT.risky : WEIGHT.pair;
}

/** Items whose last look in this round went wrong, and whether it called a native an invasive. */
function missedIn(prepared: PreparedKey, done: readonly Attempt[]): ReadonlyMap<ItemId, 'alarm' | 'wrong'> {
  const missed = new Map<ItemId, 'alarm' | 'wrong'>();
  for (const attempt of done) {
    if (attempt.right) missed.delete(attempt.item);
    else missed.set(attempt.item, isAlarm(prepared, attempt) ? 'alarm' : 'wrong');
  }
  return missed;
}
