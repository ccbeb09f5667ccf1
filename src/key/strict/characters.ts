import type { LooseCharacter, LooseClass } from '../loose.ts';
import type { Problems } from '../problem.ts';
import type { Character, State } from '../types.ts';
import { strictMonths } from './dates.ts';

export const strictCharacter =
  (problems: Problems) =>
  ({ classes, states, months, asked, mixups, ...rest }: LooseCharacter, index: number): Character => ({
    ...rest,
    months: strictMonths(months),
    asked: asked ?? true,
    states: classes ? strictClasses(classes, index, problems) : (states ?? []),
    mixups: mixups ?? [],
  });

/** Classes with the bound where each begins; their ends must rise, and only the last is open. */
function strictClasses(classes: readonly LooseClass[], index: number, problems: Problems): readonly State[] {
  let from = 0;
  return classes.map((one, i) => {
    const last = i === classes.length - 1;
    const wrong = (expected: string) =>
      problems.wrong('characters.json', ['characters', index, 'classes', i, 'to'], 'order', expected, one.to);
    if (last && one.to !== undefined) wrong('no end: the last class is open');
    if (!last && one.to === undefined) wrong('where the class ends: only the last is open');
    if (one.to !== undefined && one.to <= from) wrong(`more than ${from}, where the class begins`);
    const state = { ...one, from };
    from = one.to ?? from;
    return state;
  });
}
