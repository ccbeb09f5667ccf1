// Whether somebody can be trusted with a plant, and by which rule.
import type { Course, PassMark } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm } from '../judge/judge.ts';
import { inOrder, type Scheduled } from '../schedule/schedule.ts';
import type { Attempt, ItemId, Rate } from '../types.ts';
import { rateOf } from './rates.ts';

/**
 * What decided, the first that holds: too few looks; on too few days; a native was called an invasive, be it this plant or
 * taken for it; too few of the last looks right; by now probably forgotten; the final test not taken; a mistake in it with
 * this plant, or another taken for it; or nothing is missing.
 */
export type ReadinessRule = 'looks' | 'days' | 'alarm' | 'share' | 'recall' | 'no-test' | 'test' | 'ready';

export interface Readiness {
  readonly taxon: string;
  readonly ready: boolean;
  readonly rule: ReadinessRule;
  readonly pass: PassMark;
  /** Looks at this plant, in practice and tests. */
  readonly looks: number;
  readonly days: number;
  /**
   * Of the last looks that concern this plant, as many as the pass mark counts: those at it, and those at another that was
   * taken for it, which are never right. Whatever was taken for it when last looked at counts too, however long ago. Who
   * calls every plant by this name does not know it.
   */
  readonly right: Rate;
  /** Among those. */
  readonly alarms: number;
  /** Predicted chance of knowing it now; undefined where it was never asked for by itself. */
  readonly recall: number | undefined;
}

/** Below this predicted chance a plant is to be looked at again before going out (ours). */
export const RECALL = 0.8;

const LOOKS = new Set(['name', 'standing', 'pair', 'run']);
/** The day as the person's own clock had it. */
export const dayOf = ({ at }: Attempt): string => at.slice(0, 10);

export function readinessOf(
  prepared: PreparedKey,
  course: Course,
  attempts: readonly Attempt[],
  schedule: ReadonlyMap<ItemId, Scheduled>,
): readonly Readiness[] {
  const ordered = inOrder(attempts).filter(({ kind }) => LOOKS.has(kind));
  const latest = new Map(ordered.map((one) => [one.specimen.taxon, one]));
  return course.taxa.map((taxon): Readiness => {
    const pass = course.pass.get(taxon) as PassMark;
    const looks = ordered.filter(({ specimen }) => specimen.taxon === taxon);
    const concerning = ordered.filter(({ specimen, said }) => specimen.taxon === taxon || said === taxon);
    const still = [...latest.values()].filter((one) => one.specimen.taxon !== taxon && one.said === taxon);
    const last = [...new Set([...concerning.slice(-pass.looks), ...still])];
    const right = rateOf(last.filter((one) => one.right).length, last.length);
    const days = new Set(looks.map(dayOf)).size;
    const alarms = last.filter((one) => isAlarm(prepared, one)).length;
    const recall = schedule.get(`taxon:${taxon}`)?.recall;
    const test = lastTestOf(course, looks);
    const rule = ruleOf();
    return { taxon, ready: rule === 'ready', rule, pass, looks: looks.length, days, right, alarms, recall };

    function ruleOf(): ReadinessRule {
      if (looks.length < pass.looks) return 'looks';
      if (days < pass.days) return 'days';
      if (alarms > pass.alarms) return 'alarm';
      if (right.count < pass.right * right.n) return 'share';
      if ((recall ?? 0) < RECALL) return 'recall';
      if (test === undefined) return 'no-test';
      return concerning.every((one) => one.test !== test || one.right) ? 'ready' : 'test';
    }
  });
}

/**
 * The sitting of the final test that counts for a plant, by the looks at it: the last that asked it as often as the course
 * does. A later one that was broken off before it came to the plant takes nothing away. Of a plant of which fewer fair
 * tasks can be made, or before the first sitting is over, the last that asked it at all.
 */
function lastTestOf({ id, test: { each } }: Course, looks: readonly Attempt[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { course, test } of looks)
    if (course === id && test !== undefined) counts.set(test, (counts.get(test) ?? 0) + 1);
  const sittings = [...counts];
  return (sittings.findLast(([, n]) => n >= each) ?? sittings.at(-1))?.[0];
}
