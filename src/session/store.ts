// One store for one person's run: requests in, frozen snapshots out. It knows no screen and no clock.
import { WORTH_ASKING } from '../engine/index.ts';
import { identify, type Key, type KeyAnswer, type Month, type PreparedKey, readInquiry } from '../key/index.ts';
import { SessionError } from './error.ts';
import { forksOf } from './forks.ts';
import { stateOrder } from './order.ts';
import { effects, type RequestName, type Requests } from './requests.ts';
import type { Asked, Question, SessionState, Snapshot, Way } from './state.ts';
import { type Turn, type Walk, walk } from './walk.ts';
import { wrongTurn } from './wrong-turn.ts';

export interface SessionStart {
  readonly month: Month;
  readonly observer?: string;
  readonly trail?: readonly KeyAnswer[];
  /** As `SessionState.took`, of the given trail. */
  readonly took?: ReadonlyMap<string, number>;
  /** As of a session kept before. */
  readonly way?: Way;
  readonly turns?: readonly Turn[];
  /** A clock in milliseconds that never goes back; without one no answer is timed. */
  readonly clock?: () => number;
}

/** Kinds of observer, those who misread most often first: whoever says nothing is taken for the first. */
export function observersOf(key: Key): string[] {
  return [...key.observers].sort(([, a], [, b]) => b - a).map(([id]) => id);
}

/** A taxon still fits while it is at least this share as likely as the likeliest (ours). */
const STILL_FITS = 0.02;

export class SessionStore {
  readonly #listeners = new Set<() => void>();
  readonly #clock: (() => number) | undefined;
  /** When the session last changed: what is asked now has been asked since then. */
  #since: number | undefined;
  #state: SessionState;
  #snapshot: Snapshot;

  /** @throws AnswersError when the given trail does not belong to the key. */
  constructor(prepared: PreparedKey, start: SessionStart) {
    const observer = start.observer ?? (observersOf(prepared.key)[0] as string);
    const checked = readInquiry(prepared, { month: start.month, observer, answers: start.trail ?? [] });
    this.#clock = start.clock;
    this.#since = start.clock?.();
    this.#state = {
      prepared,
      month: checked.month,
      observer: checked.observer,
      trail: checked.answers,
      took: new Map(start.took),
      onward: false,
      way: forksOf(prepared) ? (start.way ?? 'couplets') : 'free',
      turns: start.turns ?? [],
    };
    this.#snapshot = draw(this.#state);
  }

  get snapshot(): Snapshot {
    return this.#snapshot;
  }

  /** Carries out a request and tells whoever listens. @throws SessionError, AnswersError; the session then stays as it was. */
  request<Name extends RequestName>(name: Name, detail: Requests[Name]): void {
    const before = this.#state.prepared;
    const next = effects[name](this.#state, detail, forksOf(before));
    const { prepared, chosen } = next;
    if (prepared.key !== before.key) throw new SessionError('a session keeps its key');
    if (chosen !== undefined && !prepared.characterIndex.has(chosen))
      throw new SessionError(`the key has no character ${chosen}`);
    readInquiry(prepared, { month: next.month, observer: next.observer, answers: next.trail });
    this.#state = this.#timed(next);
    this.#snapshot = draw(this.#state);
    for (const listener of [...this.#listeners]) listener();
  }

  /** An answer that is new or was changed took the time since the last change; the others keep theirs. */
  #timed(next: SessionState): SessionState {
    const now = this.#clock?.();
    const seconds = now === undefined || this.#since === undefined ? undefined : (now - this.#since) / 1000;
    this.#since = now;
    const before = new Set(this.#state.trail);
    const took = next.trail.flatMap((answer): [string, number][] => {
      const known = before.has(answer) ? this.#state.took.get(answer.character) : seconds;
      return known === undefined ? [] : [[answer.character, known]];
    });
    return { ...next, took: new Map(took) };
  }

  /** Calls `listener` after every change; returns how to stop. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}

function draw(state: SessionState): Snapshot {
  const { prepared } = state;
  const identification = identify(prepared, { month: state.month, observer: state.observer, answers: state.trail });
  const [lead] = identification.standing;
  const within = (lead?.probability ?? 0) * STILL_FITS;
  const native = new Set(prepared.key.taxa.filter((taxon) => taxon.status === 'native').map((taxon) => taxon.id));
  const question = questionOf(state, identification);
  const forks = forksOf(prepared);
  const p = new Float64Array(prepared.key.taxa.length);
  for (const { taxon, probability } of identification.standing)
    p[prepared.taxonIndex.get(taxon) as number] = probability;
  const walked = forks && walk(prepared, forks, state, p);
  const asked = walked && askedOf(state, identification, walked);
  const wrong =
    walked && state.way === 'couplets' && !isDone(state, identification)
      ? wrongTurn(walked, identification.recheck, p)
      : undefined;
  return Object.freeze({
    ...state,
    trail: Object.freeze([...state.trail]),
    identification,
    fitting: identification.standing.filter((s) => s.probability >= within).length,
    natives: identification.standing.reduce((sum, s) => sum + (native.has(s.taxon) ? s.probability : 0), 0),
    answered: state.trail.filter((step) => !('skipped' in step)).length,
    ...(walked ? { walk: walked } : {}),
    ...(asked ? { asked } : {}),
    ...(wrong ? { wrong } : {}),
    ...(question ? { question: { ...question, order: stateOrder(prepared, identification, question.character) } } : {}),
  });
}

/** A verdict stands and nobody asked to go on. */
const isDone = ({ onward }: SessionState, { verdict }: Snapshot['identification']): boolean =>
  verdict.kind === 'settled' && !onward;

/** The number of the next question: what was said at couplets and stands in no answer counts too. */
const nextNumber = ({ trail, turns }: SessionState): number => trail.length + turns.length + 1;

/** The couplet to ask: the next on the way, or the one of a character to be looked at again. */
function askedOf(
  state: SessionState,
  identification: Snapshot['identification'],
  { path, at }: Walk,
): Asked | undefined {
  const { way, chosen, trail } = state;
  if (way !== 'couplets') return undefined;
  const number = nextNumber(state);
  if (chosen !== undefined) {
    const step = path.find(({ fork }) => fork.character === chosen);
    const before = trail.findIndex((one) => one.character === chosen);
    if (step && before >= 0)
      return {
        fork: step.fork,
        number: before + 1,
        reason: 'changing',
        ...(step.open ? {} : { lead: step.lead }),
      };
    return at?.character === chosen ? { fork: at, number, reason: 'proposed' } : undefined;
  }
  return at && !isDone(state, identification) ? { fork: at, number, reason: 'proposed' } : undefined;
}

function questionOf(
  state: SessionState,
  identification: Snapshot['identification'],
): Omit<Question, 'order'> | undefined {
  const { next } = identification;
  const before = state.trail.findIndex((step) => step.character === state.chosen);
  const answer = state.trail[before];
  if (state.chosen !== undefined)
    return answer
      ? { character: state.chosen, number: before + 1, reason: 'changing', answer }
      : { character: state.chosen, number: nextNumber(state), reason: 'chosen' };
  const [best] = next;
  if (isDone(state, identification) || best === undefined || best.bits < WORTH_ASKING) return undefined;
  return { character: best.character, number: nextNumber(state), reason: 'proposed' };
}
