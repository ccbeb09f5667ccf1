// Does the schedule teach? Simulated learners trained with it, and others with as many tasks in random order.
import { Random } from '../../engine/trial/random.ts';
import type { Course } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { Sitting } from '../sitting/sitting.ts';
import { itemsOf, kindsOf } from '../task/items.ts';
import { nearest } from '../task/near.ts';
import { taskOf } from '../task/task.ts';
import type { Attempt, Task } from '../types.ts';
import { SimulatedLearner } from './learner.ts';
import { MEMORIES, type Memory } from './memory.ts';

export interface RehearsalOptions {
  readonly learners: number;
  /** Days with one round each. */
  readonly days: number;
  readonly seed: number;
  /** Makes the memory of a learner, one of MEMORIES: that of `power` when left out. */
  readonly memory?: () => Memory;
}

/** What came of one learner. */
export interface LearnerRun {
  /** Tasks done by the end of the day on which the pass mark was reached; undefined: not within the days. */
  readonly tasks: number | undefined;
  readonly day: number | undefined;
  /** Expected share of fresh specimens named rightly, the morning after the last day and 30 days later. */
  readonly after: number;
  readonly later: number;
  /** Expected share of natives taken for an invasive 30 days later. */
  readonly alarms: number;
  /** All tasks. */
  readonly done: number;
}

export interface Rehearsal {
  readonly course: string;
  readonly ours: readonly LearnerRun[];
  readonly random: readonly LearnerRun[];
}

/** Expected share right on the morning after at which a learner counts as having learnt the course (ours: the usual pass mark). */
export const PASS = 0.9;
/** Days without practice after which is asked what is left. */
export const RETENTION_DAYS = 30;
/** A round is one a day, at the same time. */
const FIRST = Date.UTC(2026, 4, 4, 13);
const DAY = 86_400_000;
const STEP = 18_000;

/** Runs are left out, and cover: what a simulated person learns by them nobody has measured. */
const KINDS = new Set(['read', 'name', 'standing', 'pair']);

export function rehearse(
  prepared: PreparedKey,
  given: Course,
  { learners, days, seed, memory = MEMORIES.power }: RehearsalOptions,
): Rehearsal {
  const course = { ...given, kinds: given.kinds.filter((kind) => KINDS.has(kind)) };
  const runs = Array.from({ length: learners }, (_, n) => {
    const learner = () => new SimulatedLearner(prepared, seed + n, memory());
    const ours = train(prepared, course, learner(), days, (day, before, seat) =>
      scheduled(prepared, course, day, before, seat, seed + n),
    );
    const counts = ours.counts;
    const other = new Random(seed + n, 57);
    const random = train(prepared, course, learner(), days, (day, _before, seat) => {
      for (let i = 0; i < (counts[day] ?? 0); i++) seat(anyTask(prepared, course, other));
    });
    return { ours: ours.result, random: random.result };
  });
  return { course: course.id, ours: runs.map(({ ours }) => ours), random: runs.map(({ random }) => random) };
}

type Seat = (task: Task | undefined) => Attempt | undefined;

function train(
  prepared: PreparedKey,
  course: Course,
  learner: SimulatedLearner,
  days: number,
  session: (day: number, before: readonly Attempt[], seat: Seat) => void,
): { readonly result: LearnerRun; readonly counts: readonly number[] } {
  const attempts: Attempt[] = [];
  const counts: number[] = [];
  let passed: { day: number; tasks: number } | undefined;
  let after = 0;
  for (let day = 0; day < days; day++) {
    const before = attempts.length;
    session(day, attempts.slice(), (task) => {
      if (task === undefined) return undefined;
      const reply = learner.reply(task);
      const n = attempts.length;
      const at = new Date(FIRST + day * DAY + (n - before) * STEP).toISOString();
      const id = `00000000-0000-4000-8000-${n.toString(16).padStart(12, '0')}`;
      const attempt: Attempt = { id, at, course: course.id, ...task, ...reply, right: reply.said === task.truth };
      attempts.push(attempt);
      return attempt;
    });
    counts.push(attempts.length - before);
    learner.memory.sleep(1);
    after = expected(prepared, course, learner).right;
    if (passed === undefined && after >= PASS) passed = { day: day + 1, tasks: attempts.length };
  }
  learner.memory.sleep(RETENTION_DAYS - 1);
  const { right: later, alarms } = expected(prepared, course, learner);
  const result = { tasks: passed?.tasks, day: passed?.day, after, later, alarms, done: attempts.length };
  return { result, counts };
}

function scheduled(
  prepared: PreparedKey,
  course: Course,
  day: number,
  before: readonly Attempt[],
  seat: Seat,
  seed: number,
): void {
  const sitting = new Sitting(prepared, course, before, { kind: 'round' }, seed * 1000 + day);
  for (;;) {
    const now = FIRST + day * DAY + sitting.done.length * STEP;
    const task = sitting.next(now);
    const attempt = seat(task);
    if (!task || !attempt) return;
    sitting.reply(task, attempt, attempt);
  }
}

/** A task of any item and kind, each as likely as the others. */
function anyTask(prepared: PreparedKey, course: Course, random: Random): Task | undefined {
  const items = itemsOf(prepared, course);
  for (let n = 0; n < 50; n++) {
    const item = items[random.below(items.length)];
    const kinds = item ? kindsOf(course, item) : [];
    const kind = kinds[random.below(kinds.length)];
    const task = item && kind && taskOf(prepared, course, item, kind, random);
    if (task) return task;
  }
  return undefined;
}

/** What a learner would say to fresh specimens now, one of each plant, among its nearest. */
function expected(prepared: PreparedKey, { taxa }: Course, learner: SimulatedLearner) {
  const status = (id: string) => prepared.key.taxa[prepared.taxonIndex.get(id) ?? -1]?.status;
  let right = 0;
  let alarms = 0;
  let natives = 0;
  for (const truth of taxa) {
    const options = [truth, ...nearest(prepared, truth, taxa).slice(0, 3)];
    const chances = learner.chances(truth, options);
    right += chances.get(truth) ?? 0;
    if (status(truth) !== 'native') continue;
    natives++;
    for (const [id, chance] of chances) if (status(id) === 'invasive') alarms += chance;
  }
  return { right: right / taxa.length, alarms: natives === 0 ? 0 : alarms / natives };
}
