// What a trial reports, by the key's own ids: the shape of its JSON. Names are read by other programs: add, never rename.
import {
  Book,
  boundOf,
  type Calibrated,
  calibrated,
  type Figures,
  figuresOf,
  groupsOf,
  type Observer,
  type Share,
  shareOf,
  type Tally,
  together,
} from '../../engine/trial/index.ts';
import { type Character, type PreparedKey, prepareKey, type Taxon } from '../../key/index.ts';
import type { Counted } from './crew.ts';
import type { Plan } from './helper.ts';
import { natureOf } from './nature.ts';

export interface ObserverReport extends Omit<Figures, 'slips' | 'pairs'> {
  readonly id: string;
  /** True where the engine's own assumptions hold. */
  readonly assumed: boolean;
  /** Multiples of a novice's slips: those that were made, and those that the key was told of. */
  readonly slipsMade: number;
  readonly slipsTold: number;
  readonly slips: readonly (Omit<Figures['slips'][number], 'character'> & { readonly character: string })[];
  readonly pairs: readonly (Omit<Figures['pairs'][number], 'taxon' | 'takenFor'> & {
    readonly taxon: string;
    readonly takenFor: string;
  })[];
  /** Where one answer was made wrong: how it is ranked among the second looks, of all and of those never seen so. */
  readonly secondLook?: { readonly first: Share; readonly amongTwo: Share; readonly starkAmongTwo: Share };
}

export interface TrialReport {
  readonly key: { readonly id: string; readonly version: string };
  readonly way: string;
  readonly seed: number;
  /** null: a month was drawn for each plant. */
  readonly month: number | null;
  readonly plants: number;
  readonly observers: readonly ObserverReport[];
  /** Plants of the key read by the first observer, and as many others as the key expects. */
  readonly calibration: {
    readonly outside: number;
    readonly atTheEnd: Calibrated;
    readonly alongTheWay: Calibrated;
  } | null;
  /** How few questions could do for the first observer, and how many times as many were asked until settled. */
  readonly bound: {
    readonly bits: number;
    readonly character: string;
    readonly capacity: number;
    readonly questions: number;
    readonly questionsOnce: number | null;
    readonly ratio: number | null;
    readonly ratioOnce: number | null;
  };
  /** The same trial by the couplets, where no way was named and the key has couplets. */
  readonly beside: WayReport | null;
}

/** What one way through the key came to. */
export type WayReport = Pick<TrialReport, 'way' | 'plants' | 'observers' | 'calibration' | 'bound'>;

export function reportOf(
  plan: Plan,
  observers: readonly Observer[],
  plants: number,
  { tallies }: Pick<Counted, 'tallies'>,
): Omit<TrialReport, 'beside'> {
  const prepared = prepareKey(plan.key);
  const reports = observers.flatMap((observer) => {
    const tally = tallies.get(observer.id);
    return tally === undefined ? [] : [observerReport(prepared, observer, tally)];
  });
  return {
    key: { id: plan.key.id, version: plan.key.version },
    way: plan.way,
    seed: plan.seed,
    month: plan.month ?? null,
    plants,
    observers: reports,
    calibration: mixed(prepared, observers, tallies),
    bound: bound(prepared, observers[0], reports[0]),
  };
}

function observerReport({ key }: PreparedKey, observer: Observer, tally: Tally): ObserverReport {
  const { slips, pairs, ...figures } = figuresOf(tally);
  const { counts } = tally;
  const taxon = (t: number) => (key.taxa[t] as Taxon).id;
  return {
    id: observer.id,
    assumed: observer.assumed,
    slipsMade: observer.slips === 'one' ? 0 : observer.times,
    slipsTold: observer.told,
    ...figures,
    slips: slips.map((one) => ({ ...one, character: (key.characters[one.character] as Character).id })),
    pairs: pairs.map((pair) => ({ ...pair, taxon: taxon(pair.taxon), takenFor: taxon(pair.takenFor) })),
    ...(observer.slips === 'one'
      ? {
          secondLook: {
            first: shareOf(counts.injectedFirst, counts.injected),
            amongTwo: shareOf(counts.injectedAmongTwo, counts.injected),
            starkAmongTwo: shareOf(counts.starkAmongTwo, counts.stark),
          },
        }
      : {}),
  };
}

/** As the key is met: the share of plants outside it that it expects, each taxon being left out in turn. */
function mixed(
  { key }: PreparedKey,
  observers: readonly Observer[],
  tallies: ReadonlyMap<string, Tally>,
): TrialReport['calibration'] {
  const inside = tallies.get(observers[0]?.id ?? '');
  const outside = tallies.get(observers.find(({ leftOut }) => leftOut)?.id ?? '');
  if (inside === undefined || outside === undefined) return null;
  const share = key.outsidePrior;
  const mix = (of: 'atTheEnd' | 'alongTheWay') =>
    calibrated(
      together(
        groupsOf(inside[of], (1 - share) / inside.counts.plants),
        groupsOf(outside[of], share / outside.counts.plants),
      ),
    );
  return { outside: share, atTheEnd: mix('atTheEnd'), alongTheWay: mix('alongTheWay') };
}

function bound(
  prepared: PreparedKey,
  observer: Observer | undefined,
  report: ObserverReport | undefined,
): TrialReport['bound'] {
  const { key, matrix, gains } = prepared;
  const book = new Book(matrix, gains, key.thresholds, observer?.told ?? 1);
  const { bits, best, capacity, questions, once } = boundOf(book, natureOf(prepared).tellable);
  const asked = report?.questionsToSettled?.mean;
  return {
    bits,
    character: (key.characters[best] as Character).id,
    capacity,
    questions,
    questionsOnce: once ?? null,
    ratio: asked === undefined ? null : asked / questions,
    ratioOnce: asked === undefined || once === undefined ? null : asked / once,
  };
}
