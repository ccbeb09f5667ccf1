// When each item is due: every attempt, oldest first, told to the spaced-repetition scheduler of ts-fsrs.
import { type Card, createEmptyCard, fsrs, type Grade, Rating, State } from 'ts-fsrs';
import type { TaskKind } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm, itemsTouched, type Touched } from '../judge/judge.ts';
import type { Attempt, ItemId } from '../types.ts';

/** Chance of knowing an item when it comes back (ours; the library's own choice is the same). */
const RETENTION = 0.9;

/** No fuzz: the same attempts give the same days. Steps short enough for what went wrong to come back within a round. */
const scheduler = fsrs({
  request_retention: RETENTION,
  enable_fuzz: false,
  learning_steps: ['1m', '5m'],
  relearning_steps: ['5m'],
});

/** Faster than this, in seconds, a sure right reply counts as easy (ours). */
export const QUICK: Readonly<Record<TaskKind, number>> = { read: 5, name: 6, standing: 4, pair: 5, run: 45, cover: 5 };

/** What is known of one item. */
export interface Scheduled {
  readonly item: ItemId;
  /** Milliseconds: when it should come back. */
  readonly due: number;
  /** When it was last looked at. */
  readonly last: number;
  /** Of the scheduler: 1 easy to 10 hard. */
  readonly difficulty: number;
  /** Predicted chance of knowing it at the time asked about. */
  readonly recall: number;
  readonly looks: number;
  /** How often in a row the last looks went wrong. */
  readonly failing: number;
  /** The last look at it called a native an invasive. */
  readonly alarm: boolean;
}

/** Oldest first; of two at the same time any fixed order will do. */
export function inOrder(attempts: readonly Attempt[]): Attempt[] {
  return [...attempts].sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

/**
 * Wrong is again; right is good, but hard after a guess, and easy when sure and quick. What was missed the last time is
 * never easy (ours).
 */
export function gradeOf({ kind, sureness, seconds }: Attempt, right: boolean, missed = false): Grade {
  if (!right) return Rating.Again;
  if (sureness === 'guess' || sureness === undefined) return Rating.Hard;
  return sureness === 'sure' && seconds < QUICK[kind] && !missed ? Rating.Easy : Rating.Good;
}

interface Kept {
  readonly card: Card;
  readonly looks: number;
  readonly failing: number;
  readonly alarm: boolean;
}

/** What an attempt teaches of never changes: it is worked out once. */
const touched = new WeakMap<PreparedKey, WeakMap<Attempt, readonly Touched[]>>();
function touchedBy(prepared: PreparedKey, attempt: Attempt): readonly Touched[] {
  const own = touched.get(prepared) ?? new WeakMap<Attempt, readonly Touched[]>();
  touched.set(prepared, own);
  const known = own.get(attempt) ?? itemsTouched(prepared, attempt);
  own.set(attempt, known);
  return known;
}

/**
 * The schedule that all attempts together make, asked about at `now`, in milliseconds. Attempts of tests count: they too
 * were looks. The same attempts in any order give the same schedule.
 */
export function replay(
  prepared: PreparedKey,
  attempts: readonly Attempt[],
  now: number,
): ReadonlyMap<ItemId, Scheduled> {
  const kept = new Map<ItemId, Kept>();
  for (const attempt of inOrder(attempts)) {
    const at = new Date(Date.parse(attempt.at));
    const alarm = isAlarm(prepared, attempt);
    for (const { item, right } of touchedBy(prepared, attempt)) {
      const before = kept.get(item);
      const grade = gradeOf(attempt, right, (before?.failing ?? 0) > 0);
      const { card } = scheduler.next(before?.card ?? createEmptyCard(at), at, grade);
      kept.set(item, {
        card,
        looks: (before?.looks ?? 0) + 1,
        failing: right ? 0 : (before?.failing ?? 0) + 1,
        alarm: right ? false : alarm || (before?.alarm ?? false),
      });
    }
  }
  const then = new Date(now);
  return new Map(
    [...kept].map(([item, { card, ...rest }]) => [
      item,
      {
        item,
        due: card.due.getTime(),
        last: card.last_review?.getTime() ?? 0,
        difficulty: card.difficulty,
        recall: card.state === State.New ? 0 : scheduler.get_retrievability(card, then, false),
        ...rest,
      },
    ]),
  );
}
