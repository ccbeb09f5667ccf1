import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';
import { checkSources, checkUnique, type Ids, look } from './ids.ts';

const FILE = 'taxa.json';

export function checkLookalikes(key: Key, ids: Ids, problems: Problems): void {
  checkUnique(
    key.lookalikes.map(({ taxa }) => [...taxa].sort().join(' and ')),
    FILE,
    (i) => ['lookalikes', i, 'taxa'],
    problems,
  );
  key.lookalikes.forEach(({ taxa, needs, separate, source }, i) => {
    const at = ['lookalikes', i];
    taxa.forEach((id, j) => {
      look(id, ids.taxa, 'taxon', FILE, [...at, 'taxa', j], problems);
    });
    checkUnique(taxa, FILE, (j) => [...at, 'taxa', j], problems);
    separate.forEach(({ character }, j) => {
      look(character, ids.characters, 'character', FILE, [...at, 'separate', j, 'character'], problems);
    });
    checkUnique(
      separate.map(({ character }) => character),
      FILE,
      (j) => [...at, 'separate', j, 'character'],
      problems,
    );
    if (separate.length === 0) {
      problems.error(FILE, [...at, 'separate'], 'needs', 'at least one character that tells the two apart', 'none');
    } else if (needs > separate.length) {
      problems.wrong(
        FILE,
        [...at, 'needs'],
        'needs',
        `at most ${separate.length}, as many as there are characters`,
        needs,
      );
    }
    checkSources(source, ids, FILE, [...at, 'source'], problems);
  });
}
