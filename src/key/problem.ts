// What is wrong with a key's content: where, what was expected, what stands there.
import { type Path, printPath, show } from './path.ts';

export type ProblemCode = ErrorCode | WarningCode;

export type ErrorCode =
  // The file as a whole.
  | 'missing-file'
  | 'too-large'
  | 'too-deep'
  | 'too-many'
  | 'json'
  | 'bad-text'
  | 'bad-number'
  | 'reserved-field'
  | 'duplicate-field'
  | 'hash'
  // The shape of a value.
  | 'type'
  | 'value'
  | 'form'
  | 'length'
  | 'bounds'
  | 'missing-field'
  | 'unknown-field'
  | 'date'
  | 'range'
  // How values go together.
  | 'unknown-id'
  | 'duplicate-id'
  | 'kind'
  | 'unit'
  | 'cycle'
  | 'order'
  | 'share'
  | 'needs'
  | 'no-source'
  | 'language';

export type WarningCode =
  | 'not-separated'
  | 'thin-taxon'
  | 'thin-character'
  | 'no-native-lookalike'
  | 'no-guidance'
  | 'same-states'
  | 'shared-name'
  | 'untranslated'
  | 'unused-source'
  | 'unused-translation'
  | 'past-review'
  | 'hard-to-read'
  | 'contradicts'
  | 'unreachable'
  | 'separates-nothing'
  | 'from-memory'
  | 'no-picture'
  | 'unknown-picture'
  | 'no-alt'
  | 'no-term';

export interface Problem {
  /** Name of the file in the key folder, such as `taxa.json`; `bundle` for the bundle's own frame. */
  readonly file: string;
  /** Line in the file, from 1, where known; for faults of the JSON itself also the column, in UTF-16 units. */
  readonly line?: number;
  readonly column?: number;
  /** `taxa[3].traits.leaf-shape.usually[0]`; empty for the file as a whole. */
  readonly path: string;
  /** What should stand there, in words. */
  readonly expected: string;
  /** What stands there, cut short. */
  readonly found: string;
  readonly code: ProblemCode;
  readonly severity: 'error' | 'warning';
}

/** Most problems that are told one by one. */
export const MOST_PROBLEMS = 200;

/** `taxa.json line 214, taxa[3].family: expected text, found 7` */
export function describeProblem({ file, line, column, path, expected, found }: Problem): string {
  const place = [
    line === undefined ? file : `${file} line ${line}${column === undefined ? '' : ` column ${column}`}`,
    ...(path === '' ? [] : [path]),
  ].join(', ');
  return `${place}: expected ${expected}${found === '' ? '' : `, found ${found}`}`;
}

/** Content that cannot be used as a key. Nothing else is thrown for what a file says. */
export class KeyContentError extends Error {
  override readonly name = 'KeyContentError';
  /** Every problem found, errors only, at most 200. */
  readonly problems: readonly Problem[];
  /** How many more there were. */
  readonly more: number;

  constructor(problems: readonly Problem[], more = 0) {
    const count = problems.length + more;
    const told = problems.slice(0, 10).map((problem) => `  ${describeProblem(problem)}`);
    const rest = count > told.length ? [`  and ${count - told.length} more`] : [];
    super(
      [`This key cannot be used: ${count === 1 ? '1 problem' : `${count} problems`}.`, ...told, ...rest].join('\n'),
    );
    this.problems = Object.freeze([...problems]);
    this.more = more;
  }
}

/** A problem before its place is put into words. */
export interface Finding {
  readonly file: string;
  readonly at: Path;
  readonly problem: Problem;
}

/** Gathers problems: the first `most` in full, of the rest only the number. */
export class Problems {
  readonly findings: Finding[] = [];
  more = 0;
  readonly #most: number;

  constructor(most = MOST_PROBLEMS) {
    this.#most = most;
  }

  /** Notes an error; `found` is text as it is to be shown. */
  error(
    file: string,
    at: Path,
    code: ErrorCode,
    expected: string,
    found: string,
    where: { line?: number; column?: number } = {},
  ): void {
    this.add({ file, at, problem: { file, ...where, path: printPath(at), expected, found, code, severity: 'error' } });
  }

  /** Notes an error about a value, which is shown cut short. */
  wrong(file: string, at: Path, code: ErrorCode, expected: string, value: unknown): void {
    this.error(file, at, code, expected, show(value));
  }

  warn(file: string, at: Path, code: WarningCode, expected: string, found: string): void {
    this.add({ file, at, problem: { file, path: printPath(at), expected, found, code, severity: 'warning' } });
  }

  get none(): boolean {
    return this.findings.length === 0;
  }

  get list(): Problem[] {
    return this.findings.map(({ problem }) => problem);
  }

  add(finding: Finding): void {
    if (this.findings.length < this.#most) this.findings.push(finding);
    else this.more++;
  }
}
