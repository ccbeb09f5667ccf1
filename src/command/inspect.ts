// Everything that can be said against a key folder, errors and warnings alike.
import {
  COURSES,
  checkKey,
  GLOSSARY,
  type Key,
  KeyContentError,
  type LooseCourse,
  type Problem,
  readCourses,
  readGlossary,
  readKey,
  type Term,
} from '../key/index.ts';
import { Problems } from '../key/problem.ts';
import { withLines } from './lines.ts';
import { type FolderPictures, picturesPlace, readPictures } from './pictures.ts';

export interface Inspection {
  /** Absent when there are errors. */
  readonly key?: Key;
  /** What glossary.json explains; empty when the folder has none. */
  readonly glossary: readonly Term[];
  /** What courses.json tells; empty when the folder has none. */
  readonly courses: readonly LooseCourse[];
  /** Absent when key.json names no pictures. */
  readonly pictures?: FolderPictures;
  readonly problems: readonly Problem[];
  /** Problems beyond those listed. */
  readonly more: number;
}

/** `files` is the text of each file of `folder` by its name there; `today` is year-month-day. */
export async function inspect(files: ReadonlyMap<string, string>, folder: string, today: string): Promise<Inspection> {
  const none = { glossary: [], courses: [] };
  try {
    const key = readKey(files);
    const faults = new Problems();
    const words = files.get(GLOSSARY);
    const glossary = words === undefined ? undefined : readGlossary(words, key, faults);
    const lessons = files.get(COURSES);
    const courses = lessons === undefined ? [] : readCourses(lessons, key, faults);
    if (!faults.none || courses === undefined)
      return { ...none, problems: withLines(faults.list, files), more: faults.more };
    const place = picturesPlace(files.get('key.json') ?? '{}');
    const pictures = place === undefined ? undefined : await readPictures(folder, place);
    const checked = checkKey(key, {
      today,
      ...(glossary ? { glossary } : {}),
      ...(pictures?.manifest ? { pictures: { file: pictures.file, manifest: pictures.manifest } } : {}),
    });
    const all = new Map(files);
    if (pictures?.text !== undefined && pictures.manifest) all.set(pictures.file, pictures.text);
    return {
      ...{ key, glossary: glossary ?? [], courses, more: 0 },
      ...(pictures ? { pictures } : {}),
      problems: withLines([...checked, ...(pictures?.problems ?? [])], all),
    };
  } catch (error) {
    if (error instanceof KeyContentError) return { ...none, problems: error.problems, more: error.more };
    throw error;
  }
}

export const errorsOf = ({ problems }: Inspection): readonly Problem[] =>
  problems.filter(({ severity }) => severity === 'error');
