// What a person has ticked or typed of one question and not yet sent.
import type { Character, KeyAnswer, Length, Unit } from '../../key/index.ts';

/** How sure a person says to be. */
type Sureness = Extract<KeyAnswer, { sureness: unknown }>['sureness'];

/** Ticks and a typed number exclude each other. Never changed: each change makes a new one. */
export interface Draft {
  readonly ticked: ReadonlySet<string>;
  readonly typed: string;
  /** The unit chosen for the typed number; undefined: the one that suits. */
  readonly unit: Unit | undefined;
  /** The typed number was sent, or left, and could not be read. */
  readonly wrong: boolean;
}

/** What was said before, to be changed; blank without. */
export const draftOf = (said?: KeyAnswer): Draft => ({
  ticked: new Set(said && 'states' in said ? said.states : []),
  typed: said && 'value' in said ? String(said.value) : '',
  unit: said && 'value' in said ? said.unit : undefined,
  wrong: false,
});

export const isBlank = (draft: Draft): boolean => draft.ticked.size === 0 && draft.typed.trim() === '';

export function tick(draft: Draft, id: string, on: boolean): Draft {
  const ticked = new Set(draft.ticked);
  if (on) ticked.add(id);
  else ticked.delete(id);
  return { ...draft, ticked, typed: '', wrong: false };
}

export const type = (draft: Draft, typed: string, unit: Unit): Draft => ({
  ticked: typed.trim() === '' ? draft.ticked : new Set(),
  typed,
  unit,
  wrong: false,
});

/** The same, marked as wrong where what was typed cannot be read. */
export const checked = (draft: Draft): Draft => ({
  ...draft,
  wrong: draft.typed.trim() !== '' && readSize(draft.typed) === undefined,
});

/** The answer to send, states in the key's order; undefined while there is none that can be read. */
export function answerOf(draft: Draft, character: Character, sureness: Sureness): KeyAnswer | undefined {
  if (draft.ticked.size > 0) {
    const states = character.states.map((state) => state.id).filter((id) => draft.ticked.has(id));
    return { character: character.id, states, sureness };
  }
  const value = readSize(draft.typed);
  const unit = draft.unit ?? character.unit;
  return value === undefined || unit === undefined ? undefined : { character: character.id, value, unit, sureness };
}

/** Largest size that may be typed, as readInquiry has it. */
const LARGEST = 1e6;

/** A size above zero from what a person typed, with a point or a comma; undefined when it is none. */
export function readSize(text: string): number | undefined {
  const plain = text.trim().replace(',', '.');
  if (!/^(\d+\.?\d*|\.\d+)$/.test(plain)) return undefined;
  const value = Number(plain);
  return value > 0 && value <= LARGEST ? value : undefined;
}

/** Whether a unit is one of length. */
export const isLength = (unit: Unit): unit is Length => unit !== 'count';
