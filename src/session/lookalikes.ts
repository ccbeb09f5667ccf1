// A plant's look-alikes in the key: which have been put to the test, and what would still tell each apart.
import type { Taxon } from '../key/index.ts';
import { type Feature, features } from './features.ts';
import type { Snapshot } from './state.ts';

/** One thing to look at that tells two look-alikes apart. */
export interface Check {
  readonly feature: Feature;
  /** What to look for, as the key's author wrote it. */
  readonly words: string;
}

export interface LookalikeOf {
  readonly taxon: Taxon;
  /** Probability of the look-alike. */
  readonly probability: number;
  /** Answered characters that tell it from the plant, and how many are needed; only for the plant that leads. */
  readonly told: readonly string[];
  readonly needs: number;
  readonly tested: boolean;
  /** What can still be looked at comes first, then the author's order. A fact nobody is asked for is left out. */
  readonly checks: readonly Check[];
}

/** The look-alikes that the key names for a taxon: those not yet put to the test first, then the likeliest. */
export function lookalikesOf(snapshot: Snapshot, taxon: string): LookalikeOf[] {
  const { prepared, identification } = snapshot;
  const byId = new Map(features(snapshot).flatMap((group) => group.features.map((one) => [one.character.id, one])));
  const held = new Map(identification.standing.map((one) => [one.taxon, one.probability]));
  const leads = identification.standing[0]?.taxon === taxon;
  const rivals = new Map(leads ? identification.verdict.rivals.map((rival) => [rival.taxon, rival]) : []);
  return prepared.key.lookalikes
    .flatMap(({ taxa: [a, b], needs, separate }): LookalikeOf[] => {
      const other = a === taxon ? b : b === taxon ? a : undefined;
      const known = other === undefined ? undefined : prepared.key.taxa[prepared.taxonIndex.get(other) ?? -1];
      if (known === undefined) return [];
      const told = rivals.get(known.id)?.told ?? [];
      const checks = separate.flatMap(({ character, words }): Check[] => {
        const feature = byId.get(character);
        return feature ? [{ feature, words }] : [];
      });
      return [
        {
          taxon: known,
          probability: held.get(known.id) ?? 0,
          told,
          needs,
          tested: leads && told.length >= needs,
          checks: [...checks].sort((one, two) => Number(isOpen(two)) - Number(isOpen(one))),
        },
      ];
    })
    .sort((one, two) => Number(one.tested) - Number(two.tested) || two.probability - one.probability);
}

/** Whether the check can be made now: not yet answered (skipped is not answered), seen this month, no digging. */
export const isOpen = ({ feature }: Check): boolean => feature.mark === 'open' || feature.mark === 'skipped';
