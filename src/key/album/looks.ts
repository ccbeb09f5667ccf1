// How a drawing looks as a file by itself; a page goes by the names of the pens alone.
import type { Pen } from '../drawing.ts';

/** Attributes of the whole. */
export const ROUND = 'fill="none" stroke-linecap="round" stroke-linejoin="round"';
const INK = '#1c2620';
const REED = '#17492f';
const WATER = '#5f7f8c';
const LOOKS: ReadonlyMap<string, string> = new Map([
  ['face', `fill="#fdfaf2" stroke="${INK}" stroke-width="2"`],
  ['line', `stroke="${INK}" stroke-width="2"`],
  ['fine', `stroke="${INK}"`],
  ['solid', `fill="${INK}"`],
  ['tint', 'fill="#e2d8bf"'],
  ['scale', 'fill="#c9c2ad"'],
  ['water', `stroke="${WATER}" stroke-width="1.5"`],
  ['ground', `stroke="${WATER}" stroke-width="2"`],
  ['mark', `fill="${REED}" fill-opacity=".32" stroke="${REED}" stroke-width="2.5"`],
  ['trace', `stroke="${REED}" stroke-width="3"`],
]);
const COLOURS: ReadonlyMap<string, string> = new Map([
  ['green', '#9cc48d'],
  ['blue-green', '#9cc4b8'],
  ['yellow-green', '#cfdc8e'],
  ['dark-green', '#5f8f62'],
  ['white', '#ffffff'],
  ['yellow', '#f3d45c'],
  ['orange', '#e8a05a'],
  ['red', '#cf6b5a'],
  ['pink', '#e9b3bd'],
  ['blue', '#8fa8dc'],
  ['purple', '#a98cc9'],
  ['brown', '#a9825a'],
  ['tan', '#d8c39a'],
  ['silver', '#d9dadb'],
]);

/** Attributes of a mark of this pen. */
export const looks = (pen: Pen): string =>
  LOOKS.get(pen) ?? `fill="${COLOURS.get(pen.replace(/^(?:wash|swatch)-/, ''))}"`;
