// Freezes what was read, so that no part of a page can change the key under another.

function refuse(): never {
  throw new TypeError('A key that has been read cannot be changed.');
}

/** A Map whose entries stay as they are: set, delete and clear throw a TypeError. */
export function frozenMap<K, V>(entries: Iterable<readonly [K, V]>): ReadonlyMap<K, V> {
  const map = new Map(entries);
  for (const change of ['set', 'delete', 'clear']) Object.defineProperty(map, change, { value: refuse });
  return Object.freeze(map);
}

/** Freezes plain objects and lists all the way down, Maps with their values; Maps must be frozen ones already. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  if (value instanceof Map) value.forEach(deepFreeze);
  else Object.values(value).forEach(deepFreeze);
  return Object.freeze(value);
}
