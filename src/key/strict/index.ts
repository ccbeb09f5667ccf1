// From the loose shape of the files to the strict shape of a key: defaults filled, months, ranges and bounds worked out.
import { deepFreeze, frozenMap } from '../freeze.ts';
import type { LooseBundle, LooseKey } from '../loose.ts';
import type { Problems } from '../problem.ts';
import type { Key, Thresholds } from '../types.ts';
import { strictCharacter } from './characters.ts';
/** What holds where key.json says nothing. All ours; `nativesSettled` is the design's 1 %. */
import { strictCouplets } from './couplets.ts';
import { strictDate } from './dates.ts';
import { strictGuidance } from './guidance.ts';
import { strictTaxon } from './taxa.ts';
export const USUAL_THRESHOLDS: Thresholds = Object.freeze({
  settled: 0.9,
  leaning: 0.6,
  outside: 0.5,
  nativesSettled: 0.01,
  nativesLeaning: 0.2,
  telling: 3,
});
export const USUAL_OUTSIDE_PRIOR = 0.05;
export const USUAL_OBSERVERS: Readonly<Record<string, number>> = Object.freeze({
  novice: 1,
  technician: 0.5,
  botanist: 0.25,
});

/**
 * The key that a bundle of the right shape describes, deep-frozen. What cannot be worked out is noted in `problems`, and
 * the key is then of no use; whether its parts go together is not looked at here (see references).
 */
export function strictKey(bundle: LooseBundle, problems: Problems): Key {
  const { key, characters, taxa, couplets, guidance, sources, text = {}, opening, album, hash } = bundle;
  strictDate(key.reviewed, 'key.json', ['reviewed'], problems);
  const strict = characters.characters.map(strictCharacter(problems));
  const units = new Map(strict.map(({ id, unit }) => [id, unit]));
  return deepFreeze({
    ...frame(key),
    characters: strict,
    taxa: taxa.taxa.map(strictTaxon(units, problems)),
    lookalikes: taxa.lookalikes ?? [],
    couplets: strictCouplets(couplets?.couplets ?? []),
    guidance: frozenMap(
      byId(guidance.entries, 'taxon', 'guidance.json', 'entries', problems).map(([id, entry], i) => [
        id,
        strictGuidance(entry, i, problems),
      ]),
    ),
    sources: frozenMap(byId(sources.sources, 'id', 'sources.json', 'sources', problems)),
    text: frozenMap(
      Object.entries(text).map(([language, file]) => {
        if (file.language !== language) {
          problems.wrong(
            `text/${language}.json`,
            ['language'],
            'language',
            `"${language}", as the file is named`,
            file.language,
          );
        }
        return [language, frozenMap(Object.entries(file.text))];
      }),
    ),
    ...(opening === undefined ? {} : { opening: frozenMap(Object.entries(opening)) }),
    ...(album === undefined ? {} : { album }),
    ...(hash === undefined ? {} : { hash }),
  });
}

function frame(key: LooseKey) {
  const { id, version, title, region, reviewed, languages, units, licence, cautions } = key;
  return {
    ...{ id, version, title, region, reviewed, languages, units, licence, cautions },
    thresholds: { ...USUAL_THRESHOLDS, ...key.thresholds },
    outsidePrior: key.outsidePrior ?? USUAL_OUTSIDE_PRIOR,
    observers: frozenMap(Object.entries(key.observers ?? USUAL_OBSERVERS)),
  };
}

/** Entries of a Map by id. An id that an earlier item has is noted; the Map then keeps both, so that places stay right. */
function byId<Name extends string, Item extends Readonly<Record<Name, string>>>(
  items: readonly Item[],
  name: Name,
  file: string,
  field: string,
  problems: Problems,
): readonly (readonly [string, Item])[] {
  const seen = new Set<string>();
  return items.map((item, i) => {
    const id = item[name];
    if (!seen.has(id)) {
      seen.add(id);
      return [id, item];
    }
    problems.wrong(file, [field, i, name], 'duplicate-id', 'each only once', id);
    return [`${id} (${i})`, item];
  });
}
