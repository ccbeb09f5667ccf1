// The final test: every plant of the course, as specimens that no practice has shown.
import { Random } from '../../engine/trial/random.ts';
import type { Course, TaskKind } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { markOf, SpecimenError, shownBy } from '../specimen/specimen.ts';
import { taskOf } from '../task/task.ts';
import type { Attempt, Task } from '../types.ts';

export interface TestPlan {
  readonly tasks: readonly Task[];
  /** How many of its specimens look like one met before in all that can be seen: such a plant hardly varies. */
  readonly met: number;
  /** Ids of plants of which no fair task could be made. */
  readonly lacking: readonly string[];
}

/** How many specimens are drawn in search of one that was not met (ours). */
const TRIES = 30;

/** `seed`: any whole number. The same attempts and seed give the same test. */
export function planTest(prepared: PreparedKey, course: Course, attempts: readonly Attempt[], seed: number): TestPlan {
  const known = marksIn(prepared, attempts);
  const kinds = course.test.kinds.filter((kind) => kind === 'name' || kind === 'standing' || kind === 'run');
  const tasks: Task[] = [];
  const lacking: string[] = [];
  let met = 0;
  for (const taxon of course.taxa) {
    const own: Task[] = [];
    for (let n = 0; n < course.test.each; n++) {
      const place = [seed, prepared.taxonIndex.get(taxon) ?? 0, n];
      const found = freshTask(prepared, course, taxon, kinds[n % kinds.length] ?? 'name', place, known);
      if (found === undefined) continue;
      own.push(found.task);
      known.add(found.mark);
      if (!found.fresh) met++;
    }
    if (own.length === 0) lacking.push(taxon);
    tasks.push(...own);
  }
  return { tasks: shuffled(tasks, new Random(seed, 1)), met, lacking };
}

function freshTask(
  prepared: PreparedKey,
  course: Course,
  taxon: string,
  kind: TaskKind,
  place: readonly number[],
  known: ReadonlySet<string>,
): { readonly task: Task; readonly mark: string; readonly fresh: boolean } | undefined {
  let last: { task: Task; mark: string; fresh: boolean } | undefined;
  for (let n = 0; n < TRIES; n++) {
    // Each try draws for itself: two people with the same test meet the same specimens but for those that one has met.
    const task = taskOf(prepared, course, `taxon:${taxon}`, kind, new Random(...place, n), true);
    if (task === undefined) return last;
    const mark = `${taxon} ${markOf(shownBy(prepared.key, task.specimen))}`;
    last = { task, mark, fresh: !known.has(mark) };
    if (last.fresh) return last;
  }
  return last;
}

/** How the specimens met so far looked. */
function marksIn(prepared: PreparedKey, attempts: readonly Attempt[]): Set<string> {
  const marks = new Set<string>();
  for (const { kind, specimen } of attempts) {
    if (kind === 'cover') continue;
    try {
      marks.add(`${specimen.taxon} ${markOf(shownBy(prepared.key, specimen))}`);
    } catch (error) {
      // A plant that the key once had.
      if (!(error instanceof SpecimenError)) throw error;
    }
  }
  return marks;
}

function shuffled<T>(list: readonly T[], random: Random): T[] {
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = random.below(i + 1);
    [mixed[i], mixed[j]] = [mixed[j] as T, mixed[i] as T];
  }
  return mixed;
}
