// One plant asked about to the end.
import type { Answer } from '../spec.ts';
import { extended, type Posterior } from '../standing.ts';
import { type Verdict, verdictOf } from '../verdict.ts';
import type { Book } from './book.ts';
import type { Now, Way } from './way.ts';

/** A person gives up after this many questions (ours). */
export const LIMIT = 30;

export interface Run {
  /** Characters in the order in which they were asked. */
  readonly asked: readonly number[];
  readonly from: Posterior;
  readonly verdict: Verdict;
}

/** What ends a run: the plant has a name, or none in this key. */
export const isDone = ({ kind }: Verdict): boolean => kind === 'settled' || kind === 'outside';

/**
 * Asks until `done`, or until nothing is worth asking, or LIMIT questions were asked. `said` is what the person says of
 * each character if it is asked; `watch` sees the standing before the first question and after every one.
 */
export function runPlant(
  book: Book,
  way: Way,
  month: number,
  said: readonly number[],
  done: (verdict: Verdict) => boolean = isDone,
  watch?: (now: Now) => void,
): Run {
  const walk = way.begin(book);
  const order: number[] = [];
  const asked = new Set<number>();
  const answers = new Map<number, Answer>();
  let from = book.start;
  for (;;) {
    const verdict = verdictOf(from, book.rules);
    const now = { from, verdict, asked, month };
    watch?.(now);
    const character = done(verdict) || order.length === LIMIT ? undefined : walk.next(now);
    if (character === undefined) return { asked: order, from, verdict };
    order.push(character);
    asked.add(character);
    const answer = walk.heard(character, said[character] as number);
    if (answer === undefined) continue;
    const again = answers.has(answer.character);
    answers.set(answer.character, answer);
    from = again
      ? [...answers.values()].reduce((standing, one) => extended(standing, book.ready(one)), book.start)
      : extended(from, book.ready(answer));
  }
}
