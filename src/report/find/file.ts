// A find as a file: read with every fault told, written always the same way.
import { linesOf, readJson } from '../../key/json.ts';
import type { Path } from '../../key/path.ts';
import { Problems } from '../../key/problem.ts';
import { findForm } from './form.ts';
import { Faults, type FindProblem } from './reader.ts';
import { type Find, FORMAT } from './types.ts';

/** Most that a file may hold: a dozen photographs of a phone go in. */
export const FIND_LIMITS = Object.freeze({ bytes: 64_000_000, depth: 12, items: 50_000 });

const FILE = 'find.json';

/** A text that is no find; nothing else is thrown for what a file says. */
export class FindError extends Error {
  override readonly name = 'FindError';
  /** Every fault, the first hundred in full. */
  readonly problems: readonly FindProblem[];
  readonly more: number;
  constructor(problems: readonly FindProblem[], more = 0) {
    super([...problems.slice(0, 10).map(describe), ...(more > 0 ? [`and ${more} more`] : [])].join('\n'));
    this.problems = problems;
    this.more = more;
  }
}

const describe = ({ line, path, expected, found }: FindProblem): string =>
  `${[...(line === undefined ? [] : [`line ${line}`]), path || '(file)'].join(', ')}: expected ${expected}, found ${found}`;

/** A loose value as a find. @throws FindError with every fault. */
export const toFind = (content: unknown): Find => checked(content, () => []);

function checked(content: unknown, linesAt: (places: readonly Path[]) => readonly (number | undefined)[]): Find {
  const faults = new Faults();
  const find = isNewer(content, faults) ? undefined : findForm(content, [], faults);
  if (find !== undefined && faults.problems.length === 0) return find;
  const lines = linesAt(faults.places);
  throw new FindError(
    faults.problems.map((problem, i) => ({ ...problem, ...lineAt(lines[i]) })),
    faults.more,
  );
}

const lineAt = (line: number | undefined) => (line === undefined ? {} : { line });

/** A file of a later edition has fields that this one does not know: that alone is said, not each of them. */
function isNewer(content: unknown, faults: Faults): boolean {
  const format = typeof content === 'object' && content !== null && 'format' in content ? content.format : undefined;
  if (typeof format !== 'number' || format <= FORMAT) return false;
  faults.wrong(['format'], `${FORMAT}: this find was written by a later edition`, format);
  return true;
}

/** The find that a text holds. @throws FindError with every fault, its path and its line. */
export function readFind(text: string): Find {
  const problems = new Problems();
  const scan = { file: FILE, problems, limits: FIND_LIMITS };
  const content = readJson(text, scan);
  if (!problems.none)
    throw new FindError(
      problems.list.map(({ path, expected, found, line }) => ({
        path,
        expected,
        found,
        ...lineAt(line),
      })),
      problems.more,
    );
  return checked(content, (places) => linesOf(text, places, { file: FILE, limits: FIND_LIMITS, problems }));
}

/** The find as text: fields in one order, none that is empty, two spaces, a line's end. @throws FindError for what is none. */
export const writeFind = (find: Find): string => `${JSON.stringify(toFind(find), undefined, 2)}\n`;
