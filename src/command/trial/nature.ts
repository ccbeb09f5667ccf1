// How plants of a key are met: which parts they show when, and what people before them can make out. All numbers ours.
import type { Nature } from '../../engine/trial/index.ts';
import { type Character, type Effort, type Frequency, type PreparedKey, type Taxon, THERE } from '../../key/index.ts';

/** Chance that a person can tell at all, by what it takes to look. */
const TELLABLE: Readonly<Record<Effort, number>> = { glance: 0.97, handle: 0.93, measure: 0.9, magnify: 0.6, dig: 0 };

/** Chance that a plant is in flower in a month that its trait names so. */
const IN_FLOWER: Readonly<Record<Frequency, number>> = { usually: 0.8, sometimes: 0.3, rarely: 0.05 };

/** Dry heads of these families stand for months after flowering (common practice, no source). */
const LASTING = new Set(['Poaceae', 'Cyperaceae', 'Juncaceae', 'Typhaceae']);
const HEADS = { months: 5, chance: 0.7 };
const FRUIT = { months: 3, chance: 0.5 };

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** The character that tells the months of flowering: twelve states of the flower, January first. */
const isSeason = ({ part, states }: Character): boolean =>
  part === 'flower' && states.length === 12 && states.every(({ id }, i) => id === MONTHS[i]);

export function natureOf({ key, matrix }: PreparedKey): Nature {
  const at = key.characters.findIndex(isSeason);
  const season = key.characters[at];
  const flowering = key.taxa.map((taxon) => monthsOf(taxon, season));
  return {
    matrix,
    parts: key.characters.map(({ part }) => part),
    lengths: key.characters.map(({ kind, unit }) => kind === 'measure' && unit !== 'count'),
    tellable: key.characters.map(({ effort, part }) => TELLABLE[effort] * (part === 'sap' ? (THERE.sap ?? 1) : 1)),
    organs: key.characters.map(({ part }) => (part === 'flower' || part === 'fruit' ? part : undefined)),
    present(c, t, month) {
      const { part } = key.characters[c] as Character;
      const months = flowering[t];
      if (months === undefined) return THERE[part] ?? 1;
      const now = months[month - 1] as number;
      if (part === 'fruit') return lately(months, month, FRUIT);
      return c !== at && LASTING.has((key.taxa[t] as Taxon).family) ? Math.max(now, lately(months, month, HEADS)) : now;
    },
    ...(at < 0 ? {} : { season: at }),
  };
}

/** Chance of flowers from January to December; undefined when the key does not know. */
function monthsOf(taxon: Taxon, season: Character | undefined): number[] | undefined {
  const trait = season === undefined ? undefined : taxon.traits.get(season.id);
  if (season === undefined || trait?.kind !== 'states') return undefined;
  const how = new Map(trait.states.map((one) => [one.state, one.how]));
  return season.states.map(({ id }) => {
    const often = how.get(id);
    return often === undefined ? 0 : IN_FLOWER[often];
  });
}

/** Chance of what follows the flowers and lasts: it was in full flower some months ago. */
function lately(months: readonly number[], month: number, { months: back, chance }: typeof HEADS): number {
  const most = Math.max(...Array.from({ length: back }, (_, k) => months[(month - 2 - k + 24) % 12] as number));
  return chance * (most / IN_FLOWER.usually);
}
