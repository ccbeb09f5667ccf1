// A trail from elsewhere (kept on the device, or carried by a link), each of its answers held against the key as it is now.
import { AnswersError, type KeyAnswer, type Month, type PreparedKey, readInquiry } from '../key/index.ts';
import { forksOf } from './forks.ts';
import type { Way } from './state.ts';
import type { SessionStart } from './store.ts';
import type { Turn } from './walk.ts';

/** A trail whose own form is in order; whether its answers and turns are, the key says. */
export interface Carried {
  /** Version of the key that it was made with. */
  readonly version: string;
  readonly month: Month;
  readonly observer: string;
  readonly answers: readonly unknown[];
  /** Id of a character and seconds. */
  readonly took: readonly unknown[];
  readonly way: Way;
  readonly turns: readonly unknown[];
}

export interface RestoredTrail {
  /** How to start a session from it. */
  readonly start: SessionStart;
  /** Answers that the key as it is now does not know. */
  readonly left: readonly unknown[];
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Of another version of the key, what still fits holds; its turns do not: couplets are numbered anew. */
export function restoreTrail(prepared: PreparedKey, carried: Carried): RestoredTrail {
  const { key } = prepared;
  const { month, observer } = carried;
  const answers: KeyAnswer[] = [];
  const left: unknown[] = [];
  const known = key.observers.has(observer) ? observer : ([...key.observers.keys()][0] as string);
  for (const answer of carried.answers)
    try {
      const checked = readInquiry(prepared, { month, observer: known, answers: [...answers, answer] });
      answers.push(checked.answers.at(-1) as KeyAnswer);
    } catch (error) {
      if (!(error instanceof AnswersError)) throw error;
      left.push(answer);
    }
  const took = carried.took.filter(
    (one): one is [string, unknown] =>
      Array.isArray(one) && answers.some(({ character }) => character === one[0]) && Number(one[1]) >= 0,
  );
  const forks = forksOf(prepared);
  const turns = carried.version === key.version && forks ? carried.turns.filter((turn) => isTurn(turn)) : [];
  function isTurn(turn: unknown): turn is Turn {
    if (!isRecord(turn)) return false;
    const fork = forks?.all.get(turn.couplet as number);
    return fork !== undefined && (turn.lead === undefined || fork.branches[turn.lead as number] !== undefined);
  }
  return {
    start: {
      month,
      ...(key.observers.has(observer) ? { observer } : {}),
      trail: answers,
      took: new Map(took.map(([id, seconds]) => [id, Number(seconds)])),
      turns,
      ...(forks ? { way: carried.way } : {}),
    },
    left,
  };
}
