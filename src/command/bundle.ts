// `leadwort bundle FOLDER -o FILE`: the one file that a page loads.
import { realpath } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { albumOf, bundleKey, hashed, type Key, openingOf, readAlbum, readBundle } from '../key/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal } from './errors.ts';
import { readFolder, whereItLeads, writeAllWhole } from './files.ts';
import { type Inspection, inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { checkReport } from './print/check-report.ts';
import { count, kB } from './print/table.ts';

async function run({ operands: [shown = ''], text }: Given, io: Io): Promise<ExitCode> {
  const folder = resolve(io.cwd, shown);
  const shownTarget = text.get('output') ?? '';
  const target = resolve(io.cwd, shownTarget);
  const { files } = await readFolder(folder, shown);
  await refuseInside(folder, target, shownTarget);
  const inspection = await inspect(files, folder, io.today);
  if (inspection.key === undefined) {
    io.stderr(checkReport(inspection, painter(io.colour.stderr)));
    io.stderr(`leadwort: ${shownTarget} was not written.\n`);
    return EXIT.content;
  }
  const album = await albumFor(inspection, inspection.key, shownTarget);
  const bundled = await bundleKey(files, {}, undefined, album?.told);
  // Read back as a page will: what is written can be used.
  const { hash } = readBundle(bundled);
  await writeAllWhole([
    { path: target, shown: shownTarget, text: bundled },
    ...(album ? [{ path: join(dirname(target), album.told.album), shown: album.shown, text: album.text }] : []),
  ]);
  io.stdout(`${shownTarget}: ${sizes(bundled)}, ${hash}\n`);
  if (album)
    io.stdout(
      `${album.shown}: ${sizes(album.text)}, ${count(album.pictures, 'picture')}, ${count(album.terms, 'term')}${album.courses > 0 ? `, ${count(album.courses, 'course')}` : ''}\n`,
    );
  const warnings = inspection.problems.length + inspection.more;
  if (warnings > 0) io.stderr(`leadwort: ${count(warnings, 'warning')}; leadwort check ${shown} tells them.\n`);
  return EXIT.done;
}

const sizes = (text: string): string => `${kB(Buffer.byteLength(text))}, ${kB(gzipSync(text).length)} gzip`;

/** The album of a key that has pictures or a glossary, and what its bundle tells of it. */
async function albumFor({ pictures, glossary, courses }: Inspection, key: Key, shownTarget: string) {
  if (pictures === undefined && glossary.length === 0 && courses.length === 0) return undefined;
  const name = `${basename(shownTarget).replace(/\.json$/, '')}.album.json`;
  if (!/^[\w-][\w. -]*$/.test(name))
    throw new Refusal(`${shownTarget}: the name of a bundle with pictures is of plain letters, digits and hyphens`);
  const made = albumOf(key, { drawings: pictures?.drawings ?? new Map(), glossary, courses, ...pictures });
  const text = await hashed(made);
  const { states, taxa } = readAlbum(text, key);
  return {
    text,
    shown: join(dirname(shownTarget), name),
    told: { album: name, opening: openingOf(key, made) },
    pictures: states.size + [...taxa.values()].reduce((sum, photos) => sum + photos.length, 0),
    terms: glossary.length,
    courses: courses.length,
  };
}

/** A bundle among the files it is made from could take the place of one of them. */
async function refuseInside(folder: string, target: string, shownTarget: string): Promise<void> {
  const real = await whereItLeads(target).catch(() => target);
  const way = relative(await realpath(folder), real);
  if (way !== '..' && !way.startsWith(`..${sep}`) && resolve(way) !== way) {
    throw new Refusal(`${shownTarget}: this lies in the key folder itself; choose a place outside`);
  }
}

export const bundle: Command = {
  name: 'bundle',
  summary: 'makes the one file that a page loads of a key folder',
  more: [
    'Refuses a folder in which `check` finds errors. The file is written whole or not at all, and an older one is replaced.',
    'Prints its size, its size by gzip, and the hash of its content.',
    'A key with pictures, a glossary or courses gets an album beside it, FILE.album.json, which the page fetches after the bundle.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder' }],
  options: { output: { type: 'string', short: 'o', value: 'FILE', help: 'the file to write', required: true } },
  run,
};
