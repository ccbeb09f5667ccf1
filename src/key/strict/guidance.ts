import type { LooseEntry } from '../loose.ts';
import type { Problems } from '../problem.ts';
import type { Guidance } from '../types.ts';
import { strictDate, strictMonths } from './dates.ts';

export function strictGuidance(
  { taxon, reviewed, statements }: LooseEntry,
  index: number,
  problems: Problems,
): Guidance {
  strictDate(reviewed, 'guidance.json', ['entries', index, 'reviewed'], problems);
  return {
    taxon,
    reviewed,
    statements: statements.map(({ months, ...statement }) => ({
      ...statement,
      ...(months === undefined ? {} : { months: strictMonths(months) }),
    })),
  };
}
