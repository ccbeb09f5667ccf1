// The key read as somebody reads: their own shares of misreadings in place of a novice's.
import type { PreparedKey } from '../../key/index.ts';
import type { Attempt } from '../types.ts';
import { readingRates, readingsIn } from './rates.ts';

export interface OwnReading {
  /** How many readings it rests on. */
  readonly readings: number;
  /** The kind of observer whose place it takes: the one of the key that misreads most. */
  readonly observer: string;
  /** Id of each character that was read -> share of readings that are wrong, as `prepareKey` takes it. */
  readonly misread: ReadonlyMap<string, number>;
}

/** Fewer readings say too little of anybody (ours). */
export const ENOUGH_READINGS = 40;
/**
 * Drawings in a room are easier to read than plants in glare and wind, and whoever is trusted too much calls a native an
 * invader: nobody is taken to misread less than this share of what the key expects, nor more than the other (ours).
 */
const LEAST_OF_USUAL = 0.5;
const MOST = 0.9;

/** Undefined where there are too few readings. */
export function ownReading(prepared: PreparedKey, attempts: readonly Attempt[]): OwnReading | undefined {
  const { key, characterIndex } = prepared;
  const readings = readingsIn(prepared, attempts).length;
  const [most] = [...key.observers].sort(([, a], [, b]) => b - a);
  if (readings < ENOUGH_READINGS || most === undefined) return undefined;
  const [observer, times] = most;
  const misread = [...readingRates(prepared, attempts)].map(([id, { mean }]): [string, number] => {
    const usual = key.characters[characterIndex.get(id) as number]?.misread ?? 0;
    // The engine multiplies what it is given by the observer's times.
    return [id, Math.min(MOST, Math.max(mean / times, usual * LEAST_OF_USUAL))];
  });
  return { readings, observer, misread: new Map(misread) };
}
