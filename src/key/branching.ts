// The branching key of a prepared key: built from its matrix, under what is written by hand, as couplets by id.
import {
  type BuiltKey,
  buildKey,
  completed,
  type KeyProblem,
  type NumberedCouplet,
  numbered,
  problemOf,
  type Work,
} from '../engine/couplets/index.ts';
import { type PreparedKey, THERE } from './prepared.ts';
import type { Character, Couplet, Lead, Month, Said, Taxon } from './types.ts';
import { fillable, isHandWritten, writtenCouplets } from './written.ts';

/**
 * Ours, in glances. A wrong turn on paper is noticed at the end of the key if at all, so it costs more than twice what the
 * engine takes for usual. Whoever finds no flower has to follow both ways for a while. With these prices the first couplets
 * ask for the shape of the leaf and the kind of plant.
 */
const WRONG_TURN = 10;
const BOTH_WAYS = 1;
/** More than usual: a key is built seldom, and is used until the next time. */
const WORK: Work = { exact: 4000, search: 150_000, bound: 150_000 };
/** Further characters of one lead, and states of one that are named: more is not read (ours). */
const MOST_ALSO = 3;
const MOST_ALSO_STATES = 5;

export interface BranchingOptions {
  /** Only what can be seen in this month. */
  readonly month?: Month;
  /** Kind of observer, by its id in the key, that it is built for; a novice unless said. */
  readonly observer?: string;
  readonly work?: Partial<Work>;
}

export interface Branching {
  /** Expected effort in what was built, in glances, wrong turns priced in: mean over plants, as common as the key says. */
  readonly effort: number;
  /** No key built in its place needs less. */
  readonly bound: number;
  /** (effort - bound) / bound; 0 when both are 0. */
  readonly gap: number;
  readonly exact: boolean;
  /** Couplets on the longest way, those by hand included, as is everything below. */
  readonly depth: number;
  readonly couplets: number;
  /** Ids of taxa that end together. */
  readonly together: readonly (readonly string[])[];
  readonly key: readonly Couplet[];
}

/** A couplet by hand stands below a built one, and would be lost if that were built anew. */
export class BuriedCoupletError extends Error {
  override readonly name = 'BuriedCoupletError';
  /** Numbers of the couplets by hand that no way of couplets by hand leads to. */
  readonly numbers: readonly number[];
  constructor(numbers: readonly number[]) {
    super(`couplets by hand below built ones: ${numbers.join(', ')}`);
    this.numbers = numbers;
  }
}

/**
 * Builds the couplets of a key. Couplets with a text are by hand and stay as they are; all others are built anew: the
 * whole key when none is by hand, else what lies below leads by hand that go on to a built couplet or end with several
 * taxa. Pure and deterministic; takes seconds for a key of some fifty taxa.
 * @throws BuriedCoupletError
 */
export function branchingOf(prepared: PreparedKey, { month, observer, work = WORK }: BranchingOptions = {}): Branching {
  const { key, matrix } = prepared;
  const problem = priced(
    prepared,
    problemOf(matrix, {
      price: WRONG_TURN,
      times: key.observers.get(observer ?? '') ?? 1,
      ...(month === undefined ? {} : { month }),
    }),
  );
  const hand = key.couplets.filter(isHandWritten);
  const { parts, couplets } = hand.length === 0 ? whole(prepared, problem, work) : under(prepared, problem, hand, work);
  const total = problem.taxa.reduce((sum, { weight }) => sum + weight, 0);
  const mean = (of: 'effort' | 'bound') => parts.reduce((sum, part) => sum + part[of] * part.root.weight, 0) / total;
  const [effort, bound] = [mean('effort'), mean('bound')];
  return {
    effort,
    bound,
    gap: bound > 0 ? effort / bound - 1 : 0,
    exact: parts.every(({ exact }) => exact),
    depth: depthOf(couplets),
    couplets: couplets.length,
    together: togetherIn(couplets),
    key: couplets,
  };
}

/** The same problem with a price on parts that are often not there. (That they take longer to find is in their cost.) */
function priced({ key }: PreparedKey, problem: KeyProblem): KeyProblem {
  return {
    ...problem,
    characters: problem.characters.map((character) => {
      const there = THERE[(key.characters[character.character] as Character).part] ?? 1;
      return { ...character, cost: character.cost + BOTH_WAYS * (1 - there) };
    }),
  };
}

interface Made {
  readonly parts: readonly BuiltKey[];
  readonly couplets: readonly Couplet[];
}

function whole(prepared: PreparedKey, problem: KeyProblem, work: Partial<Work>): Made {
  const built = buildKey(problem, work);
  return { parts: [built], couplets: named(prepared, numbered(problem, built.root)) };
}

