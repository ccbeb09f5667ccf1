// Where something stands in a key's files, and how what stands there is shown in a message.

/** Steps from the top of a file down to a value: names of fields and indices of lists. */
export type Path = readonly (string | number)[];

/** Longest piece of the file's own text that a message repeats. */
const EXCERPT = 60;

/** `taxa[3].traits.leaf-shape.usually[0]`; names that are not plain words stand in quotes. The top is the empty text. */
export function printPath(path: Path): string {
  return path
    .map((step, i) => {
      if (typeof step === 'number') return `[${step}]`;
      if (!/^[$\w-]{1,80}$/.test(step)) return `[${show(step)}]`;
      return i === 0 ? step : `.${step}`;
    })
    .join('');
}

/** A value for a message: cut, on one line, and without signs that could disguise the line it stands in. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value !== 'string') return String(value);
  const signs = [...value.slice(0, 2 * EXCERPT + 2)];
  const cut = signs.length > EXCERPT ? `${signs.slice(0, EXCERPT).join('')}…` : signs.join('');
  return `"${cut.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '\uFFFD')}"`;
}

/** `a, b, c`, cut after twenty. */
export function list(words: Iterable<string>): string {
  const all = [...words];
  return all.length > 20 ? `${all.slice(0, 20).join(', ')} and ${all.length - 20} more` : all.join(', ');
}
