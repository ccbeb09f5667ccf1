import { frozenMap } from '../freeze.ts';
import type { LooseTaxon, LooseTrait } from '../loose.ts';
import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import { parseRange, RangeNotationError } from '../range/index.ts';
import { FREQUENCIES, type Taxon, type Trait } from '../types.ts';
import { toCanonical, type Unit, UnitError } from '../units.ts';

/** `units` has the unit of each character, undefined where it is no measure. */
export const strictTaxon =
  (units: ReadonlyMap<string, Unit | undefined>, problems: Problems) =>
  ({ common, synonyms, misspellings, traits, ...rest }: LooseTaxon, index: number): Taxon => ({
    ...rest,
    common: frozenMap(Object.entries(common).filter(([, names]) => names.length > 0)),
    synonyms: synonyms ?? [],
    misspellings: misspellings ?? [],
    traits: frozenMap(
      Object.entries(traits).flatMap(([character, loose]) => {
        const trait = strictTrait(loose, units.get(character), ['taxa', index, 'traits', character], problems);
        return trait ? [[character, trait] as const] : [];
      }),
    ),
  });

function strictTrait(loose: LooseTrait, unit: Unit | undefined, at: Path, problems: Problems): Trait | undefined {
  const why = { source: loose.source, ...(loose.note === undefined ? {} : { note: loose.note }) };
  if (loose.applies === false) return { kind: 'not-applicable', ...why };
  if (loose.range !== undefined) return rangeTrait(loose.range, unit, [...at, 'range'], problems, why);
  const states = FREQUENCIES.flatMap((how) => (loose[how] ?? []).map((state) => ({ state, how })));
  if (states.length > 0) return { kind: 'states', states, ...why };
  problems.error('taxa.json', at, 'length', 'at least one state; leave the trait out when it is unknown', 'no state');
  return undefined;
}

/** A range keeps the unit it is written in; it must be of the same family (lengths or counts) as the character's. */
function rangeTrait(
  text: string,
  unit: Unit | undefined,
  at: Path,
  problems: Problems,
  why: Pick<Trait, 'source' | 'note'>,
): Trait | undefined {
  try {
    const range = parseRange(text);
    if (unit !== undefined) toCanonical(1, range.unit, unit);
    return { kind: 'range', range, ...why };
  } catch (error) {
    if (error instanceof RangeNotationError) {
      problems.wrong('taxa.json', at, 'range', `${error.expected} at column ${error.column} of the range`, text);
    } else if (error instanceof UnitError) {
      problems.wrong(
        'taxa.json',
        at,
        'unit',
        unit === 'count' ? 'a number without a unit' : 'a length with its unit (mm, cm, m, in or ft)',
        text,
      );
    } else throw error;
    return undefined;
  }
}
