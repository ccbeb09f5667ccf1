// What is to be keyed out: the taxa with their weights, the characters with the shares of their states, and the prices.
import type { Matrix } from '../matrix.ts';
import { slipTable } from '../slips.ts';
import { EngineError } from '../spec.ts';

/**
 * How a character may be put: `two` leads, its states grouped in the best way; a lead for `each` state; or `either`,
 * whichever serves better, where the author allows more than two leads.
 */
export type Leads = 'two' | 'each' | 'either';

export interface KeyCharacter {
  /** Index of the character where it comes from. */
  readonly character: number;
  /** Number of its states, 2 to 31. */
  readonly states: number;
  /** The states stand in an order, and two leads cut it in one place. */
  readonly ordered: boolean;
  readonly leads: Leads;
  /** What it costs to look, in glances, > 0. */
  readonly cost: number;
  /** Share of readings that are wrong, 0 to below 1. */
  readonly misread: number;
  /** `confused[from][to]`: where a misreading of `from` ends, each row summing to 1. */
  readonly confused: readonly (readonly number[])[];
  /** One for each taxon: the share of its plants that show each state (summing to 1), or where it means nothing. */
  readonly shares: readonly (readonly number[] | 'absent')[];
  /** For each taxon: the share of its plants in each state that does not count for it; they go astray. */
  readonly strays?: readonly (readonly number[] | undefined)[];
  /** Indices of the taxa of which the character is not known; their shares are the key's own background. */
  readonly unknown: ReadonlySet<number>;
}

export interface KeyProblem {
  /** `group`: taxa of one group need not be told apart; without it every taxon is its own. */
  readonly taxa: readonly { readonly weight: number; readonly group?: number }[];
  readonly characters: readonly KeyCharacter[];
  /** Price of a wrong turn, in glances. */
  readonly price: number;
  /** Price of every further state that the shorter lead of a couplet has to name, in glances. */
  readonly naming: number;
  /** A couplet that tells no two taxa apart for certain must be expected to tell this many bits. */
  readonly least: number;
  /**
   * An unordered character with up to this many states left is split in every way; with more, one state against the
   * others or at one place in the order in which the author lists the states.
   */
  readonly everySplit: number;
}

/** What may be left to the keeper of a key; all have a usual value. */
export interface KeyChoices {
  /**
   * A state counts for a taxon when it is at least this common, measured against the taxon's commonest state; plants that
   * show another are led astray, and so priced.
   */
  readonly floor: number;
  readonly price: number;
  readonly naming: number;
  readonly least: number;
  readonly everySplit: number;
  /** How many times a novice's misreadings the people it is for make. */
  readonly times: number;
  /** Only what can be seen in this month, 1 to 12. */
  readonly month?: number;
  /** Whether the people it is for may be asked character `c`; where the matrix proposes it, unless said. */
  readonly asks?: (character: number) => boolean;
  /** How the author lets character `c` be put; in two leads, unless said. */
  readonly leads?: (character: number) => Leads;
}

/**
 * Ours. A wrong turn costs about four looks, the way back included. The floor lets in what a taxon shows usually and leaves
 * out what it shows sometimes.
 */
export const USUAL_CHOICES: KeyChoices = Object.freeze({
  floor: 0.3,
  price: 4,
  naming: 0.05,
  least: 0.3,
  everySplit: 6,
  times: 1,
});

/** The problem that a compiled matrix poses. Taxa keep their indices; characters that cannot be asked are left out. */
export function problemOf(matrix: Matrix, given: Partial<KeyChoices> = {}): KeyProblem {
  const choices: KeyChoices = { ...USUAL_CHOICES, ...given };
  const { spec } = matrix;
  const characters: KeyCharacter[] = [];
  spec.characters.forEach((character, c) => {
    if (!(choices.asks?.(c) ?? character.proposed)) return;
    if (choices.month !== undefined && character.months && !character.months.includes(choices.month)) return;
    const unknown = new Set<number>();
    const strays: (readonly number[] | undefined)[] = [];
    const shares = spec.taxa.map((_, t) => {
      if (matrix.applies[c * spec.taxa.length + t] === 0) return 'absent' as const;
      const known = character.traits[t] !== undefined;
      if (!known) unknown.add(t);
      const p = truthOf(matrix, c, t);
      const least = known ? choices.floor * Math.max(...p) : Number.MIN_VALUE;
      const kept = p.map((x) => (x >= least ? x : 0));
      const total = kept.reduce((a, b) => a + b, 0);
      if (total < 1) strays[t] = p.map((x) => (x >= least ? 0 : x));
      return kept.map((x) => x / total);
    });
    const shown = character.states.filter((_, s) => shares.some((p) => p !== 'absent' && (p[s] as number) > 0));
    if (shown.length < 2) return;
    characters.push({
      character: c,
      states: character.states.length,
      ordered: character.kind !== 'choice',
      leads: choices.leads?.(c) ?? 'two',
      cost: character.cost,
      misread: Math.min(matrix.cap[c] as number, character.misread * choices.times),
      confused: slipTable(character),
      shares,
      strays: Array.from(shares, (_, t) => strays[t]),
      unknown,
    });
  });
  return checked({
    taxa: spec.taxa.map(({ weight }) => ({ weight })),
    characters,
    price: choices.price,
    naming: choices.naming,
    least: choices.least,
    everySplit: choices.everySplit,
  });
}

const truthOf = (matrix: Matrix, c: number, t: number): number[] =>
  (matrix.spec.characters[c]?.states ?? []).map(
    (_, s) => matrix.truth[((matrix.firstRow[c] as number) + s) * matrix.hypotheses + t] as number,
  );

/** The same problem. @throws EngineError when it contradicts itself. */
export function checked(problem: KeyProblem): KeyProblem {
  const wrong = (what: string): never => {
    throw new EngineError(`couplets: ${what}`);
  };
  if (problem.taxa.length === 0) wrong('a key needs at least one taxon');
  problem.taxa.forEach(({ weight }, t) => {
    if (!(weight > 0 && weight < Number.POSITIVE_INFINITY)) wrong(`taxon ${t} weighs ${weight}`);
  });
  for (const [name, x] of Object.entries({ price: problem.price, naming: problem.naming, least: problem.least }))
    if (!(x >= 0 && x < Number.POSITIVE_INFINITY)) wrong(`${name} is ${x}`);
  if (!(Number.isInteger(problem.everySplit) && problem.everySplit >= 2 && problem.everySplit <= 12))
    wrong(`everySplit is ${problem.everySplit}, not 2 to 12`);
  for (const { character, states, cost, misread, shares } of problem.characters) {
    if (!(states >= 2 && states <= 31)) wrong(`character ${character} has ${states} states, not 2 to 31`);
    if (!(cost > 0 && cost < Number.POSITIVE_INFINITY)) wrong(`character ${character} costs ${cost}`);
    if (!(misread >= 0 && misread < 1)) wrong(`character ${character} is misread ${misread}`);
    if (shares.length !== problem.taxa.length) wrong(`character ${character} has ${shares.length} traits`);
    shares.forEach((p, t) => {
      if (p === 'absent') return;
      const total = p.reduce((a, b) => a + b, 0);
      if (p.length !== states || p.some((x) => !(x >= 0)) || Math.abs(total - 1) > 1e-9)
        wrong(`character ${character} of taxon ${t}: ${p.length} shares summing to ${total}`);
    });
  }
  return problem;
}
