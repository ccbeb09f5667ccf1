// What `check` prints for people.
import { MOST_PROBLEMS, type Problem } from '../../key/index.ts';
import { type Counts, countKey } from '../counts.ts';
import { errorsOf, type Inspection } from '../inspect.ts';
import type { Paint } from '../paint.ts';
import type { SmallTrial } from '../trial/small.ts';
import { count } from './table.ts';
import { percentOf } from './trial.ts';
import { wantedLine } from './wanted.ts';

export function checkReport(inspection: Inspection, paint: Paint, trial?: SmallTrial): string {
  const { key, problems, more } = inspection;
  const files = [...new Set(problems.map(({ file }) => file))];
  const lines = files.flatMap((file) => [
    paint('heading', file),
    ...problems.filter((problem) => problem.file === file).map((problem) => `  ${problemLine(problem, paint)}`),
    '',
  ]);
  if (key !== undefined && problems.length === MOST_PROBLEMS)
    lines.push(`No more than ${MOST_PROBLEMS} are listed.`, '');
  if (more > 0) lines.push(`and ${count(more, 'more problem')}, not listed`, '');
  if (key !== undefined) {
    lines.push(`${paint('heading', key.title)} (${key.id} ${key.version}, reviewed ${key.reviewed})`);
    lines.push(`  ${countsLine(countKey(key))}`);
    if (trial !== undefined) lines.push(`  ${trialLine(trial)}`);
    const wanted = inspection.pictures?.manifest && wantedLine(inspection.pictures.manifest);
    if (wanted !== undefined) lines.push(`  ${wanted}`);
    lines.push('');
  }
  lines.push(verdictLine(inspection, paint));
  return `${lines.join('\n')}\n`;
}

/** `error    line 214, taxa[3].family: expected text, found 7` */
export function problemLine({ severity, line, column, path, expected, found }: Problem, paint: Paint): string {
  const place = [
    ...(line === undefined ? [] : [`line ${line}${column === undefined ? '' : ` column ${column}`}`]),
    ...(path === '' ? [] : [path]),
  ].join(', ');
  const what = `expected ${expected}${found === '' ? '' : `, found ${found}`}`;
  const word = severity === 'error' ? paint('stop', 'error  ') : paint('warn', 'warning');
  return `${word}  ${place === '' ? '' : `${place}: `}${what}`;
}

export function countsLine(counts: Counts): string {
  const stated = counts.traits - counts.traitsNotApplicable;
  const share = stated === 0 ? 0 : Math.round((100 * counts.traitsFromMemory) / stated);
  return [
    count(counts.taxa, 'taxon', 'taxa'),
    count(counts.characters, 'character'),
    count(counts.states, 'state'),
    `${count(stated, 'trait')} (${share} % from memory)`,
    count(counts.pairs, 'pair of look-alikes', 'pairs of look-alikes'),
    count(counts.languages, 'language'),
    `guidance for ${count(counts.guidance, 'taxon', 'taxa')}`,
    count(counts.sources, 'source'),
  ].join(', ');
}

/** `Trial of 550 plants (novice, seed 1): 48.0 % settled, 97.9 % of them right; ...` */
export function trialLine(trial: SmallTrial): string {
  const { observer, plants, seed, settled, settledRight, nativesSettledAsInvasive: natives, questions } = trial;
  return [
    `trial of ${count(plants, 'plant')} (${observer}, seed ${seed}): ${percentOf(settled.share ?? 0)} settled`,
    settledRight.share === undefined ? '' : `, ${percentOf(settledRight.share)} of them right`,
    `; ${natives.count} of ${count(natives.n, 'native plant')} settled as invasive`,
    `; ${questions.toFixed(1)} questions on average`,
  ].join('');
}

function verdictLine(inspection: Inspection, paint: Paint): string {
  const errors = errorsOf(inspection).length;
  const warnings = inspection.problems.length - errors;
  const also = warnings === 0 ? '' : `, ${count(warnings, 'warning')}`;
  if (inspection.key === undefined) {
    const all = errors + inspection.more;
    return `${paint('stop', count(all, 'error'))}${also}: this folder cannot be used as a key yet.`;
  }
  const beyond = inspection.more > 0 ? ` and ${inspection.more} more` : '';
  return `${paint('good', 'No errors')}${warnings === 0 ? '' : `, ${paint('warn', count(warnings, 'warning'))}${beyond}`}.`;
}
