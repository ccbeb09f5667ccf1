// A trial: many simulated people, each before one simulated plant, asked to the end.
import { GainTable } from '../gain.ts';
import { secondLooks } from '../second-look.ts';
import type { TaxonSpec } from '../spec.ts';
import { rank, type VerdictRules } from '../verdict.ts';
import { Book } from './book.ts';
import { addForecast } from './forecasts.ts';
import type { Nature } from './nature.ts';
import { type Observer, type Readings, readPlant, slipTables } from './observers.ts';
import { type OneWrong, withOneWrong } from './one-wrong.ts';
import { drawPlant, NOTHING, type Plant } from './plants.ts';
import { Random } from './random.ts';
import { type Run, runPlant } from './run.ts';
import { bump, bumpCharacter, noTally, type Tally } from './tally.ts';
import type { Way } from './way.ts';
import { inTheWholeKey, without } from './without.ts';

export interface TrialSetup {
  readonly nature: Nature;
  readonly rules: VerdictRules;
  readonly way: Way;
  readonly seed: number;
  /** 1 to 12; drawn anew for each plant when left out. */
  readonly month?: number;
}

/** Part of a trial: `count` plants of one observer, numbered from `from`. */
export interface Stretch {
  readonly observer: Observer;
  readonly from: number;
  readonly count: number;
}

/** One plant, how it was read, and by which key it is looked up. */
export interface Case {
  readonly plant: Plant;
  readonly readings: Readings;
  readonly book: Book;
  /** The taxon that the key lacks. */
  readonly left?: number;
  readonly oneWrong?: OneWrong;
}

/**
 * Plant number i of a trial is the same whatever ran before or beside it: its draws follow from the seed and i alone.
 * Taxa are met as often as the key's weights say; where one is left out of the key, each in turn.
 */
export class Trial {
  readonly setup: TrialSetup;
  readonly #tables: ReturnType<typeof slipTables>;
  readonly #weights: readonly number[];
  readonly #books = new Map<string, Book>();

  constructor(setup: TrialSetup) {
    this.setup = setup;
    const { spec } = setup.nature.matrix;
    this.#tables = slipTables(spec.characters);
    this.#weights = spec.taxa.map(({ weight }) => weight);
  }

  /** Runs a stretch and counts what comes of it. */
  play({ observer, from, count }: Stretch): Tally {
    const { taxa, characters } = this.setup.nature.matrix.spec;
    const tally = noTally(taxa.length, characters.length);
    for (let i = from; i < from + count; i++) this.#one(this.draw(observer, i), tally);
    return tally;
  }

