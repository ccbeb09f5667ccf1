// What several learners' files tell whoever leads them: who is ready, what to teach next, what the key should avoid.
import type { Course } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm } from '../judge/judge.ts';
import { type LearnerFigures, learnerFigures } from '../learner/figures.ts';
import { rateOf, readingRates } from '../learner/rates.ts';
import { peopleIn } from '../record/merge.ts';
import type { Attempt, PracticeRecord, Rate } from '../types.ts';
import { type Between, betweenOf } from './between.ts';

export interface Member {
  readonly id: string;
  readonly name: string;
  readonly figures: LearnerFigures;
}

/** Something worth an hour together: a pair, a plant or a character, with how often it went wrong over all. */
export interface Lesson {
  readonly of: 'pair' | 'taxon' | 'character';
  /** Ids: two of a pair, else one. */
  readonly ids: readonly string[];
  readonly wrong: Rate;
  /** Of these natives were called invasive. */
  readonly alarms: number;
}

export interface CrewFigures {
  /** One of each person, however many of their files were given; by name, who gave none last. */
  readonly members: readonly Member[];
  /** Most worth teaching first. */
  readonly lessons: readonly Lesson[];
  /**
   * Characters that the crew misreads more often than the key believes: even the lower end of the 95 % interval lies above
   * the key's own share, and there are enough readings. By id, the worst first.
   */
  readonly avoid: readonly { readonly character: string; readonly wrong: Rate; readonly key: number }[];
  readonly between: readonly Between[];
  /** Files of another key, which were not counted. */
  readonly otherKey: readonly { readonly id: string; readonly name: string; readonly key: string }[];
  /** Ids of attempts that two files of one person tell differently: each was counted once, see mergeRecords. */
  readonly conflicts: readonly string[];
}

/** Fewer looks than this tell nothing to teach by, and a share below that is no lesson (ours). */
const LEAST = 4;
const WORTH = 0.15;
/** Nothing is said against a character that the crew read fewer times than this (ours). */
export const LEAST_READINGS = 10;

export function crewFigures(
  prepared: PreparedKey,
  course: Course,
  records: readonly PracticeRecord[],
  now: number,
): CrewFigures {
  const { key, characterIndex } = prepared;
  const { people, otherKey, conflicts } = peopleIn(key.id, records);
  const named = [...people].sort((a, b) => compareNames(a.learner.name, b.learner.name));
  const all = named.flatMap(({ attempts }) => attempts);
  return {
    members: named.map(({ learner, attempts }) => ({
      ...learner,
      figures: learnerFigures(prepared, course, attempts, now),
    })),
    lessons: lessonsOf(prepared, course, all),
    avoid: [...readingRates(prepared, all)]
      .map(([character, wrong]) => ({
        character,
        wrong,
        key: key.characters[characterIndex.get(character) as number]?.misread ?? 0,
      }))
      .filter((one) => one.wrong.n >= LEAST_READINGS && one.wrong.low > one.key)
      .sort((a, b) => b.wrong.mean - a.wrong.mean || (a.character < b.character ? -1 : 1)),
    between: named.flatMap((one, i) => named.slice(i + 1).map((other) => betweenOf(one, other))),
    otherKey: otherKey
      .flatMap((i) => records[i] ?? [])
      .map((record) => ({ ...record.learner, key: record.key.id }))
      .sort((a, b) => compareNames(a.name, b.name) || (a.id < b.id ? -1 : 1)),
    conflicts,
  };
}

/** The same on every machine; no name comes last. */
const compareNames = (a: string, b: string): number =>
  Number(a === '') - Number(b === '') || (a < b ? -1 : a > b ? 1 : 0);

const mark = (id: string, ids: readonly string[]) => `${id} ${ids.join('+')}`;

function lessonsOf(prepared: PreparedKey, course: Course, attempts: readonly Attempt[]): Lesson[] {
  const counts = new Map<string, { of: Lesson['of']; ids: string[]; n: number; wrong: number; alarms: number }>();
  const add = (of: Lesson['of'], ids: string[], right: boolean, alarm: boolean) => {
    const before = counts.get(mark(of, ids)) ?? { of, ids, n: 0, wrong: 0, alarms: 0 };
    const { n, wrong, alarms } = before;
    counts.set(mark(of, ids), { of, ids, n: n + 1, wrong: wrong + Number(!right), alarms: alarms + Number(alarm) });
  };
  for (const attempt of attempts) {
    const { kind, specimen, said, right, character, options } = attempt;
    const alarm = isAlarm(prepared, attempt);
    if (kind === 'read') {
      if (character !== undefined) add('character', [character], right, false);
      continue;
    }
    if (kind === 'cover' || !course.taxa.includes(specimen.taxon)) continue;
    add('taxon', [specimen.taxon], right, alarm);
    // A pair was looked at when it was asked for, and when the one was taken for the other.
    const other = kind === 'pair' ? options.find((id) => id !== specimen.taxon) : said;
    if (other !== undefined && other !== specimen.taxon && prepared.taxonIndex.has(other))
      add('pair', [specimen.taxon, other].sort(), right, alarm);
  }
  return [...counts.values()]
    .filter(({ n, wrong }) => n >= LEAST && wrong / n >= WORTH)
    .map(({ of, ids, n, wrong, alarms }) => ({ of, ids, wrong: rateOf(wrong, n), alarms }))
    .sort(
      (a, b) => b.alarms - a.alarms || b.wrong.low - a.wrong.low || (mark(a.of, a.ids) < mark(b.of, b.ids) ? -1 : 1),
    );
}
