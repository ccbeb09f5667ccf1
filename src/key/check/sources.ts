import type { Term } from '../album/types.ts';
import { list } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';

/** Sources that nothing names. */
export function checkSourcesUsed(key: Key, problems: Problems, glossary: readonly Term[] = []): void {
  const used = new Set([
    ...key.taxa.flatMap(({ statusSource, traits }) => [
      ...statusSource,
      ...[...traits.values()].flatMap(({ source }) => source),
    ]),
    ...glossary.flatMap(({ source }) => source),
    ...key.lookalikes.flatMap(({ source }) => source),
    ...[...key.guidance.values()].flatMap(({ statements }) => statements.flatMap(({ source }) => source)),
  ]);
  const unused = [...key.sources.keys()].filter((id) => !used.has(id));
  if (unused.length === 0) return;
  problems.warn(
    'sources.json',
    ['sources'],
    'unused-source',
    'sources that another file names',
    `${unused.length} that none does: ${list(unused)}`,
  );
}
