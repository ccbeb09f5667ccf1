// How a person is led through the key: what is asked next, and what the standing is told of the answer.
import type { Answer } from '../spec.ts';
import type { Posterior } from '../standing.ts';
import type { Verdict } from '../verdict.ts';
import type { Book } from './book.ts';

/** Where a walk stands. */
export interface Now {
  readonly from: Posterior;
  readonly verdict: Verdict;
  /** Characters already asked, also those to which the answer was "can't tell". */
  readonly asked: ReadonlySet<number>;
  /** 1 to 12. */
  readonly month: number;
}

/** One plant being asked about. */
export interface Walk {
  /** The character to look at next; undefined when nothing is left that is worth asking. */
  next(now: Now): number | undefined;
  /**
   * What the standing is told when the person says that the plant shows this state, or NOTHING for "can't tell";
   * undefined: nothing. An answer about a character answered before takes the place of the earlier one.
   */
  heard(character: number, state: number): Answer | undefined;
}

export interface Way {
  readonly id: string;
  begin(book: Book): Walk;
}
