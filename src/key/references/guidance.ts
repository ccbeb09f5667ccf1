import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';
import { checkSources, type Ids, look } from './ids.ts';

const FILE = 'guidance.json';

export function checkGuidance(key: Key, ids: Ids, problems: Problems): void {
  [...key.guidance.values()].forEach(({ taxon, statements }, i) => {
    look(taxon, ids.taxa, 'taxon', FILE, ['entries', i, 'taxon'], problems);
    statements.forEach(({ source }, j) => {
      checkSources(source, ids, FILE, ['entries', i, 'statements', j, 'source'], problems);
    });
  });
}
