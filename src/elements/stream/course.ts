// The stream's bed: where each fork and each end lies. It follows from the key alone, so nothing moves but the water.
import type { Branch, Fork, Forks } from '../../session/index.ts';

/** Across from the left, and down from the source; both 0 to 1. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Bed {
  readonly forks: ReadonlyMap<Fork, Point>;
  readonly ends: ReadonlyMap<Branch, Point>;
}

/**
 * A tidy tree: its ends spread evenly along the bottom, each fork above the middle of its ends, and as far down as its
 * share of the longest way that leads through it. A couplet that several leads lead to lies below the first of them.
 */
export function bedOf({ first, above, all }: Forks): Bed {
  const across = new Map<Fork, number>();
  const height = new Map<Fork, number>();
  const ends: Branch[] = [];
  const own = (fork: Fork, i: number) => {
    const to = fork.branches[i]?.to;
    const by = to && above.get(to);
    return by?.fork === fork && by.branch === i ? to : undefined;
  };
  const visit = (fork: Fork): void => {
    const from = ends.length;
    let tall = 1;
    fork.branches.forEach((branch, i) => {
      const to = own(fork, i);
      if (to) {
        visit(to);
        tall = Math.max(tall, 1 + (height.get(to) as number));
      } else if (branch.to === undefined) ends.push(branch);
    });
    height.set(fork, tall);
    across.set(fork, (from + Math.max(from, ends.length - 1)) / 2);
  };
  visit(first);
  const place = (i: number) => (Math.min(i, ends.length - 1) + 0.5) / Math.max(1, ends.length);
  const depth = new Map<Fork, number>([[first, 0]]);
  // Parents come after their children in `all`.
  for (const fork of [...all.values()].reverse()) {
    const by = above.get(fork);
    if (by) depth.set(fork, 1 + (depth.get(by.fork) as number));
  }
  const down = (fork: Fork) => {
    const d = depth.get(fork) as number;
    return d / (d + (height.get(fork) as number));
  };
  return {
    forks: new Map([...across].map(([fork, x]) => [fork, { x: place(x), y: down(fork) }])),
    ends: new Map(ends.map((end, i) => [end, { x: place(i), y: 1 }])),
  };
}

/** How much runs down each branch: a taxon's weight is split evenly over the places it comes out. `p` by index of taxon. */
export function flowsOf({ first, all }: Forks, p: ArrayLike<number>): ReadonlyMap<Branch, number> {
  const into = new Map<Fork, Map<number, number>>([
    [first, new Map([...first.places.keys()].map((t) => [t, p[t] as number]))],
  ]);
  const flows = new Map<Branch, number>();
  for (const fork of [...all.values()].reverse()) {
    const here = into.get(fork) ?? new Map<number, number>();
    const places = new Map<number, number>();
    for (const branch of fork.branches) for (const [t, n] of branch.places) places.set(t, (places.get(t) ?? 0) + n);
    for (const branch of fork.branches) {
      const below = branch.to ? (into.get(branch.to) ?? new Map<number, number>()) : undefined;
      let flow = 0;
      for (const [t, n] of branch.places) {
        const part = ((here.get(t) ?? 0) * n) / (places.get(t) as number);
        flow += part;
        below?.set(t, (below.get(t) ?? 0) + part);
      }
      if (branch.to && below) into.set(branch.to, below);
      flows.set(branch, flow);
    }
  }
  return flows;
}

/** A piece of water from one point to another, each with its width; the banks leave and arrive straight down. */
export function banks(from: Point, to: Point, above: number, below: number): string {
  const half = (to.y - from.y) / 2;
  const side = (a: number, b: number) => [n(from.x + a), n(from.y + half), n(to.x + b), n(to.y - half)] as const;
  const [x1, y1, x2, y2] = side(-above / 2, -below / 2);
  const [u1, v1, u2, v2] = side(above / 2, below / 2);
  return (
    `M${n(from.x - above / 2)} ${n(from.y)}C${x1} ${y1} ${x2} ${y2} ${n(to.x - below / 2)} ${n(to.y)}` +
    `L${n(to.x + below / 2)} ${n(to.y)}C${u2} ${v2} ${u1} ${v1} ${n(from.x + above / 2)} ${n(from.y)}Z`
  );
}

const n = (x: number): number => Math.round(x * 100) / 100;
