// From what was counted to what is reported.
import { BINS, groupsOf } from './forecasts.ts';
import { type Calibration, calibrationOf, type ForecastGroup, type Share, shareOf } from './stats.ts';
import { CHARACTER_FIELDS, characterCount, type Tally } from './tally.ts';

export interface Spread {
  readonly mean: number;
  readonly median: number;
  readonly p95: number;
}

export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly n: number;
  /** Mean forecast and share that came true; undefined in an empty bin. */
  readonly predicted: number | undefined;
  readonly observed: number | undefined;
}

export type Calibrated = Partial<Calibration> & { readonly bins: readonly Bin[] };

/** What one character's misreadings did. */
export interface SlipFigures {
  readonly character: number;
  readonly asked: number;
  readonly cannotTell: number;
  readonly misread: number;
  /** Share of plants whose own taxon did not come out first, where this was misread and where it was read right. */
  readonly lostWhenMisread: number;
  readonly lostWhenRight: number;
  /** Of 1,000 plants, how many more were lost than if this had always been read right. */
  readonly hurt: number;
}

export interface PairFigures {
  readonly taxon: number;
  readonly takenFor: number;
  /** Plants of the taxon, how many ended with the other one likeliest, and how many were settled as it. */
  readonly plants: number;
  readonly count: number;
  readonly settled: number;
}

export interface Figures {
  readonly plants: number;
  readonly natives: number;
  readonly topOne: Share;
  readonly topTwo: Share;
  /** Of all plants. */
  readonly settled: Share;
  readonly leaning: Share;
  readonly open: Share;
  readonly outside: Share;
  /** Of the settled, and of the leaning: named right. */
  readonly settledRight: Share;
  readonly leaningRight: Share;
  /** Of all plants. */
  readonly settledWrong: Share;
  readonly leaningWrong: Share;
  /** Of native plants. */
  readonly nativesSettledAsInvasive: Share;
  readonly nativesLeaningToInvasive: Share;
  readonly questions: Spread;
  readonly answers: Spread;
  /** Undefined while nothing was settled. */
  readonly questionsToSettled: Spread | undefined;
  readonly answersToSettled: Spread | undefined;
  readonly atTheEnd: Calibrated;
  readonly alongTheWay: Calibrated;
  readonly slips: readonly SlipFigures[];
  readonly pairs: readonly PairFigures[];
}

export function figuresOf(tally: Tally): Figures {
  const { counts } = tally;
  const { plants, natives } = counts;
  return {
    plants,
    natives,
    topOne: shareOf(counts.topOne, plants),
    topTwo: shareOf(counts.topTwo, plants),
    settled: shareOf(counts.settled, plants),
    leaning: shareOf(counts.leaning, plants),
    open: shareOf(counts.open, plants),
    outside: shareOf(counts.outside, plants),
    settledRight: shareOf(counts.settledRight, counts.settled),
    leaningRight: shareOf(counts.leaningRight, counts.leaning),
    settledWrong: shareOf(counts.settled - counts.settledRight, plants),
    leaningWrong: shareOf(counts.leaning - counts.leaningRight, plants),
    nativesSettledAsInvasive: shareOf(counts.nativesSettled, natives),
    nativesLeaningToInvasive: shareOf(counts.nativesLeaning, natives),
    questions: spreadOf(tally.asked) ?? { mean: 0, median: 0, p95: 0 },
    answers: spreadOf(tally.answered) ?? { mean: 0, median: 0, p95: 0 },
    questionsToSettled: spreadOf(tally.askedToSettled),
    answersToSettled: spreadOf(tally.answeredToSettled),
    atTheEnd: calibrated(groupsOf(tally.atTheEnd)),
    alongTheWay: calibrated(groupsOf(tally.alongTheWay)),
    slips: slipsOf(tally),
    pairs: pairsOf(tally),
  };
}

/** `counts[k]` is how many took k. The median and the 95th percentile are the least k that so many do not exceed. */
export function spreadOf(counts: readonly number[]): Spread | undefined {
  const n = counts.reduce((a, b) => a + b, 0);
  if (n === 0) return undefined;
  const upTo = (share: number) => {
    let seen = 0;
    return counts.findIndex((count) => {
      seen += count;
      return seen >= share * n;
    });
  };
  return { mean: counts.reduce((sum, count, k) => sum + count * k, 0) / n, median: upTo(0.5), p95: upTo(0.95) };
}

export function calibrated(groups: readonly ForecastGroup[]): Calibrated {
  const bins = groups.map(({ n, sum, hits }, i) => ({
    from: i / BINS,
    to: (i + 1) / BINS,
    n,
    predicted: n > 0 ? sum / n : undefined,
    observed: n > 0 ? hits / n : undefined,
  }));
  return { ...calibrationOf(groups), bins };
}

/** Most hurtful first; characters never misread are left out. */
function slipsOf(tally: Tally): SlipFigures[] {
  const { plants } = tally.counts;
  const share = (count: number, of: number) => (of > 0 ? count / of : 0);
  return Array.from({ length: tally.characters.length / CHARACTER_FIELDS.length }, (_, character) => {
    const of = (field: Parameters<typeof characterCount>[2]) => characterCount(tally, character, field);
    const lostWhenMisread = share(of('wrongLost'), of('wrong'));
    const lostWhenRight = share(of('rightLost'), of('right'));
    return {
      character,
      asked: of('asked'),
      cannotTell: of('cannotTell'),
      misread: of('wrong'),
      lostWhenMisread,
      lostWhenRight,
      hurt: plants > 0 ? ((lostWhenMisread - lostWhenRight) * of('wrong') * 1000) / plants : 0,
    };
  })
    .filter(({ misread }) => misread > 0)
    .sort((a, b) => b.hurt - a.hurt || a.character - b.character);
}

/** Most frequent confusion first. */
function pairsOf({ takenFor, settledAs, plantsOf }: Tally): PairFigures[] {
  const T = plantsOf.length;
  return takenFor
    .map((count, i) => ({
      taxon: Math.floor(i / T),
      takenFor: i % T,
      plants: plantsOf[Math.floor(i / T)] as number,
      count,
      settled: settledAs[i] as number,
    }))
    .filter(({ count, settled }) => count > 0 || settled > 0)
    .sort((a, b) => b.count - a.count || a.taxon - b.taxon || a.takenFor - b.takenFor);
}
