// One report on its way, as a machine: what may be tried, and what comes of it. Pure: the clock and chance are handed in.
import { backoff, type Outcome } from '../../report/send/index.ts';
import type { OutboxRecord } from '../records.ts';

/** After so long, whoever was sending it is held to be gone: more than one try may take (ours). */
export const LEASE = 180_000;
/** No report waits longer between two tries than this, whatever was asked for (ours). */
export const LONGEST = 3_600_000;

/** The clock was set back: what it said before is of no use. */
const setBack = ({ since }: OutboxRecord, now: number): boolean => now < since;

/** When it may be tried; undefined: never by itself. */
export function dueAt(entry: OutboxRecord, now: number): number | undefined {
  if (entry.state === 'sent' || entry.state === 'refused') return undefined;
  if (setBack(entry, now)) return entry.state === 'waiting' ? now : undefined;
  return entry.state === 'sending' ? entry.since + LEASE : Math.min(entry.next, entry.since + LONGEST);
}

/** Claims it for a try; undefined when it is not to be tried now. */
export function begun(entry: OutboxRecord, now: number): OutboxRecord | undefined {
  const at = dueAt(entry, now);
  return at !== undefined && at <= now ? { ...entry, state: 'sending', tries: entry.tries + 1, since: now } : undefined;
}

/** A clock set back while somebody was sending: the wait for them begins anew. */
export const reset = (entry: OutboxRecord, now: number): OutboxRecord | undefined =>
  entry.state === 'sending' && setBack(entry, now) ? { ...entry, since: now } : undefined;

/** The signal came back: what waits need wait no longer, unless the receiver asked for it. */
export const hurried = (entry: OutboxRecord, now: number): OutboxRecord | undefined =>
  entry.state === 'waiting' && !entry.asked && entry.next > now ? { ...entry, next: now, since: now } : undefined;

/**
 * What came of a try, by its number. An arrival holds whoever tells of it, and for good; any other news of a try that
 * was given up meanwhile says nothing. `chance` is 0 to 1.
 */
export function settled(
  entry: OutboxRecord,
  number: number,
  outcome: Outcome,
  now: number,
  chance: number,
): OutboxRecord | undefined {
  if (entry.state === 'sent') return undefined;
  const { refusal: _, asked: _asked, ...rest } = entry;
  if (outcome.state === 'sent')
    return { ...rest, state: 'sent', since: now, receipt: { ...outcome.receipt, tries: entry.tries } };
  if (entry.state !== 'sending' || entry.tries !== number) return undefined;
  if (outcome.state === 'refused') {
    const { state, ...refusal } = outcome;
    return { ...rest, state, since: now, refusal };
  }
  const wait = Math.min(outcome.after ?? backoff(Math.min(number, 20), chance), LONGEST);
  const asked = outcome.after === undefined ? {} : { asked: true as const };
  return { ...rest, ...asked, state: 'waiting', since: now, next: now + wait };
}

/** Why a record is none of an outbox; undefined when it is one. */
export function faultOfEntry(raw: unknown): string | undefined {
  if (typeof raw !== 'object' || raw === null) return 'a report on its way is an object';
  const { format, key, find, endpoint, text, photos, state, tries, since, next } = raw as Record<string, unknown>;
  if (format !== 1) return `format: expected 1, not ${String(format)}`;
  for (const [name, value] of Object.entries({ key, find, endpoint, text }))
    if (typeof value !== 'string') return `${name}: expected a text`;
  for (const [name, value] of Object.entries({ tries, since, next }))
    if (typeof value !== 'number' || !Number.isFinite(value)) return `${name}: expected a number`;
  if (!Array.isArray(photos) || photos.some((id) => typeof id !== 'string')) return 'photos: expected a list of ids';
  if (!['waiting', 'sending', 'sent', 'refused'].includes(state as string)) return 'state: expected one of the four';
  return undefined;
}
