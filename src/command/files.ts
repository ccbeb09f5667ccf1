// Reading with a limit, and writing whole or not at all.
import { isUtf8 } from 'node:buffer';
import { randomUUID } from 'node:crypto';
import { type FileHandle, open, readdir, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { COURSES, GLOSSARY, KEY_FILES, LIMITS } from '../key/index.ts';
import { Refusal } from './errors.ts';

/** Most bytes of one file of a key, and of a bundle. */
export const MOST_BYTES = LIMITS.bytes;

const SYSTEM: ReadonlyMap<string, string> = new Map([
  ['ENOENT', 'there is no such file or folder'],
  ['ENOTDIR', 'a part of this path is a file where a folder is needed'],
  ['EISDIR', 'this is a folder where a file is needed'],
  ['EACCES', 'no permission'],
  ['EPERM', 'no permission'],
  ['EROFS', 'this place cannot be written to'],
  ['ENOSPC', 'there is no space left'],
  ['ELOOP', 'its links lead round in a circle'],
  ['ENAMETOOLONG', 'the name is too long'],
]);

/** The code of a fault that the operating system reports (ENOENT ...), if this is one. */
export const codeOf = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;

/** The same fault in words; anything else is handed on as it is. */
export function inWords(error: unknown, path: string): unknown {
  const code = codeOf(error);
  if (code === undefined) return error;
  return new Refusal(`${path}: ${SYSTEM.get(code) ?? (error as Error).message}`);
}

/** Runs the work; what the operating system refuses is told in words. `shown` is the path as the person wrote it. */
async function told<T>(shown: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw inWords(error, shown);
  }
}

/** Whether the path is a folder; a Refusal when there is nothing. */
export const isFolder = (path: string, shown: string): Promise<boolean> =>
  told(shown, async () => (await stat(path)).isDirectory());

/** Text of a stream of bytes. Reads no further than one chunk past the limit. */
export async function readStream(
  stream: AsyncIterable<Uint8Array>,
  shown: string,
  limit = MOST_BYTES,
): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.length;
    if (bytes > limit) throw new Refusal(`${shown}: more than ${limit} bytes, and so not read`);
    chunks.push(chunk);
  }
  return decode(Buffer.concat(chunks), shown);
}

/** Text of a file of at most `limit` bytes, in UTF-8. */
export const readText = (path: string, shown: string, limit = MOST_BYTES): Promise<string> =>
  told(shown, async () => {
    const file = await open(path);
    try {
      const { size } = await file.stat();
      if (size > limit) throw new Refusal(`${shown}: ${size} bytes, and so not read; at most ${limit} are`);
      return await readStream(chunksOf(file), shown, limit);
    } finally {
      await file.close();
    }
  });

async function* chunksOf(file: FileHandle): AsyncGenerator<Uint8Array> {
  for (;;) {
    const { bytesRead, buffer } = await file.read({ buffer: Buffer.alloc(65_536) });
    if (bytesRead === 0) return;
    yield buffer.subarray(0, bytesRead);
  }
}

function decode(bytes: Buffer, shown: string): string {
  if (isUtf8(bytes)) return bytes.toString('utf8');
  // The first line that is wrong taken alone is the first that is wrong: no character holds a line feed.
  let line = 1;
  for (let from = 0; ; line++) {
    const end = bytes.indexOf(0x0a, from);
    if (end === -1 || !isUtf8(bytes.subarray(from, end))) break;
    from = end + 1;
  }
  throw new Refusal(`${shown} line ${line}: expected text in UTF-8; save the file with that encoding`);
}

/** A key folder's files by name in it, and names of JSON files in it that no key has. */
export interface FolderFiles {
  readonly files: ReadonlyMap<string, string>;
  readonly strangers: readonly string[];
}

export async function readFolder(path: string, shown: string): Promise<FolderFiles> {
  if (!(await isFolder(path, shown))) throw new Refusal(`${shown}: this is a file where a key folder is needed`);
  const names = (await told(shown, () => readdir(path))).sort();
  const known: readonly string[] = [...KEY_FILES, GLOSSARY, COURSES];
  const translations = names.includes('text') ? await namesIn(join(path, 'text'), join(shown, 'text')) : [];
  const wanted = [...known.filter((name) => names.includes(name)), ...translations.map((name) => `text/${name}`)];
  const files = new Map<string, string>();
  for (const name of wanted) files.set(name, await readText(join(path, name), join(shown, name)));
  return { files, strangers: names.filter((name) => name.endsWith('.json') && !known.includes(name)) };
}

const namesIn = async (path: string, shown: string): Promise<string[]> =>
  (await told(shown, () => readdir(path))).filter((name) => name.endsWith('.json')).sort();

/** A file to write; `shown` is its path as the person would write it. */
export interface Writing {
  readonly path: string;
  readonly shown: string;
  readonly text: string;
}

/** Writes a file whole or not at all: beside its place first, then moved there. */
export const writeWhole = (path: string, shown: string, text: string): Promise<void> =>
  writeAllWhole([{ path, shown, text }]);

/** The same for several: all lie beside their places before the first is moved. They are moved in the order given. */
export async function writeAllWhole(writings: readonly Writing[]): Promise<void> {
  const ready: { readonly beside: string; readonly target: string; readonly shown: string }[] = [];
  try {
    for (const one of writings)
      await told(one.shown, async () => {
        const target = await placeToWrite(one);
        const beside = join(dirname(target), `.${basename(target).slice(0, 100)}.${randomUUID()}`);
        const file = await open(beside, 'wx');
        ready.push({ beside, target, shown: one.shown });
        try {
          await file.writeFile(one.text);
          await file.sync();
        } finally {
          await file.close();
        }
      });
    for (const { beside, target, shown } of ready) await told(shown, () => rename(beside, target));
  } catch (error) {
    for (const { beside } of ready) await unlink(beside).catch(() => {});
    throw error;
  }
}

async function placeToWrite({ path, shown }: Writing): Promise<string> {
  const target = await whereItLeads(path);
  const there = await stat(target).catch((error: unknown) => {
    if (codeOf(error) === 'ENAMETOOLONG') throw error;
    return undefined;
  });
  if (there?.isDirectory()) throw new Refusal(`${shown}: this is a folder where a file is needed`);
  // A pipe or a device such as /dev/null would be gone for everybody, and a plain file in its place.
  if (there && !there.isFile()) throw new Refusal(`${shown}: this is no plain file, and cannot be replaced by one`);
  return target;
}

/** Where a link leads, so that writing to it does not replace the link; the path itself when nothing is there yet. */
export const whereItLeads = (path: string): Promise<string> =>
  realpath(path).catch(async () => join(await realpath(dirname(path)), basename(path)));
