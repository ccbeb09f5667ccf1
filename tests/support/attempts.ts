// Attempts of an invented learner, for tests of the practice room.
import type { Attempt, PracticeRecord } from '../../src/practice/index.ts';

export const START = Date.parse('2026-05-04T08:00:00Z');
export const MINUTE = 60_000;
export const DAY = 24 * 60 * MINUTE;

export const idOf = (n: number): string => `00000000-0000-4000-8000-${n.toString(16).padStart(12, '0')}`;

/** Naming `truth`, said rightly unless told otherwise; the `n`-th, a minute after the one before, from the first day on. */
export function attempt(n: number, truth: string, more: Partial<Attempt> & { readonly day?: number } = {}): Attempt {
  const { day = 0, ...rest } = more;
  const said = rest.said ?? truth;
  return {
    id: idOf(n),
    at: new Date(START + day * DAY + n * MINUTE).toISOString(),
    course: 'giant-reed',
    kind: 'name',
    item: `taxon:${truth}`,
    specimen: { taxon: truth, month: 8, seed: 2 * n + 1 },
    options: [...new Set(['arundo-donax', truth, said])].filter((id) => id !== 'unsure'),
    truth,
    said,
    right: said === truth,
    seconds: 10,
    sureness: 'think',
    ...rest,
  };
}

export const record = (
  attempts: readonly Attempt[],
  more: { readonly id?: string; readonly name?: string; readonly key?: string; readonly version?: string } = {},
): PracticeRecord => ({
  format: 1,
  learner: { id: more.id ?? idOf(0xa), name: more.name ?? 'Invented' },
  key: { id: more.key ?? 'streambank', version: more.version ?? '0.1.0' },
  attempts,
});
