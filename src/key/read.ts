// The edge: text of files in, a strict key or a located error out.
import { bundleShape } from './generated/shapes.js';
import { LIMITS, type Limits, linesOf, readJson } from './json.ts';
import type { LooseBundle } from './loose.ts';
import type { Path } from './path.ts';
import { type Finding, KeyContentError, type Problem, Problems } from './problem.ts';
import { checkReferences } from './references/index.ts';
import { compare } from './shape.ts';
import { strictKey } from './strict/index.ts';
import type { Key } from './types.ts';

export interface ReadOptions {
  /** Limits other than the usual ones (5 MB, 40 levels, a million values, each for one file). */
  readonly limits?: Partial<Limits>;
}

/** The files of a key folder, in the order in which problems are told; `couplets.json` may be missing. */
export const KEY_FILES = [
  'key.json',
  'characters.json',
  'taxa.json',
  'couplets.json',
  'guidance.json',
  'sources.json',
] as const;

const TRANSLATION = /^text\/([^/]+)\.json$/;
const BUNDLE = 'bundle';

/**
 * The key that a folder's files describe, deep-frozen. `files` is the text of each by its name in the folder, such as
 * `taxa.json` or `text/es.json`; other names are passed over. Throws a KeyContentError with every problem at once: those
 * of the single files, or, when they are all well-formed, those of how they go together.
 */
export function readKey(files: ReadonlyMap<string, string>, options: ReadOptions = {}): Key {
  return finish(readFolder(files, options), files, options);
}

/** The key that a bundle describes; see readKey. Its hash is handed on as it stands (see verifyBundle). */
export function readBundle(text: string, options: ReadOptions = {}): Key {
  return finish(readBundleText(text, options), new Map(), options);
}

/** Content that may be wrong, and what is wrong with it so far. */
interface Content {
  readonly content: unknown;
  readonly problems: Problems;
}

/** The content of a folder that has no problem. */
export function looseFolder(files: ReadonlyMap<string, string>, options: ReadOptions = {}): LooseBundle {
  const read = readFolder(files, options);
  finish(read, files, options);
  return read.content as LooseBundle;
}

function readFolder(files: ReadonlyMap<string, string>, options: ReadOptions): Content {
  const problems = new Problems();
  const limits = { ...LIMITS, ...options.limits };
  const parse = (file: string) => readJson(files.get(file) ?? '', { file, problems, limits });
  const parts = KEY_FILES.flatMap((file) => {
    if (files.has(file)) return [[file.replace('.json', ''), parse(file)] as const];
    if (file !== 'couplets.json') problems.error(file, [], 'missing-file', 'this file in the key folder', 'nothing');
    return [];
  });
  const text = [...files.keys()].flatMap((file) => {
    const language = TRANSLATION.exec(file)?.[1];
    return language === undefined ? [] : [[language, parse(file)] as const];
  });
  const content = { format: 1, ...Object.fromEntries(parts), text: Object.fromEntries(text) };
  compareContent(content, problems);
  return { content, problems };
}

function readBundleText(text: string, options: ReadOptions): Content {
  const problems = new Problems();
  const content = readJson(text, { file: BUNDLE, problems, limits: { ...LIMITS, ...options.limits } });
  if (problems.none) compareContent(content, problems);
  return { content, problems };
}

function compareContent(content: unknown, problems: Problems): void {
  compare(content, bundleShape, (path, code, expected, found) => {
    const { file, at } = placeOf(path);
    // A file that is missing or is no JSON has been told of, once.
    if (at.length === 0 && file !== BUNDLE && problems.findings.some((one) => one.file === file)) return;
    problems.error(file, at, code, expected, found);
  });
}

/** From a place in the bundle to the file of the folder, and the place in that. */
function placeOf(path: Path): { file: string; at: Path } {
  const [part, language, ...rest] = path;
  if (part === 'text' && language !== undefined) return { file: `text/${language}.json`, at: rest };
  if ((KEY_FILES as readonly string[]).includes(`${part}.json`)) return { file: `${part}.json`, at: path.slice(1) };
  return { file: BUNDLE, at: path };
}

function finish({ content, problems }: Content, files: ReadonlyMap<string, string>, options: ReadOptions): Key {
  if (problems.none) {
    const key = strictKey(content as LooseBundle, problems);
    checkReferences(key, problems);
    if (problems.none) return key;
  }
  throw new KeyContentError(withLines(problems.findings, files, options), problems.more);
}

/** The same problems with the line of each, where its file's text is at hand. */
function withLines(
  findings: readonly Finding[],
  files: ReadonlyMap<string, string>,
  options: ReadOptions,
): readonly Problem[] {
  const lines = new Map<Finding, number>();
  for (const [file, text] of files) {
    const here = findings.filter((one) => one.file === file && one.at.length > 0 && one.problem.line === undefined);
    if (here.length === 0) continue;
    const found = linesOf(
      text,
      here.map(({ at }) => at),
      { file, problems: new Problems(), limits: { ...LIMITS, ...options.limits } },
    );
    here.forEach((one, i) => {
      const line = found[i];
      if (line !== undefined) lines.set(one, line);
    });
  }
  return findings.map((one) => {
    const line = lines.get(one);
    return line === undefined ? one.problem : Object.freeze({ ...one.problem, line });
  });
}
