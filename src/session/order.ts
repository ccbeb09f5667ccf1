// In which order the answers of one question serve a person best.
import type { Identification, PreparedKey } from '../key/index.ts';

/**
 * Ids of the character's states, the one that the plants still in question show most likely first: by
 * sum over taxa of P(taxon | answers) P(state | taxon); equal ones in the key's own order. Scales and measures
 * keep the key's order, which is part of their meaning.
 */
export function stateOrder(prepared: PreparedKey, identification: Identification, character: string): string[] {
  const index = prepared.characterIndex.get(character) ?? -1;
  const known = prepared.key.characters[index];
  if (known === undefined) return [];
  if (known.kind !== 'choice') return known.states.map((state) => state.id);
  const { firstRow, truth, hypotheses } = prepared.matrix;
  const weight = known.states.map((_, s) => {
    const row = ((firstRow[index] as number) + s) * hypotheses;
    return identification.standing.reduce(
      (sum, { taxon, probability }) =>
        sum + probability * (truth[row + (prepared.taxonIndex.get(taxon) as number)] as number),
      0,
    );
  });
  return known.states
    .map((state, s) => ({ id: state.id, weight: weight[s] as number }))
    .sort((a, b) => b.weight - a.weight)
    .map(({ id }) => id);
}
