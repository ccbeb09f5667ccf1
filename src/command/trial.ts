// `leadwort trial KEY`: how well a key serves the people who use it, tried on thousands of simulated ones.
import { resolve } from 'node:path';
import { bestOf, type Observer, outcomesOf } from '../engine/trial/index.ts';
import type { Key, Month } from '../key/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { readPrepared } from './prepared.ts';
import { trialReport } from './print/trial.ts';
import { tuneReport } from './print/tune.ts';
import { runTrial } from './trial/crew.ts';
import { type Plan, WAYS } from './trial/helper.ts';
import { observersOf } from './trial/observers.ts';
import { reportOf, type TrialReport } from './trial/report.ts';
import { LEFT_OUT_LIMITS, type Tuned } from './trial/tuned.ts';

const PLANTS = 1000;
const MOST_PLANTS = 1_000_000;
/** Enough to set two ways beside each other; a long trial is not to take twice as long for it. */
const MOST_BESIDE = 1000;

async function run({ operands: [shown = ''], text, on }: Given, io: Io): Promise<ExitCode> {
  const { key } = await readPrepared(resolve(io.cwd, shown), shown);
  const who = text.get('observer') ?? 'all';
  if (who !== 'all' && !key.observers.has(who))
    throw new UsageError(`--observer: one of ${[...key.observers.keys(), 'all'].join(', ')}.`, 'trial');
  const observers = who === 'all' ? observersOf(key) : observersOf(key, who);
  const plants = numberOf(text, 'plants', 1, MOST_PLANTS) ?? PLANTS;
  const month = numberOf(text, 'month', 1, 12) as Month | undefined;
  const given = text.get('way');
  if (given !== undefined && !(WAYS as readonly string[]).includes(given))
    throw new UsageError(`--way: one of ${WAYS.join(', ')}.`, 'trial');
  if (given === 'couplets' && key.couplets.length === 0)
    throw new Refusal(`${shown}: this key has no couplets yet; leadwort couplets builds them`);
  const way = given ?? 'free';
  const plan: Plan = {
    key,
    way,
    seed: numberOf(text, 'seed', 0, Number.MAX_SAFE_INTEGER) ?? 1,
    ...(month === undefined ? {} : { month }),
  };
  const counted = await runTrial(plan, observers, plants, on.has('tune') ? ['trial', 'tune'] : ['trial'], io);
  const report = {
    ...reportOf(plan, observers, plants, counted),
    beside: given === undefined && key.couplets.length > 0 ? await besideOf(plan, observers, plants, io) : null,
  };
  const tuned = on.has('tune') ? tunedOf(key, counted.trials, observers[0]?.id ?? '') : undefined;
  const paint = painter(io.colour.stdout);
  // What could not be counted is null, so that no name is ever missing.
  const json = () =>
    JSON.stringify(tuned === undefined ? report : { ...report, tune: tuned }, (_, value) => value ?? null, 2);
  io.stdout(
    on.has('json')
      ? `${json()}\n`
      : trialReport(key, report, paint) + (tuned === undefined ? '' : tuneReport(key, tuned, paint)),
  );
  return EXIT.done;
}

/** The same plants and people led through the couplets, the first of them where there are many. */
async function besideOf(
  free: Plan,
  observers: readonly Observer[],
  plants: number,
  io: Io,
): Promise<TrialReport['beside']> {
  const plan = { ...free, way: 'couplets' };
  const some = Math.min(plants, MOST_BESIDE);
  const counted = await runTrial(plan, observers, some, ['trial'], io);
  const { way, observers: of, calibration, bound } = reportOf(plan, observers, some, counted);
  return { way, plants: some, observers: of, calibration, bound };
}

function tunedOf(key: Key, trials: Parameters<typeof outcomesOf>[1], base: string): Tuned {
  const all = outcomesOf(key.thresholds, trials);
  const judges = { base, careless: 'twice-the-slips', leftOut: 'not-in-the-key' };
  return {
    suggestions: LEFT_OUT_LIMITS.map((limit) => {
      const best = bestOf(all, key.thresholds, judges, limit);
      return {
        leftOutSettledAtMost: limit,
        thresholds: best?.rules ?? null,
        observers: best === undefined ? [] : [...best.by].map(([id, outcome]) => ({ id, ...outcome })),
      };
    }),
  };
}

function numberOf(text: Given['text'], name: string, least: number, most: number): number | undefined {
  const given = text.get(name);
  if (given === undefined) return undefined;
  const value = Number(given);
  if (!/^\d+$/.test(given) || value < least || value > most)
    throw new UsageError(`--${name}: a whole number from ${least} to ${most}.`, 'trial');
  return value;
}

export const trial: Command = {
  name: 'trial',
  summary: 'tries a key on simulated plants and people, and tells how well it serves them',
  more: [
    'Plants are drawn from the traits of the key, as common as it says, with parts missing out of season. People read them as',
    'often wrong as the key says of each kind of observer, and in ways that it does not foresee: twice the slips, two states',
    'always taken for each other, all answers about one part wrong together, dwarfed plants, plants left out of the key, and',
    'one answer wrong in a run without another slip. The same seed gives the same figures. Ranges after a figure are intervals',
    'of 95 % (Wilson). --tune also tries other thresholds on the same people; it changes no file.',
  ],
  operands: [{ name: 'KEY', help: 'a key folder, or a bundle made of one' }],
  options: {
    observer: { type: 'string', value: 'WHO', help: "one of the key's kinds of observer, or all (when left out)" },
    plants: { type: 'string', value: 'N', help: `plants for each kind of observer; ${PLANTS} when left out` },
    seed: { type: 'string', value: 'N', help: 'where chance starts; 1 when left out' },
    month: { type: 'string', value: 'M', help: 'month of all visits, 1 to 12; drawn for each plant when left out' },
    way: { type: 'string', value: 'WAY', help: 'free or couplets; when left out free, with the couplets beside it' },
    tune: { type: 'boolean', help: 'suggests thresholds for key.json' },
    json: { type: 'boolean', help: 'prints every figure as JSON' },
  },
  run,
};
