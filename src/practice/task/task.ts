// A task made from an item: the specimen, what can be said, and what is right.
import type { Random } from '../../engine/trial/random.ts';
import type { Course, TaskKind } from '../../key/courses/index.ts';
import type { Character, Month, PreparedKey } from '../../key/index.ts';
import { COVER_CLASSES } from '../../report/find/index.ts';
import { isTold, usualState } from '../judge/telling.ts';
import { shownBy } from '../specimen/specimen.ts';
import type { ItemId, Specimen, Task } from '../types.ts';
import { parseItem } from './items.ts';
import { nearest } from './near.ts';

/** Most plants that can be named in one task (ours). */
const NAMES = 4;
/** Most states of a character that can be read (ours). */
const STATES = 8;
/** How many specimens are tried before an item is let go (ours). */
const TRIES = 24;
const STANDINGS = ['native', 'introduced', 'invasive'];

/** Odd seeds are for practice, even ones for tests: no specimen is met in both. */
export const seedFor = (random: Random, test: boolean): number => 2 * random.below(2 ** 28) + (test ? 2 : 1);

/**
 * A fair task for an item, or undefined where none can be made: what is asked can be seen of the specimen, and nothing
 * else that can be said would be as right.
 */
export function taskOf(
  prepared: PreparedKey,
  course: Course,
  item: ItemId,
  kind: TaskKind,
  random: Random,
  test = false,
): Task | undefined {
  for (let n = 0; n < TRIES; n++) {
    const task = tryTask(prepared, course, item, kind, random, test);
    if (task !== undefined) return task;
  }
  return undefined;
}

function tryTask(
  prepared: PreparedKey,
  course: Course,
  item: ItemId,
  kind: TaskKind,
  random: Random,
  test: boolean,
): Task | undefined {
  const of = parseItem(item);
  const month = course.months[random.below(course.months.length)] as Month;
  const specimenOf = (taxon: string): Specimen => ({ taxon, month, seed: seedFor(random, test) });
  const pick = (ids: readonly string[]) => ids[random.below(ids.length)];
  if (of?.of === 'character' && kind === 'read') {
    const taxon = pick(course.taxa.filter((id) => prepared.taxonIndex.has(id)));
    return taxon === undefined ? undefined : reading(prepared, course, item, of.character, specimenOf(taxon));
  }
  if (of?.of === 'pair' && kind === 'pair') {
    const truth = of.pair[random.below(2)] as string;
    return choosing(prepared, item, kind, specimenOf(truth), of.pair);
  }
  if (of?.of === 'cover' && kind === 'cover') {
    const taxon = pick(course.taxa);
    return taxon === undefined
      ? undefined
      : { kind, item, specimen: specimenOf(taxon), truth: of.cover, options: COVER_CLASSES.map(String) };
  }
  if (of?.of !== 'taxon' || !prepared.taxonIndex.has(of.taxon)) return undefined;
  const specimen = specimenOf(of.taxon);
  const near = nearest(prepared, of.taxon, course.taxa);
  if (kind === 'name') return choosing(prepared, item, kind, specimen, [of.taxon, ...near], NAMES);
  if (kind === 'run') return { kind, item, specimen, options: [], truth: of.taxon };
  if (kind !== 'standing') return undefined;
  const { key, taxonIndex } = prepared;
  const statusOf = (id: string) => key.taxa[taxonIndex.get(id) as number]?.status as string;
  const truth = statusOf(of.taxon);
  const shows = shownBy(key, specimen);
  const others = near.filter((id) => statusOf(id) !== truth);
  // A specimen that might as well be a plant of another standing cannot be asked for its own.
  if (others.some((id) => !isTold(prepared, shows, of.taxon, id))) return undefined;
  const met = new Set(course.taxa.filter((id) => taxonIndex.has(id)).map(statusOf));
  return { kind, item, specimen, truth, options: STANDINGS.filter((one) => met.has(one)) };
}

function reading(
  prepared: PreparedKey,
  course: Course,
  item: ItemId,
  id: string,
  specimen: Specimen,
): Task | undefined {
  const truth = shownBy(prepared.key, specimen).get(id);
  const character = prepared.key.characters[prepared.characterIndex.get(id) ?? -1];
  if (truth === undefined || character === undefined) return undefined;
  return { kind: 'read', item, specimen, character: id, truth, options: readable(prepared, course, character, truth) };
}

/**
 * What can be said of a character: all its states where they are few; else what is right, what beginners take it for and
 * what plants of the course show most, in the key's order.
 */
function readable(prepared: PreparedKey, course: Course, { id, states, mixups }: Character, truth: string): string[] {
  if (states.length <= STATES) return states.map((state) => state.id);
  const mixed = mixups.flatMap(({ states: [a, b] }) => (a === truth ? [b] : b === truth ? [a] : []));
  const usual = course.taxa.flatMap((taxon) => usualState(prepared, id, taxon) ?? []);
  const some = new Set([truth, ...mixed, ...usual, ...states.map((state) => state.id)]);
  const kept = new Set([...some].slice(0, STATES));
  return states.filter((state) => kept.has(state.id)).map((state) => state.id);
}

/** One of several plants, of which what is seen tells the specimen; in the key's order, so that the order tells nothing. */
function choosing(
  prepared: PreparedKey,
  item: ItemId,
  kind: 'name' | 'pair',
  specimen: Specimen,
  ids: readonly string[],
  most = 2,
): Task | undefined {
  const { taxon: truth } = specimen;
  const shows = shownBy(prepared.key, specimen);
  const fair = ids.filter((id) => id === truth || isTold(prepared, shows, truth, id)).slice(0, most);
  if (fair.length < 2) return undefined;
  const order = (id: string) => prepared.taxonIndex.get(id) as number;
  return { kind, item, specimen, truth, options: fair.sort((a, b) => order(a) - order(b)) };
}
