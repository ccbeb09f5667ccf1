// `leadwort check FOLDER`: is this a key, and what would make it a better one?
import { resolve } from 'node:path';
import type { Command, Given } from './command.ts';
import { countKey } from './counts.ts';
import { readFolder } from './files.ts';
import { inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { checkReport } from './print/check-report.ts';
import { wantedTable } from './print/wanted.ts';
import { smallTrial } from './trial/small.ts';

async function run({ operands: [shown = ''], on }: Given, io: Io): Promise<ExitCode> {
  const { files, strangers } = await readFolder(resolve(io.cwd, shown), shown);
  const inspection = await inspect(files, resolve(io.cwd, shown), io.today);
  const { key, problems, more } = inspection;
  for (const name of strangers) io.stderr(`leadwort: ${shown} also holds ${name}, which no key has: passed over.\n`);
  if (on.has('json')) {
    const result = {
      key: key === undefined ? null : { id: key.id, version: key.version, title: key.title, reviewed: key.reviewed },
      counts: key === undefined ? null : countKey(key),
      trial: key === undefined ? null : (smallTrial(key) ?? null),
      problems,
      more,
      wanted: inspection.pictures?.manifest?.wanted ?? null,
    };
    io.stdout(`${JSON.stringify(result, (_, value) => value ?? null, 2)}\n`);
  } else io.stdout(checkReport(inspection, painter(io.colour.stdout), key && smallTrial(key)));
  if (on.has('wanted')) io.stdout(wantedTable(inspection.pictures?.manifest?.wanted ?? []));
  return key === undefined ? EXIT.content : EXIT.done;
}

export const check: Command = {
  name: 'check',
  summary: 'tells what is wrong with a key folder, and what it holds',
  more: [
    'Errors keep the folder from being a key: exit code 1. Warnings are worth a look, and do not.',
    'Each is told with its file, its line where known, its place, what is expected and what was found.',
    'Photographs that are still wanted are counted; --wanted tells each, with months, angle and what shows its size.',
    'A small trial then tells how the key would serve people; `leadwort trial` tells much more.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder, with key.json, characters.json, taxa.json and so on' }],
  options: {
    json: { type: 'boolean', help: 'prints key, counts, trial, problems and photographs still wanted as JSON' },
    wanted: { type: 'boolean', help: 'lists the photographs still wanted' },
  },
  run,
};
