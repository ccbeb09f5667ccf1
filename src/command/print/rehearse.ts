// What simulated learners came to, for people who read a terminal.
import type { LearnerRun, MemoryModel, Rehearsal } from '../../practice/simulate/index.ts';
import { count, percent, table } from './table.ts';

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Standard normal quantile of 97.5 %. */
const Z95 = 1.959963984540054;

/** Mean of the ratios of pairs, and its 95 % interval by their standard error; pairs with a missing one are left out. */
function ratio(
  ours: readonly LearnerRun[],
  random: readonly LearnerRun[],
  of: (run: LearnerRun) => number | undefined,
): string {
  const ratios = ours.flatMap((run, i) => {
    const [a, b] = [of(run), random[i] && of(random[i])];
    return a === undefined || b === undefined || b === 0 ? [] : [a / b];
  });
  if (ratios.length === 0) return '-';
  const middle = mean(ratios);
  if (ratios.length === 1) return middle.toFixed(2);
  const spread = Math.sqrt(ratios.reduce((sum, one) => sum + (one - middle) ** 2, 0) / (ratios.length - 1));
  const half = (Z95 * spread) / Math.sqrt(ratios.length);
  return `${middle.toFixed(2)} (${(middle - half).toFixed(2)} to ${(middle + half).toFixed(2)})`;
}

/** Tasks until the pass mark; how many never reached it is said. */
function tasks(runs: readonly LearnerRun[]): string {
  const reached = runs.flatMap(({ tasks: n }) => n ?? []);
  const never = runs.length - reached.length;
  const told = reached.length === 0 ? '-' : String(Math.round(mean(reached)));
  return never === 0 ? told : `${told}, ${never} never`;
}

export function rehearsalReport(
  results: readonly (Rehearsal & { readonly memory: MemoryModel })[],
  { learners, days, seed }: { readonly learners: number; readonly days: number; readonly seed: number },
): string {
  const rows = results.map(({ course, memory, ours, random }) => [
    course,
    memory,
    tasks(ours),
    tasks(random),
    ratio(ours, random, ({ tasks: n }) => n),
    percent(mean(ours.map(({ later }) => later))),
    percent(mean(random.map(({ later }) => later))),
    ratio(ours, random, ({ later }) => later),
    percent(mean(ours.map(({ alarms }) => alarms))),
    percent(mean(random.map(({ alarms }) => alarms))),
  ]);
  const head = [
    'course',
    'memory',
    'tasks: ours',
    'random',
    'ratio',
    'kept 30 days: ours',
    'random',
    'ratio',
    'alarms: ours',
    'random',
  ];
  return `${[
    `${count(learners, 'learner')} each, ${count(days, 'day')}, seed ${seed}. Tasks: until 9 in 10 fresh specimens would be named rightly.`,
    'Ratios are ours over random, with 95 %. Alarms: natives taken for an invasive, after the 30 days.',
    '',
    ...table([head, ...rows]),
  ].join('\n')}\n`;
}
