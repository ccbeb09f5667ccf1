import { list, type Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Character, Key, Source, Taxon } from '../types.ts';

/** What the ids of a key stand for. */
export interface Ids {
  readonly characters: ReadonlyMap<string, Character>;
  readonly taxa: ReadonlyMap<string, Taxon>;
  readonly sources: ReadonlyMap<string, Source>;
}

export function indexOf(key: Key): Ids {
  return {
    characters: new Map(key.characters.map((one) => [one.id, one])),
    taxa: new Map(key.taxa.map((one) => [one.id, one])),
    sources: key.sources,
  };
}

/** Notes each value that an earlier one equals, at `path(index)`. */
export function checkUnique(
  values: readonly (string | number)[],
  file: string,
  path: (index: number) => Path,
  problems: Problems,
): void {
  const seen = new Set<string | number>();
  values.forEach((value, i) => {
    if (seen.has(value)) problems.wrong(file, path(i), 'duplicate-id', 'each only once', value);
    seen.add(value);
  });
}

/** What the id stands for; an id that stands for nothing is noted. */
export function look<T>(
  id: string,
  among: ReadonlyMap<string, T>,
  what: string,
  file: string,
  at: Path,
  problems: Problems,
): T | undefined {
  const found = among.get(id);
  if (found === undefined) problems.wrong(file, at, 'unknown-id', `the id of a ${what}`, id);
  return found;
}

/** Notes ids that are no states of the character, at `path(index)`, and states given twice. */
export function checkStates(
  states: readonly string[],
  character: Character | undefined,
  file: string,
  path: (index: number) => Path,
  problems: Problems,
): void {
  checkUnique(states, file, path, problems);
  if (character === undefined) return;
  const known = new Set(character.states.map(({ id }) => id));
  states.forEach((state, i) => {
    if (known.has(state)) return;
    problems.wrong(file, path(i), 'unknown-id', `a state of ${character.id} (${list(known)})`, state);
  });
}

/** Notes a list without sources, and ids that are no sources. */
export function checkSources(
  source: readonly string[],
  { sources }: Ids,
  file: string,
  at: Path,
  problems: Problems,
): void {
  if (source.length === 0)
    problems.error(file, at, 'no-source', 'at least one source ("memory" where nothing was read)', 'none');
  source.forEach((id, i) => {
    look(id, sources, 'source in sources.json', file, [...at, i], problems);
  });
}
