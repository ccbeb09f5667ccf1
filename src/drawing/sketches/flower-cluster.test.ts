import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { BOX, type Drawing, PENS } from '../../key/index.ts';
import { FLOWER_CLUSTER } from './flower-cluster.ts';
import { FRUIT } from './fruit.ts';

interface Coded {
  readonly id: string;
  readonly states?: readonly { readonly id: string }[];
}
const coded: { readonly characters: readonly Coded[] } = JSON.parse(
  readFileSync('keys/streambank/characters.json', 'utf8'),
);
const statesOf = (id: string): string[] =>
  coded.characters.find((character) => character.id === id)?.states?.map((state) => state.id) ?? [];

const sketched = [FLOWER_CLUSTER, FRUIT].flatMap((book) =>
  book.forms.map((form) => ({ role: book.role, form, sketch: book.sketch({ form }) })),
);

/** Every point of a path that its curves pass or are held by; an arc counts by its ends. */
function pointsOf(path: string): [number, number][] {
  const points: [number, number][] = [];
  let here: [number, number] = [0, 0];
  for (const [, letter = '', rest = ''] of path.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const values = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const at = (i: number): number => values[i] as number;
    const steps = { h: 1, l: 2, a: 7, A: 7 }[letter] ?? 2;
    for (let i = 0; i < values.length; i += steps) {
      if (letter === 'h') here = [here[0] + at(i), here[1]];
      else if (letter === 'l') here = [here[0] + at(i), here[1] + at(i + 1)];
      else if (letter === 'a') here = [here[0] + at(i + 5), here[1] + at(i + 6)];
      else if (letter === 'A') here = [at(i + 5), at(i + 6)];
      else here = [at(i), at(i + 1)];
      points.push(here);
    }
  }
  return points;
}
const allPoints = (drawing: Drawing): [number, number][] => drawing.flatMap(([, path]) => pointsOf(path));

test('the books draw every state of the demonstration key, and none besides', () => {
  expect([...FLOWER_CLUSTER.forms].sort()).toEqual(statesOf('flower-cluster').sort());
  expect([...FRUIT.forms].sort()).toEqual(statesOf('fruit').sort());
  for (const book of [FLOWER_CLUSTER, FRUIT]) {
    expect(book.sketch({ form: 'no-such-form' })).toBeUndefined();
    expect(book.sketch({ form: 'constructor' })).toBeUndefined();
  }
});

test.each(sketched)(
  '$role $form is drawn with known pens in path data of SVG 1.1, in the box and small',
  ({ sketch }) => {
    expect(sketch).toBeDefined();
    const drawing = sketch?.drawing ?? [];
    expect(drawing.length).toBeGreaterThanOrEqual(3);
    for (const [pen, path] of drawing) {
      expect([...PENS, pen.startsWith('wash-') ? pen : '']).toContain(pen);
      expect(path).toMatch(/^M[-\d. MLQCAZhla]+$/);
    }
    for (const [x, y] of allPoints(drawing)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(BOX);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(BOX);
    }
    expect(drawing.reduce((sum, [, path]) => sum + path.length, 0)).toBeLessThan(3072);
  },
);

test.each(sketched)('$role $form is told in one sentence of each language', ({ sketch }) => {
  for (const words of [sketch?.alt.en, sketch?.alt.es]) {
    expect(words).toMatch(/^\p{Lu}[^.!?]{20,}\.$/u);
    expect(words).not.toMatch(/drawing|dibujo|picture|imagen/i);
    expect(words?.length).toBeLessThan(170);
  }
  expect(sketch?.alt.en).not.toBe(sketch?.alt.es);
});

test('two asks give the same drawing, and no two forms look or read alike', () => {
  for (const book of [FLOWER_CLUSTER, FRUIT]) {
    for (const form of book.forms) expect(book.sketch({ form })).toEqual(book.sketch({ form }));
  }
  expect(new Set(sketched.map(({ sketch }) => JSON.stringify(sketch?.drawing))).size).toBe(sketched.length);
  for (const language of ['en', 'es'] as const) {
    expect(new Set(sketched.map(({ sketch }) => sketch?.alt[language])).size).toBe(sketched.length);
  }
});

test.each(sketched.filter(({ role }) => role === 'flower-cluster'))(
  '$form stands on a stalk at the bottom of the box and reaches near its top, as a portrait needs it',
  ({ sketch }) => {
    const points = allPoints(sketch?.drawing ?? []);
    expect(points.some(([x, y]) => y === BOX && Math.abs(x - BOX / 2) <= 4)).toBe(true);
    const top = Math.min(...points.map(([, y]) => y));
    expect(top).toBeGreaterThanOrEqual(2);
    expect(top).toBeLessThanOrEqual(14);
    expect(sketch?.drawing.some(([pen]) => pen === 'scale' || pen === 'ground' || pen === 'water')).toBe(false);
  },
);

test('small and large fruits lie beside something that tells their size', () => {
  const sized = FRUIT.forms.filter((form) => FRUIT.sketch({ form })?.drawing.some(([pen]) => pen === 'scale'));
  expect(sized.sort()).toEqual(
    [
      'beads',
      'bladder',
      'burr-head',
      'grain',
      'green-berry',
      'nutlet',
      'pod-holes',
      'red-berry',
      'rounded-vessel',
      'splitting',
    ].sort(),
  );
});
