// Classes of size, drawn from their bounds beside something whose size everyone knows, at one scale.
import { type Drawing, type Mark, toCanonical } from '../../key/index.ts';
import { MEASURES, personOf } from '../figures.ts';
import { from, type Point, straight } from '../geometry.ts';
import type { Form, Sketch, SketchBook } from '../sketch.ts';
import { ligule, thickness, width } from './sizes-across.ts';
import { lengthOf } from './sizes-along.ts';
import { tall } from './sizes-words.ts';
import { cane } from './strokes.ts';

/**
 * The size a class is drawn with, in centimetres: four fifths of the way through it, so that it stays within its
 * words; the last class, which has no end, half as large again as its beginning. Undefined without any bound,
 * and for what is counted.
 */
export function drawnSize({ from = 0, to, unit = 'cm' }: Form): number | undefined {
  if (unit === 'count') return undefined;
  const size = to === undefined ? from * 1.5 : from + 0.8 * (to - from);
  return size > 0 ? toCanonical(size, unit, 'cm') : undefined;
}
/** The bound that the words of a class name, in centimetres. */
const limitOf = ({ from = 0, to, unit = 'cm' }: Form): number => toCanonical(to ?? from, unit, 'cm');

const book = (role: string, draw: (cm: number, limit: number) => Sketch): SketchBook => ({
  role,
  forms: [],
  sketch: (form) => {
    const size = drawnSize(form);
    return size === undefined ? undefined : draw(size, limitOf(form));
  },
});

const FLOOR = 91;
/** A level across the picture, in short pieces. */
const level = (y: number): string =>
  Array.from({ length: 9 }, (_, i) =>
    straight([
      [8 + i * 9.5, y],
      [12 + i * 9.5, y],
    ]),
  ).join('');

function height(cm: number, limit: number): Sketch {
  const scale = Math.min(84 / 180, 86 / cm, 86 / limit);
  const size = cm * scale;
  const root: Point = [64, FLOOR];
  const leaves = Math.round(Math.min(7, 2 + size / 14));
  const low = size < 14;
  const shoots = [-64, -32, 32, 64].map((degrees) => straight([root, from(root, degrees, size * 0.98)])).join('');
  const drawing: Drawing = [
    ['scale', personOf(MEASURES.person * scale, [22, FLOOR])],
    ['ground', 'M4 91L92 91'],
    ['fine', level(FLOOR - limit * scale)],
    ['trace', straight([root, [64, FLOOR - size]]) + (low ? shoots : '')],
    ...(low ? [] : [['mark', cane(root, size * 0.96, 0, leaves, Math.min(size * 0.24, 17)).blades] as Mark]),
  ];
  return { drawing, alt: tall(cm, cm / MEASURES.person) };
}

export const SIZE_BOOKS: readonly SketchBook[] = [
  book('height', height),
  book('leaf-length', lengthOf('leaf')),
  book('leaf-width', width),
  book('ligule-length', ligule),
  book('stem-thickness', thickness),
  book('cluster-length', lengthOf('head')),
];
