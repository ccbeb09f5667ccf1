import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Character, Key } from '../types.ts';
import { checkStates, checkUnique, type Ids, look } from './ids.ts';

const FILE = 'characters.json';
/** Shares are written with few digits, so that their sums may miss 1 by a hair. */
const HAIR = 1e-9;

export function checkCharacters(key: Key, ids: Ids, problems: Problems): void {
  checkUnique(
    key.characters.map(({ id }) => id),
    FILE,
    (i) => ['characters', i, 'id'],
    problems,
  );
  key.characters.forEach((character, i) => {
    const at = ['characters', i];
    const field = character.kind === 'measure' ? 'classes' : 'states';
    checkUnique(
      character.states.map(({ id }) => id),
      FILE,
      (j) => [...at, field, j, 'id'],
      problems,
    );
    checkMixups(character, at, problems);
    checkApplies(character, ids, at, problems);
  });
}

function checkMixups(character: Character, at: Path, problems: Problems): void {
  const sums = new Map<string, number>();
  const pairs = new Set<string>();
  character.mixups.forEach(({ states, share }, i) => {
    const here = [...at, 'mixups', i];
    checkStates(states, character, FILE, (j) => [...here, 'states', j], problems);
    const pair = [...states].sort().join(' and ');
    if (pairs.has(pair)) problems.error(FILE, here, 'duplicate-id', 'each pair only once', pair);
    pairs.add(pair);
    for (const state of new Set(states)) {
      const sum = (sums.get(state) ?? 0) + share;
      sums.set(state, sum);
      if (sum > 1 + HAIR && sum - share <= 1 + HAIR) {
        problems.error(
          FILE,
          [...here, 'share'],
          'share',
          `shares of "${state}" that add up to at most 1`,
          `${Number(sum.toFixed(4))}`,
        );
      }
    }
  });
}

function checkApplies(character: Character, ids: Ids, at: Path, problems: Problems): void {
  const { applies } = character;
  if (applies === undefined) return;
  const here = [...at, 'applies', 'character'];
  const other = look(applies.character, ids.characters, 'character', FILE, here, problems);
  checkStates(applies.states, other, FILE, (i) => [...at, 'applies', 'states', i], problems);
  if (other?.kind === 'measure') problems.wrong(FILE, here, 'kind', 'a choice or a scale, not a measure', other.id);
  // Only the characters on the circle are named, not those that merely lead into one.
  const seen = new Set<string>();
  for (let next = other; next && !seen.has(next.id); next = ids.characters.get(next.applies?.character ?? '')) {
    if (next.id === character.id) {
      const circle = [character.id, ...seen, character.id].join(' > ');
      problems.error(FILE, here, 'cycle', 'a character that does not in the end depend on this one', circle);
      return;
    }
    seen.add(next.id);
  }
}
