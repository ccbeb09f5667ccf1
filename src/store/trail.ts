// The form of a kept trail; each answer is held against the key by the session's restoreTrail.
import type { Month } from '../key/index.ts';
import type { Snapshot } from '../session/index.ts';
import type { TrailRecord } from './records.ts';

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

/** What is kept of a session. `when` is ISO 8601. */
export function trailOf(name: string, snapshot: Snapshot, when: string): TrailRecord {
  const { prepared, month, observer, trail, took, way, turns } = snapshot;
  const { id, version } = prepared.key;
  return { name, format: 2, key: id, version, month, observer, answers: trail, took: [...took], way, turns, when };
}
