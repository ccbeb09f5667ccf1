import type { Problems } from '../problem.ts';
import { separationOf } from '../separation.ts';
import type { Key } from '../types.ts';

/** Look-alike pairs that the traits do not bear out. */
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
}

const isKnown = (trait: { readonly kind: string } | undefined) =>
  trait !== undefined && trait.kind !== 'not-applicable';
