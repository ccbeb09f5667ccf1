// The stream as pieces to draw: the water of every branch, the course that was walked, and the names of its mouths.
import type { Branch, Fork, Forks, Step } from '../../session/index.ts';
import { type Bed, banks, type Point } from './course.ts';

/** Units of the drawing; about one to a pixel in the narrowest column. */
export const WIDTH = 360;
const SPRING = 26;
export const MOUTHS = 440;
const ROW = 27;
/** As many mouths are named. */
export const NAMES = 5;
export const HEIGHT = MOUTHS + 14 + NAMES * ROW;
/** All the water there is. */
const RIVER = 46;
/** A course that holds nothing is there all the same. */
const TRICKLE = 0.9;

export interface Piece {
  readonly id: string;
  readonly d: string;
}
export interface Mouth {
  readonly taxon: number;
  readonly x: number;
  /** Where its name stands. */
  readonly y: number;
  /** On which side of its line the name is written, so that it stays on the paper. */
  readonly side: 'left' | 'right';
}
export interface Drawing {
  readonly water: readonly Piece[];
  readonly course: readonly (Piece & { readonly open: boolean })[];
  readonly here: Point | undefined;
  readonly mouths: readonly Mouth[];
}

/** Near the source the forks lie far apart and the water needs room to get there; near the mouths it does not. */
const at = ({ x, y }: Point): Point => ({ x: x * WIDTH, y: SPRING + (1 - (1 - y) ** 1.6) * (MOUTHS - SPRING) });

/**
 * @param flows Share of the water in each branch.
 * @param path The couplets that were walked, with the lead taken at each.
 * @param named Indices of the taxa whose mouths are named, the one that holds most first.
 */
export function draw(
  forks: Forks,
  bed: Bed,
  flows: ReadonlyMap<Branch, number>,
  path: readonly Step[],
  here: Fork | undefined,
  named: readonly number[],
): Drawing {
  const total = forks.first.branches.reduce((sum, branch) => sum + (flows.get(branch) as number), 0) || 1;
  const wide = (branch: Branch) => Math.max(TRICKLE, (RIVER * (flows.get(branch) as number)) / total);
  const pieces = new Map<Branch, Piece>();
  for (const [fork, point] of bed.forks) {
    const from = at(point);
    let left = from.x - fork.branches.reduce((sum, branch) => sum + wide(branch), 0) / 2;
    fork.branches.forEach((branch, i) => {
      const width = wide(branch);
      const to = branch.to ? bed.forks.get(branch.to) : bed.ends.get(branch);
      if (to)
        pieces.set(branch, {
          id: `${fork.number}.${i}`,
          d: banks({ x: left + width / 2, y: from.y }, at(to), width, width),
        });
      left += width;
    });
  }
  const source = at(bed.forks.get(forks.first) as Point);
  const spring = { id: 'spring', d: banks({ x: source.x, y: 2 }, source, 3, RIVER) };
  const walked = path.flatMap(({ fork, lead, open }) => {
    const piece = pieces.get(fork.branches[lead] as Branch);
    return piece ? [{ ...piece, open }] : [];
  });
  const stands = here && bed.forks.get(here);
  return {
    water: [spring, ...pieces.values()],
    course: path.length > 0 ? [{ ...spring, open: false }, ...walked] : [],
    here: stands && at(stands),
    mouths: mouthsOf(bed, flows, named),
  };
}

/** Each named taxon once, where most of it comes out; names in rows, so that no line crosses a name on its own side. */
function mouthsOf(bed: Bed, flows: ReadonlyMap<Branch, number>, named: readonly number[]): Mouth[] {
  const found = named.flatMap((taxon) => {
    const [most] = [...bed.ends]
      .filter(([branch]) => branch.places.has(taxon))
      .sort(([a], [b]) => (flows.get(b) as number) - (flows.get(a) as number));
    if (most === undefined) return [];
    const { x } = at(most[1]);
    return [{ taxon, x, side: x < WIDTH / 2 ? ('right' as const) : ('left' as const) }];
  });
  const right = found.filter(({ side }) => side === 'left').sort((a, b) => a.x - b.x);
  const left = found.filter(({ side }) => side === 'right').sort((a, b) => b.x - a.x);
  return [...right, ...left].map((mouth, row) => ({ ...mouth, y: MOUTHS + 14 + (row + 0.75) * ROW }));
}
