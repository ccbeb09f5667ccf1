// `leadwort learn FOLDER FINDS...`: from reviewed finds to how often each character is misread.
import { resolve } from 'node:path';
import {
  isRecord,
  type PracticeRecord,
  peopleIn,
  RECORD_LIMITS,
  RecordError,
  readingsOfRecords,
  readRecord,
} from '../practice/index.ts';
import { FIND_LIMITS, FindError, readFind } from '../report/find/index.ts';
import { learnFrom, type Source } from '../report/learn/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { readText, writeWhole } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { readPrepared } from './prepared.ts';
import { learnReport } from './print/learn.ts';

const MOST_WEIGHT = 100_000;

async function run({ operands: [shown = '', ...names], text, on }: Given, io: Io): Promise<ExitCode> {
  const weight = Number(text.get('weight') ?? 20);
  if (!(weight > 0 && weight <= MOST_WEIGHT))
    throw new UsageError(`--weight: above 0, at most ${MOST_WEIGHT}.`, 'learn');
  const prepared = await readPrepared(resolve(io.cwd, shown), shown);
  const sources: Source[] = [];
  const files: { readonly name: string; readonly record: PracticeRecord }[] = [];
  let faults = 0;
  for (const name of names) {
    try {
      const content = await readText(resolve(io.cwd, name), name, Math.max(FIND_LIMITS.bytes, RECORD_LIMITS.bytes));
      if (saysRecord(content)) files.push({ name, record: readRecord(content) });
      else sources.push({ name, find: withoutPictures(readFind(content)) });
    } catch (error) {
      if (!(error instanceof FindError || error instanceof RecordError || error instanceof Refusal)) throw error;
      faults++;
      const told =
        error instanceof FindError || error instanceof RecordError
          ? error.message.replace(/^/gm, `${name}, `)
          : error.message;
      io.stderr(`leadwort: ${told}\n`);
    }
  }
  const records = files.map(({ record }) => record);
  const { people, otherKey, conflicts } = peopleIn(prepared.key.id, records);
  const practised = readingsOfRecords(prepared, people);
  const learned = learnFrom(prepared, sources, weight, practised);
  const practice = {
    learners: people.length,
    readings: practised.length,
    notCounted: otherKey.flatMap((i) => files[i] ?? []).map(({ name }) => ({ name, why: 'other-key' as const })),
    conflicts,
  };
  const json = `${JSON.stringify({ ...learned, practice }, null, 2)}\n`;
  const target = text.get('output');
  if (target !== undefined) await writeWhole(resolve(io.cwd, target), target, json);
  io.stdout(on.has('json') ? json : learnReport(prepared.key, learned, target, practice));
  return faults === 0 ? EXIT.done : EXIT.content;
}

/** Whether a text is a learner's file by what it holds. Of a text that cannot be parsed the reader of finds tells where. */
function saysRecord(text: string): boolean {
  try {
    return isRecord(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    return false;
  }
}

/** Thousands of finds are held at once, and their photographs are of no use here. */
const withoutPictures = (find: Source['find']): Source['find'] => ({
  ...find,
  photos: find.photos.map(({ data: _, ...photo }) => photo),
});

export const learn: Command = {
  name: 'learn',
  summary: 'counts from reviewed finds, and from practice, which characters people misread, and proposes rates',
  more: [
    "Learners' files of the practice room count whole: what a drawn plant shows is known, and a slip is seen.",
    'Finds count once a specialist confirmed them, or corrected them to a plant of the key: each once, by its latest review.',
    'A misreading is counted as far as it is likely one: a plant may rarely show what was said. Each rate is proposed with',
    "its 95 % interval, from the key's own rate and what was counted. The key itself is never changed.",
  ],
  operands: [
    { name: 'KEY', help: 'a key folder, or a bundle made of one' },
    { name: 'FILES', help: 'files of finds and of learners, such as finds/*.json practice/*.json', many: true },
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'FILE', help: 'writes the proposal there, as JSON' },
    weight: { type: 'string', value: 'N', help: "how many readings the key's own rates are worth; 20 when left out" },
    json: { type: 'boolean', help: 'prints the proposal as JSON' },
  },
  run,
};
