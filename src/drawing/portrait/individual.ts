// One plant of a taxon: the usual one, or another drawn from how often the taxon shows what.
import { Random } from '../../engine/trial/random.ts';
import {
  type Album,
  type Character,
  type Drawing,
  type Key,
  type Month,
  spreadOf,
  type Taxon,
  toCanonical,
  type Unit,
} from '../../key/index.ts';
import { SHARE } from '../../key/prepared.ts';

export interface Asked {
  readonly month?: Month | undefined;
  readonly seed?: number | undefined;
  /** Another individual than the usual one. */
  readonly varied?: boolean | undefined;
  /** Height in metres that what stands beside it is chosen for, and most units of the figure for a metre: see `sharedScale`. */
  readonly scale?: { readonly tall: number; readonly metre: number } | undefined;
  /** Drawings of states; what lies below the ground is taken from there. */
  readonly album?: Pick<Album, 'states'> | undefined;
}

/** How a draw may lie from the middle of a range, in its quarter widths; twice that is as far as it goes (ours). */
const FAR = 2;

export class Individual {
  readonly random: Random;
  /** By role. */
  readonly #characters = new Map<string, Character>();
  /** By id of the character. */
  readonly #states = new Map<string, string>();
  readonly #sizes = new Map<string, { readonly value: number; readonly unit: Unit }>();

  constructor(
    readonly key: Key,
    readonly taxon: Taxon,
    { seed = 1, varied = false }: Asked,
  ) {
    const draw = new Random(seed);
    this.random = new Random(varied ? seed : 1, 2);
    for (const character of key.characters) {
      const trait = taxon.traits.get(character.id);
      if (character.draws !== undefined) this.#characters.set(character.draws, character);
      // One draw for each character, whatever it is used for, so that a trait of one does not change the others.
      const [chance, off] = [draw.next(), draw.normal()];
      if (trait?.kind === 'range' && character.unit) {
        const { low, high, min = low, max = high } = spreadOf(trait.range, character.unit);
        const middle = Math.sqrt(low * high);
        const value = middle * (high / low) ** ((Math.max(-FAR, Math.min(FAR, off)) / (2 * FAR)) * (varied ? 1 : 0));
        this.#sizes.set(character.id, { value: Math.min(max, Math.max(min, value)), unit: character.unit });
      } else if (trait?.kind === 'states') {
        const total = trait.states.reduce((sum, { how }) => sum + SHARE[how], 0);
        let left = chance * total;
        const drawn = trait.states.find(({ how }) => {
          left -= SHARE[how];
          return left < 0;
        });
        const usual = trait.states.find(({ how }) => how === 'usually') ?? trait.states[0];
        const id = (varied ? drawn : usual)?.state ?? usual?.state;
        if (id !== undefined) this.#states.set(character.id, id);
      }
    }
  }

  /** The form in which a role shows itself; undefined for what is unknown or means nothing here. */
  form(role: string): string | undefined {
    const character = this.#characters.get(role);
    const id = character && this.#states.get(character.id);
    return character?.states.find((state) => state.id === id)?.form ?? id;
  }

  /** The drawing of the state in which a role shows itself. */
  pictureOf(role: string, album: Asked['album']): Drawing | undefined {
    const character = this.#characters.get(role);
    return character && album?.states.get(`${character.id}/${this.stateOf(character)}`)?.drawing;
  }

  /** A size in metres. */
  metres(role: string): number | undefined {
    const size = this.#sizes.get(this.#characters.get(role)?.id ?? '');
    return size && size.unit !== 'count' ? toCanonical(size.value, size.unit, 'm') : undefined;
  }

  /** The state, or the class of size, in which a character shows itself. */
  stateOf(character: Character): string | undefined {
    const size = this.#sizes.get(character.id);
    if (size === undefined) return this.#states.get(character.id);
    return character.states.find(({ to }) => to === undefined || size.value < to)?.id;
  }

  /** Whether it shows itself in the month: true, false, or undefined where no month is known. */
  inMonth(role: string, month: Month | undefined): boolean | undefined {
    const character = this.#characters.get(role);
    const trait = character && this.taxon.traits.get(character.id);
    // Twelve states are the months in their order.
    if (trait?.kind !== 'states' || month === undefined || character?.states.length !== 12) return undefined;
    const state = character.states[month - 1]?.id;
    return trait.states.some((one) => one.state === state && one.how === 'usually');
  }

  /** Whether a month comes after those of a role, and before those end in which another role can be seen at all. */
  isAfter(role: string, seen: string, month: Month | undefined): boolean {
    const months = this.#characters.get(seen)?.months ?? [];
    // Back from that month to the last one in which it was so.
    for (let at = month; at !== undefined && months.includes(at); at = at > 1 ? ((at - 1) as Month) : undefined) {
      const was = this.inMonth(role, at);
      if (was !== false) return was === true && at !== month;
    }
    return false;
  }

  /** Unknown: the character could mean something here, and nobody has said what. */
  isUnknown(role: string): boolean {
    const character = this.#characters.get(role);
    return character !== undefined && !this.taxon.traits.has(character.id);
  }
}
