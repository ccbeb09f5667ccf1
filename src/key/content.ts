// From content that may be wrong to a strict key, or to every problem with it: what folder and bundle have in common.
import { bundleShape } from './generated/shapes.js';
import { LIMITS, type Limits } from './json.ts';
import type { LooseBundle } from './loose.ts';
import type { Path } from './path.ts';
import type { Problems } from './problem.ts';
import { checkReferences } from './references/index.ts';
import { compare } from './shape.ts';
import { strictKey } from './strict/index.ts';
import type { Key } from './types.ts';

export interface ReadOptions {
  /** Limits other than the usual ones: 5 MB, 40 levels and a million values, each for one file. */
  readonly limits?: Partial<Limits>;
}

export const limitsOf = ({ limits }: ReadOptions): Limits => ({ ...LIMITS, ...limits });

/** The files of a key folder, in the order in which problems are told; `couplets.json` may be missing. */
export const KEY_FILES = [
  'key.json',
  'characters.json',
  'taxa.json',
  'couplets.json',
  'guidance.json',
  'sources.json',
] as const;

/** Problems of the bundle's own frame are told under this name. */
export const BUNDLE = 'bundle';

/** Notes where the content, all files in one object, differs from the schemas. */
export function compareContent(content: unknown, problems: Problems): void {
  compare(content, bundleShape, (path, code, expected, found) => {
    const { file, at } = placeOf(path);
    // A file that is missing or is no JSON has been told of, once.
    if (at.length === 0 && file !== BUNDLE && problems.findings.some((one) => one.file === file)) return;
    problems.error(file, at, code, expected, found);
  });
}

/** The key that content of the right shape describes, if its parts go together; else the problems are noted. */
export function keyOf(content: unknown, problems: Problems): Key | undefined {
  const key = strictKey(content as LooseBundle, problems);
  checkReferences(key, problems);
  return problems.none ? key : undefined;
}

/** From a place in the bundle to the file of the folder, and the place in that. */
function placeOf(path: Path): { file: string; at: Path } {
  const [part, language, ...rest] = path;
  if (part === 'text' && language !== undefined) return { file: `text/${language}.json`, at: rest };
  if ((KEY_FILES as readonly string[]).includes(`${part}.json`)) return { file: `${part}.json`, at: path.slice(1) };
  return { file: BUNDLE, at: path };
}
