// A key of which the top is written by hand and the rest is built.
import { EngineError } from '../spec.ts';
import { type NumberedCouplet, numbered } from './numbering.ts';
import type { KeyCharacter, KeyProblem } from './problem.ts';
import { type BuiltKey, buildKey, type Work } from './search.ts';
import { type Arrival, checkWritten, type WrittenCouplet } from './written.ts';

/** What was built below one written lead. */
export interface Built {
  /** Places of the written couplet and its lead in their lists, from 0. */
  readonly couplet: number;
  readonly lead: number;
  readonly key: BuiltKey;
  /** Numbered on from the highest number in use; empty when there is nothing left to tell apart. */
  readonly couplets: readonly NumberedCouplet[];
  /** Where the lead now goes. */
  readonly to: number | readonly number[];
}

/**
 * Builds a key below every written lead that is marked to be built, for the plants that get there. Where several ways
 * lead to it, what any of them leaves possible counts.
 * @throws EngineError when the written couplets go in a circle or on to a couplet that is not there.
 */
export function completed(problem: KeyProblem, couplets: readonly WrittenCouplet[], work: Partial<Work> = {}): Built[] {
  const { faults, arrivals } = checkWritten(problem, couplets);
  const broken = faults.find(({ kind }) => kind === 'dangling' || kind === 'cycle' || kind === 'same-number');
  if (broken) throw new EngineError(`couplets: ${JSON.stringify(broken)}`);
  let last = Math.max(0, ...couplets.map(({ number }) => number));
  const leads = new Map<string, Arrival[]>();
  for (const arrival of arrivals) {
    const id = `${arrival.couplet} ${arrival.lead}`;
    leads.set(id, [...(leads.get(id) ?? []), arrival]);
  }
  return [...leads.values()].map((ways): Built => {
    const { couplet, lead } = ways[0] as Arrival;
    const { part, taxa } = below(problem, ways);
    const key = buildKey(part, work);
    const shift = last;
    const name = (t: number) => taxa[t] as number;
    const own = numbered(part, key.root).map(({ number, from, taxa: here, leads: of }) => ({
      number: number + shift,
      from: from === 0 ? (couplets[couplet]?.number as number) : from + shift,
      taxa: here.map(name),
      leads: of.map((one) => ({ ...one, to: typeof one.to === 'number' ? one.to + shift : one.to.map(name) })),
    }));
    last += own.length;
    return { couplet, lead, key, couplets: own, to: own[0]?.number ?? key.root.taxa.map(({ taxon }) => name(taxon)) };
  });
}

/** The problem that is left where these ways end: the taxa that get there, with what they may still show. */
function below(problem: KeyProblem, ways: readonly Arrival[]): { part: KeyProblem; taxa: number[] } {
  const taxa = [...new Set(ways.flatMap((way) => way.taxa))].sort((a, b) => a - b);
  const open = problem.characters.map((_, c) => ways.reduce((bits, way) => bits | (way.states[c] as number), 0));
  const weights = taxa.map((t) => problem.taxa[t]?.weight as number);
  const characters = problem.characters.map((character, c): KeyCharacter => {
    const shares = taxa.map((t, k) => {
      const p = character.shares[t] as readonly number[] | 'absent';
      if (p === 'absent') return p;
      const kept = p.map((x, s) => ((open[c] as number) & (1 << s) ? x : 0));
      const total = kept.reduce((a, b) => a + b, 0);
      // A taxon that a lead of words only let in, against what it shows, keeps what it shows.
      if (total === 0) return p;
      weights[k] = (weights[k] as number) * total;
      return kept.map((x) => x / total);
    });
    const unknown = new Set(taxa.map((t, k) => (character.unknown.has(t) ? k : -1)).filter((k) => k >= 0));
    const { strays, ...rest } = character;
    return { ...rest, shares, unknown, ...(strays ? { strays: taxa.map((t) => strays[t]) } : {}) };
  });
  const part = {
    ...problem,
    taxa: taxa.map((t, k) => ({ ...problem.taxa[t], weight: weights[k] as number })),
    characters,
  };
  return { part, taxa };
}
