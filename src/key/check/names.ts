import { foldName, sharedNames } from '../names.ts';
import type { Path } from '../path.ts';
import { show } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Key, Taxon } from '../types.ts';

/** Common names that several plants have: such a name alone must never lead to advice. */
export function checkSharedNames(key: Key, problems: Problems): void {
  for (const [folded, { name, taxa }] of sharedNames(key)) {
    const [first] = taxa;
    if (!first) continue;
    const owners = taxa.map((taxon) => `${taxon.name} (${taxon.status})`).join(', ');
    const at = ['taxa', key.taxa.indexOf(first), 'common', ...placeOf(first, folded)];
    problems.warn('taxa.json', at, 'shared-name', `a name that only one plant has`, `${show(name)} of ${owners}`);
  }
}

function placeOf({ common }: Taxon, folded: string): Path {
  for (const [language, names] of common) {
    const index = names.findIndex((name) => foldName(name) === folded);
    if (index >= 0) return [language, index];
  }
  return [];
}
