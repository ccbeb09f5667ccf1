// A kept trail, read again: its own form first, then each answer against the key as it is now.
import { AnswersError, type KeyAnswer, type Month, type PreparedKey, readInquiry } from '../key/index.ts';
import { forksOf, type SessionStart, type Snapshot, type Turn } from '../session/index.ts';
import type { TrailRecord } from './records.ts';

export interface RestoredTrail {
  /** How to start a session from it. */
  readonly start: SessionStart;
  /** Answers that the key as it is now does not know. */
  readonly left: readonly unknown[];
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isMonth = (value: unknown): value is Month =>
  Number.isInteger(value) && Number(value) >= 1 && Number(value) <= 12;

/** Why a record is no trail; undefined when it is one. */
export function faultOfTrail(raw: unknown): string | undefined {
  if (!isRecord(raw)) return 'a trail is an object';
  if (raw.format !== 2) return `format: expected 2, not ${String(raw.format)}`;
  for (const name of ['name', 'key', 'version', 'observer', 'when'])
    if (typeof raw[name] !== 'string') return `${name}: expected a text`;
  if (!isMonth(raw.month)) return 'month: expected 1 to 12';
  for (const name of ['answers', 'took', 'turns']) if (!Array.isArray(raw[name])) return `${name}: expected a list`;
  if (raw.way !== 'couplets' && raw.way !== 'free') return 'way: expected couplets or free';
  return undefined;
}

/** Of another version of the key, what still fits holds; its turns do not: couplets are numbered anew. */
export function restoreTrail(prepared: PreparedKey, record: TrailRecord): RestoredTrail {
  const { key } = prepared;
  const { month, observer } = record;
  const answers: KeyAnswer[] = [];
  const left: unknown[] = [];
  const known = key.observers.has(observer) ? observer : ([...key.observers.keys()][0] as string);
  for (const answer of record.answers)
    try {
      const checked = readInquiry(prepared, { month, observer: known, answers: [...answers, answer] });
      answers.push(checked.answers.at(-1) as KeyAnswer);
    } catch (error) {
      if (!(error instanceof AnswersError)) throw error;
      left.push(answer);
    }
  const took = record.took.filter(
    (one) => Array.isArray(one) && answers.some(({ character }) => character === one[0]) && Number(one[1]) >= 0,
  );
  const forks = forksOf(prepared);
  const turns = record.version === key.version && forks ? record.turns.filter((turn) => isTurn(turn)) : [];
  function isTurn(turn: unknown): turn is Turn {
    if (!isRecord(turn)) return false;
    const fork = forks?.all.get(turn.couplet as number);
    return fork !== undefined && (turn.lead === undefined || fork.branches[turn.lead as number] !== undefined);
  }
  return {
    start: {
      month,
      ...(key.observers.has(observer) ? { observer } : {}),
      trail: answers,
      took: new Map(took.map(([id, seconds]) => [id, Number(seconds)])),
      turns,
      ...(forks ? { way: record.way } : {}),
    },
    left,
  };
}

/** What is kept of a session. `when` is ISO 8601. */
export function trailOf(name: string, snapshot: Snapshot, when: string): TrailRecord {
  const { prepared, month, observer, trail, took, way, turns } = snapshot;
  const { id, version } = prepared.key;
  return { name, format: 2, key: id, version, month, observer, answers: trail, took: [...took], way, turns, when };
}
