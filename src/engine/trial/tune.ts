// Which thresholds would serve a key better, judged from the same simulated people.
import { rivalsOf } from '../telling.ts';
import type { VerdictRules } from '../verdict.ts';
import { runPlant } from './run.ts';
import { wilson } from './stats.ts';
import { type Case, type Stretch, Trial, type TrialSetup } from './trial.ts';
import type { Now } from './way.ts';
import { inTheWholeKey } from './without.ts';

/**
 * What is asked of a key (ours): shares of the settled, and of native plants. The last must hold at the upper end of its
 * interval, since errors are not equal: a few plants without an alarm prove nothing.
 */
const WANTED = { settledRight: 0.95, settledRightCareless: 0.9, nativesSettledAtMost: 0.01 };

const TRIED = {
  settled: [0.9, 0.92, 0.94, 0.95, 0.96, 0.97, 0.98, 0.99],
  nativesSettled: [0.002, 0.005, 0.01, 0.02, 0.05],
  telling: [1.5, 2, 3, 5],
  outside: [0.3, 0.4, 0.5, 0.6],
} as const;

/** All combinations of what is tried; the rest as the key has it. */
export function candidates(rules: VerdictRules): VerdictRules[] {
  return TRIED.settled.flatMap((settled) =>
    TRIED.nativesSettled.flatMap((nativesSettled) =>
      TRIED.telling.flatMap((telling) =>
        TRIED.outside.map((outside) => ({ ...rules, settled, nativesSettled, telling, outside })),
      ),
    ),
  );
}

const FIELDS = ['plants', 'natives', 'settled', 'settledRight', 'nativesSettled', 'questions'] as const;

/** By candidate, FIELDS one after the other: whole numbers, to be added up in any order. */
export type Trials = number[];

/**
 * Runs each plant on to the end of what is worth asking and looks back where each candidate would have stopped. Questions
 * are chosen as the key's own thresholds have it, so a suggestion is to be tried before it is taken.
 */
export function tryThresholds(setup: TrialSetup, { observer, from, count }: Stretch): Trials {
  const trial = new Trial(setup);
  const all = candidates(setup.rules);
  const counted: Trials = new Array<number>(all.length * FIELDS.length).fill(0);
  for (let i = from; i < from + count; i++) {
    const one = trial.draw(observer, i);
    const path = pathOf(setup, one);
    const native = setup.nature.matrix.spec.taxa[one.plant.taxon]?.native === true;
    all.forEach((rules, k) => {
      const end = path.findIndex((step) => step.outside >= rules.outside || mayBeSettled(step, rules));
      const step = path[end < 0 ? path.length - 1 : end] as Step;
      const settled = end >= 0 && step.outside < rules.outside;
      const add = (field: (typeof FIELDS)[number], by: number) => {
        const at = k * FIELDS.length + FIELDS.indexOf(field);
        counted[at] = (counted[at] as number) + by;
      };
      add('plants', 1);
      add('natives', native ? 1 : 0);
      add('settled', settled ? 1 : 0);
      add('settledRight', settled && step.lead === one.plant.taxon ? 1 : 0);
      add('nativesSettled', settled && native && step.ofConcern ? 1 : 0);
      add('questions', step.asked);
    });
  }
  return counted;
}

interface Step {
  readonly lead: number;
  readonly ofConcern: boolean;
  readonly weight: number;
  readonly natives: number;
  readonly outside: number;
  readonly asked: number;
  /** By TRIED.telling: whether every look-alike was put to the test. */
  readonly tested: readonly boolean[];
}

