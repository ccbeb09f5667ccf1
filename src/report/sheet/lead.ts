// A lead of the key in words, as floras write it: the main statement, then what else helps.
import { type Character, type Couplet, type Key, type Said, translate } from '../../key/index.ts';
import { classWords, type System } from '../../key/sizes.ts';
import { asClause } from '../../words/clause.ts';
import type { SheetWords } from './words.ts';

/** More states than these are not listed where the other leads list fewer: the statement says what it is not. */
export const MOST_STATES = 6;

export interface Statement {
  readonly main: string;
  /** Further statements that hold too, most helpful first. */
  readonly also: readonly string[];
}

/** Words leads of one key in one language. */
export class Wording {
  readonly #key: Key;
  readonly #language: string;
  readonly #words: SheetWords;
  readonly #units: System;
  readonly #characters: ReadonlyMap<string, Character>;

  constructor(key: Key, language: string, words: SheetWords, units: System = key.units) {
    this.#key = key;
    this.#language = language;
    this.#words = words;
    this.#units = units;
    this.#characters = new Map(key.characters.map((character) => [character.id, character]));
  }

  /** The statement of lead number `j` of a couplet. */
  statement({ leads }: Couplet, j: number): Statement {
    const { text, character, states = [], also = [] } = leads[j] ?? {};
    const others = leads.filter((_, i) => i !== j);
    const rest = others.flatMap((lead) => lead.states ?? []);
    const residual =
      states.length > MOST_STATES &&
      rest.length <= MOST_STATES &&
      others.every((lead) => lead.character === character && lead.text === undefined);
    const main =
      text !== undefined
        ? this.say(text)
        : character === undefined
          ? ''
          : residual
            ? this.#said({ character, states: rest }, '', this.#words.otherwise)
            : this.#said({ character, states });
    return {
      main,
      also: also.map(({ how, ...said }) => this.#said(said, how === 'usually' ? `, ${this.#words.usually}` : '')),
    };
  }

  say(sentence: string): string {
    return translate(this.#key, this.#language, sentence);
  }

  /** `Leaf shape: heart-shaped or arrowhead`; sizes with their bounds in the key's units. */
  #said({ character: id, states }: Said, after = '', turned = (list: string) => list): string {
    const character = this.#characters.get(id);
    if (character === undefined) return '';
    const named = character.states.filter((state) => states.includes(state.id));
    const labels = named.map(({ label }) => asClause(this.say(label), this.#language));
    const sizes = this.#sizes(character, states);
    // Where a label is a list itself, commas would not part it from the next.
    const nested = labels.length > 1 && labels.some((label) => /,| (or|o|u) /.test(label));
    const list = turned(nested ? labels.join(' / ') : this.#words.or(labels));
    return `${this.say(character.label)}${after}: ${list}${sizes === '' ? '' : ` (${sizes})`}`;
  }

  /** The bounds of classes that follow one another; empty for others, and where every size is meant. */
  #sizes(character: Character, ids: readonly string[]): string {
    const { unit, states } = character;
    const places = states.flatMap(({ id }, s) => (ids.includes(id) ? [s] : []));
    const first = states[places[0] ?? 0];
    const last = states[places.at(-1) ?? 0];
    if (unit === undefined || !first || !last || places.length === states.length) return '';
    if (places.some((s, i) => s !== (places[0] ?? 0) + i)) return '';
    const { to: _, ...from } = first;
    const joined = last.to === undefined ? from : { ...from, to: last.to };
    return classWords(character, joined, this.#words, this.#language, this.#units);
  }
}
