// What to call the people of a crew.
import type { Member } from '../../practice/index.ts';

/** By the id of a learner. */
export type Names = ReadonlyMap<string, string>;

/** Who gave no name is numbered; of several who gave the same each is told by the beginning of the id. */
export function namesOf(members: readonly Member[], unnamed: (n: number) => string): Names {
  const all = members.map(({ name }) => name);
  return new Map(
    members.map(({ id, name }, i) => {
      if (name === '') return [id, unnamed(i + 1)];
      return [id, all.indexOf(name) === all.lastIndexOf(name) ? name : `${name} (${id.slice(0, 8)})`];
    }),
  );
}
