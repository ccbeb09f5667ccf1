import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Couplet, Key, Said } from '../types.ts';
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
  checkCircles(key.couplets, problems);
}

/** Whoever goes in a circle never comes to a name. Told at the lead that closes it. */
function checkCircles(couplets: readonly Couplet[], problems: Problems): void {
  const at = new Map(couplets.map(({ number }, i) => [number, i]));
  const done = new Set<number>();
  for (const start of couplets.keys()) {
    const way = done.has(start) ? [] : [{ couplet: start, lead: 0 }];
    for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
      const leads = couplets[here.couplet]?.leads ?? [];
      if (here.lead === leads.length) {
        done.add(here.couplet);
        way.pop();
        continue;
      }
      const lead = here.lead++;
      const to = leads[lead]?.to;
      const next = typeof to === 'number' ? at.get(to) : undefined;
      if (next === undefined || done.has(next)) continue;
      if (way.some(({ couplet }) => couplet === next))
        problems.wrong(
          FILE,
          ['couplets', here.couplet, 'leads', lead, 'to'],
          'cycle',
          'a couplet from which no lead comes back here',
          to,
        );
      else way.push({ couplet: next, lead: 0 });
    }
  }
}

function checkSaid({ character, states }: Partial<Said>, ids: Ids, at: Path, problems: Problems): void {
  if (character === undefined) return;
  const known = look(character, ids.characters, 'character', FILE, [...at, 'character'], problems);
  checkStates(states ?? [], known, FILE, (k) => [...at, 'states', k], problems);
}
