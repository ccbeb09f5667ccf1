// A place that a person gave to one part of a session, for the others of that session: nobody is asked twice. It is kept in
// memory only, as long as the session is.
import type { SessionStore } from '../../session/index.ts';

export interface GivenPlace {
  readonly lat: number;
  readonly lon: number;
  /** Radius in metres; absent where nobody said how well it is known. */
  readonly uncertainty?: number;
  readonly source: 'device' | 'typed' | 'map' | 'photo';
}

const places = new WeakMap<SessionStore, GivenPlace>();
const listeners = new WeakMap<SessionStore, Set<() => void>>();

export const givenPlace = (session: SessionStore | undefined): GivenPlace | undefined => session && places.get(session);

/** Tells the other parts, unless it is the place that they know. */
export function givePlace(session: SessionStore | undefined, place: GivenPlace): void {
  if (!session) return;
  const known = places.get(session);
  if (known?.lat === place.lat && known.lon === place.lon) return;
  places.set(session, place);
  for (const listener of [...(listeners.get(session) ?? [])]) listener();
}

/** Calls `listener` whenever a place is given; returns how to stop. */
export function onPlace(session: SessionStore, listener: () => void): () => void {
  const all = listeners.get(session) ?? new Set();
  listeners.set(session, all);
  all.add(listener);
  return () => all.delete(listener);
}
