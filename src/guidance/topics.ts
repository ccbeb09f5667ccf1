// A plant's guidance in the order it is read, each statement with the numbers of its sources.
import {
  type Guidance,
  type Key,
  type Source,
  type Standing,
  type Statement,
  TOPICS,
  type Topic,
} from '../key/index.ts';

/** A statement and which of its topic's sources bear it out, as numbers from 1. */
export interface NumberedStatement {
  readonly statement: Statement;
  readonly numbers: readonly number[];
}

/** What is said on one topic. Number n of a statement means `sources[n - 1]`. */
export interface TopicGroup {
  readonly topic: Topic;
  readonly statements: readonly NumberedStatement[];
  readonly sources: readonly Source[];
}

/** Topics in the order of TOPICS; those without a statement are left out. Each topic counts its sources anew. */
export function byTopic({ statements }: Guidance, sources: Key['sources']): TopicGroup[] {
  return TOPICS.flatMap((topic): TopicGroup[] => {
    const said = statements.filter((statement) => statement.topic === topic);
    if (said.length === 0) return [];
    const ids = [...new Set(said.flatMap((statement) => statement.source))].filter((id) => sources.has(id));
    return [
      {
        topic,
        statements: said.map((statement) => ({
          statement,
          numbers: statement.source
            .flatMap((id) => (ids.includes(id) ? [ids.indexOf(id) + 1] : []))
            .sort((a, b) => a - b),
        })),
        sources: ids.map((id) => sources.get(id) as Source),
      },
    ];
  });
}

/** What must be seen without a tap: why to leave a native, else what not to do and what to do, how to keep safe, whom to ask. */
const FIRST: Readonly<Record<Standing, readonly Topic[]>> = {
  native: ['leave', 'dont', 'do', 'safety', 'who'],
  introduced: ['dont', 'do', 'safety', 'who'],
  invasive: ['dont', 'do', 'safety', 'who'],
};

/** Parts the topics of a plant into what is shown at once, in that order, and what opens, in the order of TOPICS. */
export function firstAndRest(
  groups: readonly TopicGroup[],
  status: Standing,
): { readonly first: readonly TopicGroup[]; readonly rest: readonly TopicGroup[] } {
  const wanted = FIRST[status];
  return {
    first: wanted.flatMap((topic) => groups.filter((group) => group.topic === topic)),
    rest: groups.filter((group) => !wanted.includes(group.topic)),
  };
}
