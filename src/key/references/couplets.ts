import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';
import { checkStates, checkUnique, type Ids, look } from './ids.ts';

const FILE = 'couplets.json';

export function checkCouplets(key: Key, ids: Ids, problems: Problems): void {
  const numbers = new Set(key.couplets.map(({ number }) => number));
  checkUnique(
    key.couplets.map(({ number }) => number),
    FILE,
    (i) => ['couplets', i, 'number'],
    problems,
  );
  key.couplets.forEach(({ leads }, i) => {
    leads.forEach(({ character, states, to }, j) => {
      const at = ['couplets', i, 'leads', j];
      if (typeof to === 'string') look(to, ids.taxa, 'taxon', FILE, [...at, 'to'], problems);
      else if (!numbers.has(to)) problems.wrong(FILE, [...at, 'to'], 'unknown-id', 'the number of a couplet', to);
      if (character === undefined) return;
      const known = look(character, ids.characters, 'character', FILE, [...at, 'character'], problems);
      checkStates(states ?? [], known, FILE, (k) => [...at, 'states', k], problems);
    });
  });
}
