// `leadwort bundle FOLDER -o FILE`: the one file that a page loads.
import { realpath } from 'node:fs/promises';
import { relative, resolve, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { bundleKey, readBundle } from '../key/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal } from './errors.ts';
import { readFolder, whereItLeads, writeWhole } from './files.ts';
import { inspect } from './inspect.ts';
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
  const inspection = inspect(files, io.today);
  if (inspection.key === undefined) {
    io.stderr(checkReport(inspection, painter(io.colour.stderr)));
    io.stderr(`leadwort: ${shownTarget} was not written.\n`);
    return EXIT.content;
  }
  const bundled = await bundleKey(files);
  // Read back as a page will: what is written can be used.
  const { hash } = readBundle(bundled);
  await writeWhole(target, shownTarget, bundled);
  const raw = Buffer.byteLength(bundled);
  io.stdout(`${shownTarget}: ${kB(raw)}, ${kB(gzipSync(bundled).length)} gzip, ${hash}\n`);
  const warnings = inspection.problems.length + inspection.more;
  if (warnings > 0) io.stderr(`leadwort: ${count(warnings, 'warning')}; leadwort check ${shown} tells them.\n`);
  return EXIT.done;
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
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder' }],
  options: { output: { type: 'string', short: 'o', value: 'FILE', help: 'the file to write', required: true } },
  run,
};
