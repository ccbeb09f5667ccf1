// From a table of classed rows to what the engine is given, as the reference libraries count it.
import { readFileSync } from 'node:fs';
import type { Answer, CharacterSpec, MatrixSpec, TraitSpec } from '../../src/engine/index.ts';

const file = (name: string) => readFileSync(new URL(`data/${name}`, import.meta.url), 'utf8');

export const golden = <T>(name: string): T => JSON.parse(file(name)) as T;

/** `3/4` or `0.75` as a number. */
export function fraction(text: string): number {
  const [over = Number.NaN, under = 1] = text.split('/').map(Number);
  return over / under;
}

/** Rows of a table without quoted commas; the first is its head. */
export function table(name: string): { head: string[]; rows: string[][] } {
  const [head = [], ...rows] = file(name)
    .trim()
    .split('\n')
    .map((line) => line.split(',').map((cell) => cell.replace(/^"(.*)"$/, '$1')));
  return { head, rows };
}

/** A table in which every row has a class and, for each character, one state; an empty cell is missing. */
export interface Classed {
  readonly classes: readonly string[];
  readonly characters: readonly string[];
  readonly states: readonly (readonly string[])[];
  readonly rows: readonly { readonly class: string; readonly cells: readonly string[] }[];
}

/** The states that occur in a column, in their order as text (one digit each in the tables used here). */
export const seen = (rows: readonly (readonly string[])[], column: number): string[] =>
  [...new Set(rows.map((row) => row[column] ?? ''))].filter((cell) => cell !== '').sort();

/**
 * A naive Bayes model with the counts of a table: P(state | class) = (count + a) / (known rows of the class + a states), no
 * slips, no `not in this key`, prior by class size unless `prior` says otherwise.
 */
export function counted(from: Classed, pseudocount: number, prior?: readonly number[]): MatrixSpec {
  const sizes = from.classes.map((name) => from.rows.filter((row) => row.class === name).length);
  return exact(
    from.classes.map((id, i) => ({ id, weight: (prior ?? sizes)[i] as number })),
    from.characters.map((id, c) => {
      const states = from.states[c] as readonly string[];
      const traits = from.classes.map((name): TraitSpec => {
        const known = from.rows.filter((row) => row.class === name && row.cells[c] !== '');
        const count = (state: string) => known.filter((row) => row.cells[c] === state).length;
        const all = known.length + pseudocount * states.length;
        return { kind: 'states', p: states.map((state) => (count(state) + pseudocount) / all) };
      });
      return choice(id, states, traits);
    }),
  );
}

export const choice = (
  id: string,
  states: readonly string[],
  traits: readonly TraitSpec[],
  misread = 0,
): CharacterSpec => ({ id, kind: 'choice', states, misread, cost: 1, proposed: true, traits });

/** A specification without slips of several rates and without `not in this key`. */
export const exact = (
  taxa: readonly { readonly id: string; readonly weight: number }[],
  characters: readonly CharacterSpec[],
): MatrixSpec => ({
  taxa: taxa.map((taxon) => ({ ...taxon, native: false, concern: false })),
  characters,
  pairs: [],
  outsidePrior: 0,
  rates: [{ times: 1, prior: 1 }],
});

/** Answers by the names of characters and states. */
export function answersOf(spec: MatrixSpec, said: Readonly<Record<string, string | readonly string[]>>): Answer[] {
  return Object.entries(said).map(([id, states]) => {
    const character = spec.characters.findIndex((one) => one.id === id);
    const names = spec.characters[character]?.states ?? [];
    return { character, states: [states].flat().map((state) => names.indexOf(state)), sureness: 'sure' };
  });
}
