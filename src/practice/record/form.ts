// The form of a learner's file, field by field.

import { SURENESS } from '../../engine/index.ts';
import { TASKS } from '../../key/courses/index.ts';
import type { KeyAnswer, Month, Sureness } from '../../key/index.ts';
import { ALL_MONTHS } from '../../key/strict/dates.ts';
import {
  Faults,
  flag,
  listOf,
  maybe,
  number,
  object,
  oneOf,
  type Reader,
  text,
  textThat,
} from '../../report/find/reader.ts';
import type { Attempt, ItemId, PracticeRecord, Specimen } from '../types.ts';

const UUID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::\d{2}(?:\.\d{1,6})?)?(?:Z|[+-]\d{2}:\d{2})$/;
const ITEM = /^(?:taxon|character|pair|cover):[a-z0-9+-]{1,170}$/;
const ID = /^[a-z0-9][a-z0-9-]{0,79}$/;

/** Most attempts in a file: years of practice (ours). */
export const MOST_ATTEMPTS = 200_000;

const uuid = textThat((one) => UUID.test(one), 'a UUID in small letters');
const id = textThat((one) => ID.test(one), 'an id');
const moment = textThat(
  (one) => MOMENT.test(one) && !Number.isNaN(Date.parse(one)),
  'a time such as 2026-05-04T08:00:00-05:00',
);
const sureness = oneOf(Object.keys(SURENESS) as Sureness[]);
/** Longer than an hour nobody looks at one picture: the page was left open. */
export const MOST_SECONDS = 3600;
const seconds = number({ least: 0, most: MOST_SECONDS });

const specimen = object<Specimen>({
  taxon: id,
  month: oneOf(ALL_MONTHS) as Reader<Month>,
  seed: number({ least: 1, most: 2 ** 32, whole: true }),
});

/** Whether the key knows the answer is asked when it is used: here only its form. */
const answer: Reader<KeyAnswer> = (value, at, faults) => {
  if (typeof value === 'object' && value !== null && 'skipped' in value)
    return object<{ character: string; skipped: true }>({ character: id, skipped: oneOf([true]) })(value, at, faults);
  if (typeof value === 'object' && value !== null && 'value' in value)
    return object<Extract<KeyAnswer, { value: number }>>({
      character: id,
      value: number({ over: 0, most: 1e6 }),
      unit: oneOf(['mm', 'cm', 'm', 'in', 'ft', 'count']),
      sureness,
    })(value, at, faults);
  return object<Extract<KeyAnswer, { states: unknown }>>({ character: id, states: listOf(id, 100, 1), sureness })(
    value,
    at,
    faults,
  );
};

const attempt = object<Attempt>(
  {
    id: uuid,
    at: moment,
    course: id,
    test: maybe(uuid),
    kind: oneOf(TASKS),
    item: textThat((one) => ITEM.test(one), 'an item such as taxon:arundo-donax') as Reader<ItemId>,
    specimen,
    character: maybe(id),
    options: listOf(id, 200),
    truth: id,
    said: id,
    sureness: maybe(sureness),
    seconds,
    trail: maybe(listOf(answer, 400)),
    right: flag,
  },
  ({ kind, character, truth, said, right }, at, faults) => {
    if ((kind === 'read') !== (character !== undefined))
      faults.note([...at, 'character'], kind === 'read' ? 'the id of a character' : 'none', character ?? 'none');
    if (right !== (said === truth)) faults.wrong([...at, 'right'], `${said === truth}, by what was said`, right);
  },
);

/** Whether a loose value is an attempt. */
export function isAttempt(raw: unknown): raw is Attempt {
  const faults = new Faults();
  return attempt(raw, [], faults) !== undefined && faults.problems.length === 0;
}

export const recordForm = object<PracticeRecord>(
  {
    format: oneOf([1]),
    learner: object<PracticeRecord['learner']>({ id: uuid, name: text(100, 0) }),
    key: object<PracticeRecord['key']>({ id, version: text(40) }),
    attempts: listOf(attempt, MOST_ATTEMPTS),
  },
  ({ attempts }, at, faults) => {
    const seen = new Set<string>();
    attempts.forEach((one, i) => {
      if (seen.has(one.id)) faults.wrong([...at, 'attempts', i, 'id'], 'each only once', one.id);
      seen.add(one.id);
    });
  },
);
