// A learner's file: read with every fault told, and written always the same way.
import { linesOf, readJson } from '../../key/json.ts';
import { Problems } from '../../key/problem.ts';
import { Faults, type FindProblem } from '../../report/find/reader.ts';
import { inOrder } from '../schedule/schedule.ts';
import type { PracticeRecord } from '../types.ts';
import { recordForm } from './form.ts';

/** Most that a file may hold. */
export const RECORD_LIMITS = Object.freeze({ bytes: 100_000_000, depth: 12, items: 6_000_000 });
const FILE = 'practice.json';

/** A text that is no learner's file: every fault with its path, and its line where known. */
export class RecordError extends Error {
  override readonly name = 'RecordError';
  constructor(
    readonly problems: readonly FindProblem[],
    readonly more = 0,
  ) {
    super(
      problems
        .slice(0, 10)
        .map(({ line, path, expected, found }) => {
          const where = line === undefined ? path || '(file)' : `line ${line}, ${path || '(file)'}`;
          return `${where}: expected ${expected}, found ${found}`;
        })
        .join('\n'),
    );
  }
}

/** @throws RecordError */
export function readRecord(text: string): PracticeRecord {
  const problems = new Problems();
  const content = readJson(text, { file: FILE, problems, limits: RECORD_LIMITS });
  if (!problems.none)
    throw new RecordError(
      problems.list.map(({ path, expected, found, line }) => ({
        path,
        expected,
        found,
        ...(line === undefined ? {} : { line }),
      })),
      problems.more,
    );
  const faults = new Faults();
  const record = recordForm(content, [], faults);
  if (record !== undefined && faults.problems.length === 0) return { ...record, attempts: inOrder(record.attempts) };
  const lines = linesOf(text, faults.places, { file: FILE, limits: RECORD_LIMITS, problems });
  throw new RecordError(
    faults.problems.map((problem, i) => (lines[i] === undefined ? problem : { ...problem, line: lines[i] })),
    faults.more,
  );
}

/** Whether a loose value says that it is a learner's file; a find has neither field. */
export const isRecord = (content: unknown): boolean =>
  typeof content === 'object' && content !== null && ('learner' in content || 'attempts' in content);

/** One attempt in a line, and the fields of each in the order of the form, so that two files can be compared by eye. */
export function writeRecord(record: PracticeRecord): string {
  const { format, learner, key, attempts } = recordForm(record, [], new Faults()) ?? record;
  const lines = inOrder(attempts).map((attempt) => `  ${JSON.stringify(attempt)}`);
  return `{\n "format": ${format},\n "learner": ${JSON.stringify(learner)},\n "key": ${JSON.stringify(key)},\n "attempts": [${lines.length > 0 ? `\n${lines.join(',\n')}\n ` : ''}]\n}\n`;
}
