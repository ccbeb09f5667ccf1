// Two files of the same person made one, and the files of many people put together.
import { inOrder } from '../schedule/schedule.ts';
import type { Attempt, PracticeRecord } from '../types.ts';

/** Two records that are not of the same person, or not of the same key. */
export class MergeError extends Error {
  override readonly name = 'MergeError';
}

/**
 * All attempts of both, each once. Of two that differ under one id the one given later stands, at the same time the one
 * whose text comes last (see `conflictsOf`, which names them). The version of the key, and the name, are of the record
 * whose last attempt is the later; at the same time the higher version holds, then the name that comes last. So records
 * can be merged in any order and grouping.
 * @throws MergeError
 */
export function mergeRecords(one: PracticeRecord, other: PracticeRecord): PracticeRecord {
  if (one.learner.id !== other.learner.id) throw new MergeError('these are the files of two people');
  if (one.key.id !== other.key.id) throw new MergeError(`one is of the key ${one.key.id}, one of ${other.key.id}`);
  const byId = new Map<string, Attempt>();
  for (const attempt of [...one.attempts, ...other.attempts]) {
    const before = byId.get(attempt.id);
    if (before === undefined || compareCopies(before, attempt) < 0) byId.set(attempt.id, attempt);
  }
  const later = compareRecords(one, other) < 0 ? other : one;
  return { ...later, attempts: inOrder([...byId.values()]) };
}

/** Ids of attempts that both have and that differ in anything, in alphabetical order. */
export function conflictsOf(one: PracticeRecord, other: PracticeRecord): string[] {
  const own = new Map(one.attempts.map((attempt) => [attempt.id, attempt]));
  const differing = other.attempts.filter((attempt) => {
    const mine = own.get(attempt.id);
    return mine !== undefined && compareCopies(mine, attempt) !== 0;
  });
  return [...new Set(differing.map(({ id }) => id))].sort();
}

export interface People {
  /** One record of each person, by the ids of the people. */
  readonly people: readonly PracticeRecord[];
  /** Indices of the records that are of another key, and were left out. */
  readonly otherKey: readonly number[];
  /** Ids of attempts that two files of one person tell differently, in alphabetical order. */
  readonly conflicts: readonly string[];
}

/** Records of one key, those of the same person merged. The order of the records changes nothing but `otherKey`. */
export function peopleIn(key: string, records: readonly PracticeRecord[]): People {
  const people = new Map<string, PracticeRecord>();
  const otherKey: number[] = [];
  const conflicts = new Set<string>();
  records.forEach((record, i) => {
    if (record.key.id !== key) {
      otherKey.push(i);
      return;
    }
    const before = people.get(record.learner.id);
    for (const id of before ? conflictsOf(before, record) : []) conflicts.add(id);
    people.set(record.learner.id, before ? mergeRecords(before, record) : record);
  });
  const sorted = [...people.values()].sort((a, b) => compareTexts(a.learner.id, b.learner.id));
  return { people: sorted, otherKey, conflicts: [...conflicts].sort() };
}

const compareTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** 0 only for two that say the same, in whatever order their fields stand. */
function compareCopies(a: Attempt, b: Attempt): number {
  if (a === b) return 0;
  return Date.parse(a.at) - Date.parse(b.at) || compareTexts(textOf(a), textOf(b));
}

/** JSON with the fields of every object in alphabetical order. */
const textOf = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => compareTexts(a, b)))
      : inner,
  );

function compareRecords(a: PracticeRecord, b: PracticeRecord): number {
  const [last, otherLast] = [lastOf(a), lastOf(b)];
  if (last !== otherLast) return last < otherLast ? -1 : 1;
  const version = a.key.version.localeCompare(b.key.version, 'en', { numeric: true });
  return version || compareTexts(a.key.version, b.key.version) || compareTexts(a.learner.name, b.learner.name);
}

/** Milliseconds of the last attempt. */
const lastOf = ({ attempts }: PracticeRecord): number =>
  attempts.reduce((last, { at }) => Math.max(last, Date.parse(at)), Number.NEGATIVE_INFINITY);
