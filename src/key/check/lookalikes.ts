import type { Problems } from '../problem.ts';
import { separationOf } from '../separation.ts';
import type { Key, Lookalike } from '../types.ts';

/** Look-alike pairs that the traits do not bear out, and invasive plants without a native look-alike. */
export function checkLookalikesInMatrix(key: Key, problems: Problems): void {
  const taxa = new Map(key.taxa.map((taxon) => [taxon.id, taxon]));
  const characters = new Map(key.characters.map((character) => [character.id, character]));
  key.lookalikes.forEach((pair, i) => {
    const [a, b] = pair.taxa.map((id) => taxa.get(id));
    pair.separate.forEach(({ character: id, how }, j) => {
      const character = characters.get(id);
      if (!a || !b || !character) return;
      const separation = separationOf(a, b, character);
      if (separation === 'apart' || (how === 'usually' && (separation === 'almost' || separation === 'partly'))) return;
      const found = {
        unknown: `nothing to compare: ${[a, b]
          .filter(({ traits }) => !isKnown(traits.get(id)))
          .map(({ name }) => name)
          .join(' and ')} unknown`,
        almost: 'traits that overlap in their exceptions',
        partly: 'traits that overlap in what is usual',
        alike: 'traits that overlap for the most part',
      }[separation];
      problems.warn(
        'taxa.json',
        ['lookalikes', i, 'separate', j],
        'same-states',
        `traits in ${id} that ${how} tell ${a.name} from ${b.name}`,
        found,
      );
    });
  });
  key.taxa.forEach(({ id, name, status }, i) => {
    if (status !== 'invasive') return;
    const other = ({ taxa: [one, two] }: Lookalike) => taxa.get(one === id ? two : one);
    if (key.lookalikes.some((pair) => pair.taxa.includes(id) && other(pair)?.status === 'native')) return;
    problems.warn(
      'taxa.json',
      ['taxa', i],
      'no-native-lookalike',
      `a native look-alike of ${name}, an invasive plant`,
      'none',
    );
  });
}

const isKnown = (trait: { readonly kind: string } | undefined) =>
  trait !== undefined && trait.kind !== 'not-applicable';