  draw(observer: Observer, i: number): Case {
    const { nature, seed, way } = this.setup;
    const random = new Random(seed, i, 1);
    const drawn = random.pick(this.#weights);
    const taxon = observer.leftOut ? i % this.#weights.length : drawn;
    const month = random.below(12) + 1;
    const plant = drawPlant(nature, taxon, this.setup.month ?? month, random, observer.size);
    const left = observer.leftOut ? taxon : undefined;
    const book = this.#book(observer.told, left);
    const reading = new Random(seed, i, 2);
    if (observer.slips === 'one') {
      const clean = { said: plant.shows, wrong: plant.shows.map(() => false) };
      const oneWrong = withOneWrong(nature, this.#tables, plant, book, way, reading);
      return { plant, book, readings: oneWrong?.readings ?? clean, ...(oneWrong ? { oneWrong } : {}) };
    }
    const readings = readPlant(nature, this.#tables, plant, observer, reading);
    return { plant, readings, book, ...(left === undefined ? {} : { left }) };
  }

  #one(one: Case, tally: Tally): void {
    const { plant, readings, book, left } = one;
    const own = (t: number | undefined) => t !== undefined && left === undefined && t === plant.taxon;
    const run = runPlant(book, this.setup.way, plant.month, readings.said, undefined, ({ from, asked }) => {
      if (asked.size === 0) return;
      const first = likeliest(from.p, book.matrix.outside);
      addForecast(tally.alongTheWay, from.p[first] as number, own(first));
    });
    const [first, second] = rank(book.matrix, run.from.p);
    if (own(first) || own(second)) tally.counts.topTwo++;
    countVerdict(this.setup.nature.matrix.spec.taxa, one, run, first as number, tally);
    countQuestions(one, run, !own(first), tally);
    if (one.oneWrong) countSecondLook(this.setup.nature, one, one.oneWrong, run, tally);
  }

  #book(told: number, left: number | undefined): Book {
    const name = `${told} ${left ?? ''}`;
    const made = this.#books.get(name);
    if (made) return made;
    const { nature, rules } = this.setup;
    const matrix = left === undefined ? nature.matrix : without(nature.matrix, left);
    const book = new Book(matrix, new GainTable(matrix), rules, told);
    this.#books.set(name, book);
    return book;
  }
}

/** The taxon that holds most; the first of several. */
function likeliest(p: Float64Array, outside: number): number {
  let best = 0;
  for (let t = 1; t < outside; t++) if ((p[t] as number) > (p[best] as number)) best = t;
  return best;
}

/** `first` is the likeliest taxon at the end, by its index in the case's own key. */
function countVerdict(
  taxa: readonly TaxonSpec[],
  { plant, left }: Case,
  { verdict, from }: Run,
  first: number,
  { counts, takenFor, settledAs, plantsOf, atTheEnd }: Tally,
): void {
  const own = plant.taxon;
  const other = inTheWholeKey(first, left);
  const right = other === own;
  const weight = from.p[first] as number;
  const asInvasive = taxa[own]?.native === true && taxa[other]?.concern === true;
  counts.plants++;
  counts[verdict.kind]++;
  bump(plantsOf, own);
  addForecast(atTheEnd, weight, right);
  if (taxa[own]?.native === true) counts.natives++;
  if (right) counts.topOne++;
  else bump(takenFor, own * taxa.length + other);
  if (left === undefined && (from.p[own] as number) >= weight - TIE) counts.notBeaten++;
  if (verdict.kind === 'settled') {
    if (right) counts.settledRight++;
    else bump(settledAs, own * taxa.length + other);
    if (asInvasive) counts.nativesSettled++;
  }
  if (verdict.kind === 'leaning') {
    if (right) counts.leaningRight++;
    if (asInvasive) counts.nativesLeaning++;
  }
}

function countQuestions({ readings }: Case, { asked, from, verdict }: Run, lost: boolean, tally: Tally): void {
  const answered = from.evidence.length;
  bump(tally.asked, asked.length);
  bump(tally.answered, answered);
  if (verdict.kind === 'settled') {
    bump(tally.askedToSettled, asked.length);
    bump(tally.answeredToSettled, answered);
  }
  for (const c of new Set(asked)) {
    bumpCharacter(tally, c, 'asked');
    if (readings.said[c] === NOTHING) bumpCharacter(tally, c, 'cannotTell');
    else {
      const how = readings.wrong[c] ? 'wrong' : 'right';
      bumpCharacter(tally, c, how);
      if (lost) bumpCharacter(tally, c, `${how}Lost`);
    }
  }
}

/** Probabilities this close are the same. */
const TIE = 1e-9;
/** What a plant shows less often than this, it does not show (ours). */
const NEVER = 0.02;

function countSecondLook(
  { matrix }: Nature,
  { plant, readings }: Case,
  { character }: OneWrong,
  { from }: Run,
  { counts }: Tally,
): void {
  const place = secondLooks(from).findIndex((look) => look.character === character);
  const row = (matrix.firstRow[character] as number) + (readings.said[character] as number);
  const stark = (matrix.truth[row * matrix.hypotheses + plant.taxon] as number) < NEVER;
  const amongTwo = place === 0 || place === 1;
  counts.injected++;
  if (place === 0) counts.injectedFirst++;
  if (amongTwo) counts.injectedAmongTwo++;
  if (stark) counts.stark++;
  if (stark && amongTwo) counts.starkAmongTwo++;
}
