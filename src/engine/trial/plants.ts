// Simulated plants: what one plant, on one day, shows to whoever looks.
import { EYE } from '../measures.ts';
import { twoPiece } from '../normal.ts';
import type { CharacterSpec, TraitSpec } from '../spec.ts';
import type { Nature } from './nature.ts';
import type { Random } from './random.ts';

/** There is nothing to tell: the part is missing, means nothing on this plant, or cannot be made out. */
export const NOTHING = -1;

export interface Plant {
  /** Index in the nature's matrix. */
  readonly taxon: number;
  /** 1 to 12. */
  readonly month: number;
  /** State that an undistracted eye reads, by character; NOTHING where there is none. */
  readonly shows: readonly number[];
}

/**
 * Draws a plant of the taxon: one state of each character as often as its traits say, sizes from inside the range and
 * from beyond its edge (5 % at either end), by eye; where a trait is unknown, as another plant of the key has it; parts
 * missing out of season. `size` multiplies all lengths (0.5: dwarfed).
 */
export function drawPlant(nature: Nature, taxon: number, month: number, random: Random, size = 1): Plant {
  const { matrix } = nature;
  const luck = new Map<string, number>();
  const shows = matrix.spec.characters.map((character, c) => {
    // Drawn whether needed or not, so that one plant's missing flower does not change another's leaf.
    const state = drawState(nature, c, taxon, random, size);
    const canTell = random.next() < (nature.tellable[c] as number);
    const organ = nature.organs[c];
    if (organ !== undefined && !luck.has(organ)) luck.set(organ, random.next());
    const there = organ === undefined || (luck.get(organ) as number) < nature.present(c, taxon, month);
    if (!canTell || !there || matrix.applies[c * matrix.outside + taxon] === 0) return NOTHING;
    if (c === nature.season) return month - 1;
    return character.states.length > state ? state : NOTHING;
  });
  return { taxon, month, shows };
}

function drawState(nature: Nature, c: number, taxon: number, random: Random, size: number): number {
  const { spec, logPrior } = nature.matrix;
  const character = spec.characters[c] as CharacterSpec;
  let trait = character.traits[taxon];
  if (trait === undefined) {
    const known = character.traits.map((other, t) =>
      other === undefined || other.kind === 'absent' ? 0 : Math.exp(logPrior[t] as number),
    );
    const donor = random.pick(known);
    trait = donor < 0 ? undefined : character.traits[donor];
  }
  if (trait === undefined) return random.below(character.states.length);
  if (trait.kind === 'absent') return NOTHING;
  if (trait.kind === 'states') return random.pick(trait.p);
  const length = nature.lengths[c] ? size : 1;
  return classOf(character, drawSize(trait, random) * length * Math.exp(EYE * random.normal()));
}

/** A true size: a half of a normal to the left of the middle, another to the right (see twoPiece). */
export function drawSize(range: Extract<TraitSpec, { kind: 'range' }>, random: Random): number {
  const { mid, left, right } = twoPiece(range, 0);
  const step = Math.abs(random.normal());
  return Math.exp(mid + (random.next() * (left + right) < left ? -left * step : right * step));
}

/** The class of size that holds the value. */
export function classOf(character: CharacterSpec, value: number): number {
  const bounds = character.bounds ?? [];
  const at = bounds.findIndex((bound) => value < bound);
  return at < 0 ? bounds.length : at;
}
