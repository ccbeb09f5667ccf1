import { list } from '../path.ts';
import type { Problems } from '../problem.ts';
import { apartAmong, separationOf } from '../separation.ts';
import type { Key, Taxon } from '../types.ts';

/** Most pairs that are told one by one. */
const MOST_PAIRS = 60;
/** Most pairs, of either kind, that are looked at closely to find those: one pair of thousands is as good as another. */
const MOST_COMPARED = 1000;

interface Pair {
  readonly a: Taxon;
  readonly b: Taxon;
  /** Of the second. */
  readonly index: number;
}

/** Pairs of taxa that no character tells apart, those of an invasive and a native plant first. */
export function checkSeparation(key: Key, problems: Problems): void {
  const { count, dangerous, others } = together(key);
  const pairs = [dangerous, others].flatMap((some) =>
    some.map((pair) => ({ ...pair, ...nearness(pair, key) })).sort((p, q) => p.almost.length - q.almost.length),
  );
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
  if (count > MOST_PAIRS) {
    const rest = count - MOST_PAIRS;
    problems.warn(
      'taxa.json',
      ['taxa'],
      'not-separated',
      'characters that tell all taxa apart',
      `${rest} more pairs that none does`,
    );
  }
}

/** How many such pairs there are, and the first of them. */
function together({ taxa, characters }: Key): { count: number; dangerous: readonly Pair[]; others: readonly Pair[] } {
  const apart = apartAmong(taxa, characters);
  const dangerous: Pair[] = [];
  const others: Pair[] = [];
  let count = 0;
  taxa.forEach((a, i) => {
    for (let index = i + 1; index < taxa.length; index++) {
      if (apart(i, index)) continue;
      count++;
      const b = taxa[index] as Taxon;
      const kind = isDanger(a, b) ? dangerous : others;
      if (kind.length < MOST_COMPARED) kind.push({ a, b, index });
    }
  });
  return { count, dangerous, others };
}

function nearness({ a, b }: Pair, { characters }: Key): { almost: readonly string[]; known: number } {
  const states = characters.map((character) => ({ id: character.id, is: separationOf(a, b, character) }));
  return {
    almost: states.filter(({ is }) => is === 'almost').map(({ id }) => id),
    known: states.filter(({ is }) => is !== 'unknown').length,
  };
}

const isDanger = (a: Taxon, b: Taxon): boolean =>
  (a.status === 'invasive' && b.status === 'native') || (a.status === 'native' && b.status === 'invasive');
