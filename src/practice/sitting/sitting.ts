// One sitting: a round with an answer after every task, or a final test with all of them at its end.
import type { Course } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { judge } from '../judge/judge.ts';
import { MOST_SECONDS } from '../record/form.ts';
import { nextTask } from '../round/round.ts';
import { planTest } from '../round/test.ts';
import type { Attempt, Feedback, Reply, Task } from '../types.ts';

/** How long a round is (ours: what fits between two other things). */
export const MINUTES = 10;

export type SittingKind = { readonly kind: 'round' } | { readonly kind: 'test' /** UUID. */; readonly id: string };

/** An attempt and what is said of it. */
export interface Judged {
  readonly attempt: Attempt;
  readonly feedback: Feedback;
}

/** What goes with a reply: a UUID for it, and when it was given (ISO 8601 with offset). */
export interface Stamp {
  readonly id: string;
  readonly at: string;
}

export class Sitting {
  readonly #prepared: PreparedKey;
  readonly #course: Course;
  readonly #before: readonly Attempt[];
  readonly #kind: SittingKind;
  readonly #seed: number;
  readonly #planned: readonly Task[];
  readonly #done: Judged[] = [];

  /**
   * `before` are all attempts so far; those of an unfinished test of the same id are taken up. `seed` is of a round: any
   * whole number. A person's first test of a course is everybody's first, so that two people's replies can be compared.
   */
  constructor(prepared: PreparedKey, course: Course, before: readonly Attempt[], kind: SittingKind, seed = 1) {
    this.#prepared = prepared;
    this.#course = course;
    this.#kind = kind;
    this.#seed = seed;
    const tests = new Set(
      before.flatMap((one) => (one.course === course.id && one.test !== undefined ? [one.test] : [])),
    );
    if (kind.kind === 'test') tests.delete(kind.id);
    const own = (one: Attempt) => kind.kind === 'test' && one.test === kind.id;
    this.#before = before.filter((one) => !own(one));
    this.#planned = kind.kind === 'test' ? planTest(prepared, course, this.#before, tests.size + 1).tasks : [];
    for (const attempt of before.filter(own)) this.#done.push({ attempt, feedback: judge(prepared, attempt, attempt) });
  }

  get done(): readonly Judged[] {
    return this.#done;
  }

  /** How many tasks a test has; undefined for a round, which ends by its time. */
  get length(): number | undefined {
    return this.#kind.kind === 'test' ? this.#planned.length : undefined;
  }

  /** Undefined when the sitting is over. `now` is milliseconds. */
  next(now: number): Task | undefined {
    if (this.#kind.kind === 'test') return this.#planned[this.#done.length];
    const done = this.#done.map(({ attempt }) => attempt);
    const plan = { course: this.#course, before: this.#before, seed: this.#seed, minutes: MINUTES };
    return nextTask(this.#prepared, plan, done, now);
  }

  reply(task: Task, reply: Reply, { id, at }: Stamp): Judged {
    const feedback = judge(this.#prepared, task, reply);
    const attempt: Attempt = {
      ...{ id, at, course: this.#course.id, ...task, ...reply },
      seconds: Math.min(MOST_SECONDS, Math.max(0, reply.seconds)),
      ...(this.#kind.kind === 'test' ? { test: this.#kind.id } : {}),
      right: feedback.right,
    };
    const judged = { attempt, feedback };
    this.#done.push(judged);
    return judged;
  }
}

/** Id of a final test of the course that was begun last and not finished; undefined for none. */
export function openTest(prepared: PreparedKey, course: Course, attempts: readonly Attempt[]): string | undefined {
  const id = attempts.findLast((one) => one.course === course.id && one.test !== undefined)?.test;
  if (id === undefined) return undefined;
  const sitting = new Sitting(prepared, course, attempts, { kind: 'test', id });
  return sitting.done.length < (sitting.length ?? 0) ? id : undefined;
}
