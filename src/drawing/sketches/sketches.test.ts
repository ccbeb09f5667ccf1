import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import { BOX, type Character, type Drawing, HUES, PENS } from '../../key/index.ts';
import type { Form } from '../sketch.ts';
import { SKETCHES } from './index.ts';

const pens = new Set<string>([...PENS, ...HUES.flatMap((hue) => [`wash-${hue}`, `swatch-${hue}`])]);
/** Most bytes of the paths of one drawing. */
const MOST = 3600;
/** A stroke may stand out by half its width, and a control point a little more. */
const EDGE = 3;

const formsOf = ({ states, unit }: Character): Form[] =>
  states.map(({ id, form, from, to }) => ({
    form: form ?? id,
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(unit ? { unit } : {}),
  }));

/** Every point that a path names, end points and control points alike; path data in capitals only. */
function pointsOf(path: string): [number, number][] {
  return [...path.matchAll(/([MLCQAZ])([^MLCQAZ]*)/g)].flatMap(([, command, rest]) => {
    const numbers = [...(rest ?? '').matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
    if (command === 'A')
      return numbers.length % 7
        ? [[NaN, NaN]]
        : chunks(numbers, 7).map((n): [number, number] => [n[5] as number, n[6] as number]);
    return chunks(numbers, 2).map((n): [number, number] => [n[0] as number, n[1] ?? NaN]);
  });
}
const chunks = (list: readonly number[], size: number): number[][] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
const outside = (drawing: Drawing) =>
  drawing.flatMap(([pen, path]) =>
    pointsOf(path)
      .filter(([x, y]) => !(x >= -EDGE && y >= -EDGE && x <= BOX + EDGE && y <= BOX + EDGE))
      .map((point) => `${pen} at ${point}`),
  );
const uncoloured = (drawing: Drawing) => JSON.stringify(drawing.filter(([pen]) => !/^(wash|swatch)-/.test(pen)));

const { key } = streambank();
describe.each(key.characters.map((one) => [one.id, one] as const))('drawings of %s', (_, character) => {
  const book = SKETCHES.get(character.draws ?? '');
  const sketches = formsOf(character).map((form) => [form.form, book?.sketch(form)] as const);

  test('there is one for every answer', () => {
    expect(book).toBeDefined();
    expect(sketches.filter(([, sketch]) => sketch === undefined)).toEqual([]);
  });

  test('each uses known pens and plain path data, stays in its square and is small', () => {
    for (const [form, sketch] of sketches) {
      const drawing = sketch?.drawing ?? [];
      expect(drawing.length, form).toBeGreaterThan(0);
      expect(
        drawing.filter(([pen]) => !pens.has(pen)),
        form,
      ).toEqual([]);
      expect(
        drawing.filter(([, path]) => !/^M[-0-9. MLCQAZ]*$/.test(path)),
        form,
      ).toEqual([]);
      expect(outside(drawing), form).toEqual([]);
      expect(
        drawing.reduce((sum, [, path]) => sum + path.length, 0),
        form,
      ).toBeLessThan(MOST);
    }
  });

  test('no two are alike, and only colours differ in nothing but colour', () => {
    const colours = /colou?r/.test(character.draws ?? '') || character.draws === 'sap';
    const seen = sketches.map(([, sketch]) => (colours ? JSON.stringify : uncoloured)(sketch?.drawing ?? []));
    expect(new Set(seen).size).toBe(sketches.length);
  });

  test('each says in both languages what is to be seen, and no two the same', () => {
    for (const language of ['en', 'es'] as const) {
      const said = sketches.map(([, sketch]) => sketch?.alt[language] ?? '');
      expect(said.filter((one) => !/^[\p{Lu}\d¿].{8,}\.$/u.test(one))).toEqual([]);
      expect(new Set(said).size).toBe(said.length);
    }
  });

  test('each is the same whenever it is drawn, and a form nobody knows is no drawing', () => {
    for (const form of formsOf(character)) expect(book?.sketch(form)).toEqual(book?.sketch(form));
    expect(book?.sketch({ form: 'constructor' })).toBeUndefined();
  });
});
