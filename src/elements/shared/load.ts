// Fetches the one file of a key and makes it ready.
import { LIMITS, type PreparedKey, prepareKey, readBundle } from '../../key/index.ts';

/** The file did not come, or came larger than a key may be. */
export class LoadError extends Error {
  override readonly name = 'LoadError';
}

/**
 * The prepared key at an address.
 * @throws LoadError, KeyContentError, or what `fetch` throws: a TypeError without a connection, an AbortError.
 */
export async function loadKey(address: URL, signal: AbortSignal): Promise<PreparedKey> {
  return prepareKey(readBundle(await fetchText(address, signal)));
}

/**
 * What lies at an address, as text.
 * @throws LoadError, or what `fetch` throws
 */
export async function fetchText(address: URL, signal: AbortSignal): Promise<string> {
  const response = await fetch(address, { signal });
  if (!response.ok) throw new LoadError(`${response.status} ${response.statusText}`.trim());
  const text = await readText(response);
  signal.throwIfAborted();
  return text;
}

/** The body as text, given up as soon as it is larger than a key may be. */
async function readText(response: Response): Promise<string> {
  const reader = response.body?.getReader();
  if (!reader) return '';
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    bytes += part.value.byteLength;
    if (bytes > LIMITS.bytes) {
      await reader.cancel();
      throw new LoadError(`larger than ${LIMITS.bytes / 1_000_000} MB`);
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}
