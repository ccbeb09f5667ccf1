// Was it right, and what should have been looked at.
import { type Character, type KeyAnswer, type PreparedKey, spreadOf, toCanonical } from '../../key/index.ts';
import { shownBy } from '../specimen/specimen.ts';
import type { Attempt, Feedback, ItemId, Reply, Task } from '../types.ts';
import { type Deciding, decidingOf } from './telling.ts';

/** What a person says who cannot tell. */
export const UNSURE = 'unsure';
/** The verdict of a run: none of the key's plants. */
export const OUTSIDE = 'outside';

/** How far a size read by eye may lie beyond what the plant shows: a factor (ours, as the key's eye is). */
const EYE = 1.25;

export function judge(prepared: PreparedKey, task: Task, reply: Reply): Feedback {
  const { said } = reply;
  const right = said === task.truth;
  const shows = task.kind === 'cover' ? new Map<string, string>() : shownBy(prepared.key, task.specimen);
  const decided = decidedIn(prepared, task, said, shows);
  const wrong = task.kind === 'run' ? firstWrong(prepared, task, reply.trail ?? [], shows) : undefined;
  return { right, said, truth: task.truth, ...(decided ? { decided } : {}), ...(wrong ? { wrong } : {}) };
}

function decidedIn(
  prepared: PreparedKey,
  task: Task,
  said: string,
  shows: ReadonlyMap<string, string>,
): Deciding | undefined {
  const { taxon } = task.specimen;
  if (task.kind === 'read' && task.character !== undefined)
    return {
      character: task.character,
      shown: task.truth,
      ...(said === task.truth || said === UNSURE ? {} : { instead: said }),
    };
  if (task.kind === 'cover') return undefined;
  const other = rivalIn(prepared, task, said);
  return other === undefined ? undefined : decidingOf(prepared, shows, taxon, other);
}

/** The plant that the specimen is to be told from: the one that was said, else the likeliest of the others. */
export function rivalIn({ key, taxonIndex }: PreparedKey, task: Task, said: string): string | undefined {
  const { taxon } = task.specimen;
  if (said !== taxon && taxonIndex.has(said)) return said;
  const offered = task.options.find((one) => one !== taxon && taxonIndex.has(one));
  if (offered !== undefined) return offered;
  const status = key.taxa[taxonIndex.get(taxon) ?? -1]?.status;
  const rivals = key.lookalikes.flatMap(({ taxa: [a, b] }) => (a === taxon ? [b] : b === taxon ? [a] : []));
  // Of the look-alikes one of the other standing first: that is the mistake that costs most.
  return rivals.find((id) => key.taxa[taxonIndex.get(id) ?? -1]?.status !== status) ?? rivals[0];
}

/** Whether an answer agrees with what the specimen shows; undefined: it says nothing, or nothing can be seen. */
export function bearsOut(
  prepared: PreparedKey,
  taxon: string,
  shows: ReadonlyMap<string, string>,
  answer: KeyAnswer,
): boolean | undefined {
  if ('skipped' in answer) return undefined;
  const shown = shows.get(answer.character);
  const character = prepared.key.characters[prepared.characterIndex.get(answer.character) ?? -1];
  if (character === undefined) return undefined;
  if ('states' in answer) return shown !== undefined && answer.states.includes(shown);
  return shown !== undefined && sizeFits(prepared, taxon, character, shown, answer);
}

function sizeFits(
  prepared: PreparedKey,
  taxon: string,
  character: Character,
  shown: string,
  answer: Extract<KeyAnswer, { value: number }>,
): boolean {
  const value = toCanonical(answer.value, answer.unit, character.unit ?? 'count');
  const state = character.states.find(({ id }) => id === shown);
  if (state && value >= (state.from ?? 0) / EYE && value < (state.to ?? Number.POSITIVE_INFINITY) * EYE) return true;
  const trait = prepared.key.taxa[prepared.taxonIndex.get(taxon) ?? -1]?.traits.get(character.id);
  if (trait?.kind !== 'range') return false;
  const { low, high, min = low, max = high } = spreadOf(trait.range, character.unit);
  return value >= min / EYE && value <= max * EYE;
}

function firstWrong(
  prepared: PreparedKey,
  task: Task,
  trail: readonly KeyAnswer[],
  shows: ReadonlyMap<string, string>,
): Feedback['wrong'] {
  const step = trail.findIndex((answer) => bearsOut(prepared, task.specimen.taxon, shows, answer) === false);
  const answer = trail[step];
  if (answer === undefined || 'skipped' in answer) return undefined;
  const shown = shows.get(answer.character);
  return {
    step,
    character: answer.character,
    said: 'states' in answer ? answer.states : [],
    ...(shown === undefined ? {} : { shown }),
  };
}

/** What an attempt says of one item. */
export interface Touched {
  readonly item: ItemId;
  readonly right: boolean;
}

export const pairItem = (a: string, b: string): ItemId => `pair:${[a, b].sort().join('+')}`;

/**
 * The items that an attempt teaches of: the one it was asked for, and where it went wrong the plant, the pair that was
 * mixed up, and what was misread. A run teaches of every character that was answered.
 */
export function itemsTouched(prepared: PreparedKey, attempt: Attempt): Touched[] {
  const { kind, item, specimen, said, right } = attempt;
  const { taxon } = specimen;
  const touched = new Map<ItemId, boolean>([[item, right]]);
  const add = (other: ItemId, good: boolean) => touched.set(other, (touched.get(other) ?? true) && good);
  if (kind === 'cover' || kind === 'read' || !prepared.taxonIndex.has(taxon))
    return [...touched].map(([one, good]) => ({ item: one, right: good }));
  if (!right) add(`taxon:${taxon}`, false);
  if (!right && said !== taxon && prepared.taxonIndex.has(said)) add(pairItem(taxon, said), false);
  if (kind === 'run') {
    const shows = shownBy(prepared.key, specimen);
    for (const answer of attempt.trail ?? []) {
      const good = bearsOut(prepared, taxon, shows, answer);
      if (good !== undefined) add(`character:${answer.character}`, good);
    }
  }
  return [...touched].map(([one, good]) => ({ item: one, right: good }));
}

/** Whether a native was called an invasive: the mistake that costs a bank its plants. */
export function isAlarm({ key, taxonIndex }: PreparedKey, { kind, specimen, said }: Attempt): boolean {
  const status = (id: string) => key.taxa[taxonIndex.get(id) ?? -1]?.status;
  if (kind === 'cover' || kind === 'read' || status(specimen.taxon) !== 'native') return false;
  return kind === 'standing' ? said === 'invasive' : status(said) === 'invasive';
}
