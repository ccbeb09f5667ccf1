// Whether somebody can be trusted with a plant, and by which rule.
import type { Course, PassMark } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm } from '../judge/judge.ts';
import { inOrder, type Scheduled } from '../schedule/schedule.ts';
import type { Attempt, ItemId, Rate } from '../types.ts';
import { rateOf } from './rates.ts';

/**
 * What decided, the first that holds: too few looks; on too few days; a native was called an invasive; too few of the last
 * looks right; by now probably forgotten; the final test not taken; not passed for this plant; or nothing is missing.
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
  /** Of the last looks that the pass mark counts. */
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
  const ordered = inOrder(attempts);
  const lastTest = ordered.findLast((one) => one.course === course.id && one.test !== undefined)?.test;
  return course.taxa.map((taxon): Readiness => {
    const pass = course.pass.get(taxon) as PassMark;
    const looks = ordered.filter((one) => LOOKS.has(one.kind) && one.specimen.taxon === taxon);
    const last = looks.slice(-pass.looks);
    const right = rateOf(last.filter((one) => one.right).length, last.length);
    const days = new Set(looks.map(dayOf)).size;
    const alarms = last.filter((one) => isAlarm(prepared, one)).length;
    const recall = schedule.get(`taxon:${taxon}`)?.recall;
    const tested = looks.filter((one) => one.test !== undefined && one.test === lastTest);
    const rule = ruleOf();
    return { taxon, ready: rule === 'ready', rule, pass, looks: looks.length, days, right, alarms, recall };

    function ruleOf(): ReadinessRule {
      if (looks.length < pass.looks) return 'looks';
      if (days < pass.days) return 'days';
      if (alarms > pass.alarms) return 'alarm';
      if (right.count < pass.right * right.n) return 'share';
      if ((recall ?? 0) < RECALL) return 'recall';
      if (tested.length === 0) return 'no-test';
      return tested.every((one) => one.right) ? 'ready' : 'test';
    }
  });
}
