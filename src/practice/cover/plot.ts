// A square frame on the ground, strewn with leaves, of which it is known how much they cover.
import { Random } from '../../engine/trial/random.ts';
import { COVER } from '../../report/find/cover.ts';
import type { CoverClass } from '../../report/find/index.ts';

/** A leaf as an ellipse in a frame of side 1: its middle, half axes, and turn in radians. */
export interface Leaf {
  readonly x: number;
  readonly y: number;
  readonly a: number;
  readonly b: number;
  readonly turn: number;
}

export interface Plot {
  readonly leaves: readonly Leaf[];
  /** Share of the frame that lies under at least one leaf, 0 to 1. */
  readonly cover: number;
}

/** Points of the raster along a side. A leaf of the sizes strewn here is then right to a thousandth of the frame (tested). */
const RASTER = 160;
/** So many leaves in a row that fell wholly under others, and the next one grows into the open: no frame stays unfilled. */
const PATIENCE = 12;

/** Whether a point lies under a leaf. */
function covers({ x, y, a, b, turn }: Leaf, px: number, py: number): boolean {
  const [dx, dy] = [px - x, py - y];
  const [u, v] = [dx * Math.cos(turn) + dy * Math.sin(turn), -dx * Math.sin(turn) + dy * Math.cos(turn)];
  return (u / a) ** 2 + (v / b) ** 2 <= 1;
}

/** Marks what a leaf covers; returns how much of the frame is new under it. */
function mark(grid: Uint8Array, leaf: Leaf): number {
  let fresh = 0;
  const reach = Math.max(leaf.a, leaf.b);
  const cell = (at: number) => Math.floor(at * RASTER);
  for (let i = Math.max(0, cell(leaf.y - reach)); i <= Math.min(RASTER - 1, cell(leaf.y + reach)); i++)
    for (let j = Math.max(0, cell(leaf.x - reach)); j <= Math.min(RASTER - 1, cell(leaf.x + reach)); j++)
      if (grid[i * RASTER + j] === 0 && covers(leaf, (j + 0.5) / RASTER, (i + 0.5) / RASTER)) {
        grid[i * RASTER + j] = 1;
        fresh++;
      }
  return fresh / RASTER ** 2;
}

/** The share of the frame that the leaves cover, by a raster. */
export function coverOf(leaves: readonly Leaf[]): number {
  const grid = new Uint8Array(RASTER ** 2);
  return leaves.reduce((sum, leaf) => sum + mark(grid, leaf), 0);
}

/** A plot of a cover class of Daubenmire: leaves fall, in patches as they grow, until it is reached. Deterministic. */
export function plotOf(seed: number, wanted: CoverClass): Plot {
  const random = new Random(seed, 7);
  const [from, to] = COVER[wanted];
  // Away from the bounds, where nobody could say which class it is.
  const target = (from + (to - from) * (0.2 + 0.6 * random.next())) / 100;
  const size = 0.03 + 0.05 * random.next();
  const patches = Array.from({ length: 1 + random.below(4) }, () => [random.next(), random.next()] as const);
  const grid = new Uint8Array(RASTER ** 2);
  const leaves: Leaf[] = [];
  let cover = 0;
  let hidden = 0;
  while (cover < target) {
    const [x, y] = hidden < PATIENCE ? inPatch(random, patches) : inOpen(random, grid);
    const leaf: Leaf = { x, y, a: size * (0.7 + 0.6 * random.next()), b: size * 0.45, turn: Math.PI * random.next() };
    const fresh = mark(grid, leaf);
    cover += fresh;
    hidden = fresh > 0 ? 0 : hidden + 1;
    if (fresh > 0) leaves.push(leaf);
  }
  return { leaves, cover };
}

function inPatch(random: Random, patches: readonly (readonly [number, number])[]): [x: number, y: number] {
  const [x, y] = patches[random.below(patches.length)] as readonly [number, number];
  const apart = random.next() < 0.5 ? 0.12 : 0.5;
  return [within(x + apart * random.normal()), within(y + apart * random.normal())];
}

/** The middle of a bare cell; there is one while anything is left to cover. */
function inOpen(random: Random, grid: Uint8Array): [x: number, y: number] {
  const start = random.below(grid.length);
  const found = grid.indexOf(0, start);
  const cell = found < 0 ? grid.indexOf(0) : found;
  return [((cell % RASTER) + 0.5) / RASTER, (Math.floor(cell / RASTER) + 0.5) / RASTER];
}

/** Back into the frame, as a ball from a wall. */
const within = (at: number): number => {
  const folded = Math.abs(at) % 2;
  return folded > 1 ? 2 - folded : folded;
};
