// `leadwort couplets FOLDER`: builds the branching key from the trait matrix.
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import {
  type Branching,
  BuriedCoupletError,
  branchingOf,
  isHandWritten,
  type Month,
  type PreparedKey,
  printCouplets,
} from '../key/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { codeOf, readText, writeWhole } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { readPrepared } from './prepared.ts';
import { coupletsReport } from './print/couplets.ts';

const FILE = 'couplets.json';

async function run({ operands: [shown = ''], text, on }: Given, io: Io): Promise<ExitCode> {
  const prepared = await readPrepared(resolve(io.cwd, shown), shown);
  const observer = text.get('observer');
  const kinds = [...prepared.key.observers.keys()];
  if (observer !== undefined && !kinds.includes(observer))
    throw new UsageError(`--observer: one of ${kinds.join(', ')}.`, 'couplets');
  const month = monthOf(text.get('month'));
  const target = text.get('output');
  const frame = target === undefined ? {} : await frameOf(prepared, resolve(io.cwd, target), target);
  const branching = build(prepared, shown, {
    ...(month === undefined ? {} : { month }),
    ...(observer === undefined ? {} : { observer }),
  });
  if (target !== undefined) {
    if (branching.key.length === 0)
      throw new Refusal(`${shown}: nothing tells its taxa apart, so there is no couplet to write`);
    await writeWhole(resolve(io.cwd, target), target, printCouplets(branching.key, frame));
  }
  io.stdout(
    on.has('json')
      ? `${JSON.stringify(branching, null, 2)}\n`
      : coupletsReport(prepared.key, branching, painter(io.colour.stdout), target),
  );
  return EXIT.done;
}

function build(prepared: PreparedKey, shown: string, options: { month?: Month; observer?: string }): Branching {
  try {
    return branchingOf(prepared, options);
  } catch (error) {
    if (!(error instanceof BuriedCoupletError)) throw error;
    const [number] = error.numbers;
    throw new Refusal(
      `${shown}, ${FILE}: couplet ${number} is written by hand and stands below built ones, which are built anew; ` +
        'word the couplets that lead to it as well, or take it out',
    );
  }
}

function monthOf(given: string | undefined): Month | undefined {
  if (given === undefined) return undefined;
  if (!/^([1-9]|1[0-2])$/.test(given)) throw new UsageError('--month: a whole number from 1 to 12.', 'couplets');
  return Number(given) as Month;
}

/**
 * What stands in the file to be replaced beside its couplets. @throws Refusal when it is no file of couplets, or holds
 * couplets by hand that the key folder, whose couplets are kept, does not have.
 */
async function frameOf({ key }: PreparedKey, path: string, shown: string): Promise<Record<string, unknown>> {
  // Nothing there, or a link to nothing, is nothing to lose; what else is wrong is told when it is read.
  if (
    await stat(path).then(
      () => false,
      (error) => codeOf(error) === 'ENOENT',
    )
  )
    return {};
  const text = await readText(path, shown);
  const refuse = (why: string): never => {
    throw new Refusal(`${shown}: ${why}; it was not written`);
  };
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return refuse('this is there already, and is no file of couplets');
  }
  if (typeof content !== 'object' || content === null || !('couplets' in content) || !Array.isArray(content.couplets))
    return refuse('this is there already, and is no file of couplets');
  const { couplets, ...frame } = content as { couplets: { number?: unknown; leads?: { text?: string }[] }[] };
  for (const { number, leads } of couplets) {
    if (!Array.isArray(leads) || !isHandWritten({ leads: leads as never })) continue;
    const kept = key.couplets.find((one) => one.number === number);
    const words = (of: readonly { readonly text?: string }[]) => of.map((lead) => lead.text);
    if (kept === undefined || !isDeepStrictEqual(words(kept.leads), words(leads)))
      return refuse(`couplet ${number} there is written by hand and not in the key folder`);
  }
  return frame;
}

export const couplets: Command = {
  name: 'couplets',
  summary: 'builds the branching key of a key folder from its traits',
  more: [
    'Prints what it expects of people in glances (a wrong turn counts as ten), what no key can undercut, and the gap',
    'between the two. Couplets in which somebody worded a lead are kept as they are; what lies below their leads is built',
    'where a lead with a character and states goes on to a built couplet or ends with several taxa.',
    'Characters that are not asked, or need digging, are never used. It takes a while: half a minute for some fifty taxa.',
  ],
  operands: [{ name: 'FOLDER', help: 'the key folder' }],
  options: {
    output: {
      type: 'string',
      short: 'o',
      value: 'FILE',
      help: 'writes the couplets, to be couplets.json of the folder',
    },
    month: { type: 'string', value: 'M', help: 'only what can be seen in this month, 1 to 12' },
    observer: { type: 'string', value: 'WHO', help: "one of the key's kinds of observer, for whom it is built" },
    json: { type: 'boolean', help: 'prints effort, bound, gap, exact, depth, couplets, together and key as JSON' },
  },
  run,
};
