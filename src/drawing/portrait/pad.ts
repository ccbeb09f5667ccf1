// What a portrait is drawn on: marks in groups, each group with the characters that it shows.
import type { Mark, Pen } from '../../key/index.ts';

/** A piece of the figure, with the roles of the characters that it depends on. */
export interface Piece {
  readonly group: Group;
  readonly at?: string;
  readonly marks: Mark[];
}

export const GROUPS = ['place', 'stand', 'size', 'below', 'leaf', 'stem', 'flower'] as const;
export type Group = (typeof GROUPS)[number];

export class Pad {
  readonly pieces: Piece[] = [];
  /** Roles that the figure shows so that another state would look otherwise. */
  readonly shown = new Set<string>();
  /** Groups whose form or size is not known: they are to be drawn with broken lines. */
  readonly unsure = new Set<Group>();
  /** Units of the figure for a metre. */
  metre = 0;

  put(group: Group, pen: Pen, path: string, at?: string): void {
    const last = this.pieces.at(-1);
    if (last?.group === group && last.at === at) last.marks.push([pen, path]);
    else this.pieces.push({ group, marks: [[pen, path]], ...(at === undefined ? {} : { at }) });
  }

  /** A shape filled with paper, and with its colour where that is known. */
  shape(group: Group, path: string, hue: string | undefined): void {
    this.put(group, 'face', path);
    if (hue !== undefined) this.put(group, `wash-${hue}` as Pen, path);
  }

  show(...roles: readonly string[]): void {
    for (const role of roles) this.shown.add(role);
  }
}

/** What paths of straight pieces and cubic curves take up, handles included: left, top, right, bottom. */
export function boundsOf(paths: readonly string[]): [left: number, top: number, right: number, bottom: number] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const path of paths) {
    const values = path.split(/[^\d.-]+/);
    // The first is what stands before the first number: nothing.
    for (let i = 1; i + 1 < values.length; i += 2) {
      const [x, y] = [Number(values[i]), Number(values[i + 1])];
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  return [left, top, right, bottom];
}

/** A path with straight pieces for its curves: for what stands far behind. */
export const plain = (path: string): string => path.replaceAll(/C(?:\S+ ){4}/g, 'L');
