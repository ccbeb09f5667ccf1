// Fetches the album of a key. It comes after the first question, in a file of its own.
import { type Album, type Key, readAlbum } from '../../key/index.ts';
import { fetchText } from './load.ts';

/**
 * The album at an address; undefined when it belongs to another key, or to another version of this one.
 * @throws what fetchText and readAlbum throw
 */
export async function loadAlbum(address: URL, { id, version }: Key, signal: AbortSignal): Promise<Album | undefined> {
  const album = readAlbum(await fetchText(address, signal));
  return album.key === id && album.version === version ? album : undefined;
}
