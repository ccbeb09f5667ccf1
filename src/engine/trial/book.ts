// The key as an observer of the trial meets it: what is asked of, and what may be said.
import type { GainTable } from '../gain.ts';
import type { Matrix } from '../matrix.ts';
import type { Answer } from '../spec.ts';
import { type Posterior, posterior, type ReadyAnswer, readyAnswer } from '../standing.ts';
import type { VerdictRules } from '../verdict.ts';

export class Book {
  readonly matrix: Matrix;
  readonly gains: GainTable;
  readonly rules: VerdictRules;
  /** How many times a novice's slips the key takes the observer to make. */
  readonly observer: number;
  /** The standing before any answer. */
  readonly start: Posterior;
  /** Plants give the same few answers over and over. */
  readonly #ready = new Map<string, ReadyAnswer>();

  constructor(matrix: Matrix, gains: GainTable, rules: VerdictRules, observer: number) {
    this.matrix = matrix;
    this.gains = gains;
    this.rules = rules;
    this.observer = observer;
    this.start = posterior(matrix, [], observer);
  }

  ready(answer: Answer): ReadyAnswer {
    if ('value' in answer) return readyAnswer(this.matrix, answer, this.observer);
    const name = `${answer.character} ${answer.states.join(' ')} ${answer.sureness}`;
    const made = this.#ready.get(name) ?? readyAnswer(this.matrix, answer, this.observer);
    this.#ready.set(name, made);
    return made;
  }
}
