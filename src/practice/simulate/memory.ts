// How a simulated learner forgets: not the model that the scheduler itself goes by.

/**
 * Constants of P. I. Pavlik and J. R. Anderson (2005), Cognitive Science 29: 559-586 (from memory): each encounter decays
 * by a power of its age, the faster the better it was known at the time, so that spaced encounters last longer; time
 * between sessions counts less than time within one.
 */
const DECAY_SCALE = 0.217;
const DECAY_LEAST = 0.177;
const THRESHOLD = -0.704;
const NOISE = 0.255;
const BETWEEN = 0.025;

interface Encounter {
  /** Model seconds. */
  readonly at: number;
  readonly decay: number;
}

/** The memory of one person, by item. */
export class Memory {
  readonly #encounters = new Map<string, Encounter[]>();
  /** Model seconds: those within sessions whole, those between them shortened. */
  #now = 0;

  /** Time within a session, in seconds. */
  wait(seconds: number): void {
    this.#now += seconds;
  }

  /** Time until another session, in days. */
  sleep(days: number): void {
    this.#now += days * 86_400 * BETWEEN;
  }

  meet(item: string): void {
    const before = this.#encounters.get(item) ?? [];
    const activation = this.#activation(before);
    const decay = DECAY_SCALE * Math.exp(activation) + DECAY_LEAST;
    this.#encounters.set(item, [...before, { at: this.#now, decay }]);
  }

  /** Chance of recalling the item now, 0 to 1. */
  recall(item: string): number {
    const met = this.#encounters.get(item);
    if (met === undefined) return 0;
    return 1 / (1 + Math.exp((THRESHOLD - this.#activation(met)) / NOISE));
  }

  #activation(met: readonly Encounter[]): number {
    let sum = 0;
    for (const { at, decay } of met) sum += Math.max(1, this.#now - at) ** -decay;
    return sum === 0 ? Number.NEGATIVE_INFINITY : Math.log(sum);
  }
}
