// `leadwort check FOLDER`: is this a key, and what would make it a better one?
import { resolve } from 'node:path';
import type { Command, Given } from './command.ts';
import { countKey } from './counts.ts';
import { readFolder } from './files.ts';
import { inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { checkReport } from './print/check-report.ts';
import { smallTrial } from './trial/small.ts';

async function run({ operands: [shown = ''], on }: Given, io: Io): Promise<ExitCode> {
  const { files, strangers } = await readFolder(resolve(io.cwd, shown), shown);
  const inspection = inspect(files, io.today);
  const { key, problems, more } = inspection;
  for (const name of strangers) io.stderr(`leadwort: ${shown} also holds ${name}, which no key has: passed over.\n`);
  if (on.has('json')) {
    const result = {
      key: key === undefined ? null : { id: key.id, version: key.version, title: key.title, reviewed: key.reviewed },
      counts: key === undefined ? null : countKey(key),
      trial: key === undefined ? null : (smallTrial(key) ?? null),
      problems,
      more,
    };
    io.stdout(`${JSON.stringify(result, (_, value) => value ?? null, 2)}\n`);
  } else io.stdout(checkReport(inspection, painter(io.colour.stdout), key && smallTrial(key)));
  return key === undefined ? EXIT.content : EXIT.done;
}

export const check: Command = {
  name: 'check',
  summary: 'tells what is wrong with a key folder, and what it holds',
  more: [
    'Errors keep the folder from being a key: exit code 1. Warnings are worth a look, and do not.',
    'Each is told with its file, its line where known, its place, what is expected and what was found.',
    'A small trial then tells how the key would serve people; `leadwort trial` tells much more.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder, with key.json, characters.json, taxa.json and so on' }],
  options: { json: { type: 'boolean', help: 'prints key, counts, trial and problems as JSON' } },
  run,
};
