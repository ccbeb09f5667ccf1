// What every book must keep is tested in sketches.test.ts; here is what portraits and eyes ask of these two besides.
import { describe, expect, test } from 'vitest';
import { BOX, type Drawing } from '../../key/index.ts';
import { FLOWER_CLUSTER } from './flower-cluster.ts';
import { FRUIT } from './fruit.ts';

const drawingsOf = (book: typeof FRUIT): readonly (readonly [string, Drawing])[] =>
  book.forms.map((form) => [form, book.sketch({ form })?.drawing ?? []]);

/** The end points of lines and curves; path data in capitals, with arcs ending in their last two numbers. */
const endsOf = (drawing: Drawing): [number, number][] =>
  drawing.flatMap(([, path]) =>
    [...path.matchAll(/[MLCQA]([^MLCQAZ]*)/g)].map(([, rest = '']): [number, number] => {
      const numbers = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
      return [numbers.at(-2) as number, numbers.at(-1) as number];
    }),
  );

describe.each(drawingsOf(FLOWER_CLUSTER))('a portrait can set %s on its plant', (_, drawing) => {
  const ends = endsOf(drawing);

  test('its stalk enters at the middle of the lower edge', () => {
    expect(ends.filter(([x, y]) => y === BOX && Math.abs(x - BOX / 2) <= 4)).not.toEqual([]);
  });

  test('it reaches the upper end of the box, and nothing sticks out', () => {
    const top = Math.min(...ends.map(([, y]) => y));
    expect(top).toBeGreaterThanOrEqual(2);
    expect(top).toBeLessThanOrEqual(13);
    for (const [x] of ends) expect(Math.abs(x - BOX / 2)).toBeLessThanOrEqual(BOX / 2 - 2);
  });

  test('nothing in it but the plant: no coin, no water, no ground', () => {
    expect(drawing.filter(([pen]) => ['scale', 'water', 'ground'].includes(pen))).toEqual([]);
  });
});

describe.each([...drawingsOf(FLOWER_CLUSTER), ...drawingsOf(FRUIT)])('%s', (_, drawing) => {
  test('takes less than three kilobytes of path data in at most forty marks', () => {
    expect(drawing.reduce((sum, [, path]) => sum + path.length, 0)).toBeLessThan(3072);
    expect(drawing.length).toBeLessThanOrEqual(40);
  });

  test('still has its lines where colours are dropped', () => {
    expect(drawing.filter(([pen]) => !pen.startsWith('wash-') && pen !== 'tint').length).toBeGreaterThanOrEqual(3);
  });
});

test('fruits whose size matters lie beside a fingertip or a coin', () => {
  const sized = drawingsOf(FRUIT).filter(([, drawing]) => drawing.some(([pen]) => pen === 'scale'));
  expect(sized.map(([form]) => form).sort()).toEqual([
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
  ]);
});

test('reed green marks only what tells a cluster apart: the hood, the cup, the rows along one side', () => {
  const marked = drawingsOf(FLOWER_CLUSTER).filter(([, drawing]) =>
    drawing.some(([pen]) => pen === 'mark' || pen === 'trace'),
  );
  expect(marked.map(([form]) => form).sort()).toEqual(['cup-umbel', 'hood', 'one-sided']);
});
