// How simulated learners forget: two models, neither of them the one that the scheduler itself goes by.

/** The memory of one person, by item. */
export interface Memory {
  /** Time within a session, in seconds. */
  wait(seconds: number): void;
  /** Time until another session, in days. */
  sleep(days: number): void;
  meet(item: string): void;
  /** Chance of recalling the item now, 0 to 1. */
  recall(item: string): number;
}

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

/** Encounters add up, and each fades by a power of its age. */
export class PowerMemory implements Memory {
  readonly #encounters = new Map<string, Encounter[]>();
  /** Model seconds: those within sessions whole, those between them shortened. */
  #now = 0;

  wait(seconds: number): void {
    this.#now += seconds;
  }

  sleep(days: number): void {
    this.#now += days * DAY * BETWEEN;
  }

  meet(item: string): void {
    const before = this.#encounters.get(item) ?? [];
    const decay = DECAY_SCALE * Math.exp(this.#activation(before)) + DECAY_LEAST;
    this.#encounters.set(item, [...before, { at: this.#now, decay }]);
  }

  recall(item: string): number {
    const met = this.#encounters.get(item);
    return met === undefined ? 0 : 1 / (1 + Math.exp((THRESHOLD - this.#activation(met)) / NOISE));
  }

  #activation(met: readonly Encounter[]): number {
    let sum = 0;
    for (const { at, decay } of met) sum += Math.max(1, this.#now - at) ** -decay;
    return sum === 0 ? Number.NEGATIVE_INFINITY : Math.log(sum);
  }
}

const DAY = 86_400;
/** Half-life after the first encounter, in seconds, and how much it grows at an encounter with what was forgotten (ours). */
const FIRST_HALF = 0.4 * DAY;
const GROWTH = 1.6;

/**
 * Recall halves over a half-life of the item's own, the form of B. Settles and B. Meeder (2016), ACL: 1848-1858 (from
 * memory); it grows with each encounter, the more the more was forgotten (ours).
 */
export class HalvingMemory implements Memory {
  readonly #items = new Map<string, { readonly at: number; readonly half: number }>();
  #now = 0;

  wait(seconds: number): void {
    this.#now += seconds;
  }

  sleep(days: number): void {
    this.#now += days * DAY;
  }

  meet(item: string): void {
    const before = this.#items.get(item);
    const half = before === undefined ? FIRST_HALF : before.half * (1 + GROWTH * (1 - this.recall(item)));
    this.#items.set(item, { at: this.#now, half });
  }

  recall(item: string): number {
    const met = this.#items.get(item);
    return met === undefined ? 0 : 2 ** (-(this.#now - met.at) / met.half);
  }
}

export const MEMORIES = { power: () => new PowerMemory(), halving: () => new HalvingMemory() } satisfies Record<
  string,
  () => Memory
>;
export type MemoryModel = keyof typeof MEMORIES;
