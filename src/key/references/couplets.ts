import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Key, Said } from '../types.ts';
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
    leads.forEach((lead, j) => {
      const { text, character, also, to } = lead;
      const at = ['couplets', i, 'leads', j];
      if (typeof to === 'number') {
        if (!numbers.has(to)) problems.wrong(FILE, [...at, 'to'], 'unknown-id', 'the number of a couplet', to);
      } else
        to.forEach((id, k) => {
          look(id, ids.taxa, 'taxon', FILE, to.length > 1 ? [...at, 'to', k] : [...at, 'to'], problems);
        });
      if (text === undefined && character === undefined)
        problems.error(FILE, at, 'missing-field', 'a text, or a character with its states', 'neither');
      checkSaid(lead, ids, at, problems);
      also.forEach((said, k) => {
        checkSaid(said, ids, [...at, 'also', k], problems);
      });
    });
  });
}

function checkSaid({ character, states }: Partial<Said>, ids: Ids, at: Path, problems: Problems): void {
  if (character === undefined) return;
  const known = look(character, ids.characters, 'character', FILE, [...at, 'character'], problems);
  checkStates(states ?? [], known, FILE, (k) => [...at, 'states', k], problems);
}
