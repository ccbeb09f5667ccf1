// How learners' files come in: read one by one. What cannot be read is told with its places, and the others stay.
import { type PracticeRecord, RecordError, readRecord } from '../../practice/index.ts';

/** A file that could not be used. */
export interface Fault {
  readonly name: string;
  /** What is wrong, place by place; none where it did not come. */
  readonly lines: readonly string[];
  /** How many more mistakes it has. */
  readonly more: number;
}

export interface Coming {
  readonly name: string;
  /** @throws where it does not come */
  readonly text: () => Promise<string>;
}

export interface Taken {
  readonly records: readonly PracticeRecord[];
  readonly faults: readonly Fault[];
}

/** How many mistakes of a file are shown. */
const SHOWN = 5;

export async function takeIn(coming: readonly Coming[]): Promise<Taken> {
  const records: PracticeRecord[] = [];
  const faults: Fault[] = [];
  for (const { name, text } of coming) {
    const content = await text().catch(() => undefined);
    if (content === undefined) {
      faults.push({ name, lines: [], more: 0 });
      continue;
    }
    try {
      records.push(readRecord(content));
    } catch (error) {
      if (!(error instanceof RecordError)) throw error;
      const lines = error.problems.slice(0, SHOWN).map(placed);
      faults.push({ name, lines, more: error.problems.length + error.more - lines.length });
    }
  }
  return { records, faults };
}

function placed({ line, path, expected, found }: RecordError['problems'][number]): string {
  const place = [line === undefined ? '' : String(line), path].filter((one) => one !== '').join(', ');
  return `${place === '' ? '' : `${place}: `}${expected} ≠ ${found}`;
}

/** Of the records, what was done up to a day (year-month-day, of each person's own clock). */
export const upTo = (day: string, records: readonly PracticeRecord[]): readonly PracticeRecord[] =>
  records.map((record) => ({ ...record, attempts: record.attempts.filter(({ at }) => at.slice(0, 10) <= day) }));
