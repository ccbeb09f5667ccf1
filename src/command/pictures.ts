// The pictures of a key folder: where they lie, what lies there, and what is wrong with it.
import { stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type DrawnFile, isDrawing, type Manifest, type Problem, readManifest, readSvg } from '../key/index.ts';
import { Problems } from '../key/problem.ts';
import { Refusal } from './errors.ts';
import { readText } from './files.ts';

export interface FolderPictures {
  /** The manifest, and every file that it lists, as seen from the key folder. */
  readonly file: string;
  /** The folder of the manifest, to read from. */
  readonly directory: string;
  /** As it is written; absent when there is none. */
  readonly text?: string;
  /** Absent when there is none, or it is at fault. */
  readonly manifest?: Manifest;
  readonly drawings: ReadonlyMap<string, DrawnFile>;
  /** Warnings all: a key works without pictures. */
  readonly problems: readonly Problem[];
}

/** Where key.json says that the list of pictures lies; undefined when it says nothing. `keyFile` is sound. */
export function picturesPlace(keyFile: string): string | undefined {
  const { pictures } = JSON.parse(keyFile.replace(/^\uFEFF/, '')) as { readonly pictures?: string };
  return pictures;
}

/** `folder` is the key folder, `file` where the manifest lies as seen from there. */
export async function readPictures(folder: string, file: string): Promise<FolderPictures> {
  const problems = new Problems(Number.POSITIVE_INFINITY);
  const directory = dirname(join(folder, file));
  const text = await textOf(join(folder, file), file, problems);
  const manifest = text === undefined ? undefined : readManifest(text, file, problems);
  const drawings = new Map<string, DrawnFile>();
  for (const [i, listed] of (manifest?.pictures ?? []).entries()) {
    const name = join(dirname(file), listed.file).replaceAll('\\', '/');
    const path = join(directory, listed.file);
    if (isDrawing(listed)) {
      const svg = await textOf(path, name, problems);
      const drawn = svg === undefined ? undefined : readSvg(svg, name, problems);
      if (drawn) drawings.set(listed.file, drawn);
    } else
      for (const [one, at] of [
        [listed.file, ['pictures', i, 'file']] as const,
        ...(listed.sizes ?? []).map((size, j) => [size.file, ['pictures', i, 'sizes', j, 'file']] as const),
      ])
        if (!(await isFile(join(directory, one)))) problems.error(file, at, 'missing-file', 'this file', one);
  }
  return {
    ...{ file, directory, drawings },
    ...(text === undefined ? {} : { text }),
    ...(manifest === undefined ? {} : { manifest }),
    problems: problems.list.map((problem) => ({ ...problem, severity: 'warning' })),
  };
}

const isFile = async (path: string): Promise<boolean> => (await stat(path).catch(() => undefined))?.isFile() ?? false;

/** Text of a file; undefined, with the reason noted, when it cannot be read. */
async function textOf(path: string, shown: string, problems: Problems): Promise<string | undefined> {
  try {
    return await readText(path, shown);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    problems.error(shown, [], 'missing-file', 'a file that can be read', error.message.replace(`${shown}: `, ''));
    return undefined;
  }
}
