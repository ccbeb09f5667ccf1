// Simulated people: how each kind reads a plant, also in ways that the engine does not assume.
import { slipRate, slipTable } from '../slips.ts';
import type { CharacterSpec } from '../spec.ts';
import type { Nature } from './nature.ts';
import { NOTHING, type Plant } from './plants.ts';
import type { Random } from './random.ts';

/** One kind of observer, and what the key takes it for. */
export interface Observer {
  readonly id: string;
  /** True where the engine's own assumptions hold. */
  readonly assumed: boolean;
  /** How many times a novice's slips the key is told. */
  readonly told: number;
  /** How many times a novice's slips there are. */
  readonly times: number;
  /**
   * `apart`: every reading slips by itself. `together`: as often, but all readings of one part of the plant slip
   * together. `habit`: as `apart`, and of one character two states are always taken for each other.
   * `one`: exactly one answer is wrong (see withOneWrong).
   */
  readonly slips: 'apart' | 'together' | 'habit' | 'one';
  /** What all lengths of the plants this one meets are multiplied with. */
  readonly size: number;
  /** True: the plant is left out of the key. */
  readonly leftOut: boolean;
}

/** Readings of one plant: what is said of each character if it is asked. */
export interface Readings {
  /** State said, by character; NOTHING where the answer is "can't tell". */
  readonly said: readonly number[];
  /** True where another state was said than the plant shows. */
  readonly wrong: readonly boolean[];
}

/** The slip tables of all characters, made once. */
export const slipTables = (characters: readonly CharacterSpec[]) => characters.map(slipTable);

export function readPlant(
  nature: Nature,
  tables: ReturnType<typeof slipTables>,
  plant: Plant,
  by: Observer,
  random: Random,
): Readings {
  const { spec, cap } = nature.matrix;
  const habit = by.slips === 'habit' ? drawHabit(nature, plant, random) : undefined;
  const shaky = new Map<string, number>();
  const said = plant.shows.map((shown, c) => {
    const character = spec.characters[c] as CharacterSpec;
    const part = nature.parts[c] as string;
    const own = random.next();
    if (!shaky.has(part)) shaky.set(part, random.next());
    const luck = by.slips === 'together' ? (shaky.get(part) as number) : own;
    const rate = slipRate(character.misread, cap[c] as number, by.times, 'sure');
    const slipped = shown === NOTHING ? NOTHING : random.pick(tables[c]?.[shown] ?? []);
    if (shown === NOTHING) return NOTHING;
    if (habit?.character === c) return shown === habit.a ? habit.b : habit.a;
    return luck < rate && slipped >= 0 ? slipped : shown;
  });
  return { said, wrong: said.map((one, c) => one !== plant.shows[c]) };
}

/** Of all pairs of states that beginners mix up, and of which the plant shows one, one: by the share of misreadings it takes. */
function drawHabit(
  nature: Nature,
  plant: Plant,
  random: Random,
): { character: number; a: number; b: number } | undefined {
  const pairs = nature.matrix.spec.characters.flatMap((character, c) =>
    (character.proposed ? (character.mixups ?? []) : [])
      .filter(({ a, b }) => plant.shows[c] === a || plant.shows[c] === b)
      .map(({ a, b, share }) => ({ character: c, a, b, weight: share * character.misread })),
  );
  return pairs[random.pick(pairs.map(({ weight }) => weight))];
}

/** Every kind of observer that a trial knows, for a key whose kinds have these rates (multiples of a novice's slips). */
export function observersFor(kinds: ReadonlyMap<string, number>): Observer[] {
  const plain = { assumed: true, slips: 'apart', size: 1, leftOut: false } as const;
  const [least = ['novice', 1] as const] = [...kinds].sort(([, a], [, b]) => b - a);
  const [, told] = least;
  const strange = { ...plain, assumed: false, told, times: told } as const;
  return [
    ...[...kinds].sort(([, a], [, b]) => b - a).map(([id, times]) => ({ ...plain, id, told: times, times })),
    { ...strange, id: 'twice-the-slips', times: 2 * told },
    { ...strange, id: 'habitual-mix-up', slips: 'habit' },
    { ...strange, id: 'hanging-together', slips: 'together' },
    { ...strange, id: 'dwarfed-plants', size: 0.5 },
    { ...strange, id: 'not-in-the-key', leftOut: true },
    { ...strange, id: 'one-wrong-answer', slips: 'one' },
  ];
}
