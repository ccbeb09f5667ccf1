// What a trial counts. Everything is a whole number, so tallies of any parts of a trial add up to the same in any order.
import { type Forecasts, noForecasts } from './forecasts.ts';
import { LIMIT } from './run.ts';

const COUNTS = [
  'plants',
  /** Plants of native taxa. */
  'natives',
  'settled',
  'leaning',
  'open',
  'outside',
  /** The likeliest taxon is the plant's own; it is among the likeliest two. */
  'topOne',
  'topTwo',
  /** No taxon is likelier than the plant's own, alone or beside others. */
  'notBeaten',
  'settledRight',
  'leaningRight',
  /** Native plants called one of concern, settled or leaning to it. */
  'nativesSettled',
  'nativesLeaning',
  /** Plants with one answer made wrong, and whether it stood first, or first or second, among the second looks. */
  'injected',
  'injectedFirst',
  'injectedAmongTwo',
  /** Those of them in which what was said is never seen on that plant, and again how many stood among two. */
  'stark',
  'starkAmongTwo',
] as const;
export type Count = (typeof COUNTS)[number];

/** Fields of one character, one after the other in `characters`. */
export const CHARACTER_FIELDS = ['asked', 'cannotTell', 'right', 'rightLost', 'wrong', 'wrongLost'] as const;
export type CharacterField = (typeof CHARACTER_FIELDS)[number];

export interface Tally {
  readonly counts: Record<Count, number>;
  /** How many plants took 0, 1, 2 ... questions, and gave as many answers; the same of those that were settled. */
  readonly asked: number[];
  readonly answered: number[];
  readonly askedToSettled: number[];
  readonly answeredToSettled: number[];
  /** The likeliest taxon's probability at the end, and after every question, with whether it was the right one. */
  readonly atTheEnd: Forecasts;
  readonly alongTheWay: Forecasts;
  /** By character: see CHARACTER_FIELDS; lost: the likeliest taxon at the end is not the plant's own. */
  readonly characters: number[];
  /** T x T, [own taxon x T + other]: how often the plant ended with another taxon likeliest; how often settled as it. */
  readonly takenFor: number[];
  readonly settledAs: number[];
  readonly plantsOf: number[];
}

export function noTally(taxa: number, characters: number): Tally {
  const zeros = (n: number) => new Array<number>(n).fill(0);
  return {
    counts: Object.fromEntries(COUNTS.map((name) => [name, 0])) as Record<Count, number>,
    asked: zeros(LIMIT + 1),
    answered: zeros(LIMIT + 1),
    askedToSettled: zeros(LIMIT + 1),
    answeredToSettled: zeros(LIMIT + 1),
    atTheEnd: noForecasts(),
    alongTheWay: noForecasts(),
    characters: zeros(characters * CHARACTER_FIELDS.length),
    takenFor: zeros(taxa * taxa),
    settledAs: zeros(taxa * taxa),
    plantsOf: zeros(taxa),
  };
}

/** Adds what another part of the trial counted; both must be of the same key. */
export function merge(into: Tally, from: Tally): Tally {
  for (const name of COUNTS) into.counts[name] += from.counts[name];
  for (const name of Object.keys(into) as (keyof Tally)[]) {
    if (name === 'counts') continue;
    const [list, more] = [into[name], from[name]];
    for (let i = 0; i < list.length; i++) list[i] = (list[i] as number) + (more[i] as number);
  }
  return into;
}

export function bump(list: number[], at: number): void {
  list[at] = (list[at] as number) + 1;
}

export const bumpCharacter = (tally: Tally, character: number, field: CharacterField): void =>
  bump(tally.characters, character * CHARACTER_FIELDS.length + CHARACTER_FIELDS.indexOf(field));

export const characterCount = (tally: Tally, character: number, field: CharacterField): number =>
  tally.characters[character * CHARACTER_FIELDS.length + CHARACTER_FIELDS.indexOf(field)] as number;
