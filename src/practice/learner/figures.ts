// All that is known of one learner in one course, from the list of attempts and nothing else.
import type { Course, TaskKind } from '../../key/courses/index.ts';
import { TASKS } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { inOrder, replay } from '../schedule/schedule.ts';
import type { Attempt, Rate } from '../types.ts';
import { type Confusion, confusionOf } from './confusion.ts';
import { rateOf, readingRates } from './rates.ts';
import { dayOf, type Readiness, readinessOf } from './readiness.ts';
import { type Calibration, surenessOf } from './sureness.ts';

export interface LearnerFigures {
  readonly attempts: number;
  readonly confusion: Confusion;
  /** Id of a character to the share of its readings that were wrong. */
  readonly reading: ReadonlyMap<string, Rate>;
  /** Median seconds of each kind that was done. */
  readonly speed: ReadonlyMap<TaskKind, number>;
  readonly calibration: Calibration;
  /** Oldest first; the day is year-month-day by the learner's own clock. */
  readonly progress: readonly { readonly day: string; readonly right: Rate }[];
  /** One of every plant of the course, in its order. */
  readonly readiness: readonly Readiness[];
}

/** `now` is milliseconds. The same attempts in any order give the same figures. */
export function learnerFigures(
  prepared: PreparedKey,
  course: Course,
  attempts: readonly Attempt[],
  now: number,
): LearnerFigures {
  const own = inOrder(attempts).filter(
    ({ specimen, kind }) => course.taxa.includes(specimen.taxon) || kind === 'cover' || kind === 'read',
  );
  const days = [...new Set(own.map(dayOf))];
  return {
    attempts: own.length,
    confusion: confusionOf(course.taxa, own),
    reading: readingRates(prepared, own),
    speed: new Map(
      TASKS.flatMap((kind): [TaskKind, number][] => {
        const seconds = own.filter((one) => one.kind === kind).map((one) => one.seconds);
        return seconds.length === 0 ? [] : [[kind, median(seconds)]];
      }),
    ),
    calibration: surenessOf(own),
    progress: days.map((day) => {
      const of = own.filter((one) => dayOf(one) === day);
      return { day, right: rateOf(of.filter(({ right }) => right).length, of.length) };
    }),
    readiness: readinessOf(prepared, course, own, replay(prepared, own, now)),
  };
}

/** Of a list that is not empty. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const [low = 0, high = low] = sorted.slice(Math.ceil(half) - 1, Math.floor(half) + 1);
  return (low + high) / 2;
}
