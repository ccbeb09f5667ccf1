// A key folder or a bundle, read and made ready.
import { KeyContentError, type PreparedKey, prepareKey, readKey, readVerifiedBundle } from '../key/index.ts';
import { Refusal } from './errors.ts';
import { isFolder, readFolder, readText } from './files.ts';

/** `shown` is the path as the person wrote it. @throws Refusal when it is no key. */
export async function readPrepared(path: string, shown: string): Promise<PreparedKey> {
  try {
    if (await isFolder(path, shown)) return prepareKey(readKey((await readFolder(path, shown)).files));
    return prepareKey(await readVerifiedBundle(await readText(path, shown)));
  } catch (error) {
    if (error instanceof KeyContentError) throw new Refusal(`${shown}: ${error.message}`);
    throw error;
  }
}
