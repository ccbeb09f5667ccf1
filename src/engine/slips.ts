// How readings go wrong: where a misreading of one state ends, and how often readings are wrong at all.
import { type CharacterSpec, SURENESS, type Sureness } from './spec.ts';

/** On a scale a slip lands most often on the next state; each further step is this many times rarer (ours). */
const PER_STEP = 0.25;

/**
 * Named mix-ups together take at most this share of the misreadings of a state: the rest stays spread over the other
 * states, so that no answer can exclude a plant for good (ours).
 */
const NAMED_AT_MOST = 0.85;

/**
 * `table[from][to]`: where a misreading of `from` ends; every row sums to 1 over the other states. Named mix-ups take
 * their share, the rest is spread over all other states: evenly for a choice (as the golden tables have it), by nearness
 * for scales and classes of size.
 */
export function slipTable(character: CharacterSpec): readonly (readonly number[])[] {
  const S = character.states.length;
  return character.states.map((_, from) => {
    const near = new Array<number>(S).fill(0).map((_zero, to) => {
      if (to === from) return 0;
      return character.kind === 'choice' ? 1 : PER_STEP ** (Math.abs(to - from) - 1);
    });
    const spread = near.reduce((x, y) => x + y, 0);
    const named = new Array<number>(S).fill(0);
    for (const { a, b, share } of character.mixups ?? []) {
      if (a === from) named[b] = (named[b] as number) + share;
      if (b === from) named[a] = (named[a] as number) + share;
    }
    const stated = named.reduce((x, y) => x + y, 0);
    const taken = Math.min(stated, NAMED_AT_MOST);
    return near.map(
      (n, to) =>
        (spread > 0 ? ((1 - taken) * n) / spread : 0) + (stated > 0 ? (taken * (named[to] as number)) / stated : 0),
    );
  });
}

/**
 * The rate of slips at which a reading stops speaking for what it says: 1 / (1 + the worst confusion), which with even
 * confusions is (S - 1) / S. Rates are held to it, so that an answer which a taxon always shows never lowers it against
 * one that never shows it. With `said` among several ticked states that holds while
 * 1 - e >= e (table[from][said] + sum over the others ticked of table[from][to] - table[said][to]).
 */
export function slipCap(table: readonly (readonly number[])[]): number {
  let worst = 0;
  table.forEach((confused, from) => {
    table.forEach((own, said) => {
      if (said === from) return;
      const others = confused.reduce(
        (sum, share, to) => (to === said ? sum : sum + Math.max(0, share - (own[to] as number))),
        0,
      );
      worst = Math.max(worst, (confused[said] as number) + others);
    });
  });
  return 1 / (1 + worst);
}

/** The rate of slips of one answer: the usual rate, times the observer's, times what the stated sureness says. */
export function slipRate(misread: number, cap: number, times: number, sureness: Sureness): number {
  return Math.min(cap, misread * times * SURENESS[sureness]);
}
