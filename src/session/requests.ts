// What may be asked of a session, and what each request does: one table.
import type { KeyAnswer, Month, PreparedKey } from '../key/index.ts';
import { SessionError } from './error.ts';
import { type Fork, type Forks, forkAt } from './forks.ts';
import type { SessionState, Way } from './state.ts';
import type { Place, Turn } from './walk.ts';

type Sureness = Extract<KeyAnswer, { sureness: unknown }>['sureness'];

export interface Requests {
  /** Answers a character, or changes its answer in place. */
  answer: { answer: KeyAnswer };
  /** Takes an answer back; the rest stays. */
  withdraw: { character: string };
  /** Chooses a character out of turn, or opens an answered one to be changed. */
  ask: { character: string };
  /** Leaves a chosen question for the one that the key proposes. */
  propose: Record<never, never>;
  /** Goes on after a verdict. */
  onward: Record<never, never>;
  /** Takes a lead of a couplet, by its index: an answer of its character with the lead's states. */
  lead: { couplet: number; lead: number; sureness: Sureness };
  /** Cannot tell at a couplet: all its branches stay. */
  pass: { couplet: number };
  /** Carries on through the couplets from another place; the answers stay as they are. */
  'walk-from': Place;
  way: { way: Way };
  month: { month: Month };
  observer: { observer: string };
  /** Goes on with the same key made ready for another reader; the answers stay. */
  reading: { prepared: PreparedKey; observer: string };
  /** Starts a new plant; month and observer stay. */
  restart: Record<never, never>;
}
export type RequestName = keyof Requests;

type Effects = {
  readonly [Name in RequestName]: (
    state: SessionState,
    detail: Requests[Name],
    forks: Forks | undefined,
  ) => SessionState;
};

/** No choice of one's own: the key proposes the next question. */
function unchosen({ chosen: _, ...state }: SessionState): SessionState {
  return state;
}

/** What hangs on an answer that is changed or taken back goes with it: turns over its character, and the place carried on from. */
function corrected({ from: _, ...state }: SessionState, character: string, forks: Forks | undefined): SessionState {
  return { ...state, turns: state.turns.filter(({ couplet }) => forks?.all.get(couplet)?.character !== character) };
}

/** The answer in its place on the trail, or at its end. */
function put(state: SessionState, answer: KeyAnswer): SessionState {
  const before = state.trail.findIndex((step) => step.character === answer.character);
  return { ...state, trail: before < 0 ? [...state.trail, answer] : state.trail.with(before, answer) };
}

const has = (state: SessionState, character: string) => state.trail.some((step) => step.character === character);

function turned(state: SessionState, turn: Turn): SessionState {
  return { ...state, turns: [...state.turns.filter(({ couplet }) => couplet !== turn.couplet), turn] };
}

/** Looked at again out of turn: what is said now takes the place of what was said. */
const again = (state: SessionState, { character }: Fork) => character !== undefined && state.chosen === character;

/** Each request's effect on what is kept. Pure; the store has checked the ids of characters. @throws SessionError for a couplet that is not there. */
export const effects: Effects = {
  answer: (state, { answer }, forks) =>
    put(unchosen(has(state, answer.character) ? corrected(state, answer.character, forks) : state), answer),
  withdraw: (state, { character }, forks) => ({
    ...corrected(state.chosen === character ? unchosen(state) : state, character, forks),
    trail: state.trail.filter((step) => step.character !== character),
  }),
  ask: (state, { character }) => ({ ...state, chosen: character }),
  propose: unchosen,
  onward: (state) => ({ ...unchosen(state), onward: true }),
  lead: (state, { couplet, lead, sureness }, forks) => {
    const fork = forkAt(forks, couplet);
    const taken = fork.branches[lead]?.lead;
    if (taken === undefined) throw new SessionError(`couplet ${couplet} has no lead ${lead}`);
    const { character, states = [] } = taken;
    if (character === undefined) return turned(unchosen(state), { couplet, lead });
    const before = state.trail.find((step) => step.character === character);
    if (again(state, fork) || before === undefined || !('states' in before))
      return put(unchosen(before ? corrected(state, character, forks) : state), { character, states, sureness });
    // Deeper over the same character: what was said is narrowed, and the couplet remembered.
    const narrowed = states.filter((one) => before.states.includes(one));
    const answer = { character, states: narrowed.length > 0 ? narrowed : states, sureness };
    return turned(put(unchosen(state), answer), { couplet, lead });
  },
  pass: (state, { couplet }, forks) => {
    const fork = forkAt(forks, couplet);
    const { character } = fork;
    if (character === undefined) return turned(unchosen(state), { couplet });
    if (again(state, fork)) return put(unchosen(corrected(state, character, forks)), { character, skipped: true });
    return has(state, character)
      ? turned(unchosen(state), { couplet })
      : put(unchosen(state), { character, skipped: true });
  },
  'walk-from': (state, place, forks) => {
    forkAt(forks, place.couplet);
    return { ...unchosen(state), way: 'couplets', from: place };
  },
  way: (state, { way }, forks) => {
    if (way === 'couplets') forkAt(forks, forks?.first.number ?? 1);
    return { ...unchosen(state), way };
  },
  month: (state, { month }) => ({ ...state, month }),
  observer: (state, { observer }) => ({ ...state, observer }),
  reading: (state, { prepared, observer }) => ({ ...state, prepared, observer }),
  restart: ({ from: _, ...state }) => ({ ...unchosen(state), trail: [], turns: [], onward: false }),
};
