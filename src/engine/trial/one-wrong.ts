// A person who reads everything right but for one answer.
import { slipRate } from '../slips.ts';
import type { CharacterSpec } from '../spec.ts';
import type { Book } from './book.ts';
import type { Nature } from './nature.ts';
import type { Readings, slipTables } from './observers.ts';
import { NOTHING, type Plant } from './plants.ts';
import type { Random } from './random.ts';
import { runPlant } from './run.ts';
import type { Way } from './way.ts';

/** Readings with one wrong, and of which character; undefined when not one answer was given. */
export interface OneWrong {
  readonly readings: Readings;
  readonly character: number;
}

/**
 * Makes one answer wrong of those that a person without slips would give, each as often as the odds of misreading it
 * say (as in a run of a usual observer in which exactly one went wrong), and towards what it is usually misread as.
 */
export function withOneWrong(
  nature: Nature,
  tables: ReturnType<typeof slipTables>,
  plant: Plant,
  book: Book,
  way: Way,
  random: Random,
): OneWrong | undefined {
  const { spec, cap } = nature.matrix;
  const { asked } = runPlant(book, way, plant.month, plant.shows);
  const answered = asked.filter((c) => plant.shows[c] !== NOTHING);
  const odds = answered.map((c) => {
    const rate = slipRate((spec.characters[c] as CharacterSpec).misread, cap[c] as number, book.observer, 'sure');
    return rate / (1 - rate);
  });
  const character = answered[random.pick(odds)];
  if (character === undefined) return undefined;
  const said = [...plant.shows];
  said[character] = random.pick(tables[character]?.[plant.shows[character] as number] ?? []);
  return { character, readings: { said, wrong: said.map((_, c) => c === character) } };
}