function pathOf({ way }: TrialSetup, { book, plant, readings, left }: Case): Step[] {
  const path: Step[] = [];
  const { matrix } = book;
  runPlant(
    book,
    way,
    plant.month,
    readings.said,
    () => false,
    ({ from, verdict, asked }: Now) => {
      let lead = 0;
      for (let t = 1; t < matrix.outside; t++) if ((from.p[t] as number) > (from.p[lead] as number)) lead = t;
      path.push({
        lead: inTheWholeKey(lead, left),
        ofConcern: matrix.spec.taxa[lead]?.concern === true,
        weight: from.p[lead] as number,
        natives: verdict.natives,
        outside: verdict.outside,
        asked: asked.size,
        tested: TRIED.telling.map((telling) =>
          rivalsOf(from, lead, telling).every((rival) => rival.told.length >= rival.needs),
        ),
      });
    },
  );
  return path;
}

const mayBeSettled = (step: Step, rules: VerdictRules): boolean =>
  step.weight >= rules.settled &&
  !(step.ofConcern && step.natives >= rules.nativesSettled) &&
  step.tested[(TRIED.telling as readonly number[]).indexOf(rules.telling)] === true;

export interface Outcome {
  /** Of all plants; of the settled (undefined when none is); of native plants. */
  readonly settled: number;
  readonly settledRight: number | undefined;
  readonly nativesSettled: number;
  /** The upper end of the last one's interval: what it may be, for all that so many plants can tell. */
  readonly nativesSettledAtMost: number;
  /** Mean questions asked. */
  readonly questions: number;
}

/** One set of thresholds, and what came of it by observer. */
export interface Candidate {
  readonly rules: VerdictRules;
  readonly by: ReadonlyMap<string, Outcome>;
}

export function outcomesOf(rules: VerdictRules, tried: ReadonlyMap<string, Trials>): Candidate[] {
  return candidates(rules).map((candidate, k) => {
    const outcome = (counted: Trials): Outcome => {
      const of = (field: (typeof FIELDS)[number]) => counted[k * FIELDS.length + FIELDS.indexOf(field)] as number;
      const share = (field: (typeof FIELDS)[number], all: (typeof FIELDS)[number]) =>
        of(all) > 0 ? of(field) / of(all) : 0;
      return {
        settled: share('settled', 'plants'),
        settledRight: of('settled') > 0 ? share('settledRight', 'settled') : undefined,
        nativesSettled: share('nativesSettled', 'natives'),
        nativesSettledAtMost: wilson(of('nativesSettled'), of('natives'))[1],
        questions: share('questions', 'plants'),
      };
    };
    return { rules: candidate, by: new Map([...tried].map(([id, counted]) => [id, outcome(counted)])) };
  });
}

/** Whose outcomes are looked at: the observer the key is made for, one with more slips, and plants left out of it. */
export interface Judges {
  readonly base: string;
  readonly careless: string;
  readonly leftOut: string;
}

/**
 * Of the candidates that keep what is WANTED, and settle at most `leftOut` of the plants that are not in the key, the one
 * that settles most plants right; of equals the one that asks least, then the one nearest to the key's own thresholds.
 * Undefined when none keeps it all.
 */
export function bestOf(
  all: readonly Candidate[],
  own: VerdictRules,
  { base, careless, leftOut }: Judges,
  limit: number,
): Candidate | undefined {
  const keeps = ({ by }: Candidate) =>
    (by.get(base)?.settledRight ?? 1) >= WANTED.settledRight &&
    (by.get(careless)?.settledRight ?? 1) >= WANTED.settledRightCareless &&
    (by.get(leftOut)?.settled ?? 0) <= limit &&
    [...by].every(([id, one]) => id === leftOut || one.nativesSettledAtMost < WANTED.nativesSettledAtMost);
  const right = ({ by }: Candidate) => (by.get(base)?.settled ?? 0) * (by.get(base)?.settledRight ?? 0);
  const asked = ({ by }: Candidate) => by.get(base)?.questions ?? 0;
  const changed = ({ rules }: Candidate) =>
    (Object.keys(own) as (keyof VerdictRules)[]).reduce(
      (sum, name) => sum + Math.abs(Math.log(rules[name] / own[name])),
      0,
    );
  return all.filter(keeps).sort((a, b) => right(b) - right(a) || asked(a) - asked(b) || changed(a) - changed(b))[0];
}
