// What a portrait is drawn on: marks in groups, each group with the characters that it shows.
import type { Mark, Pen } from '../../key/index.ts';
import { between, type Point, straight } from '../geometry.ts';

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
  /** Groups whose form or size is not known: they are drawn with broken lines. */
  readonly unsure = new Set<Group>();
  /** Units of the figure for a metre. */
  metre = 0;

  put(group: Group, pen: Pen, path: string, at?: string): void {
    if (path === '') return;
    const unsure = this.unsure.has(group);
    const mark: Mark = unsure && pen === 'face' ? [group === 'flower' ? 'fine' : 'line', broken(path)] : [pen, path];
    const last = this.pieces.at(-1);
    if (last?.group === group && last.at === at) last.marks.push(mark);
    else this.pieces.push({ group, marks: [mark], ...(at === undefined ? {} : { at }) });
  }

  /** A shape filled with paper, and with its colour where that is known. */
  shape(group: Group, path: string, hue: string | undefined): void {
    const wash = hue === undefined ? undefined : (`wash-${hue}` as Pen);
    // A broken line hides nothing: it lies on its colour, where a whole one lies beneath.
    if (wash !== undefined && this.unsure.has(group)) this.put(group, wash, path);
    this.put(group, 'face', path);
    if (wash !== undefined && !this.unsure.has(group)) this.put(group, wash, path);
  }

  show(...roles: readonly string[]): void {
    for (const role of roles) this.shown.add(role);
  }
}

/** The lines of a path, each as its points; curves are cut into `steps`. Knows what `smooth` and `straight` write. */
export function linesOf(path: string, steps = 6): Point[][] {
  const lines: Point[][] = [];
  for (const [, command, rest = ''] of path.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const values = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const line = lines.at(-1);
    const point = (i: number): Point => [values[i] as number, values[i + 1] as number];
    if (command === 'M') lines.push([point(0)]);
    else if (command === 'L') line?.push(point(0));
    else if (command === 'Z') line?.push(line[0] as Point);
    else if (line) {
      const [a, b, c, d] = [line.at(-1) as Point, point(0), point(2), point(4)];
      for (let i = 1; i <= steps; i++) {
        const [ab, bc, cd] = [between(a, b, i / steps), between(b, c, i / steps), between(c, d, i / steps)];
        line.push(between(between(ab, bc, i / steps), between(bc, cd, i / steps), i / steps));
      }
    }
  }
  return lines;
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

/** Length of a piece of a broken line, and of the gap behind it, in units of the figure. */
const [ON, OFF] = [3.2, 2.6];

/** The same path in short pieces. */
export function broken(path: string): string {
  let result = '';
  for (const line of linesOf(path)) {
    let left = ON;
    let drawn: Point[] = [line[0] as Point];
    let on = true;
    for (let i = 1; i < line.length; i++) {
      let here = line[i - 1] as Point;
      const end = line[i] as Point;
      for (;;) {
        const far = Math.hypot(end[0] - here[0], end[1] - here[1]);
        if (far <= left) {
          left -= far;
          if (on) drawn.push(end);
          break;
        }
        here = between(here, end, left / far);
        if (on) result += straight([...drawn, here]);
        drawn = [here];
        on = !on;
        left = on ? ON : OFF;
      }
    }
    if (on && drawn.length > 1) result += straight(drawn);
  }
  return result;
}

/** A path with its curves made of two straight pieces, to whole units: for what stands far behind. */
export const plain = (path: string): string =>
  linesOf(path, 2)
    .map((line) => `M${line.map(([x, y]) => `${Math.round(x)} ${Math.round(y)}`).join('L')}Z`)
    .join('');
