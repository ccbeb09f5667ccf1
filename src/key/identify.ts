// From an inquiry to everything that may be said of it, by id: what the command prints and the page shows.
import {
  type Doubt,
  focusOf,
  meanTimes,
  nearestTimes,
  posterior,
  propose,
  rank,
  reasons,
  secondLooks,
  type VerdictKind,
  verdictOf,
} from '../engine/index.ts';
import { engineAnswers, type Inquiry } from './answers.ts';
import type { PreparedKey } from './prepared.ts';
import type { Character, Effort, Taxon } from './types.ts';

/** How one taxon stands. `for`, `against` and `unseen` are ids of characters, weightiest first. */
export interface Standing {
  readonly taxon: string;
  readonly name: string;
  readonly probability: number;
  readonly for: readonly string[];
  readonly against: readonly string[];
  /** Known of this taxon, to be seen in this month, and not answered. */
  readonly unseen: readonly string[];
}

export interface RivalCheck {
  readonly taxon: string;
  /** Answered characters that tell the leading taxon from this look-alike. */
  readonly told: readonly string[];
  readonly needs: number;
}

export interface Identification {
  readonly key: { readonly id: string; readonly version: string };
  /** Every taxon, likeliest first; with `outside` the probabilities sum to 1. */
  readonly standing: readonly Standing[];
  /** Probability that the plant is not in the key. */
  readonly outside: number;
  /** Probability that the plant is one of concern. */
  readonly concern: number;
  readonly verdict: {
    readonly kind: VerdictKind;
    readonly taxa: readonly string[];
    /** What keeps the leading plant from being settled. */
    readonly doubts: readonly Doubt[];
    readonly rivals: readonly RivalCheck[];
  };
  /**
   * Answers most worth a second look, first one first. `gain` is the chance (0 to 1) that looking again changes the
   * answer: that it was misread, as all the others let it be judged.
   */
  readonly recheck: readonly { readonly character: string; readonly gain: number }[];
  /** What to look at next, best first; bits of information expected about what is still open. */
  readonly next: readonly { readonly character: string; readonly bits: number; readonly effort: Effort }[];
}

/** Runs the engine on an inquiry. Pure: the same inquiry gives the same identification. */
export function identify(prepared: PreparedKey, inquiry: Inquiry): Identification {
  const { key, matrix } = prepared;
  const observer = key.observers.get(inquiry.observer) ?? 1;
  const from = posterior(matrix, engineAnswers(prepared, inquiry.answers), observer);
  const verdict = verdictOf(from, key.thresholds);
  const why = reasons(from);
  const answered = new Set(inquiry.answers.map((answer) => answer.character));
  const passed = new Set([...answered].map((id) => prepared.characterIndex.get(id) as number));
  const times = nearestTimes(matrix, observer, meanTimes(from));
  const proposals = propose(prepared.gains, matrix, focusOf(from, verdict), times, inquiry.month, passed);
  const characterId = (index: number) => (key.characters[index] as Character).id;
  const taxonId = (index: number) => (key.taxa[index] as Taxon).id;
  return {
    key: { id: key.id, version: key.version },
    standing: rank(matrix, from.p).map((t): Standing => {
      const taxon = key.taxa[t] as Taxon;
      const { for: speaksFor, against } = why(t);
      const unseen = key.characters.filter(
        (c) =>
          taxon.traits.has(c.id) &&
          taxon.traits.get(c.id)?.kind !== 'not-applicable' &&
          c.asked &&
          c.effort !== 'dig' &&
          c.months.includes(inquiry.month) &&
          !answered.has(c.id),
      );
      return {
        taxon: taxon.id,
        name: taxon.name,
        probability: from.p[t] as number,
        for: speaksFor.map((w) => characterId(w.character)),
        against: against.map((w) => characterId(w.character)),
        unseen: unseen.map((c) => c.id),
      };
    }),
    outside: verdict.outside,
    concern: verdict.concern,
    verdict: {
      kind: verdict.kind,
      taxa: verdict.taxa.map(taxonId),
      doubts: verdict.doubts,
      rivals: verdict.rivals.map(({ taxon, told, needs }) => ({
        taxon: taxonId(taxon),
        told: told.map(characterId),
        needs,
      })),
    },
    recheck: secondLooks(from).map(({ character, chance }) => ({ character: characterId(character), gain: chance })),
    next: proposals.map(({ character, bits }) => ({
      character: characterId(character),
      bits,
      effort: (key.characters[character] as Character).effort,
    })),
  };
}
