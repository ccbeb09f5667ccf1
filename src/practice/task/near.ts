// Which plants a plant is taken for: those that the key names, then those that show most of the same.
import type { PreparedKey } from '../../key/index.ts';

/** Ids of other taxa among `ids`: named look-alikes first, then the most alike. */
export function nearest(prepared: PreparedKey, taxon: string, ids: readonly string[]): string[] {
  const named = new Set(
    prepared.key.lookalikes.filter(({ taxa }) => taxa.includes(taxon)).flatMap(({ taxa }) => [...taxa]),
  );
  return ids
    .filter((id) => id !== taxon && prepared.taxonIndex.has(id))
    .map((id) => ({ id, named: named.has(id), alike: alike(prepared, taxon, id) }))
    .sort((a, b) => Number(b.named) - Number(a.named) || b.alike - a.alike || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
}

/** Mean share of states in common over the characters that the key knows of both, 0 to 1. */
export function alike({ matrix, taxonIndex }: PreparedKey, a: string, b: string): number {
  const [one, other] = [taxonIndex.get(a) as number, taxonIndex.get(b) as number];
  let sum = 0;
  let n = 0;
  matrix.spec.characters.forEach((character, c) => {
    const [x, y] = [character.traits[one], character.traits[other]];
    if (!x || !y || x.kind === 'absent' || y.kind === 'absent') return;
    n++;
    for (let s = 0; s < character.states.length; s++) {
      const row = ((matrix.firstRow[c] as number) + s) * matrix.hypotheses;
      sum += Math.min(matrix.truth[row + one] as number, matrix.truth[row + other] as number);
    }
  });
  return n === 0 ? 0 : sum / n;
}
