// What several learners' files tell whoever leads them: who is ready, what to teach next, what the key should avoid.
import { type Agreement, agreementOf, countPairs, kappaInterval } from '../../engine/agreement/index.ts';
import type { Course } from '../../key/courses/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { isAlarm } from '../judge/judge.ts';
import { type LearnerFigures, learnerFigures } from '../learner/figures.ts';
import { rateOf, readingRates } from '../learner/rates.ts';
import type { Attempt, PracticeRecord, Rate } from '../types.ts';

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

export interface Between {
  readonly members: readonly [string, string];
  /** Over the tasks that both did: the same specimen and the same question. Undefined for none. */
  readonly agreement: Agreement | undefined;
  readonly interval: readonly [number, number] | undefined;
}

export interface CrewFigures {
  readonly members: readonly Member[];
  /** Most worth teaching first. */
  readonly lessons: readonly Lesson[];
  /** Characters that the crew misreads more often than the key believes, by id; the worst first. */
  readonly avoid: readonly { readonly character: string; readonly wrong: Rate; readonly key: number }[];
  readonly between: readonly Between[];
}

/** Fewer looks than this tell nothing to teach by, and a share below that is no lesson (ours). */
const LEAST = 4;
const WORTH = 0.15;

export function crewFigures(
  prepared: PreparedKey,
  course: Course,
  records: readonly PracticeRecord[],
  now: number,
): CrewFigures {
  const all = records.flatMap(({ attempts }) => attempts);
  return {
    members: records.map(({ learner, attempts }) => ({
      ...learner,
      figures: learnerFigures(prepared, course, attempts, now),
    })),
    lessons: lessonsOf(prepared, course, all),
    avoid: [...readingRates(prepared, all)]
      .map(([character, wrong]) => ({
        character,
        wrong,
        key: prepared.key.characters[prepared.characterIndex.get(character) as number]?.misread ?? 0,
      }))
      .filter(({ wrong, key }) => wrong.low > key)
      .sort((a, b) => b.wrong.mean - a.wrong.mean || (a.character < b.character ? -1 : 1)),
    between: records.flatMap((one, i) => records.slice(i + 1).map((other) => betweenOf(one, other))),
  };
}

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

/** What makes two tasks the same question. */
const questionOf = ({ kind, specimen, character = '', options }: Attempt): string =>
  [kind, specimen.taxon, specimen.month, specimen.seed, character, ...options].join(' ');

function betweenOf(one: PracticeRecord, other: PracticeRecord): Between {
  const said = new Map(other.attempts.map((attempt) => [questionOf(attempt), attempt.said]));
  const pairs = one.attempts.flatMap((attempt): [string, string][] => {
    const theirs = said.get(questionOf(attempt));
    return theirs === undefined ? [] : [[attempt.said, theirs]];
  });
  const counts = countPairs(pairs, [...new Set(pairs.flat())].sort());
  return {
    members: [one.learner.id, other.learner.id],
    agreement: agreementOf(counts),
    interval: kappaInterval(counts),
  };
}
