import { list } from '../path.ts';
import type { Problems } from '../problem.ts';
import { separationOf } from '../separation.ts';
import type { Key, Taxon } from '../types.ts';

/** Most pairs that are told one by one. */
const MOST_PAIRS = 60;

/** Pairs of taxa that no character tells apart, those of an invasive and a native plant first. */
export function checkSeparation(key: Key, problems: Problems): void {
  const pairs = key.taxa.flatMap((a, i) =>
    key.taxa.slice(i + 1).flatMap((b, j) => {
      if (key.characters.some((character) => separationOf(a, b, character) === 'apart')) return [];
      const states = key.characters.map((character) => ({ id: character.id, is: separationOf(a, b, character) }));
      const almost = states.filter(({ is }) => is === 'almost').map(({ id }) => id);
      const known = states.filter(({ is }) => is !== 'unknown').length;
      return [{ a, b, index: i + 1 + j, almost, known }];
    }),
  );
  pairs.sort((p, q) => danger(q.a, q.b) - danger(p.a, p.b) || p.almost.length - q.almost.length);
  for (const { a, b, index, almost, known } of pairs.slice(0, MOST_PAIRS)) {
    const nearly = almost.length === 0 ? 'none even almost' : `${almost.length} almost (${list(almost)})`;
    problems.warn(
      'taxa.json',
      ['taxa', index],
      'not-separated',
      `a character that tells ${b.name} (${b.status}) from ${a.name} (${a.status})`,
      `none of the ${known} known of both; ${nearly}`,
    );
  }
  if (pairs.length > MOST_PAIRS) {
    const rest = pairs.length - MOST_PAIRS;
    problems.warn(
      'taxa.json',
      ['taxa'],
      'not-separated',
      'characters that tell all taxa apart',
      `${rest} more pairs that none does`,
    );
  }
}

const danger = (a: Taxon, b: Taxon) =>
  Number((a.status === 'invasive' && b.status === 'native') || (a.status === 'native' && b.status === 'invasive'));
