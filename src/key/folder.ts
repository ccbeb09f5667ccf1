// A key folder: text of its files in, a strict key or every problem with its line out.
import { compareContent, KEY_FILES, keyOf, limitsOf, type ReadOptions } from './content.ts';
import { linesOf, readJson } from './json.ts';
import type { LooseBundle } from './loose.ts';
import { KeyContentError, type Problem, Problems } from './problem.ts';
import { salvage } from './salvage.ts';
import type { Key } from './types.ts';

type Files = ReadonlyMap<string, string>;

const TRANSLATION = /^text\/([^/]+)\.json$/;

/**
 * The key that a folder's files describe, deep-frozen. `files` is the text of each by its name in the folder, such as
 * `taxa.json` or `text/es.json`; other names are passed over. Throws a KeyContentError with every problem at once: of
 * the single files, and of how they go together as far as they can be made sense of.
 */
export function readKey(files: Files, options: ReadOptions = {}): Key {
  return readFolder(files, options).key;
}

/** The same, with the loose content of the files as well. */
export function readFolder(files: Files, options: ReadOptions = {}): { key: Key; content: LooseBundle } {
  const problems = new Problems();
  const content = assemble(files, options, problems);
  compareContent(content, problems);
  if (problems.none) {
    const key = keyOf(content, problems);
    if (key) return { key, content: content as LooseBundle };
  } else salvage(content, problems);
  throw new KeyContentError(withLines(problems, files, options), problems.more);
}

/** All files in one object, as in a bundle. A file that is no JSON is undefined there. */
function assemble(files: Files, options: ReadOptions, problems: Problems): unknown {
  const limits = limitsOf(options);
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
  return { format: 1, ...Object.fromEntries(parts), text: Object.fromEntries(text) };
}

/** The problems with the line of each. */
function withLines({ findings }: Problems, files: Files, options: ReadOptions): readonly Problem[] {
  const told = new Map(findings.map((finding) => [finding, finding.problem]));
  for (const [file, text] of files) {
    const here = findings.filter((one) => one.file === file && one.at.length > 0 && one.problem.line === undefined);
    const places = here.map(({ at }) => at);
    if (here.length === 0) continue;
    const lines = linesOf(text, places, { file, problems: new Problems(), limits: limitsOf(options) });
    here.forEach((finding, i) => {
      const line = lines[i];
      if (line !== undefined) told.set(finding, { ...finding.problem, line });
    });
  }
  return [...told.values()];
}
