// What is kept, record by record. Each carries the number of its form.
import type { KeyAnswer, Month } from '../key/index.ts';
import type { Find } from '../report/find/index.ts';
import type { Outcome, Receipt } from '../report/send/index.ts';
import type { Turn, Way } from '../session/index.ts';

/** One person's way through a key, under the name of the element it belongs to. */
export interface TrailRecord {
  readonly name: string;
  readonly format: 2;
  readonly key: string;
  readonly version: string;
  readonly month: Month;
  readonly observer: string;
  readonly answers: readonly KeyAnswer[];
  /** Id of a character -> seconds. */
  readonly took: readonly (readonly [string, number])[];
  readonly way: Way;
  readonly turns: readonly Turn[];
  /** ISO 8601. */
  readonly when: string;
}

export interface FindRecord {
  readonly id: string;
  readonly format: 1;
  /** Without the photographs' data. */
  readonly find: Find;
}

/** A photograph of a find. */
export interface PhotoRecord {
  readonly find: string;
  readonly id: string;
  readonly format: 1;
  readonly blob: Blob;
}

/** A report on its way: what is sent, where, and how far it has come. All times are milliseconds by the device's clock. */
export interface OutboxRecord {
  /** Under which it is sent: the same, however often it is tried. */
  readonly key: string;
  readonly format: 1;
  /** Id of the find. */
  readonly find: string;
  readonly endpoint: string;
  /** The find as JSON, as it was when it was sent off. */
  readonly text: string;
  /** Ids of its photographs. */
  readonly photos: readonly string[];
  readonly state: 'waiting' | 'sending' | 'sent' | 'refused';
  /** Tries begun; never less than before, whatever the clock says. */
  readonly tries: number;
  /** When the state last changed. */
  readonly since: number;
  /** Not to be tried before. */
  readonly next: number;
  /** The receiver asked for the wait. */
  readonly asked?: true;
  readonly receipt?: Receipt;
  readonly refusal?: Omit<Extract<Outcome, { state: 'refused' }>, 'state'>;
}

/** What could not be read, or no longer fits: kept as it was. */
export interface AsideRecord {
  /** Where it lay. */
  readonly from: 'trails' | 'finds' | 'photos' | 'outbox';
  readonly format: 1;
  readonly raw: unknown;
  readonly reason: string;
  /** ISO 8601. */
  readonly when: string;
}
