// What `trial --tune` prints for people.
import type { Key } from '../../key/index.ts';
import type { Paint } from '../paint.ts';
import type { Suggestion, Tuned } from '../trial/tuned.ts';
import { table } from './table.ts';
import { percentOf } from './trial.ts';

export function tuneReport(key: Key, { suggestions }: Tuned, paint: Paint): string {
  const now = JSON.stringify(key.thresholds);
  return `${[
    paint('heading', 'Thresholds that would serve better (a suggestion: no file was changed)'),
    '  Tried on the same plants and people. Each keeps settled names right in 95 % (90 % with twice the slips) and, where the',
    '  plant is in the key, natives settled as invasive under 1 % at the upper end of the interval, which takes a thousand',
    '  plants to show; of those, the one that settles most plants right.',
    `  Now: ${now}`,
    '',
    ...suggestions.flatMap((one) => [...suggestion(one), '']),
  ].join('\n')}\n`;
}

function suggestion({ leftOutSettledAtMost: limit, thresholds, observers }: Suggestion): string[] {
  const title =
    limit >= 1
      ? '  Whatever becomes of plants that are not in the key:'
      : `  At most ${percentOf(limit, 0)} of the plants that are not in the key settled as another:`;
  if (thresholds === null) return [title, '    nothing that was tried keeps this.'];
  return [
    title,
    `    ${JSON.stringify(thresholds)}`,
    ...table([
      ['', 'settled', 'of those right', 'natives as invasive', 'at most', 'questions'],
      ...observers.map((one) => [
        one.id,
        percentOf(one.settled),
        one.settledRight === undefined ? '-' : percentOf(one.settledRight),
        percentOf(one.nativesSettled, 2),
        percentOf(one.nativesSettledAtMost, 2),
        one.questions.toFixed(1),
      ]),
    ]).map((line) => `    ${line}`),
  ];
}
