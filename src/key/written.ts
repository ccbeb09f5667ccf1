// Couplets of a key folder in the engine's terms: by index, and which of them somebody wrote.
import type { Goal, KeyProblem, WrittenCouplet, WrittenLead } from '../engine/couplets/index.ts';
import type { PreparedKey } from './prepared.ts';
import type { Character, Couplet, Lead } from './types.ts';

/** Whoever writes a couplet words at least one of its leads; built ones are worded from the character. */
export const isHandWritten = ({ leads }: Pick<Couplet, 'leads'>): boolean =>
  leads.some(({ text }) => text !== undefined);

/**
 * Which leads are still to be built, among couplets by hand: those that go on to a couplet that is not by hand, or end
 * with several taxa, as far as they say by character and states which plants follow them.
 */
export function fillable(hand: readonly Couplet[]): (lead: Lead) => boolean {
  const numbers = new Set(hand.map(({ number }) => number));
  return ({ character, to }) => (typeof to === 'number' ? !numbers.has(to) : to.length > 1 && character !== undefined);
}

/** `toBuild` says which leads count as still to be built. */
export function writtenCouplets(
  prepared: PreparedKey,
  problem: KeyProblem,
  couplets: readonly Couplet[],
  toBuild: (lead: Lead) => boolean,
): WrittenCouplet[] {
  const { key, characterIndex, taxonIndex } = prepared;
  const inProblem = new Map(problem.characters.map(({ character }, c) => [character, c]));
  const lead = (one: Lead): WrittenLead => {
    const goal: Goal = toBuild(one)
      ? 'build'
      : typeof one.to === 'number'
        ? { couplet: one.to }
        : { taxa: one.to.map((id) => taxonIndex.get(id) as number) };
    const index = characterIndex.get(one.character ?? '');
    const character = index === undefined ? undefined : inProblem.get(index);
    if (index === undefined || character === undefined) return { to: goal };
    const ids = (key.characters[index] as Character).states.map(({ id }) => id);
    return { character, states: (one.states ?? []).map((id) => ids.indexOf(id)), to: goal };
  };
  return couplets.map(({ number, leads }) => ({ number, leads: leads.map(lead) }));
}
