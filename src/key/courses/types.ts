// The strict, frozen shape of the courses of a key: what technicians practise, and when they have learnt it.
import type { Month } from '../types.ts';

/** A sentence in each language of the key. */
export type ByLanguage = ReadonlyMap<string, string>;

/** `read`: a character; `name`: the plant; `standing`: native or not; `pair`: which of two; `run`: the key; `cover`: of a plot. */
export const TASKS = ['read', 'name', 'standing', 'pair', 'run', 'cover'] as const;
export type TaskKind = (typeof TASKS)[number];

/** When a plant counts as learnt. */
export interface PassMark {
  /** Share of the last looks that must be right, 0 to 1. */
  readonly right: number;
  /** How many looks that is, at least. */
  readonly looks: number;
  /** On at least so many days. */
  readonly days: number;
  /** For natives: how many of those looks may call it an invasive. */
  readonly alarms: number;
}

export interface Course {
  readonly id: string;
  readonly title: ByLanguage;
  readonly about: ByLanguage;
  /** Ids of taxa of the key, at least two. */
  readonly taxa: readonly string[];
  /** Months in which the specimens are met. */
  readonly months: readonly Month[];
  readonly kinds: readonly TaskKind[];
  /** Ids of the characters to read; absent: those that tell its taxa apart. */
  readonly characters?: readonly string[];
  /** One of every taxon of the course. */
  readonly pass: ReadonlyMap<string, PassMark>;
  /** The final test: how many specimens of every taxon, and what is asked of them. */
  readonly test: { readonly each: number; readonly kinds: readonly TaskKind[] };
}
