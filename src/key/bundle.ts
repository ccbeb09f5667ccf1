// The one file that a page loads: made from a key folder, with a hash by which a damaged copy is known.
import { canonicalJson } from './canonical.ts';
import { BUNDLE, compareContent, keyOf, limitsOf, type ReadOptions } from './content.ts';
import { readFolder } from './folder.ts';
import { readJson } from './json.ts';
import type { LooseBundle } from './loose.ts';
import { KeyContentError, Problems } from './problem.ts';
import type { Key } from './types.ts';

/** SHA-256 of some bytes. */
export type Digest = (bytes: Uint8Array<ArrayBuffer>) => Promise<ArrayBuffer>;

/** The digest that Node and browsers have; in browsers only on pages that came over https or from the same machine. */
const builtIn: Digest = (bytes) => crypto.subtle.digest('SHA-256', bytes);

/** The key that a bundle describes; see readKey. Its hash is handed on as it stands (see readVerifiedBundle). */
export function readBundle(text: string, options: ReadOptions = {}): Key {
  const problems = new Problems();
  const content = readJson(text, { file: BUNDLE, problems, limits: limitsOf(options) });
  if (problems.none) compareContent(content, problems);
  const key = problems.none ? keyOf(content, problems) : undefined;
  if (key) return key;
  throw new KeyContentError(problems.list, problems.more);
}

/**
 * The bundle of a folder, as canonical JSON with the hash of everything else in it. The same content gives the same
 * bytes, in whatever order its fields stand; comments are left out, and so is where the pictures lie. `pictures` is what
 * a page needs to know of them. Throws a KeyContentError as readKey does.
 */
export async function bundleKey(
  files: ReadonlyMap<string, string>,
  options: ReadOptions = {},
  digest: Digest = builtIn,
  pictures: Pick<LooseBundle, 'opening' | 'album'> = {},
): Promise<string> {
  const { hash: _, ...rest } = withoutComments(readFolder(files, options).content);
  const { pictures: __, ...key } = rest.key;
  return hashed({ ...rest, key, ...pictures }, digest);
}

/** Canonical JSON of some content with the hash of all of it. */
export const hashed = async (content: object, digest: Digest = builtIn): Promise<string> =>
  canonicalJson({ ...content, hash: await hashOf(content, digest) });

/**
 * Reads a bundle and compares its hash with its content: a KeyContentError when they differ or there is no hash. It
 * tells a copy that was cut or changed by mistake; whoever changes a bundle on purpose can change the hash as well.
 */
export async function readVerifiedBundle(
  text: string,
  options: ReadOptions = {},
  digest: Digest = builtIn,
): Promise<Key> {
  const key = readBundle(text, options);
  const { hash, ...content } = JSON.parse(text) as LooseBundle;
  const computed = await hashOf(content, digest);
  if (hash === computed) return key;
  const problems = new Problems();
  problems.wrong(BUNDLE, ['hash'], 'hash', `${computed}, the hash of this content`, hash);
  throw new KeyContentError(problems.list);
}

async function hashOf(content: object, digest: Digest): Promise<string> {
  const bytes = new Uint8Array(await digest(new TextEncoder().encode(canonicalJson(content))));
  return `sha256-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}

/** Without the fields that are for those who edit a file; they stand only at the top of each. */
function withoutComments(bundle: LooseBundle): LooseBundle {
  const bare = (file: object) => Object.fromEntries(Object.entries(file).filter(([name]) => !name.startsWith('$')));
  const { format, text = {}, ...files } = bundle;
  const parts = Object.entries(files).map(([name, file]) => [name, typeof file === 'object' ? bare(file) : file]);
  const translations = Object.entries(text).map(([language, file]) => [language, bare(file)]);
  return { format, ...Object.fromEntries(parts), text: Object.fromEntries(translations) };
}
