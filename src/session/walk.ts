// Where a person stands in the key's couplets, read from the trail: nothing but the answers decides which way was taken.
import { type Character, type KeyAnswer, type PreparedKey, toCanonical, type Unit } from '../key/index.ts';
import { type Branch, type Fork, type Forks, forkAt, heaviest, weights } from './forks.ts';

/** What was said at a couplet that no answer on the trail can tell: a lead without a character, or one passed over. */
export interface Turn {
  readonly couplet: number;
  /** Undefined: could not tell. */
  readonly lead?: number;
}

/** A place to carry on from: a couplet, or with `lead` beyond it. */
export interface Place {
  readonly couplet: number;
  readonly lead?: number;
}

/** One couplet that was walked through. */
export interface Step {
  readonly fork: Fork;
  /** Index of the lead that was walked into. */
  readonly lead: number;
  /** The other leads stay as good: the person could not tell, or what was said fits several. */
  readonly open: boolean;
  /** Weight of what comes out below each lead: probabilities. */
  readonly weights: readonly number[];
}

export interface Walk {
  /** From the first couplet on. */
  readonly path: readonly Step[];
  /** The couplet that is asked next; undefined at the end of the key. */
  readonly at: Fork | undefined;
  /** Ids of the taxa it came out at; empty while a couplet is asked. */
  readonly taxa: readonly string[];
}

export interface Walked {
  readonly trail: readonly KeyAnswer[];
  readonly turns: readonly Turn[];
  readonly from?: Place | undefined;
}

/** @param p Probabilities by index of taxon. */
export function walk(prepared: PreparedKey, forks: Forks, { trail, turns, from }: Walked, p: ArrayLike<number>): Walk {
  const path: Step[] = [];
  const answers = new Map(trail.map((answer) => [answer.character, statesOf(prepared, answer)]));
  const said = new Map(turns.map((turn) => [turn.couplet, turn]));
  /** What the leads taken so far say of a character. */
  const taken = new Map<string, readonly string[]>();
  const go = (fork: Fork, lead: number, open: boolean): Branch => {
    path.push({ fork, lead, open, weights: weights(fork, p) });
    return fork.branches[lead] as Branch;
  };

  let branch: Branch | undefined;
  if (from) {
    for (const { fork, lead } of wayTo(forks, from)) branch = go(fork, lead, false);
  }
  let fork: Fork | undefined = branch ? branch.to : forks.first;
  while (fork) {
    const turn = turnAt(fork, answers, said.get(fork.number), taken);
    if (turn === undefined) return { path, at: fork, taxa: [] };
    branch = go(fork, turn === 'open' ? heaviest(weights(fork, p)) : turn, turn === 'open');
    const { character, states } = branch.lead;
    if (turn !== 'open' && character !== undefined && states) taken.set(character, states);
    fork = branch.to;
  }
  return { path, at: undefined, taxa: branch?.taxa ?? [] };
}

/** The couplets from the first one to a place, with the lead to take at each. */
function wayTo(forks: Forks, { couplet, lead }: Place): { fork: Fork; lead: number }[] {
  const to = forkAt(forks, couplet);
  const way = lead === undefined ? [] : [{ fork: to, lead }];
  for (let at = forks.above.get(to); at; at = forks.above.get(at.fork)) way.unshift({ fork: at.fork, lead: at.branch });
  return way;
}

/** Which lead the answers choose; `open`: they choose none although they were asked; undefined: not asked yet. */
function turnAt(
  { branches }: Fork,
  answers: ReadonlyMap<string, readonly string[]>,
  said: Turn | undefined,
  taken: ReadonlyMap<string, readonly string[]>,
): number | 'open' | undefined {
  const leads = branches.map(({ lead }) => lead);
  const fits = leads.map(({ character = '', states = [] }) => {
    const answer = answers.get(character) ?? [];
    return answer.length === 0 ? undefined : answer.some((state) => states.includes(state));
  });
  const only = (wanted: (fit: boolean | undefined) => boolean): number | undefined =>
    fits.filter(wanted).length === 1 ? fits.findIndex(wanted) : undefined;
  const turn = only((fit) => fit === true) ?? only((fit) => fit !== false) ?? said?.lead;
  if (turn !== undefined) return turn;
  if (said) return 'open';
  // An answer no finer than the leads already taken was not given to this couplet.
  const here = (id: string) => leads.flatMap(({ character, states = [] }) => (character === id ? states : []));
  const news = leads.some(({ character = '' }) => {
    const answer = answers.get(character);
    const before = taken.get(character);
    return answer && !(before && here(character).every((state) => !before.includes(state) || answer.includes(state)));
  });
  return news ? 'open' : undefined;
}

/** What an answer says, as states or classes of size; empty when it was passed over. */
function statesOf({ key, characterIndex }: PreparedKey, answer: KeyAnswer): readonly string[] {
  if ('skipped' in answer) return [];
  if ('states' in answer) return answer.states;
  const { states, unit } = key.characters[characterIndex.get(answer.character) as number] as Character;
  const size = toCanonical(answer.value, answer.unit, unit as Unit);
  const found = states.find(({ to }) => to === undefined || size < to);
  return found ? [found.id] : [];
}
