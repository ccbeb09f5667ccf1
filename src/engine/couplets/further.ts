// Which other characters split the taxa under a couplet in the same way, so that a lead can say more than one thing.
import type { KeyCharacter, KeyProblem } from './problem.ts';
import type { KeyNode } from './tree.ts';

/** One more thing that a lead can say. */
export interface Further {
  /** Index of the character where the problem's characters come from. */
  readonly character: number;
  /** Its states among the plants that follow this lead. */
  readonly states: readonly number[];
  /** `always`: of every plant that is known; `usually`: of at least as many as AGREES. */
  readonly how: 'always' | 'usually';
}

/** A character splits the same way when it sends at least this share of the plants where the main one does (ours). */
const AGREES = 0.9;
/** ... and is known of at least this share of the plants in each lead (ours). */
const KNOWN = 0.75;
/** ... and need not name more states than this in its shorter lead (ours). */
const NAMED = 4;

/**
 * For each character that splits the taxa under a couplet as its main one does: what each lead may say of it. Ordered by
 * how often a novice who goes by it alone comes out right, times what they see of it for one glance of effort. Every state
 * goes to the lead in which most of the plants show it. Characters that were `asked` on the way are done with.
 */
export function furtherOf(
  problem: KeyProblem,
  node: KeyNode,
  asked: ReadonlySet<number>,
): readonly (readonly Further[])[] {
  const found: { leads: Further[]; worth: number; c: number }[] = [];
  problem.characters.forEach((character, c) => {
    if (c === node.character || asked.has(c)) return;
    const agreed = agreement(problem, character, node);
    if (agreed === undefined || agreed.share < AGREES) return;
    if (Math.min(...agreed.states.map((states) => states.length)) > NAMED) return;
    const how = agreed.share > 1 - 1e-9 ? ('always' as const) : ('usually' as const);
    const leads = agreed.states.map((states) => ({ character: character.character, states, how }));
    found.push({ leads, worth: (agreed.share * (1 - character.misread)) / character.cost, c });
  });
  return found.sort((a, b) => b.worth - a.worth || a.c - b.c).map(({ leads }) => leads);
}

/** Share of the plants whose states lie in the lead that they follow, and the states of each lead; undefined if unfit. */
function agreement(
  problem: KeyProblem,
  { states, shares, strays, unknown }: KeyCharacter,
  node: KeyNode,
): { share: number; states: number[][] } | undefined {
  const main = problem.characters[node.character as number] as KeyCharacter;
  const mass = node.leads.map(() => new Float64Array(states));
  const counts = new Uint8Array(states);
  for (const [b, { to }] of node.leads.entries()) {
    let known = 0;
    for (const { taxon, weight } of to.taxa) {
      const p = shares[taxon];
      if (p === undefined || p === 'absent') return undefined;
      // A taxon of which the main character is unknown comes out in every lead and speaks for none.
      if (main.unknown.has(taxon)) {
        known += weight;
        continue;
      }
      if (unknown.has(taxon)) continue;
      known += weight;
      const stray = strays?.[taxon];
      const kept = 1 - (stray?.reduce((sum, x) => sum + x, 0) ?? 0);
      for (let s = 0; s < states; s++) {
        const x = kept * (p[s] as number) + (stray?.[s] ?? 0);
        if ((p[s] as number) > 0) counts[s] = 1;
        const of = mass[b] as Float64Array;
        of[s] = (of[s] as number) + weight * x;
      }
    }
    if (known < KNOWN * to.weight) return undefined;
  }
  const out: number[][] = node.leads.map(() => []);
  let right = 0;
  let all = 0;
  for (let s = 0; s < states; s++) {
    const weights = mass.map((of) => of[s] as number);
    const most = weights.reduce((best, w, b) => (w > (weights[best] as number) ? b : best), 0);
    all += weights.reduce((sum, w) => sum + w, 0);
    right += weights[most] as number;
    if (counts[s] === 1) (out[most] as number[]).push(s);
  }
  return all > 0 && out.every((of) => of.length > 0) ? { share: right / all, states: out } : undefined;
}
