// Everything that can be said against a key folder, errors and warnings alike.
import { checkKey, type Key, KeyContentError, type Problem, readKey } from '../key/index.ts';
import { withLines } from './lines.ts';

export interface Inspection {
  /** Absent when there are errors. */
  readonly key?: Key;
  readonly problems: readonly Problem[];
  /** Problems beyond those listed. */
  readonly more: number;
}

/** `files` is the text of each file by its name in the folder; `today` is year-month-day. */
export function inspect(files: ReadonlyMap<string, string>, today: string): Inspection {
  try {
    const key = readKey(files);
    return { key, problems: withLines(checkKey(key, { today }), files), more: 0 };
  } catch (error) {
    if (error instanceof KeyContentError) return { problems: error.problems, more: error.more };
    throw error;
  }
}

export const errorsOf = ({ problems }: Inspection): readonly Problem[] =>
  problems.filter(({ severity }) => severity === 'error');
