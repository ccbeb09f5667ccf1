// Whether two people say the same of the same specimen.
import { type Agreement, agreementOf, countPairs, kappaInterval } from '../../engine/agreement/index.ts';
import { COVER_CLASSES, type CoverClass } from '../../report/find/index.ts';
import { type CoverAgreement, coverAgreement } from '../cover/index.ts';
import { NAMING } from '../learner/confusion.ts';
import { inOrder } from '../schedule/schedule.ts';
import type { Attempt, PracticeRecord } from '../types.ts';

export interface Between {
  /** Ids of learners. */
  readonly members: readonly [string, string];
  /**
   * Of the names given in tasks that both did: the same specimen, asked for in the same way. Characters and standings are
   * left out: labels of several questions in one table would agree by chance less than they do. Undefined for none.
   */
  readonly agreement: Agreement | undefined;
  /** 95 % interval of kappa. */
  readonly interval: readonly [number, number] | undefined;
  /** Of the plots that both judged. */
  readonly cover: CoverAgreement;
}

export function betweenOf(one: PracticeRecord, other: PracticeRecord): Between {
  const pairs = pairsOf(one, other, ({ kind }) => NAMING.has(kind));
  const counts = countPairs(pairs, [...new Set(pairs.flat())].sort());
  const plots = pairsOf(one, other, ({ kind }) => kind === 'cover').flatMap(([mine, theirs]) => {
    const [a, b] = [classOf(mine), classOf(theirs)];
    return a === undefined || b === undefined ? [] : [[a, b] as const];
  });
  return {
    members: [one.learner.id, other.learner.id],
    agreement: agreementOf(counts),
    interval: kappaInterval(counts),
    cover: coverAgreement(plots),
  };
}

/** What both said to the same questions, each question once: the first time, before anything was told of it. */
function pairsOf(one: PracticeRecord, other: PracticeRecord, wanted: (attempt: Attempt) => boolean) {
  const firstOf = ({ attempts }: PracticeRecord) =>
    new Map(
      inOrder(attempts)
        .filter(wanted)
        .reverse()
        .map((attempt) => [questionOf(attempt), attempt.said]),
    );
  const [mine, theirs] = [firstOf(one), firstOf(other)];
  return [...mine].flatMap(([question, said]): [string, string][] => {
    const reply = theirs.get(question);
    return reply === undefined ? [] : [[said, reply]];
  });
}

/** What makes two tasks the same question, in whatever order the options stood. A plot is of the class that is its truth. */
const questionOf = ({ kind, specimen, options, truth }: Attempt): string =>
  [kind, specimen.taxon, specimen.month, specimen.seed, truth, ...[...options].sort()].join(' ');

const classOf = (said: string): CoverClass | undefined => COVER_CLASSES.find((one) => String(one) === said);
