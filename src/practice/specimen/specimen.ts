// One plant as it stands there in a month: what can be seen of it, the same as its portrait shows.
import { Individual } from '../../drawing/portrait/individual.ts';
import { seedsNow } from '../../drawing/portrait/plant.ts';
import type { Character, Key, Month } from '../../key/index.ts';
import type { Specimen } from '../types.ts';

/** A specimen of a plant that the key does not have. */
export class SpecimenError extends Error {
  override readonly name = 'SpecimenError';
}

/** Parts of the plant that come and go with the season. */
const FLOWERS = 'flower';
const FRUIT = 'fruit';
/** Roles that dry heads still show: their form, size and posture, but no colour (ours). */
const DRY: ReadonlySet<string> = new Set(['flower-cluster', 'cluster-length', 'cluster-posture', 'spike-gap']);

/**
 * Id of a character to the state (for a size, its class) that this plant shows and that a person could see that month
 * without digging. What the key does not know of the plant is not in it.
 * @throws SpecimenError
 */
export function shownBy(key: Key, { taxon: id, month, seed }: Specimen): ReadonlyMap<string, string> {
  const taxon = key.taxa.find((one) => one.id === id);
  if (taxon === undefined) throw new SpecimenError(`the key has no plant ${id}`);
  const who = new Individual(key, taxon, { month, seed, varied: true });
  const shows = new Map<string, string>();
  for (const character of key.characters) {
    const state = who.stateOf(character);
    if (state !== undefined && isSeen(character, who, month)) shows.set(character.id, state);
  }
  // What asks for a state of another character means nothing on a plant that shows a different one.
  for (const { id: own, applies } of key.characters) {
    const other = applies && shows.get(applies.character);
    if (other !== undefined && applies && !applies.states.includes(other)) shows.delete(own);
  }
  return shows;
}

function isSeen(character: Character, who: Individual, month: Month): boolean {
  const { asked, effort, months, part, draws: role = '' } = character;
  if (!asked || effort === 'dig' || !months.includes(month)) return false;
  if (part !== FLOWERS && part !== FRUIT) return true;
  const flowers = who.inMonth('flowering-month', month);
  if (role === 'flowering-month') return flowers === true;
  // Nobody knows when it flowers: the months of the character say when it may be looked for.
  if (flowers === undefined) return true;
  if (part === FRUIT) return who.isAfter('flowering-month', 'fruit', month);
  return flowers || (DRY.has(role) && seedsNow(who, month));
}

/** Two specimens with the same mark look the same in all that can be seen. */
export const markOf = (shows: ReadonlyMap<string, string>): string =>
  [...shows].map(([character, state]) => `${character}/${state}`).join(' ');
