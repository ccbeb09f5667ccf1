// What can go wrong with a device's own storage, by name: whoever keeps something can say so and offer a file instead.

/** There is nothing to keep in: private browsing, storage switched off, or a newer version of the page in another tab. */
export class StoreUnavailableError extends Error {
  override readonly name = 'StoreUnavailableError';
}

/** The device has no room left; what was kept before is untouched, what was to be written is not written. */
export class StoreFullError extends Error {
  override readonly name = 'StoreFullError';
}

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
/** Names of DOMException with which a database does not open, or was taken away (Indexed Database API 3.0, from memory). */
const GONE = ['InvalidStateError', 'SecurityError', 'UnknownError', 'VersionError', 'NotAllowedError', 'AbortError'];

/** The same failure by the names above; any other one as it was. */
export function named(error: unknown): unknown {
  const name = nameOf(error);
  if (name === 'QuotaExceededError') return new StoreFullError('the device has no room left', { cause: error });
  if (GONE.includes(name)) return new StoreUnavailableError(`the device keeps nothing: ${name}`, { cause: error });
  return error;
}
