// The crew as tables for a spreadsheet.
import { csvOf, defused } from '../../report/forms/csv.ts';
import type { PracticeRecord } from '../types.ts';
import type { Member } from './crew.ts';

/** One line for each person and plant; shares are from 0 to 1. */
export function plantsCsv(course: string, members: readonly Member[]): string {
  const head = [
    'learner',
    'name',
    'course',
    'taxon',
    'ready',
    'rule',
    'looks',
    'days',
    'rightOfLast',
    'last',
    'alarms',
    'recall',
  ];
  return csvOf([
    head,
    ...members.flatMap(({ id, name, figures }) =>
      figures.readiness.map(({ taxon, ready, rule, looks, days, right, alarms, recall }) => [
        ...[id, defused(name), course, taxon, String(ready), rule, String(looks), String(days)],
        ...[String(right.count), String(right.n), String(alarms), recall === undefined ? '' : recall.toFixed(3)],
      ]),
    ),
  ]);
}

/** One line for each look. Options are ids with a blank between; the answers of a run are JSON, as in the learner's file. */
export function attemptsCsv(records: readonly PracticeRecord[]): string {
  const head = [
    'learner',
    'name',
    'at',
    'course',
    'test',
    'kind',
    'item',
    'taxon',
    'month',
    'seed',
    'character',
    'options',
    'truth',
    'said',
    'right',
    'sureness',
    'seconds',
    'trail',
  ];
  return csvOf([
    head,
    ...records.flatMap(({ learner, attempts }) =>
      attempts.map((one) => [
        ...[learner.id, defused(learner.name), one.at, one.course, one.test ?? '', one.kind, one.item],
        ...[one.specimen.taxon, String(one.specimen.month), String(one.specimen.seed), one.character ?? ''],
        ...[one.options.join(' '), one.truth, one.said, String(one.right), one.sureness ?? '', String(one.seconds)],
        one.trail === undefined ? '' : JSON.stringify(one.trail),
      ]),
    ),
  ]);
}
