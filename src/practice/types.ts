// What the practice room speaks of: specimens, tasks, attempts, and the record that a learner carries home.
import type { TaskKind } from '../key/courses/index.ts';
import type { KeyAnswer, Month, Sureness } from '../key/index.ts';

/** One plant that a task shows. All that it shows follows from the key and these three. */
export interface Specimen {
  /** Id of a taxon of the key. */
  readonly taxon: string;
  readonly month: Month;
  /** Whole number from 1. Practice rounds take odd seeds, tests even ones, so that none is ever met in both. */
  readonly seed: number;
}

/**
 * What is scheduled: `taxon:ID`, `character:ID`, `pair:ID+ID` (ids in alphabetical order) or `cover:CLASS`. Text, so that
 * it can key a Map and stand in a file.
 */
export type ItemId = `${'taxon' | 'character' | 'pair' | 'cover'}:${string}`;

/** What is put to a learner. */
export interface Task {
  readonly kind: TaskKind;
  /** The item it is asked for; an attempt may teach of others too. */
  readonly item: ItemId;
  /** Of `cover` only the seed counts; its taxon is the plant whose leaves are strewn. */
  readonly specimen: Specimen;
  /** `read` only: id of the character. */
  readonly character?: string;
  /** What can be said, in the order shown: ids of states, of taxa, of standings, or cover classes; none for `run`. */
  readonly options: readonly string[];
  /** What is right: an id of the options; for `run` the taxon. */
  readonly truth: string;
}

/** What a learner said to a task. */
export interface Reply {
  /** One of the options; `unsure`: cannot tell. For `run` a taxon, `outside`, or `unsure` where the verdict stayed open. */
  readonly said: string;
  /** Their own sureness, asked for with every reply but `unsure`. */
  readonly sureness?: Sureness;
  readonly seconds: number;
  /** `run` only. */
  readonly trail?: readonly KeyAnswer[];
}

/** One task and its reply, as kept. Everything that is known of a learner follows from the list of these. */
export interface Attempt extends Task, Reply {
  /** UUID. */
  readonly id: string;
  /** ISO 8601 with offset: when the reply was given. */
  readonly at: string;
  /** Id of the course. */
  readonly course: string;
  /** UUID of the sitting of a final test that it belongs to; absent in practice. */
  readonly test?: string;
  readonly right: boolean;
}

/** A learner's file: exported, imported, and opened by whoever leads the crew. */
export interface PracticeRecord {
  readonly format: 1;
  readonly learner: {
    /** UUID made on the device. */ readonly id: string /** As they wish to be called. */;
    readonly name: string;
  };
  readonly key: { readonly id: string; readonly version: string };
  /** Oldest first, no id twice. */
  readonly attempts: readonly Attempt[];
}

/** What is told after a reply. */
export interface Feedback {
  readonly right: boolean;
  readonly said: string;
  readonly truth: string;
  /** The character that decided it, with the state this specimen shows and the one that would speak for what was said. */
  readonly decided?: { readonly character: string; readonly shown: string; readonly instead?: string };
  /** `run` only: the first answer that this specimen does not bear out, by its index on the trail. */
  readonly wrong?: {
    readonly step: number;
    readonly character: string;
    readonly said: readonly string[];
    /** Undefined: it cannot be seen on this specimen. */
    readonly shown?: string;
  };
}

/** A share with its interval, 0 to 1; `n` may be a sum of weights. */
export interface Rate {
  readonly n: number;
  readonly count: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}
