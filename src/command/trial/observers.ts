// Which observers a key is tried with.
import { type Observer, observersFor } from '../../engine/trial/index.ts';
import type { Key } from '../../key/index.ts';

/** `only`: one of the key's kinds; all of them when left out. The one who misreads most comes first. */
export function observersOf(key: Key, only?: string): Observer[] {
  const kinds = only === undefined ? key.observers : new Map([...key.observers].filter(([id]) => id === only));
  // Of a key with a single plant nothing can be left out.
  return observersFor(kinds).filter(({ leftOut }) => !leftOut || key.taxa.length > 1);
}
