/** A request that names what the key does not have. */
export class SessionError extends Error {
  override readonly name = 'SessionError';
}
