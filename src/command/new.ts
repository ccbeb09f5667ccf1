// `leadwort new FOLDER`: a key folder to start from, which holds from the first minute.
import { mkdir, readdir, rmdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import type { Command, Given } from './command.ts';
import { Refusal } from './errors.ts';
import { codeOf, inWords, writeAllWhole } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { starter } from './starter/index.ts';

async function run({ operands: [shown = ''] }: Given, io: Io): Promise<ExitCode> {
  const folder = resolve(io.cwd, shown);
  await refuseFull(folder, shown);
  const files = starter(idFor(basename(folder)), shown);
  const made = await makeFolders(folder, shown);
  try {
    await writeAllWhole(
      [...files].map(([name, text]) => ({ path: join(folder, name), shown: join(shown, name), text })),
    );
  } catch (error) {
    // Else a second try would find the folder not empty. What is not empty stays.
    for (const one of made) await rmdir(one).catch(() => {});
    throw error;
  }
  for (const name of files.keys()) io.stdout(`${join(shown, name)}\n`);
  io.stdout(
    `Two plants to start from. README.md (LEAME.md) tells what to do next; leadwort check ${shown} tries it.\n`,
  );
  return EXIT.done;
}

async function refuseFull(folder: string, shown: string): Promise<void> {
  const there = await readdir(folder).catch((error: unknown) => {
    if (codeOf(error) === 'ENOENT') return [];
    if (codeOf(error) === 'ENOTDIR') throw new Refusal(`${shown}: this is a file where a folder is needed`);
    throw inWords(error, shown);
  });
  if (there.length > 0)
    throw new Refusal(`${shown}: this folder is not empty (${there[0]}); name a new one, and nothing is lost`);
}

/** Makes the folder and the one in it for translations; tells which it made, the innermost first. */
async function makeFolders(folder: string, shown: string): Promise<string[]> {
  const made: string[] = [];
  try {
    if ((await mkdir(folder, { recursive: true })) !== undefined) made.unshift(folder);
    await mkdir(join(folder, 'text'));
    made.unshift(join(folder, 'text'));
    return made;
  } catch (error) {
    for (const one of made) await rmdir(one).catch(() => {});
    throw inWords(error, shown);
  }
}

/** An id as keys have it, from the folder's name; `new-key` when nothing of that can be used. */
const idFor = (name: string): string =>
  /^[a-z].*/
    .exec(
      name
        .normalize('NFKD')
        .toLowerCase()
        .replace(/\p{M}/gu, '')
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^[^a-z]+|-+$/g, ''),
    )?.[0]
    .slice(0, 40)
    .replace(/-+$/, '') ?? 'new-key';

/** `new` is a word of the language. */
export const newKey: Command = {
  name: 'new',
  summary: 'starts a key folder with two plants and instructions',
  more: [
    'A plant that spreads and the native that is taken for it, in English and Spanish, with their sources; each file begins',
    'with a comment that tells how to change it. `check` finds nothing wrong with it, and `bundle` makes a page of it.',
    'A folder that is there must be empty.',
  ],
  operands: [{ name: 'FOLDER', help: 'the folder to make' }],
  options: {},
  run,
};
