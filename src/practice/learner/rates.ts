// Shares with what is known of them, and how often a person misreads each character.
import { betaQuantile, USUAL_WEIGHT } from '../../engine/learn/index.ts';
import type { PreparedKey, Sureness } from '../../key/index.ts';
import { bearsOut, UNSURE } from '../judge/judge.ts';
import { SpecimenError, shownBy } from '../specimen/specimen.ts';
import type { Attempt, Rate } from '../types.ts';

/** Lower and upper tail of a 95 % interval. */
const TAIL = 0.025;

/** A share after counting, with a 95 % interval: Beta(prior + counts). The prior is even when left out. */
export function rateOf(count: number, n: number, prior: readonly [number, number] = [1, 1]): Rate {
  const [a, b] = [prior[0] + count, prior[1] + n - count];
  return { n, count, mean: a / (a + b), low: betaQuantile(TAIL, a, b), high: betaQuantile(1 - TAIL, a, b) };
}

/** What was read of one character, and whether it was right. */
export interface Read {
  readonly character: string;
  readonly shown: string;
  readonly said: readonly string[];
  readonly right: boolean;
  /** `sure` where a file does not say. */
  readonly sureness: Sureness;
}

/** Every reading in the attempts of which the answer is known: single ones, and those on the way of a run. */
export function readingsIn(prepared: PreparedKey, attempts: readonly Attempt[]): Read[] {
  return attempts.flatMap((attempt): Read[] => {
    const { kind, character, truth, said, right, specimen, sureness = 'sure', trail = [] } = attempt;
    if (kind === 'read')
      return character === undefined || said === UNSURE || !prepared.characterIndex.has(character)
        ? []
        : [{ character, shown: truth, said: [said], right, sureness }];
    if (kind !== 'run') return [];
    const shows = seen(prepared, attempt);
    return trail.flatMap((answer): Read[] => {
      const good = bearsOut(prepared, specimen.taxon, shows, answer);
      const shown = shows.get(answer.character);
      if (good === undefined || shown === undefined || 'skipped' in answer) return [];
      const said = 'states' in answer ? answer.states : [];
      return [{ character: answer.character, shown, said, right: good, sureness: answer.sureness }];
    });
  });
}

/** What the specimen of an attempt shows; nothing where the key no longer has the plant. */
function seen({ key }: PreparedKey, { specimen }: Attempt): ReadonlyMap<string, string> {
  try {
    return shownBy(key, specimen);
  } catch (error) {
    if (error instanceof SpecimenError) return new Map();
    throw error;
  }
}

/**
 * Share of readings of each character that were wrong. What the key says of novices counts as so many readings (see
 * USUAL_WEIGHT), so that three readings make nobody sure of anything. Only of characters that were read.
 */
export function readingRates(prepared: PreparedKey, attempts: readonly Attempt[]): ReadonlyMap<string, Rate> {
  const counts = new Map<string, { n: number; wrong: number }>();
  for (const { character, right } of readingsIn(prepared, attempts)) {
    const { n, wrong } = counts.get(character) ?? { n: 0, wrong: 0 };
    counts.set(character, { n: n + 1, wrong: wrong + (right ? 0 : 1) });
  }
  return new Map(
    prepared.key.characters.flatMap(({ id, misread }) => {
      const count = counts.get(id);
      if (count === undefined) return [];
      const prior = [misread * USUAL_WEIGHT, (1 - misread) * USUAL_WEIGHT] as const;
      return [[id, rateOf(count.wrong, count.n, prior)]];
    }),
  );
}
