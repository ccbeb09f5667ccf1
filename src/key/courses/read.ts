// The courses of a key, from the loose shape of courses.json to strict ones.
import { deepFreeze, frozenMap } from '../freeze.ts';
import { coursesShape } from '../generated/album-shapes.js';
import { LIMITS, readJson } from '../json.ts';
import type { LooseMonths } from '../loose.ts';
import type { Problems } from '../problem.ts';
import { checkUnique, indexOf, look } from '../references/ids.ts';
import { compare } from '../shape.ts';
import { strictMonths } from '../strict/dates.ts';
import type { Key } from '../types.ts';
import { type Course, type PassMark, TASKS, type TaskKind } from './types.ts';

/** Name of the file in the key folder; it may be missing. */
export const COURSES = 'courses.json';

/** What a plant must meet where a course says nothing (ours). */
export const USUAL_PASS: PassMark = Object.freeze({ right: 0.9, looks: 8, days: 2, alarms: 0 });

type ByLanguage<T> = Readonly<Record<string, T>>;

export interface LooseCourse {
  readonly id: string;
  readonly title: ByLanguage<string>;
  readonly about: ByLanguage<string>;
  readonly taxa?: readonly string[];
  readonly months?: LooseMonths;
  readonly kinds?: readonly TaskKind[];
  readonly characters?: readonly string[];
  readonly pass?: { readonly default?: Partial<PassMark>; readonly taxa?: ByLanguage<Partial<PassMark>> };
  readonly test: { readonly each: number; readonly kinds?: readonly TaskKind[] };
}

/** The courses that courses.json tells, in their loose shape; undefined when it is at fault, which is then noted. */
export function readCourses(text: string, key: Key, problems: Problems): readonly LooseCourse[] | undefined {
  const before = problems.findings.length;
  const content = readJson(text, { file: COURSES, problems, limits: LIMITS });
  if (problems.findings.length === before)
    compare(content, coursesShape, (at, code, expected, found) => problems.error(COURSES, at, code, expected, found));
  if (problems.findings.length > before) return undefined;
  const { courses } = content as { readonly courses: readonly LooseCourse[] };
  checkCourses(courses, key, problems);
  return problems.findings.length > before ? undefined : deepFreeze([...courses]);
}

function checkCourses(courses: readonly LooseCourse[], key: Key, problems: Problems): void {
  const ids = indexOf(key);
  checkUnique(
    courses.map(({ id }) => id),
    COURSES,
    (i) => ['courses', i, 'id'],
    problems,
  );
  courses.forEach(({ taxa = [], characters = [], pass, title, about }, i) => {
    const at = ['courses', i];
    checkUnique(taxa, COURSES, (j) => [...at, 'taxa', j], problems);
    taxa.forEach((taxon, j) => {
      look(taxon, ids.taxa, 'taxon', COURSES, [...at, 'taxa', j], problems);
    });
    characters.forEach((character, j) => {
      const found = look(character, ids.characters, 'character', COURSES, [...at, 'characters', j], problems);
      if (found && (!found.asked || found.effort === 'dig'))
        problems.wrong(COURSES, [...at, 'characters', j], 'value', 'a character that people are asked for', character);
    });
    for (const taxon of Object.keys(pass?.taxa ?? {})) {
      const place = [...at, 'pass', 'taxa', taxon];
      const found = look(taxon, ids.taxa, 'taxon', COURSES, place, problems);
      if (found && taxa.length > 0 && !taxa.includes(taxon))
        problems.wrong(COURSES, place, 'value', 'a plant of this course', taxon);
    }
    for (const [field, words] of Object.entries({ title, about }))
      for (const language of key.languages)
        if (!Object.hasOwn(words, language))
          problems.wrong(
            COURSES,
            [...at, field],
            'missing-field',
            `a sentence in ${language}`,
            Object.keys(words).join(', '),
          );
  });
}

/** What is left out filled in: every month, every kind of task but cover, the usual pass marks. Its plants are given: see albumOf. */
export function strictCourse(course: LooseCourse): Course {
  const { id, title, about, months, kinds, characters, pass, test } = course;
  const own = course.taxa ?? [];
  const usual = { ...USUAL_PASS, ...pass?.default };
  return {
    id,
    title: frozenMap(Object.entries(title)),
    about: frozenMap(Object.entries(about)),
    taxa: own,
    months: strictMonths(months),
    kinds: kinds ?? TASKS.filter((kind) => kind !== 'cover'),
    ...(characters ? { characters } : {}),
    pass: frozenMap(
      own.map((taxon) => {
        const special = pass?.taxa && Object.hasOwn(pass.taxa, taxon) ? pass.taxa[taxon] : undefined;
        return [taxon, { ...usual, ...special }];
      }),
    ),
    test: { each: test.each, kinds: test.kinds ?? ['name'] },
  };
}
