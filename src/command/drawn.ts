// Every state of a key that a sketch book can draw, as a file.

import type { SketchBook } from '../drawing/index.ts';
import { SKETCHES } from '../drawing/sketches/index.ts';
import { type Character, type Key, type State, writeSvg } from '../key/index.ts';

export interface Drawn {
  readonly character: string;
  readonly state: string;
  /** In the folder of pictures. */
  readonly file: string;
  readonly svg: string;
  /** Alternative text by language. */
  readonly alt: ReadonlyMap<string, string>;
}

export interface NotDrawn {
  readonly character: string;
  readonly states: readonly string[];
  readonly why: string;
}

export function drawAll(
  key: Key,
  books: ReadonlyMap<string, SketchBook> = SKETCHES,
): { drawn: Drawn[]; notDrawn: NotDrawn[] } {
  const drawn: Drawn[] = [];
  const notDrawn: NotDrawn[] = [];
  for (const character of key.characters) {
    const { id, draws, states } = character;
    const book = draws === undefined ? undefined : books.get(draws);
    const missing = (of: readonly State[], why: string) =>
      of.length > 0 && notDrawn.push({ character: id, states: of.map((state) => state.id), why });
    if (book === undefined) {
      missing(states, draws === undefined ? 'it has no "draws"' : `nothing draws "${draws}"`);
      continue;
    }
    const without = states.filter((state) => {
      const sketch = book.sketch(formOf(character, state));
      if (sketch === undefined) return true;
      const alt = new Map(Object.entries(sketch.alt).filter(([language]) => key.languages.includes(language)));
      drawn.push({
        ...{ character: id, state: state.id, file: `${id}/${state.id}.svg`, alt },
        svg: writeSvg(sketch.drawing, alt),
      });
      return false;
    });
    missing(without, `"${draws}" has no such form`);
  }
  return { drawn, notDrawn };
}

const formOf = ({ unit }: Character, { id, form = id, from, to }: State) => ({
  form,
  ...(from === undefined ? {} : { from }),
  ...(to === undefined ? {} : { to }),
  ...(unit === undefined ? {} : { unit }),
});
