// `leadwort identify`: what the key makes of a file of answers.
import { resolve } from 'node:path';
import {
  AnswersError,
  describeProblem,
  type Inquiry,
  identify as identifyPlant,
  LIMITS,
  MOST_PROBLEMS,
  type PreparedKey,
  readInquiry,
} from '../key/index.ts';
import { readJson } from '../key/json.ts';
import { Problems } from '../key/problem.ts';
import type { Command, Given } from './command.ts';
import { Refusal } from './errors.ts';
import { readStream, readText } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { readPrepared } from './prepared.ts';
import { identificationReport } from './print/identification.ts';

/** Most bytes of an answers file: far more than an answer to every character of a large key. */
const MOST_ANSWER_BYTES = 1_000_000;

async function run({ operands: [shownKey = ''], text, on }: Given, io: Io): Promise<ExitCode> {
  const prepared = await readPrepared(resolve(io.cwd, shownKey), shownKey);
  const inquiry = await readAnswers(prepared, text.get('answers') ?? '', io);
  const found = identifyPlant(prepared, inquiry);
  io.stdout(
    on.has('json')
      ? `${JSON.stringify(found, null, 2)}\n`
      : identificationReport(prepared.key, inquiry, found, painter(io.colour.stdout)),
  );
  return EXIT.done;
}

async function readAnswers(prepared: PreparedKey, name: string, io: Io): Promise<Inquiry> {
  const shown = name === '-' ? 'standard input' : name;
  const text = await (name === '-'
    ? readStream(io.stdin, shown, MOST_ANSWER_BYTES)
    : readText(resolve(io.cwd, name), shown, MOST_ANSWER_BYTES));
  const problems = new Problems();
  const content = readJson(text, { file: shown, problems, limits: LIMITS });
  const faults = problems.list.map(describeProblem);
  // Without a value there is no JSON; other faults leave one, in which there may be more to mend.
  if (content === undefined) throw refusal(faults);
  try {
    const inquiry = readInquiry(prepared, content);
    if (faults.length === 0) return inquiry;
  } catch (error) {
    if (!(error instanceof AnswersError)) throw error;
    faults.push(...error.problems.map(({ path, expected }) => `${shown}, ${path}: expected ${expected}`));
  }
  throw refusal(faults);
}

function refusal(faults: readonly string[]): Refusal {
  const more = faults.length - MOST_PROBLEMS;
  return new Refusal([...faults.slice(0, MOST_PROBLEMS), ...(more > 0 ? [`and ${more} more`] : [])].join('\n'));
}

export const identify: Command = {
  name: 'identify',
  summary: 'tells what a key makes of a file of answers',
  more: [
    'A try-out for people who keep a key. A name from a key is not a confirmation.',
    'Answers are JSON: {"month":9,"observer":"novice","answers":[{"character":"leaf-shape","states":["heart"],"sureness":"sure"},',
    '{"character":"height","value":4.5,"unit":"m"},{"character":"sap","skipped":true}]}. Sureness is sure, think or guess.',
  ],
  operands: [{ name: 'KEY', help: 'a key folder, or a bundle made of one' }],
  options: {
    answers: {
      type: 'string',
      value: 'FILE',
      help: 'the file of answers; - reads them from standard input',
      required: true,
    },
    json: { type: 'boolean', help: 'prints standing, verdict, second looks and next characters as JSON' },
  },
  run,
};
