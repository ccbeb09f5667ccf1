// On which line of its file a problem stands, for problems that come without it.
import { LIMITS, type Problem } from '../key/index.ts';
import { linesOf } from '../key/json.ts';
import { type Path, printPath } from '../key/path.ts';
import { Problems } from '../key/problem.ts';

/** The same problems, in the same order. `files` is the text of each file; one that is no JSON has no places. */
export function withLines(problems: readonly Problem[], files: ReadonlyMap<string, string>): readonly Problem[] {
  const lines = new Map<Problem, number>();
  for (const [file, text] of files) {
    const here = problems.filter((one) => one.file === file && one.path !== '' && one.line === undefined);
    if (here.length === 0) continue;
    const content = contentOf(text);
    const places = placesOf(content, new Set(here.flatMap(({ path }) => [path, around(path)])));
    const known = here.flatMap((problem) => {
      // A field that is missing is told of where it should stand.
      const at = places.get(problem.path) ?? places.get(around(problem.path));
      return at === undefined ? [] : [{ problem, at }];
    });
    const found = linesOf(
      text,
      known.map(({ at }) => at),
      { file, problems: new Problems(), limits: LIMITS },
    );
    known.forEach(({ problem }, i) => {
      const line = found[i];
      if (line !== undefined) lines.set(problem, line);
    });
  }
  return problems.map((problem) => {
    const line = lines.get(problem);
    return line === undefined ? problem : { ...problem, line };
  });
}

function contentOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

/** The place in print that holds this one. */
const around = (path: string): string => path.replace(/(?:^|\.)[^.[\]]+$|\[[^[\]]*\]$/, '');

/** Places in a JSON value, by their path in print. */
function placesOf(value: unknown, wanted: ReadonlySet<string>): ReadonlyMap<string, Path> {
  const places = new Map<string, Path>();
  const walk = (here: unknown, at: Path): void => {
    const path = printPath(at);
    if (wanted.has(path)) places.set(path, at);
    const inside = Array.isArray(here) ? here.entries() : Object.entries(Object(here));
    if (typeof here === 'object') for (const [step, item] of inside) walk(item, [...at, step]);
  };
  walk(value, []);
  return places;
}
