import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Character, Key, StatesTrait, Taxon, Trait } from '../types.ts';
import { checkSources, checkStates, checkUnique, type Ids, look } from './ids.ts';

const FILE = 'taxa.json';

export function checkTaxa(key: Key, ids: Ids, problems: Problems): void {
  checkUnique(
    key.taxa.map(({ id }) => id),
    FILE,
    (i) => ['taxa', i, 'id'],
    problems,
  );
  checkUnique(
    key.taxa.map(({ name }) => name),
    FILE,
    (i) => ['taxa', i, 'name'],
    problems,
  );
  key.taxa.forEach((taxon, i) => {
    const at = ['taxa', i];
    checkSources(taxon.statusSource, ids, FILE, [...at, 'statusSource'], problems);
    checkNames(taxon, key.languages, at, problems);
    for (const [id, trait] of taxon.traits) {
      const here = [...at, 'traits', id];
      const character = look(id, ids.characters, 'character', FILE, here, problems);
      checkSources(trait.source, ids, FILE, [...here, 'source'], problems);
      if (character) checkTrait(trait, character, here, problems);
    }
  });
}

function checkNames({ common }: Taxon, languages: readonly string[], at: Path, problems: Problems): void {
  const [first = ''] = languages;
  if (!common.get(first)?.length) {
    problems.error(FILE, [...at, 'common', first], 'language', `at least one name in the key's first language`, 'none');
  }
  for (const language of common.keys()) {
    if (languages.includes(language)) continue;
    problems.wrong(FILE, [...at, 'common', language], 'language', 'a language that key.json lists', language);
  }
}

function checkTrait(trait: Trait, character: Character, at: Path, problems: Problems): void {
  if (trait.kind === 'not-applicable') return;
  const measure = character.kind === 'measure';
  if (measure !== (trait.kind === 'range')) {
    const expected = measure ? 'a range: the character is a measure' : `states: the character is a ${character.kind}`;
    problems.error(FILE, at, 'kind', expected, trait.kind === 'range' ? 'a range' : 'states');
  } else if (trait.kind === 'states') {
    const places = placesOf(trait);
    checkStates(
      trait.states.map(({ state }) => state),
      character,
      FILE,
      (i) => [...at, ...(places[i] ?? [])],
      problems,
    );
  }
}

/** Where each state stands in the file: `usually`, 0. */
function placesOf({ states }: StatesTrait): readonly Path[] {
  const counts = new Map<string, number>();
  return states.map(({ how }) => {
    const index = counts.get(how) ?? 0;
    counts.set(how, index + 1);
    return [how, index];
  });
}
