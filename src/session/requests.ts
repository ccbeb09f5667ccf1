// What may be asked of a session, and what each request does: one table.
import type { KeyAnswer, Month } from '../key/index.ts';
import type { SessionState } from './state.ts';

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
  month: { month: Month };
  observer: { observer: string };
  /** Starts a new plant; month and observer stay. */
  restart: Record<never, never>;
}
export type RequestName = keyof Requests;

type Effects = { readonly [Name in RequestName]: (state: SessionState, detail: Requests[Name]) => SessionState };

/** No choice of one's own: the key proposes the next question. */
function unchosen({ chosen: _, ...state }: SessionState): SessionState {
  return state;
}

/** Each request's effect on what is kept. Pure; the store has checked the ids. */
export const effects: Effects = {
  answer: (state, { answer }) => {
    const before = state.trail.findIndex((step) => step.character === answer.character);
    const trail = before < 0 ? [...state.trail, answer] : state.trail.with(before, answer);
    return { ...unchosen(state), trail };
  },
  withdraw: (state, { character }) => ({
    ...(state.chosen === character ? unchosen(state) : state),
    trail: state.trail.filter((step) => step.character !== character),
  }),
  ask: (state, { character }) => ({ ...state, chosen: character }),
  propose: unchosen,
  onward: (state) => ({ ...unchosen(state), onward: true }),
  month: (state, { month }) => ({ ...state, month }),
  observer: (state, { observer }) => ({ ...state, observer }),
  restart: (state) => ({ ...unchosen(state), trail: [], onward: false }),
};
