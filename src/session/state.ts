// One person's run through a key: what is kept, and what is shown of it.
import type { Identification, KeyAnswer, Month, PreparedKey } from '../key/index.ts';
import type { Fork } from './forks.ts';
import type { Place, Turn, Walk } from './walk.ts';
import type { WrongTurn } from './wrong-turn.ts';

/** Step by step through the key's couplets, or by the characters that serve best. */
export type Way = 'couplets' | 'free';

/** What is kept between requests; everything else follows from it and the key. */
export interface SessionState {
  /** The key, made ready for whoever reads. */
  readonly prepared: PreparedKey;
  readonly month: Month;
  /** Id of a kind of observer of the key. */
  readonly observer: string;
  /** Answers and skips in the order in which they were first given. */
  readonly trail: readonly KeyAnswer[];
  /** Id of an answered or skipped character -> seconds that the look took; of those alone that were timed. */
  readonly took: ReadonlyMap<string, number>;
  /** The character a person chose to look at, out of turn; undefined: the key proposes. */
  readonly chosen?: string;
  /** After a verdict: go on asking although it is settled. */
  readonly onward: boolean;
  /** Never `couplets` where the key has none. */
  readonly way: Way;
  /** What was said at couplets and stands in no answer; one for each couplet at most. */
  readonly turns: readonly Turn[];
  /** The place that a person carried on from; undefined: all of the way follows from the answers. */
  readonly from?: Place;
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

/** A couplet to be put to a person. */
export interface Asked {
  readonly fork: Fork;
  /** As of a question. */
  readonly number: number;
  readonly reason: QuestionReason;
  /** Index of the lead that was taken before, when it is looked at again. */
  readonly lead?: number;
}

/** A frozen picture of the session: all that an element draws. */
export interface Snapshot extends SessionState {
  readonly identification: Identification;
  /** Undefined when there is nothing more to ask, or the verdict stands and nobody asked to go on. */
  readonly question?: Question;
  /** The couplet to ask instead, where the way leads through the couplets and they have something to ask. */
  readonly asked?: Asked;
  /** Where the answers lead in the couplets, whichever way is taken; undefined for a key without any. */
  readonly walk?: Walk;
  /** The branch walked into no longer holds the weight; only on the way through the couplets. */
  readonly wrong?: WrongTurn;
  /** How many taxa still fit: those within reach of the likeliest one. */
  readonly fitting: number;
  /** Probability that the plant is a native one of this key. */
  readonly natives: number;
  /** How many characters were answered; what was skipped does not count. */
  readonly answered: number;
}
