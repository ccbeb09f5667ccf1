// `leadwort rehearse FOLDER`: does the practice room's schedule teach better than chance would?
import { resolve } from 'node:path';
import { strictCourse } from '../key/courses/index.ts';
import { COURSES, prepareKey } from '../key/index.ts';
import { MEMORIES, type MemoryModel, type Rehearsal, rehearse as runRehearsal } from '../practice/simulate/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { readFolder } from './files.ts';
import { inspect } from './inspect.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { checkReport } from './print/check-report.ts';
import { rehearsalReport } from './print/rehearse.ts';

const MOST = { learners: 1000, days: 120, seed: 1_000_000 };

async function run({ operands: [shown = ''], text, on }: Given, io: Io): Promise<ExitCode> {
  const whole = (name: keyof typeof MOST, usual: number): number => {
    const value = Number(text.get(name) ?? usual);
    if (!Number.isInteger(value) || value < 1 || value > MOST[name])
      throw new UsageError(`--${name}: a whole number from 1 to ${MOST[name]}.`, 'rehearse');
    return value;
  };
  const options = { learners: whole('learners', 8), days: whole('days', 14), seed: whole('seed', 1) };
  const model = text.get('memory');
  if (model !== undefined && !Object.hasOwn(MEMORIES, model))
    throw new UsageError(`--memory: one of ${Object.keys(MEMORIES).join(', ')}.`, 'rehearse');
  const models = (model === undefined ? Object.keys(MEMORIES) : [model]) as MemoryModel[];
  const folder = resolve(io.cwd, shown);
  const { files } = await readFolder(folder, shown);
  const inspection = await inspect(files, folder, io.today);
  const { key } = inspection;
  if (key === undefined) {
    io.stderr(checkReport(inspection, painter(io.colour.stderr)));
    return EXIT.content;
  }
  const all = key.taxa.map(({ id }) => id);
  const wanted = text.get('course');
  const courses = inspection.courses
    .filter(({ id }) => wanted === undefined || id === wanted)
    .map((course) => strictCourse({ ...course, taxa: course.taxa ?? all }));
  if (courses.length === 0)
    throw new Refusal(
      wanted === undefined ? `${shown}: there is no ${COURSES}` : `${shown}: no course has the id ${wanted}`,
    );
  const prepared = prepareKey(key);
  const results = models.flatMap((memory) =>
    courses.map((course): Rehearsal & { memory: MemoryModel } => ({
      memory,
      ...runRehearsal(prepared, course, { ...options, memory: MEMORIES[memory] }),
    })),
  );
  io.stdout(on.has('json') ? `${JSON.stringify(results, null, 2)}\n` : rehearsalReport(results, options));
  return EXIT.done;
}

export const rehearse: Command = {
  name: 'rehearse',
  summary: "trains simulated learners with a folder's courses, by the practice room's schedule and in random order",
  more: [
    'Both sit as many tasks on the same days. Told are the tasks until nine in ten fresh specimens would be named rightly,',
    'and how many still would be after 30 days without practice, each also as a ratio. Learners forget by two models, of',
    'which neither is that of the schedule. Runs through the key and cover are left out. Seeded: the same words, the same numbers.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder, with courses.json' }],
  options: {
    course: { type: 'string', value: 'ID', help: 'one course alone' },
    learners: { type: 'string', value: 'N', help: 'how many learners for each course; 8 when left out' },
    days: { type: 'string', value: 'N', help: 'days with one round each; 14 when left out' },
    memory: { type: 'string', value: 'MODEL', help: 'power or halving; both when left out' },
    seed: { type: 'string', value: 'N', help: 'another seed, other learners; 1 when left out' },
    json: { type: 'boolean', help: 'prints every learner as JSON' },
  },
  run,
};
