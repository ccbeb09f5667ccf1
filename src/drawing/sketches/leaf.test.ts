import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { BOX, PENS } from '../../key/index.ts';
import { COLLARS } from './collar.ts';
import { LEAF_FEATURES } from './leaf-features.ts';
import { LEAF_SETS } from './leaf-sets.ts';
import { LEAF_OUTLINES } from './leaf-shapes.ts';
import { LEAF_STALKS } from './leaf-stalks.ts';
import { LEAF_FACES } from './leaf-surfaces.ts';

const BOOKS = [...LEAF_OUTLINES, ...LEAF_FEATURES, ...LEAF_FACES, ...LEAF_STALKS, ...LEAF_SETS, ...COLLARS];
const characters = JSON.parse(readFileSync('keys/streambank/characters.json', 'utf8')).characters as {
  id: string;
  states?: { id: string; form?: string }[];
}[];
const sketches = BOOKS.flatMap((book) =>
  book.forms.map((form) => {
    const sketch = book.sketch({ form });
    if (!sketch) throw new Error(`${book.role} names ${form} and does not draw it`);
    return { name: `${book.role}/${form}`, role: book.role, ...sketch };
  }),
);

test('every state of a character of leaves and collars has its drawing', () => {
  for (const book of BOOKS) {
    const states = characters.find(({ id }) => id === book.role)?.states ?? [];
    expect(states.length, book.role).toBeGreaterThan(0);
    expect(
      states.map(({ id, form }) => form ?? id).filter((form) => !book.forms.includes(form)),
      book.role,
    ).toEqual([]);
  }
});

test('a form that no book knows has no drawing', () => {
  for (const book of BOOKS) {
    expect(book.sketch({ form: 'nothing-of-the-kind' })).toBeUndefined();
    expect(book.sketch({ form: 'constructor' })).toBeUndefined();
  }
});

test('drawings know only pens that exist, and stay in their box and below three kilobytes', () => {
  for (const { name, drawing } of sketches) {
    expect(drawing.length, name).toBeGreaterThan(0);
    for (const [pen] of drawing)
      expect(PENS.includes(pen as never) || /^(wash|swatch)-/.test(pen), `${name}: ${pen}`).toBe(true);
    expect(JSON.stringify(drawing).length, name).toBeLessThan(3000);
    for (const [, path] of drawing) expect(path, name).toMatch(/^[MLCQAZ0-9 .-]+$/);
    const numbers = drawing
      .flatMap(([, path]) => path.match(/[MLCQ][^MLCQAZ]*/g) ?? [])
      .flatMap((piece) => piece.match(/-?\d+(\.\d+)?/g) ?? []);
    expect(
      numbers.map(Number).filter((value) => value < -1 || value > BOX + 1),
      name,
    ).toEqual([]);
  }
});

test('two states of a character are never drawn alike or described alike', () => {
  for (const { role } of BOOKS) {
    const own = sketches.filter((sketch) => sketch.role === role);
    for (const of of [
      (s: (typeof own)[number]) => JSON.stringify(s.drawing),
      (s: (typeof own)[number]) => s.alt.en,
      (s: (typeof own)[number]) => s.alt.es,
    ])
      expect(new Set(own.map(of)).size, role).toBe(own.length);
  }
});

test('alternative texts are whole sentences', () => {
  for (const { name, alt } of sketches)
    for (const text of [alt.en, alt.es]) expect(text, name).toMatch(/^[A-ZÁÉÍÓÚÑ].{20,}\.$/u);
});
