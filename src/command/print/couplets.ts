// What `couplets` prints for people: how good the branching key is, and its first couplets.
import { type Branching, type Couplet, type Key, languageFor } from '../../key/index.ts';
import { Wording, wordsIn } from '../../report/sheet/index.ts';
import type { Paint } from '../paint.ts';
import { nameOf } from './names.ts';
import { count, table } from './table.ts';

const SHOWN = 10;

export function coupletsReport(key: Key, branching: Branching, paint: Paint, target?: string): string {
  const { effort, bound, gap, exact, depth, couplets, together } = branching;
  const rows = [
    ['expected effort', `${effort.toFixed(2)} glances`],
    ['no key needs less than', `${bound.toFixed(2)}`],
    ['gap', exact ? 'none: it is one of the best' : `${(100 * gap).toFixed(1)} %`],
    ['couplets', `${couplets}, at most ${depth} on one way`],
    [
      'end together',
      together.length === 0 ? 'none' : together.map((set) => set.map((id) => nameOf(key, id)).join(' + ')).join('; '),
    ],
  ];
  return `${[
    `${paint('heading', key.title)} (${key.id} ${key.version}): the branching key of ${count(key.taxa.length, 'taxon', 'taxa')}`,
    ...table(rows, (cell, column) => (column === 0 ? paint('quiet', cell) : cell)).map((line) => `  ${line}`),
    '',
    ...firstCouplets(key, branching.key, paint),
    ...(target === undefined ? [] : ['', `${target} was written.`]),
  ].join('\n')}\n`;
}

function firstCouplets(key: Key, couplets: readonly Couplet[], paint: Paint): string[] {
  const language = key.languages[0] ?? 'en';
  const wording = new Wording(key, languageFor(key, language), wordsIn(language));
  const shown = couplets.slice(0, SHOWN);
  if (shown.length === 0) return [];
  return [
    paint('heading', couplets.length > SHOWN ? `Its first ${SHOWN} couplets` : 'Its couplets'),
    ...shown.flatMap((couplet) =>
      couplet.leads.map(({ to }, j) => {
        const { main, also } = wording.statement(couplet, j);
        const goal = typeof to === 'number' ? `${to}` : to.map((id) => nameOf(key, id)).join(' + ');
        return `  ${couplet.number}  ${[main, ...also].join('. ')} ${paint('quiet', '...')} ${goal}`;
      }),
    ),
    ...(couplets.length > SHOWN ? [paint('quiet', `  and ${count(couplets.length - SHOWN, 'more couplet')}`)] : []),
  ];
}
