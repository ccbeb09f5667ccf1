// `leadwort draw FOLDER`: a drawing of every state that one is known for, and the list of pictures.
import { access, mkdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { type Key, type Manifest, readManifest, readSvg, wantedOf } from '../key/index.ts';
import { Problems } from '../key/problem.ts';
import type { Command, Given } from './command.ts';
import { drawAll } from './drawn.ts';
import { Refusal } from './errors.ts';
import { inWords, readFolder, readText, writeWhole } from './files.ts';
import { inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { printManifest, updated } from './manifest.ts';
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

  const result = { written: [] as string[], unchanged: 0, kept: [] as string[] };
  for (const one of drawn) {
    const path = join(directory, one.file);
    const there = await textAt(path, one.file);
    const old = there === undefined ? undefined : readSvg(there, one.file, new Problems());
    if (there !== undefined && !old?.ours) {
      result.kept.push(one.file);
      continue;
    }
    one.before = old?.titles;
    if (there === one.svg) result.unchanged++;
    else {
      await makeFolder(dirname(path), place);
      await writeWhole(path, join(dirname(place), one.file), one.svg);
      result.written.push(one.file);
    }
  }
  // The list last: it names nothing that is not there.
  const manifest = updated(before, key, drawn, new Set(result.kept));
  const complete: Manifest = { ...manifest, wanted: wantedOf(key, manifest) };
  const printed = printManifest(complete);
  const changed = printed !== (await textAt(resolve(io.cwd, place), place));
  if (changed) {
    await makeFolder(directory, place);
    await writeWhole(resolve(io.cwd, place), place, printed);
  }
  const wanted = complete.wanted?.length ?? 0;
  if (on.has('json')) {
    io.stdout(`${JSON.stringify({ manifest: place, changed, ...result, notDrawn, wanted }, null, 2)}\n`);
    return EXIT.done;
  }
  io.stdout(
    `${dirname(place)}: ${count(result.written.length, 'drawing')} written, ${result.unchanged} as before, ${result.kept.length} made by hand and kept\n`,
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
    throw inWords(error, dirname(shown));
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
