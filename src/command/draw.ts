// `leadwort draw FOLDER`: a drawing of every state that one is known for, and the list of pictures.
import { access, mkdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { isOurs, type Key, type Manifest, readManifest, readSvg, wantedOf } from '../key/index.ts';
import { Problems } from '../key/problem.ts';
import type { Command, Given } from './command.ts';
import { drawAll } from './drawn.ts';
import { Refusal } from './errors.ts';
import { inWords, readFolder, readText, type Writing, writeAllWhole } from './files.ts';
import { inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { printManifest, type Replacing, updated } from './manifest.ts';
import { painter } from './paint.ts';
import { picturesPlace } from './pictures.ts';
import { checkReport } from './print/check-report.ts';
import { count } from './print/table.ts';

async function run({ operands: [shown = ''], text, on }: Given, io: Io): Promise<ExitCode> {
  const folder = resolve(io.cwd, shown);
  const { files } = await readFolder(folder, shown);
  const inspection = await inspect(files, folder, io.today);
  const { key } = inspection;
  if (key === undefined) {
    io.stderr(checkReport(inspection, painter(io.colour.stderr)));
    return EXIT.content;
  }
  const place = placeFor(files.get('key.json') ?? '{}', text.get('output'), shown);
  const directory = dirname(resolve(io.cwd, place));
  const before = await manifestAt(resolve(io.cwd, place), place, key);
  const { drawn, notDrawn } = drawAll(key);

  const written: Writing[] = [];
  const kept: string[] = [];
  const ours: Replacing[] = [];
  for (const one of drawn) {
    const writing = { path: join(directory, one.file), shown: join(dirname(place), one.file), text: one.svg };
    const there = await textAt(writing.path, writing.shown);
    if (there !== undefined && !isOurs(there)) {
      kept.push(one.file);
      continue;
    }
    const old = there === undefined ? undefined : readSvg(there, one.file, new Problems());
    ours.push({ ...one, before: old?.titles ?? new Map() });
    if (there !== one.svg) written.push(writing);
  }
  const manifest = updated(before, key, ours);
  const complete: Manifest = { ...manifest, wanted: wantedOf(key, manifest) };
  const list: Writing = { path: resolve(io.cwd, place), shown: place, text: printManifest(complete) };
  const changed = list.text !== (await textAt(list.path, place));
  // The list last: it names nothing that is not there.
  const writings = [...written, ...(changed ? [list] : [])];
  for (const folder of new Set(writings.map(({ path }) => dirname(path)))) await makeFolder(folder, dirname(place));
  await writeAllWhole(writings);
  const wanted = complete.wanted?.length ?? 0;
  const unchanged = ours.length - written.length;
  if (on.has('json')) {
    io.stdout(
      `${JSON.stringify({ manifest: place, changed, written: written.map(({ shown }) => shown), unchanged, kept, notDrawn, wanted }, null, 2)}\n`,
    );
    return EXIT.done;
  }
  io.stdout(
    `${dirname(place)}: ${count(written.length, 'drawing')} written, ${unchanged} as before, ${kept.length} made by hand and kept\n`,
  );
  io.stdout(`${place}: ${changed ? 'written' : 'as before'}, ${count(wanted, 'photograph')} still wanted\n`);
  for (const { character, states, why } of notDrawn)
    io.stdout(`not drawn: ${character} (${states.join(', ')}): ${why}\n`);
  return EXIT.done;
}

/** The manifest, as the person would write its path. */
function placeFor(keyFile: string, output: string | undefined, shown: string): string {
  if (output !== undefined) return join(output, 'manifest.json');
  const pictures = picturesPlace(keyFile);
  if (pictures === undefined)
    throw new Refusal(`${shown}: key.json does not say where its pictures lie ("pictures"), and no -o DIR does`);
  return join(shown, pictures);
}

/** What is there already, or an empty one; a Refusal when it is at fault, so that nothing written by hand is lost. */
async function manifestAt(path: string, shown: string, key: Key): Promise<Manifest> {
  const text = await textAt(path, shown);
  if (text === undefined) return { licence: key.licence, credit: key.title, pictures: [] };
  const problems = new Problems();
  const manifest = readManifest(text, shown, problems);
  if (manifest) return manifest;
  const {
    line,
    path: at,
    expected,
    found,
  } = problems.list[0] ?? { path: '', expected: 'a list of pictures', found: '' };
  throw new Refusal(`${shown}: ${line === undefined ? at : `line ${line}`}: expected ${expected}, found ${found}`);
}

/** Text of a file, undefined when there is none. */
async function textAt(path: string, shown: string): Promise<string | undefined> {
  const there = await access(path).then(
    () => true,
    () => false,
  );
  return there ? readText(path, shown) : undefined;
}

async function makeFolder(path: string, shown: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch (error) {
    throw inWords(error, shown);
  }
}

export const draw: Command = {
  name: 'draw',
  summary: 'draws the states of a key folder, and keeps the list of its pictures',
  more: [
    'Draws each state of each character that says what it `draws`, one file for each, and lists them with their alternative',
    'text. Files made by hand, photographs and words changed by hand are kept. A second run changes nothing.',
    'The list also tells which photographs are still wanted; mark a row with "keep": true to write it yourself.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder' }],
  options: {
    output: {
      type: 'string',
      short: 'o',
      value: 'DIR',
      help: 'the folder of pictures; that of key.json when left out',
    },
    json: { type: 'boolean', help: 'prints what was written, kept and not drawn as JSON' },
  },
  run,
};
