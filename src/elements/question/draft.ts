// What a person has ticked or typed of one question and not yet sent.
import type { Character, KeyAnswer, Length, Unit } from '../../key/index.ts';

/** How sure a person says to be. */
type Sureness = Extract<KeyAnswer, { sureness: unknown }>['sureness'];

/** Immutable: each change is a new draft. Ticks and a typed number exclude each other. */
export class Draft {
  readonly ticked: ReadonlySet<string>;
  readonly typed: string;
  /** The unit chosen for the typed number; undefined: the one that suits. */
  readonly unit: Unit | undefined;
  /** The typed number was sent and could not be read. */
  readonly wrong: boolean;

  constructor(said?: KeyAnswer) {
    this.ticked = new Set(said && 'states' in said ? said.states : []);
    this.typed = said && 'value' in said ? String(said.value) : '';
    this.unit = said && 'value' in said ? said.unit : undefined;
    this.wrong = false;
  }

  get empty(): boolean {
    return this.ticked.size === 0 && this.typed.trim() === '';
  }

  tick(id: string, on: boolean): Draft {
    const ticked = new Set(this.ticked);
    if (on) ticked.add(id);
    else ticked.delete(id);
    return this.#with({ ticked, typed: '', wrong: false });
  }

  type(typed: string, unit: Unit): Draft {
    return this.#with({ typed, unit, ticked: typed.trim() === '' ? this.ticked : new Set<string>(), wrong: false });
  }

  /** Marks what was typed as wrong where it cannot be read. */
  checked(): Draft {
    return this.#with({ wrong: this.typed.trim() !== '' && readSize(this.typed) === undefined });
  }

  /** The answer to send, states in the key's order; undefined while there is none that can be read. */
  answer(character: Character, sureness: Sureness): KeyAnswer | undefined {
    if (this.ticked.size > 0) {
      const states = character.states.map((state) => state.id).filter((id) => this.ticked.has(id));
      return { character: character.id, states, sureness };
    }
    const value = readSize(this.typed);
    const unit = this.unit ?? character.unit;
    return value === undefined || unit === undefined ? undefined : { character: character.id, value, unit, sureness };
  }

  #with(changes: Partial<Pick<Draft, 'ticked' | 'typed' | 'unit' | 'wrong'>>): Draft {
    return Object.assign(Object.create(Draft.prototype), this, changes);
  }
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