function under(prepared: PreparedKey, problem: KeyProblem, hand: readonly Couplet[], work: Partial<Work>): Made {
  const buried = unreached(prepared.key.couplets, hand);
  if (buried.length > 0) throw new BuriedCoupletError(buried);
  const parts = completed(problem, writtenCouplets(prepared, problem, hand, fillable(hand)), work);
  const filled = new Map(parts.map(({ couplet, lead, to }) => [`${couplet} ${lead}`, to]));
  const top = hand.map(
    ({ number, leads }, i): Couplet => ({
      number,
      leads: leads.map((lead, j): Lead => {
        const to = filled.get(`${i} ${j}`);
        return to === undefined ? lead : { ...lead, to: typeof to === 'number' ? to : taxonIds(prepared, to) };
      }),
    }),
  );
  return {
    parts: parts.map(({ key }) => key),
    couplets: [...top, ...parts.flatMap((part) => named(prepared, part.couplets))],
  };
}

/** Couplets by hand that cannot be reached from the start through couplets by hand alone. */
function unreached(all: readonly Couplet[], hand: readonly Couplet[]): number[] {
  const byNumber = new Map(hand.map((couplet) => [couplet.number, couplet]));
  const [first] = all;
  const open = first !== undefined && byNumber.get(first.number) === first ? [first] : [];
  const reached = new Set(open);
  for (const { leads } of reached)
    for (const { to } of leads) {
      const next = typeof to === 'number' ? byNumber.get(to) : undefined;
      if (next !== undefined) reached.add(next);
    }
  return hand.filter((couplet) => !reached.has(couplet)).map(({ number }) => number);
}

function named(prepared: PreparedKey, couplets: readonly NumberedCouplet[]): Couplet[] {
  const said = (c: number, states: readonly number[]): Said => {
    const character = prepared.key.characters[c] as Character;
    return { character: character.id, states: states.map((s) => character.states[s]?.id as string) };
  };
  return couplets.map(({ number, leads, taxa }) => {
    const shown = shownBy(prepared, taxa);
    const long = new Set(
      leads.flatMap(({ further }) =>
        further.flatMap(({ character, states }) => (states.length > MOST_ALSO_STATES ? [character] : [])),
      ),
    );
    return {
      number,
      leads: leads.map(
        ({ character, states, further, to }): Lead => ({
          ...said(character, shown(character, states)),
          also: further
            .filter((one) => !long.has(one.character))
            .slice(0, MOST_ALSO)
            .map((one) => ({ ...said(one.character, one.states), how: one.how })),
          to: typeof to === 'number' ? to : taxonIds(prepared, to),
        }),
      ),
    };
  });
}

/**
 * Of the states of a lead, those that some plant at the couplet is known to show: plants of which the character is not
 * known may show any, and would have a lead name states that nobody will see there.
 */
function shownBy({ key }: PreparedKey, taxa: readonly number[]) {
  return (character: number, states: readonly number[]): readonly number[] => {
    const { id, states: all } = key.characters[character] as Character;
    const known = new Set(
      taxa.flatMap((t) => {
        const trait = key.taxa[t]?.traits.get(id);
        return trait?.kind === 'states' ? trait.states.map(({ state }) => state) : [];
      }),
    );
    const named = states.filter((s) => known.has(all[s]?.id as string));
    return named.length > 0 ? named : states;
  };
}

const taxonIds = ({ key }: PreparedKey, taxa: readonly number[]): string[] =>
  taxa.map((t) => (key.taxa[t] as Taxon).id);

function depthOf(couplets: readonly Couplet[]): number {
  const byNumber = new Map(couplets.map((couplet) => [couplet.number, couplet]));
  const known = new Map<Couplet, number>();
  const depth = (couplet: Couplet): number => {
    const before = known.get(couplet);
    if (before !== undefined) return before;
    // Should the couplets go in a circle, it ends here.
    known.set(couplet, 0);
    const below = couplet.leads.map(({ to }) => {
      const next = typeof to === 'number' ? byNumber.get(to) : undefined;
      return next === undefined ? 0 : depth(next);
    });
    const own = 1 + Math.max(0, ...below);
    known.set(couplet, own);
    return own;
  };
  const [first] = couplets;
  return first === undefined ? 0 : depth(first);
}

function togetherIn(couplets: readonly Couplet[]): string[][] {
  const sets = couplets.flatMap(({ leads }) =>
    leads.flatMap(({ to }) => (typeof to === 'object' && to.length > 1 ? [[...to]] : [])),
  );
  return [...new Map(sets.map((set) => [set.join(), set])).values()];
}
