// One person's run through a key: what is kept, and what is shown of it.
import type { Identification, KeyAnswer, Month, PreparedKey } from '../key/index.ts';

/** What is kept between requests; everything else follows from it and the key. */
export interface SessionState {
  readonly month: Month;
  /** Id of a kind of observer of the key. */
  readonly observer: string;
  /** Answers and skips in the order in which they were first given. */
  readonly trail: readonly KeyAnswer[];
  /** The character a person chose to look at, out of turn; undefined: the key proposes. */
  readonly chosen?: string;
  /** After a verdict: go on asking although it is settled. */
  readonly onward: boolean;
}

/** Why a question is asked. */
export type QuestionReason = 'proposed' | 'chosen' | 'changing';

export interface Question {
  /** Id of the character. */
  readonly character: string;
  /** Its place on the trail, from 1. */
  readonly number: number;
  readonly reason: QuestionReason;
  /** What was said of it before, when it is being changed. */
  readonly answer?: KeyAnswer;
  /** Ids of its states, those that serve best first (see stateOrder). */
  readonly order: readonly string[];
}

/** A frozen picture of the session: all that an element draws. */
export interface Snapshot extends SessionState {
  readonly prepared: PreparedKey;
  readonly identification: Identification;
  /** Undefined when there is nothing more to ask, or the verdict stands and nobody asked to go on. */
  readonly question?: Question;
  /** How many taxa still fit: those within reach of the likeliest one. */
  readonly fitting: number;
  /** Probability that the plant is a native one of this key. */
  readonly natives: number;
  /** How many characters were answered; what was skipped does not count. */
  readonly answered: number;
}
